import type { NameInfo } from '../../engine/index';

/** What the editor of a formula knows of the sheet, for one text of it. */
export interface Vocabulary {
  /** The path whose text is written. */
  readonly path: string;
  /** Every name of the sheet, in its order. */
  names(): Iterable<NameInfo>;
  /** What a path stands for. */
  name(path: string): NameInfo | undefined;
  /** The present value with its unit; a dash where there is none. */
  shown(path: string): string;
}
