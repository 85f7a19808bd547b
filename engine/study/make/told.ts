import type { Document } from '../../sheet/document';

/** Where something that is made stands: on which sheet, and behind which of its pieces; at its end where none is said. */
export interface MakingPlace {
  readonly sheet: string;
  readonly after?: string;
}

/** What a chart of a number can be made of. Everything is a path of the design. */
export type ChartOffer =
  | {
      readonly ok: true;
      /** A result is drawn against something that is set; what is set runs across, and a result is drawn against it. */
      readonly asks: 'against' | 'result';
      /** What it can be drawn against, or which results follow from it; the likeliest first. */
      readonly others: readonly string[];
      /** What there can be a line for each of, whatever stands across. */
      readonly lines: readonly string[];
    }
  | { readonly ok: false; readonly message: string };

/** A chart of `of` and `other`, one of which follows from the other, with a line for each of `lines` ('' = only one). */
export interface ChartWish {
  readonly of: string;
  readonly other: string;
  readonly lines: string;
}

/** What making something does to the design. */
export type MakingAnswer =
  | {
      readonly ok: true;
      readonly document: Document;
      /** Id of the piece that shows it, and its path: that of the variable or of the chart. */
      readonly cell: string;
      readonly path: string;
      /** What is added and what becomes a slide, a sentence each. */
      readonly says: readonly string[];
      /** The same when it is done, in a sentence or two. */
      readonly done: string;
    }
  | { readonly ok: false; readonly message: string };
