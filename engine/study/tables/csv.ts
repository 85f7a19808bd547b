import type { NameInfo } from '../../terms/index';
import { fromSI } from '../../units/index';
import type { TableColumn } from './told';

/** What stands over the column that says why a design has no answer. */
export const REASON_HEADING = 'no answer because';

/** Digits in which the rounding of a conversion cannot be seen. */
const EXACT_DIGITS = 12;

const measureWords = {
  count: 'designs',
  unanswered: 'designs without an answer',
  least: 'least',
  greatest: 'greatest',
  mean: 'mean',
  median: 'median',
} as const;

/** Name and unit of a column: "flight.pull (N)", "flight.pull (N), mean". */
export function heading({ path, measure }: Omit<TableColumn, 'key'>, info: NameInfo | undefined): string {
  if (!info) return measure ? measureWords[measure] : path;
  const behind = info.suffix || info.unit;
  const named = behind === '' ? path : `${path} (${behind})`;
  return measure ? `${named}, ${measureWords[measure]}` : named;
}

/** In the unit of the sheet; undefined where there is no number. */
export const inUnit = (unit: string, si: number): number | undefined =>
  Number.isFinite(si) ? Number(fromSI(si, unit).toPrecision(EXACT_DIGITS)) : undefined;

/** What stands in a row: the option of a choice, a number in the unit of the sheet, nothing where there is none. */
export function entry(info: NameInfo | undefined, si: number): string {
  if (info?.options) return info.options[si] ?? '';
  return String(inUnit(info?.unit ?? '', si) ?? '');
}
