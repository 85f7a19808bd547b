import { freeName, isLogName, type LogCell, type LogColumn, type LogRow, nameFault } from '../../../engine/index';
import { keptDay } from '../../store/kept-day';
import type { Sheet } from '../../store/sheet';
import { today } from '../../store/today';
import { newLogRow } from './new-log';
import { weatherOf } from './weather';

export const withLogRow = (cell: LogCell, k: number, row: LogRow): LogCell => ({
  ...cell,
  rows: cell.rows.with(k, row),
});

/** A blank row below row k, with the laps and the conditions of the one above: flights of a day are mostly alike. */
export function withRowBelow(cell: LogCell, k: number, isSet: (path: string) => boolean): LogCell {
  const above = cell.rows[k];
  const kept = new Set(cell.columns.filter((column) => isSet(column.of)).map((column) => column.name));
  const values = Object.fromEntries(Object.entries(above?.values ?? {}).filter(([name]) => kept.has(name)));
  const { date = '', flown_as = '', line_set = '', laps = '10', propeller = '', needle = '', plug = '' } = above ?? {};
  const alike = { date, flown_as, line_set, laps, propeller, needle, plug, values };
  const row: LogRow = { ...newLogRow(nextLabel(above?.label ?? '')), ...alike };
  return { ...cell, rows: cell.rows.toSpliced(k + 1, 0, row) };
}

/** "12" is followed by "13", "flight 3" by "flight 4"; what ends in no number by nothing. A date is no count. */
export function nextLabel(label: string): string {
  const [, words, count] = /^(|.*[^\d.,/-])(\d{1,4})$/.exec(label) ?? [];
  return count === undefined ? '' : `${words}${Number(count) + 1}`;
}

export const withoutLogRow = (cell: LogCell, k: number): LogCell => ({ ...cell, rows: cell.rows.toSpliced(k, 1) });

/** A column of a result or of what is set; its name comes from the path. */
export function withColumn(cell: LogCell, of: string, error: string): LogCell {
  const taken = new Set(['error', ...cell.columns.map((column) => column.name)]);
  const last = of.slice(of.lastIndexOf('.') + 1);
  const wanted = isLogName(last) ? `${last}_read` : last;
  const name = freeName(nameFault(wanted) === undefined ? wanted : 'column', taken);
  return { ...cell, columns: [...cell.columns, { name, of, error }] };
}

/** Without the column and what was typed in it. */
export function withoutColumn(cell: LogCell, column: LogColumn): LogCell {
  return {
    ...cell,
    columns: cell.columns.filter((each) => each !== column),
    rows: cell.rows.map((row) => {
      const { [column.name]: _, ...values } = row.values;
      return { ...row, values };
    }),
  };
}

/** Sets of lines with set k called otherwise, and the flights that say it. */
export const withLineSetCalled = (cell: LogCell, k: number, name: string): LogCell => {
  const before = cell.line_sets[k]!.name;
  return {
    ...cell,
    line_sets: cell.line_sets.with(k, { ...cell.line_sets[k]!, name }),
    rows: cell.rows.map((row) => (row.line_set === before && before !== '' ? { ...row, line_set: name } : row)),
  };
};

/** A new flight of today behind the others: laps and conditions as the flight before, the weather as the day card has it. */
export function withFlightToday(cell: LogCell, sheet: Pick<Sheet, 'name' | 'cells'>): LogCell {
  const at = cell.rows.length;
  const grown = withRowBelow(cell, at - 1, (path) => sheet.name(path)?.settable ?? false);
  const day = today();
  const isAir = (id: string): boolean =>
    sheet.cells.value.some((each) => each.id === id && each.kind === 'model' && each.of === 'air');
  const weather = weatherOf(cell, keptDay(day), sheet.name, isAir);
  const row = grown.rows[at]!;
  return withLogRow(grown, at, {
    ...row,
    label: row.label || String(at + 1),
    date: day,
    values: { ...row.values, ...weather },
  });
}
