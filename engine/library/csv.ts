/** A record of a data file: column → text, and the line it starts on. */
export interface CsvRecord {
  readonly line: number;
  readonly values: Readonly<Record<string, string>>;
}

/**
 * Reads comma-separated values with a heading line (RFC 4180): fields may stand in double quotes, a quote inside is doubled.
 * Throws RangeError, naming the line, where a record has more or fewer fields than the heading, or a quote is left open.
 */
export function readCsv(text: string): CsvRecord[] {
  const lines = splitRecords(text, ',');
  const heading = lines[0]?.fields ?? [];
  return lines.slice(1).map(({ line, fields }) => {
    if (fields.length !== heading.length) {
      throw new RangeError(`line ${line} has ${fields.length} fields; the heading has ${heading.length}`);
    }
    return { line, values: Object.fromEntries(heading.map((name, k) => [name, fields[k]!])) };
  });
}

/** What may stand between two fields. */
export type Between = ',' | ';' | '\t';

/** Fields of every line that has any, the heading's among them, with the number of the line that they begin on. */
export const readCsvLines = (text: string, between: Between): readonly { line: number; fields: readonly string[] }[] =>
  splitRecords(text, between).map(({ line, fields }) => ({ line, fields: fields.map(unguarded) }));

function splitRecords(text: string, between: string): { line: number; fields: string[] }[] {
  const records: { line: number; fields: string[] }[] = [];
  let line = 1;
  let start = 1;
  let fields: string[] = [];
  let field = '';
  let quoted = false;
  const endField = (): void => {
    fields.push(field);
    field = '';
  };
  const endRecord = (): void => {
    endField();
    if (fields.length > 1 || fields[0] !== '') records.push({ line: start, fields });
    fields = [];
    start = line + 1;
  };
  for (let i = 0; i < text.length; i++) {
    const c = text[i]!;
    if (quoted) {
      if (c !== '"') {
        field += c;
      } else if (text[i + 1] === '"') {
        field += '"';
        i++;
      } else {
        quoted = false;
      }
    } else if (c === '"' && field === '') {
      quoted = true;
    } else if (c === between) {
      endField();
    } else if (c === '\n') {
      endRecord();
    } else if (c !== '\r') {
      field += c;
    }
    if (c === '\n') line++;
  }
  if (quoted) throw new RangeError(`line ${start} opens a quote that is never closed`);
  if (field !== '' || fields.length > 0) endRecord();
  return records;
}

/** One row of RFC 4180: what holds a comma, a quote or a line end stands in quotes, what could run stands behind an apostrophe. */
export const csvLine = (fields: readonly string[]): string =>
  `${fields.map((field) => quoted(guarded(field))).join(',')}\r\n`;

const quoted = (field: string): string => (/[",\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field);

/** What a program that opens a table could take for something to work out: common practice, no source. */
const RUNS = /^'*[=@\t\r+-]/;
/** A number with its sign, and at most a unit behind it, is none. */
const SIGNED = /^[+-](?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?(?:\s?[\p{L}°%µ·/²³⁴]+)?$/iu;

const guarded = (field: string): string => (RUNS.test(field) && !SIGNED.test(field) ? `'${field}` : field);
const unguarded = (field: string): string => (field.startsWith("'") && RUNS.test(field) ? field.slice(1) : field);
