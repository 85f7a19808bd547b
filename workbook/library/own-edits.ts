import {
  type Change,
  type ColumnDescription,
  type Document,
  freeName,
  nameFromTitle,
  type OwnRow,
  readText,
  type TableDescription,
  takenNames,
} from '../../engine/index';

/** What has been typed for a row that is not there yet. */
export interface RowDraft {
  readonly title: string;
  readonly source: string;
  readonly values: Readonly<Record<string, string>>;
}

export const emptyDraft: RowDraft = { title: '', source: '', values: {} };

/** What keeps a draft from becoming a row, one sentence each. */
export function draftFaults(draft: RowDraft, { one, columns }: TableDescription): readonly string[] {
  const faults: string[] = [];
  if (draft.title.trim() === '') faults.push(`The title is blank. Write what this ${one} is called.`);
  for (const column of columns) faults.push(...valueFaults(draft.values[column.name] ?? '', column));
  if (draft.source.trim() === '') faults.push(NO_SOURCE);
  return faults;
}

export const NO_SOURCE =
  'The source is blank. Write where the numbers come from, such as “weighed on the postal scale” or the packet.';

function valueFaults(text: string, { title, unit, options, mayBeBlank }: ColumnDescription): readonly string[] {
  if (text.trim() === '')
    return mayBeBlank ? [] : [`${title} is blank. ${options ? 'Pick one.' : `Type it${withUnit(unit)}.`}`];
  const read = readText(text, unit);
  return read.ok || options ? [] : [`${title}: ${read.fault.message}`];
}

const withUnit = (unit: string): string => (unit === '' ? '' : ` in ${unit} or with another unit`);

/** The draft as a row of the document, under a name that nothing else has, not even a row of the library. */
export function rowOf(draft: RowDraft, table: string, document: Document, tables: readonly TableDescription[]): OwnRow {
  const library = tables.flatMap(({ rows }) => rows.map((row) => row.name));
  const taken = new Set([...takenNames(document), ...library]);
  const values = Object.entries(draft.values).filter(([, text]) => text.trim() !== '');
  return {
    table,
    name: freeName(nameFromTitle(draft.title) || 'own_row', taken),
    title: draft.title.trim(),
    source: draft.source.trim(),
    values: Object.fromEntries(values.map(([name, text]) => [name, text.trim()])),
  };
}

export const addRow = (document: Document, row: OwnRow): Change[] => [
  { change: 'head', head: { rows: [...document.rows, row] } },
];

export const changeRow = (document: Document, name: string, change: Partial<OwnRow>): Change[] => [
  { change: 'head', head: { rows: document.rows.map((row) => (row.name === name ? { ...row, ...change } : row)) } },
];

export const removeRow = (document: Document, name: string): Change[] => [
  { change: 'head', head: { rows: document.rows.filter((row) => row.name !== name) } },
];
