import type { Shape } from '../../blocks/block';
import type { Document } from '../../sheet/document';
import type { NameInfo } from '../../terms/index';

/** A figure by which designs are told apart and compared. */
export interface KeyFigure extends Pick<NameInfo, 'title' | 'unit' | 'suffix' | 'ways'> {
  /** Role and result: `flight.pull`, whatever the piece is called. */
  readonly of: string;
  /** SI; NaN where the design has no answer. */
  readonly value: number;
}

/** What a list of designs shows of one. */
export interface DesignTold {
  /** What it is flown in, else the title of what drives it; '' where it has neither. */
  readonly kind: string;
  /** In the units of the design; only those of which it has a piece. */
  readonly figures: readonly KeyFigure[];
  readonly drawing: readonly Shape[];
}

/** A text that two designs have otherwise. */
export interface DesignDifference {
  /** What a builder calls its place. */
  readonly title: string;
  readonly here: string;
  readonly there: string;
}

/** How a design differs from another. */
export interface DesignDifferences {
  readonly texts: readonly DesignDifference[];
  /** Titles of what only this one has, and of what only the other has: whole pieces, else the rows in them. */
  readonly here: readonly string[];
  readonly there: readonly string[];
}

/** Something that another design can take from a design. */
export interface PieceOffer {
  readonly of: 'lines' | 'engine' | 'propeller' | 'sheet' | 'part';
  /** Name of the piece, id of the sheet, path of the part. */
  readonly name: string;
  readonly title: string;
  /** What it is, in a word or two: "engine", "part, 21 g". */
  readonly says: string;
}

/** The open design with what was taken, on its sheet of that id, and what was done in a sentence or two. */
export type TakingAnswer =
  | { readonly ok: true; readonly document: Document; readonly sheet: string; readonly done: string }
  | { readonly ok: false; readonly message: string };

/** Tells of designs by their texts, whichever is open; undefined for a text that can't be read. `document`: the open one. */
export interface HangarService {
  tellDesign(text: string): Promise<DesignTold | undefined>;
  tellApart(text: string, other: string): Promise<DesignDifferences | undefined>;
  offers(text: string): Promise<readonly PieceOffer[] | undefined>;
  /** The open design with a piece of another in it; nothing is changed. */
  take(document: Document, text: string, piece: PieceOffer): Promise<TakingAnswer>;
}
