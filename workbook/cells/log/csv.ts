import { csvLine, type LogCell, type LogRow, MOST_LOG_ROWS, readCsvLines } from '../../../engine/index';
import { type ChosenSeparators, type Decimal, withPoint } from '../shared/separators';
import { newLogRow } from './new-log';

/** What each column of a log is called, for people: column name → title. */
export type Titles = ReadonlyMap<string, string>;

const FIXED = ['flight', 'laps', 'time', 'note'] as const;

/** Columns as they stand in a file: flight, laps, time, those of the log by name, note. */
const headingOf = (cell: LogCell): readonly string[] => [
  'flight',
  'laps',
  'time',
  ...cell.columns.map(({ name }) => name),
  'note',
];

/** The rows of a log as typed, for other programs. */
export const logCsv = (cell: LogCell): string =>
  [headingOf(cell), ...cell.rows.map((row) => headingOf(cell).map((name) => textOf(row, name)))].map(csvLine).join('');

function textOf(row: LogRow, name: string): string {
  if (name === 'flight') return row.label;
  if (name === 'laps' || name === 'time' || name === 'note') return row[name];
  return row.values[name] ?? '';
}

export type Pasted =
  | { readonly ok: true; readonly rows: readonly LogRow[] }
  | { readonly ok: false; readonly message: string };

/**
 * Rows from comma-separated values (RFC 4180) or from cells copied in columns, with a heading line. A column is known by its name or its
 * title, with or without a unit behind a comma; a unit in the heading stands behind each number below it.
 */
export function rowsFromCsv(cell: LogCell, titles: Titles, text: string, separators: ChosenSeparators): Pasted {
  let table: readonly (readonly string[])[];
  try {
    table = readCsvLines(text, separators.between).map(({ fields }) => fields);
  } catch (error) {
    return no(`The text can’t be read: ${(error as Error).message}. Close the quote, or leave the quotes out.`);
  }
  const [heading, ...lines] = table;
  if (!heading || lines.length === 0) {
    return no('There are no rows. The first line names the columns, each line below it is a flight.');
  }
  const columns = heading.map((head) => columnOf(cell, titles, head));
  const strange = heading.find((_, k) => columns[k] === undefined);
  if (strange !== undefined) {
    return no(
      `The heading has “${strange.trim()}”, which this log has no column for. It has ${headingOf(cell).join(', ')}. Add the column, or remove it from the text.`,
    );
  }
  const twice = columns.find((column, k) => columns.findIndex((each) => each!.name === column!.name) < k);
  if (twice) return no(`The heading has two columns for ${twice.name}. Remove one of them from the text.`);
  const off = lines.findIndex((fields) => fields.length !== heading.length);
  if (off >= 0) {
    return no(
      `Row ${off + 1} has ${lines[off]!.length} fields; the heading has ${heading.length}. A field with the separator in it stands in double quotes.`,
    );
  }
  if (cell.rows.length + lines.length > MOST_LOG_ROWS) {
    return no(
      `That would make ${cell.rows.length + lines.length} rows. At most ${MOST_LOG_ROWS} are allowed in one log.`,
    );
  }
  const known = columns as readonly Column[];
  const strayed = strayIn(lines, known, separators.decimal);
  if (strayed) return no(strayed);
  return { ok: true, rows: lines.map((fields) => rowOf(fields, known, separators.decimal)) };
}

/** The first number that has the other sign for its decimals, in a sentence. */
function strayIn(
  lines: readonly (readonly string[])[],
  columns: readonly Column[],
  decimal: Decimal,
): string | undefined {
  for (const [row, fields] of lines.entries()) {
    for (const [k, { name }] of columns.entries()) {
      const read = isWords(name) ? { text: '' } : withPoint(fields[k]!, decimal);
      if ('wrong' in read) return `Row ${row + 1}, ${name}: ${read.wrong}. Write it so, or choose the other sign.`;
    }
  }
  return undefined;
}

const isWords = (name: string): boolean => name === 'flight' || name === 'note';

interface Column {
  readonly name: string;
  /** Unit of the heading; '' where it has none. */
  readonly unit: string;
}

function columnOf(cell: LogCell, titles: Titles, head: string): Column | undefined {
  const comma = head.lastIndexOf(',');
  const [words, unit] = comma < 0 ? [head, ''] : [head.slice(0, comma), head.slice(comma + 1).trim()];
  const meant = words.trim().toLowerCase();
  const name =
    FIXED.find((each) => each === meant) ??
    cell.columns.find((column) => column.name === meant || titles.get(column.name)?.toLowerCase() === meant)?.name;
  return name === undefined ? undefined : { name, unit };
}

function rowOf(fields: readonly string[], columns: readonly Column[], decimal: Decimal): LogRow {
  const at = new Map(
    columns.map(({ name, unit }, k) => {
      const read = isWords(name) ? { text: fields[k]! } : withPoint(fields[k]!, decimal);
      return [name, withUnit(('text' in read ? read.text : '').trim(), unit)];
    }),
  );
  const values = [...at].filter(([name, text]) => text !== '' && !(FIXED as readonly string[]).includes(name));
  return {
    ...newLogRow(''),
    label: at.get('flight') ?? '',
    laps: at.get('laps') ?? '',
    time: at.get('time') ?? '',
    values: Object.fromEntries(values),
    note: at.get('note') ?? '',
  };
}

/** A bare number takes the unit of its heading. */
const withUnit = (text: string, unit: string): string =>
  unit !== '' && /^[+\-−]?[\d.]+(e[+-]?\d+)?$/i.test(text) ? `${text} ${unit}` : text;

const no = (message: string): Pasted => ({ ok: false, message });
