import type { Fault } from '../../engine/index';
import type { Vocabulary } from './vocabulary';

/** A place in a text, as characters from its beginning. */
export interface TextRange {
  readonly from: number;
  readonly to: number;
}

/** What an editor is opened with and whom it tells. */
export interface EditorRequest {
  readonly parent: HTMLElement;
  /** The text as it stands in the document. */
  readonly text: string;
  /** What has been typed already, while the editor was still being fetched. */
  readonly draft?: string;
  /** What is selected; missing: everything. */
  readonly selection?: TextRange;
  /** Attributes of the place to type in: its name for those who hear it, its path. */
  readonly attributes: Readonly<Record<string, string>>;
  /** For a formula, which is one line: what it can name, and what is wrong with it. Missing: words over many lines. */
  readonly formula?: { readonly vocabulary: Vocabulary; check(text: string): Promise<Fault | undefined> };
  typed(text: string): void;
  /** The window has lost the focus: what is typed so far is worth keeping. */
  pause(): void;
  /** Done: the text is to be kept. `byKeys`: by a key and not by leaving. */
  finish(byKeys: boolean): void;
  /** The text is to stay as it was. */
  abandon(): void;
  /** Nothing of this text is left to take back, or to do again. */
  undoBeyond(): void;
  redoBeyond(): void;
}

/** An editor on the page. */
export interface OpenEditor {
  text(): string;
  /** Whether it differs from what stands in the document. */
  changed(): boolean;
  /** Another text stands in the document now: it's shown where nothing has been typed over the one before. */
  show(text: string): void;
  close(): void;
}
