import { smallSheet } from './small-sheet';

export const PATHS = ['tip_weight', 'line_length'] as const;
export type Path = (typeof PATHS)[number];
/** What can be undone, as plain data. */
export interface State {
  readonly title: string;
  readonly folded: boolean;
  readonly texts: Readonly<Record<Path, string>>;
}

/** A text that is being typed: as it is now, as it was last known to the sheet, and as it was before the last stroke. */
export interface Draft {
  readonly path: Path;
  text: string;
  kept: string;
  strokes: string[];
}

/** The whole page without any of its code: lists of states. */
export class Plain {
  now: State = { title: smallSheet.title, folded: false, texts: { tip_weight: '21 g', line_length: '18.3 m' } };
  past: State[] = [];
  future: State[] = [];
  dragged: { readonly path: Path; readonly from: State } | undefined;
  draft: Draft | undefined;

  commit(next: State, from = this.now): void {
    this.past.push(from);
    this.future = [];
    this.now = next;
  }

  set(path: Path, text: string): void {
    if (this.now.texts[path] !== text) this.commit({ ...this.now, texts: { ...this.now.texts, [path]: text } });
  }

  rest(): void {
    const { dragged } = this;
    this.dragged = undefined;
    if (dragged && dragged.from.texts[dragged.path] !== this.now.texts[dragged.path]) {
      this.commit(this.now, dragged.from);
    }
  }

  settle(): void {
    this.rest();
    const { draft } = this;
    if (!draft || draft.text === draft.kept) return;
    draft.kept = draft.text;
    this.set(draft.path, draft.text);
  }

  /** `from` and `to` are the past and the future, or the other way. */
  step(from: State[], to: State[]): void {
    const next = from.pop();
    if (!next) return;
    to.push(this.now);
    this.now = next;
  }
}
