import { csvLine, type LogCell, type LogRow } from '../../../engine/index';

/** Columns as they stand in a file: what every flight has, the columns of the log by name, the remarks. */
const BEFORE = ['flight', 'date', 'laps', 'time', 'splits', 'all_laps', 'fuel_in', 'fuel_left'] as const;
const BEHIND = ['line_set', 'flown_as', 'propeller', 'needle', 'plug', 'note'] as const;

/** The rows of a log as typed, for other programs; pasted again they come back. */
export function logCsv(cell: LogCell): string {
  const own = cell.columns.map(({ name }) => name);
  const of = (row: LogRow): readonly string[] => [
    ...BEFORE.map((name) => (name === 'flight' ? row.label : row[name])),
    ...own.map((name) => row.values[name] ?? ''),
    ...BEHIND.map((name) => row[name]),
  ];
  return [[...BEFORE, ...own, ...BEHIND], ...cell.rows.map(of)].map(csvLine).join('');
}
