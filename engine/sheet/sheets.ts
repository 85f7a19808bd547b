import type { Cell, Document, Sheet } from './document';

/** Where a piece stands: on which sheet of the list, and as which of its pieces. */
export interface PiecePlace {
  readonly sheet: number;
  readonly at: number;
}

const flat = new WeakMap<readonly Sheet[], readonly Cell[]>();

/** Every piece of a design in reading order, sheet after sheet: the order in which it is computed. The same list for the same sheets. */
export function cellsOf({ sheets }: Pick<Document, 'sheets'>): readonly Cell[] {
  let cells = flat.get(sheets);
  if (!cells) {
    cells = sheets.flatMap((sheet) => sheet.pieces);
    flat.set(sheets, cells);
  }
  return cells;
}

/** Undefined where no piece has this id. */
export function placeOf({ sheets }: Document, id: string): PiecePlace | undefined {
  for (const [sheet, { pieces }] of sheets.entries()) {
    const at = pieces.findIndex((piece) => piece.id === id);
    if (at >= 0) return { sheet, at };
  }
  return undefined;
}

export const sheetWith = (document: Document, id: string): Sheet | undefined =>
  document.sheets.find((sheet) => sheet.id === id);

/** The sheet on which a piece stands. */
export const sheetOfPiece = (document: Document, id: string): Sheet | undefined =>
  document.sheets[placeOf(document, id)?.sheet ?? -1];

/** The document with other pieces on one of its sheets. */
export function withPieces(document: Document, sheet: number, pieces: readonly Cell[]): Document {
  return { ...document, sheets: document.sheets.with(sheet, { ...document.sheets[sheet]!, pieces }) };
}

/** The document with a new state of the piece that has the same id. */
export function withPiece(document: Document, piece: Cell): Document {
  const place = placeOf(document, piece.id);
  if (!place) return document;
  return withPieces(document, place.sheet, document.sheets[place.sheet]!.pieces.with(place.at, piece));
}

/** An id that no sheet of the design has. */
export function freeSheetId({ sheets }: Pick<Document, 'sheets'>): string {
  const numbers = sheets.map((sheet) => Number(/^s(\d+)$/.exec(sheet.id)?.[1] ?? 0));
  return `s${Math.max(0, ...numbers) + 1}`;
}
