import type { Cell, DrawingCell } from '../../../engine/index';

/** The pieces of a sheet in reading order, without the drawing that stands beside them and has no number. */
export const columnOf = (pieces: readonly Cell[], standing: Cell | undefined): readonly Cell[] =>
  pieces.filter((cell) => cell !== standing);

/** The first drawing of the design stands beside every sheet. */
export const standingDrawing = (cells: readonly Cell[]): DrawingCell | undefined =>
  cells.find((cell) => cell.kind === 'drawing');

/** Place on its sheet before which a cell goes that is to stand by so many places further down the column; undefined at its ends. */
export function placeFurther(
  pieces: readonly Cell[],
  standing: Cell | undefined,
  id: string,
  by: 1 | -1,
): number | undefined {
  const column = columnOf(pieces, standing);
  const at = column.findIndex((cell) => cell.id === id);
  const beside = column[at + by];
  if (at < 0 || !beside) return undefined;
  return pieces.indexOf(beside) + (by === 1 ? 1 : 0);
}

/** A gap of the column: the place on the sheet, and what stands on its two sides, for people. */
export interface Gap {
  readonly at: number;
  readonly words: string;
}

/**
 * Every place of the column where a cell can be put in, from the top. Two places of the sheet are one gap where the
 * standing drawing lies between them: `chosen` says which of them to name.
 */
export function gapsOf(pieces: readonly Cell[], standing: Cell | undefined, chosen?: number): readonly Gap[] {
  const column = columnOf(pieces, standing);
  const drawing = standing ? pieces.indexOf(standing) : -1;
  const gap = (at: number, words: string): Gap => {
    const same = chosen !== undefined && at === drawing && chosen === at + 1;
    return { at: same ? chosen : at, words };
  };
  return [
    gap(0, column.length === 0 ? 'on the empty sheet' : 'at the beginning'),
    ...column.map((cell, k) => gap(pieces.indexOf(cell) + 1, `after ${k + 1}, ${cell.title}`)),
  ];
}
