import { csvLine, fromSI, type NameInfo, type PartsCell } from '../../../engine/index';

/** What a sheet says of a path: its unit, and its SI value. */
export interface Numbers {
  name(path: string): Pick<NameInfo, 'unit'> | undefined;
  value(path: string): number;
}

/** Columns of numbers: the last piece of the path of a part's number, and what it is called. */
const columns = [
  ['mass', 'mass'],
  ['estimate', 'estimate'],
  ['weighed', 'weighed'],
  ['x', 'x'],
  ['y', 'y'],
  ['z', 'z'],
  ['moment_share', 'share of the moment'],
] as const;

/** Digits of a number that is written for other programs: more than any scale gives, fewer than a conversion's rounding. */
const DIGITS = 9;

/** The weight and balance table for other programs: one row a part, then the totals as set; units stand in the heading. */
export function partsCsv(cell: PartsCell, numbers: Numbers): string {
  const first = cell.rows[0];
  const unitOf = (column: string): string =>
    numbers.name(`${cell.name}.${column}`)?.unit ??
    (first && numbers.name(`${cell.name}.${first.name}.${column}`)?.unit) ??
    '';
  const units = columns.map(([column]) => unitOf(column));
  const heading = columns.map(([, words], k) => (units[k] === '' ? words : `${words}, ${units[k]}`));
  const numbersAt = (path: string): string[] =>
    columns.map(([column], k) => {
      const value = numbers.value(`${path}.${column}`);
      return Number.isFinite(value) ? String(Number(fromSI(value, units[k]!).toPrecision(DIGITS))) : '';
    });
  const rows = [
    ['part', 'name', ...heading],
    ...cell.rows.map((row) => [row.title, row.name, ...numbersAt(`${cell.name}.${row.name}`)]),
    ['all parts, fuel as set', cell.name, ...numbersAt(cell.name)],
  ];
  return rows.map(csvLine).join('');
}
