import type { Cell, Document, Sheet } from './document';
import { cellsOf, type PiecePlace, placeOf, withPieces } from './sheets';

/** Edits of what stands where: pieces on their sheets, and the sheets of the set. */
export type ArrangeChange =
  /** `sheet`: id of the sheet that gets it. */
  | { readonly change: 'insert'; readonly sheet: string; readonly at: number; readonly cell: Cell }
  | { readonly change: 'remove'; readonly id: string }
  /** To a place of the same sheet or another, counted without the piece itself. */
  | { readonly change: 'move'; readonly id: string; readonly sheet: string; readonly to: number }
  /** Puts a new state in place of the cell with the same id. */
  | { readonly change: 'cell'; readonly cell: Cell }
  /** Shows a cell as its title only, or whole (`null`: nothing is said of it): nothing that is computed. */
  | { readonly change: 'fold'; readonly id: string; readonly folded: boolean | null }
  | { readonly change: 'insert_sheet'; readonly at: number; readonly sheet: Sheet }
  /** With all that stands on it. The last one stays. */
  | { readonly change: 'remove_sheet'; readonly id: string }
  /** To a place counted without the sheet itself. */
  | { readonly change: 'move_sheet'; readonly id: string; readonly to: number }
  | { readonly change: 'title_sheet'; readonly id: string; readonly title: string };

interface Arranged {
  readonly document: Document;
  readonly inverse: ArrangeChange;
}

/** Throws RangeError for a place that isn't there: a mistake of the program, not of a person. */
export function arrange(document: Document, change: ArrangeChange): Arranged {
  switch (change.change) {
    case 'insert':
      return insert(document, change.sheet, change.at, change.cell);
    case 'remove':
      return remove(document, change.id);
    case 'move':
      return move(document, change.id, change.sheet, change.to);
    case 'cell':
      return replace(document, change.cell);
    case 'fold':
      return fold(document, change.id, change.folded);
    case 'insert_sheet':
      return insertSheet(document, change.at, change.sheet);
    case 'remove_sheet':
      return removeSheet(document, change.id);
    case 'move_sheet':
      return moveSheet(document, change.id, change.to);
    case 'title_sheet':
      return titleSheet(document, change.id, change.title);
  }
}

function insert(document: Document, sheet: string, at: number, cell: Cell): Arranged {
  const on = sheetAt(document, sheet);
  const { pieces } = document.sheets[on]!;
  within('A piece cannot be put in at', at, pieces.length);
  if (placeOf(document, cell.id)) throw new RangeError(`There is a piece with id ${cell.id} already`);
  return {
    document: withPieces(document, on, pieces.toSpliced(at, 0, cell)),
    inverse: { change: 'remove', id: cell.id },
  };
}

function remove(document: Document, id: string): Arranged {
  const { sheet, at } = pieceAt(document, id);
  const { pieces, id: from } = document.sheets[sheet]!;
  return {
    document: withPieces(document, sheet, pieces.toSpliced(at, 1)),
    inverse: { change: 'insert', sheet: from, at, cell: pieces[at]! },
  };
}

function move(document: Document, id: string, sheet: string, to: number): Arranged {
  const from = pieceAt(document, id);
  const cell = document.sheets[from.sheet]!.pieces[from.at]!;
  const on = sheetAt(document, sheet);
  const without = withPieces(document, from.sheet, document.sheets[from.sheet]!.pieces.toSpliced(from.at, 1));
  const { pieces } = without.sheets[on]!;
  within('A piece cannot move to', to, pieces.length);
  return {
    document: withPieces(without, on, pieces.toSpliced(to, 0, cell)),
    inverse: { change: 'move', id, sheet: document.sheets[from.sheet]!.id, to: from.at },
  };
}

function replace(document: Document, cell: Cell): Arranged {
  const { sheet, at } = pieceAt(document, cell.id);
  const { pieces } = document.sheets[sheet]!;
  return {
    document: withPieces(document, sheet, pieces.with(at, cell)),
    inverse: { change: 'cell', cell: pieces[at]! },
  };
}

function fold(document: Document, id: string, folded: boolean | null): Arranged {
  const { sheet, at } = pieceAt(document, id);
  const { pieces } = document.sheets[sheet]!;
  const { folded: before, ...cell } = pieces[at]!;
  return {
    document: withPieces(document, sheet, pieces.with(at, folded === null ? cell : { ...cell, folded })),
    inverse: { change: 'fold', id, folded: before ?? null },
  };
}

function insertSheet(document: Document, at: number, sheet: Sheet): Arranged {
  const { sheets } = document;
  within('A sheet cannot be put in at', at, sheets.length);
  if (sheets.some((each) => each.id === sheet.id)) throw new RangeError(`There is a sheet with id ${sheet.id} already`);
  const ids = new Set(cellsOf(document).map((cell) => cell.id));
  const taken = sheet.pieces.find((piece) => ids.has(piece.id));
  if (taken) throw new RangeError(`There is a piece with id ${taken.id} already`);
  return {
    document: { ...document, sheets: sheets.toSpliced(at, 0, sheet) },
    inverse: { change: 'remove_sheet', id: sheet.id },
  };
}

function removeSheet(document: Document, id: string): Arranged {
  const { sheets } = document;
  const at = sheetAt(document, id);
  if (sheets.length === 1) throw new RangeError('The last sheet of a design stays');
  return {
    document: { ...document, sheets: sheets.toSpliced(at, 1) },
    inverse: { change: 'insert_sheet', at, sheet: sheets[at]! },
  };
}

function moveSheet(document: Document, id: string, to: number): Arranged {
  const { sheets } = document;
  const at = sheetAt(document, id);
  within('A sheet cannot move to', to, sheets.length - 1);
  return {
    document: { ...document, sheets: sheets.toSpliced(at, 1).toSpliced(to, 0, sheets[at]!) },
    inverse: { change: 'move_sheet', id, to: at },
  };
}

function titleSheet(document: Document, id: string, title: string): Arranged {
  const at = sheetAt(document, id);
  const sheet = document.sheets[at]!;
  return {
    document: { ...document, sheets: document.sheets.with(at, { ...sheet, title }) },
    inverse: { change: 'title_sheet', id, title: sheet.title },
  };
}

function within(what: string, at: number, most: number): void {
  if (!(at >= 0 && at <= most)) throw new RangeError(`${what} ${at}; 0 to ${most} are allowed`);
}

function sheetAt(document: Document, id: string): number {
  const at = document.sheets.findIndex((sheet) => sheet.id === id);
  if (at < 0) throw new RangeError(`There is no sheet with id ${id}`);
  return at;
}

function pieceAt(document: Document, id: string): PiecePlace {
  const place = placeOf(document, id);
  if (!place) throw new RangeError(`There is no piece with id ${id}`);
  return place;
}
