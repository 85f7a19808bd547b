import type { Cell } from '../../sheet/document';
import { fromSI, shownUnit, toSI, type UnitSet, writeQuantity } from '../../units/index';

const QUANTITY = /^([\d.]+) (\S+)$/;
const ROUND = [1, 2, 5, 10];

/** A step of a study in the units of a design, as round as it was: "5 mm" → "0.2 in". */
export function stepIn(text: string, set: UnitSet): string {
  const [, number, unit] = QUANTITY.exec(text) ?? [];
  if (number === undefined || unit === undefined) return text;
  const shown = shownUnit(unit, set);
  if (shown === unit) return text;
  const size = fromSI(toSI(Number(number), unit), shown);
  const tens = 10 ** Math.floor(Math.log10(size));
  const off = (round: number): number => Math.abs(Math.log(size / (round * tens)));
  const nearest = ROUND.reduce((best, round) => (off(round) < off(best) ? round : best));
  return writeQuantity(toSI(nearest * tens, shown), shown);
}

/** What is tried to see what helps, by steps that the builder of this design would make. */
export const withSteps = (cell: Cell, set: UnitSet): Cell =>
  cell.kind === 'what_helps'
    ? { ...cell, rows: cell.rows.map((row) => ({ ...row, text: stepIn(row.text, set) })) }
    : cell;
