import { isGroup, type Plain } from './plain';

/** Up to version 3 a flight was a label, laps, a time, readings and a note; from 4 on it has a day, a line set, fuel and what was fitted, too. */
export const logsWithLines = (file: Plain): Plain => {
  const { sheets, baseline_design: then } = file;
  const grown = { ...file, sheets: withLogs(sheets) };
  return isGroup(then) ? { ...grown, baseline_design: { ...then, sheets: withLogs(then.sheets) } } : grown;
};

const each = (list: unknown, change: (one: Plain) => Plain): unknown =>
  Array.isArray(list) ? list.map((one: unknown) => (isGroup(one) ? change(one) : one)) : list;

const withLogs = (sheets: unknown): unknown =>
  each(sheets, (sheet) => ({
    ...sheet,
    pieces: each(sheet.pieces, (piece) => (piece.kind === 'log' ? withLines(piece) : piece)),
  }));

/** Names that rows have from now on, which a column may have had. */
const TAKEN =
  /^(label|date|flown_as|line_set|splits|all_laps|fuel_in|fuel_left|propeller|needle|plug|values|note|set\d*)$/;

function withLines({ columns, rows, ...log }: Plain): Plain {
  const names = Array.isArray(columns)
    ? columns.flatMap((column: unknown) => (isGroup(column) ? column.name : []))
    : [];
  const renamed = (name: unknown): unknown => {
    if (typeof name !== 'string' || !TAKEN.test(name)) return name;
    let free = `${name}_read`;
    while (names.includes(free)) free += '_2';
    return free;
  };
  return {
    ...log,
    columns: each(columns, (column) => ({ ...column, name: renamed(column.name) })),
    rows: each(rows, (row) => withDay(row, renamed)),
    line_sets: [],
    taken: [],
  };
}

const DAY = /^\d{4}-\d{2}-\d{2}$/;

function withDay({ label, values, ...row }: Plain, renamed: (name: unknown) => unknown): Plain {
  const isDay = typeof label === 'string' && DAY.test(label);
  return {
    ...{ label: isDay ? '' : label, date: isDay ? label : '', flown_as: '', line_set: '' },
    ...{ splits: '', all_laps: '', fuel_in: '', fuel_left: '', propeller: '', needle: '', plug: '' },
    ...row,
    values: isGroup(values)
      ? Object.fromEntries(Object.entries(values).map(([name, text]) => [renamed(name), text]))
      : values,
  };
}
