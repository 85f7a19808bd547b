/** The reference as plain data: what the page shows and the text copy says are the same pieces. */
export type Piece =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'list'; readonly items: readonly string[] }
  | { readonly kind: 'heading'; readonly id: string; readonly text: string }
  | EquationPiece
  | EntryPiece
  | TablePiece;

export interface EquationPiece {
  readonly kind: 'equation';
  readonly title: string;
  readonly lines: readonly string[];
  readonly doc: string;
  readonly source: string;
}

/** A field, a result or a function. */
export interface EntryPiece {
  readonly kind: 'entry';
  /** Where a link to it leads. */
  readonly id: string;
  readonly symbol: string;
  readonly title: string;
  /** As formulas say it; '' where they can't. */
  readonly name: string;
  readonly doc: string;
  /** Unit, default, range: short, in this order. */
  readonly facts: readonly string[];
  /** Where the default or the number comes from, sentences. */
  readonly notes: readonly string[];
}

export interface TablePiece {
  readonly kind: 'table';
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export interface Chapter {
  readonly id: string;
  /** Which part of the contents it stands in. */
  readonly group: 'Reading this' | 'Pieces of the model' | 'Formulas' | 'Data';
  readonly title: string;
  readonly pieces: readonly Piece[];
}

/** What the reference page asks the engine for. */
export interface ReferenceService {
  reference(): Promise<readonly Chapter[]>;
}

/** Where a link to a field or a result of a block leads. */
export const fieldAnchor = (kind: string, name: string): string => `field.${kind}.${name}`;
export const resultAnchor = (kind: string, name: string): string => `result.${kind}.${name}`;
