import type { Cell } from '../../../engine/index';

/** The cells of the column in reading order. The first drawing stands beside them and has no number. */
export function columnOf(cells: readonly Cell[]): readonly Cell[] {
  const standing = standingDrawing(cells);
  return cells.filter((cell) => cell !== standing);
}

export const standingDrawing = (cells: readonly Cell[]): Cell | undefined =>
  cells.find((cell) => cell.kind === 'drawing');

/** Place in the document before which a cell goes that is to stand by so many places further down the column; undefined at its ends. */
export function placeFurther(cells: readonly Cell[], id: string, by: 1 | -1): number | undefined {
  const column = columnOf(cells);
  const at = column.findIndex((cell) => cell.id === id);
  const beside = column[at + by];
  if (at < 0 || !beside) return undefined;
  return cells.indexOf(beside) + (by === 1 ? 1 : 0);
}

/** A gap of the column: the place in the document, and what stands on its two sides, for people. */
export interface Gap {
  readonly at: number;
  readonly words: string;
}

/**
 * Every place of the column where a cell can be put in, from the top. Two places of the document are one gap where the
 * standing drawing lies between them: `chosen` says which of them to name.
 */
export function gapsOf(cells: readonly Cell[], chosen?: number): readonly Gap[] {
  const column = columnOf(cells);
  const drawing = cells.findIndex((cell) => !column.includes(cell));
  const gap = (at: number, words: string): Gap => {
    const same = chosen !== undefined && at === drawing && chosen === at + 1;
    return { at: same ? chosen : at, words };
  };
  return [
    gap(0, column.length === 0 ? 'on the empty sheet' : 'at the beginning'),
    ...column.map((cell, k) => gap(cells.indexOf(cell) + 1, `after ${k + 1}, ${cell.title}`)),
  ];
}
