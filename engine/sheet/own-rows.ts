import * as v from 'valibot';
import { textsEntry } from './cells/entries';
import type { Rewrite, Text } from './cells/kind';
import { mapFields, mapRows, mapTexts, withRow, withText } from './cells/rows';
import type { Document, OwnRow } from './document';
import type { Builder } from './specs';

/** Rows of the library that live with the document. They belong to no cell but have texts, names and references like one. */
export const ownRowSchema = v.strictObject({
  table: v.string(),
  name: v.string(),
  title: v.string(),
  source: v.pipe(v.string(), v.minLength(1)),
  values: textsEntry,
});

export const ownRowTexts = (document: Document): Text[] =>
  document.rows.flatMap((row) =>
    Object.entries(row.values).map(([column, text]) => ({ path: `${row.name}.${column}`, text })),
  );

/** The document with one text of its own rows replaced; undefined where the path isn't one of them. */
export function putInOwnRows(document: Document, path: string, text: string): Document | undefined {
  for (const [k, row] of document.rows.entries()) {
    const column = path.startsWith(`${row.name}.`) ? path.slice(row.name.length + 1) : '';
    // Which columns there are is in the library, which the document doesn't carry.
    if (column === '' || column.includes('.')) continue;
    const changed = { ...row, values: withText(row.values, column, text) };
    return { ...document, rows: withRow(document.rows, k, changed) };
  }
  return undefined;
}

export function rewriteOwnRows(rows: readonly OwnRow[], { formula }: Rewrite): readonly OwnRow[] {
  return mapRows(rows, (row) => mapFields(row, { values: mapTexts(row.values, formula) }));
}

export function layOwnRows(document: Document, builder: Builder): void {
  for (const row of document.rows) {
    if (builder.claim(row.name, '')) layOwnRow(row, builder);
  }
}

function layOwnRow(row: OwnRow, builder: Builder): void {
  const table = builder.tables.get(row.table);
  if (!table) {
    const known = [...builder.tables.keys()];
    const message = `${row.title || row.name} is a row of “${row.table}”: the library has no such table. Its tables are ${known.join(', ')}.${builder.meant(row.table, known)}`;
    builder.fault({ cell: '', path: row.name, message });
    return;
  }
  const columns = builder.columns(row.table);
  const known = columns.map((column) => column.name);
  for (const name of Object.keys(row.values)) {
    if (known.includes(name)) continue;
    const message = `${row.title || row.name} is a ${table.one} and gives no “${name}”. It gives ${known.join(', ')}.${builder.meant(name, known)}`;
    builder.fault({ cell: '', path: `${row.name}.${name}`, message });
  }
  for (const { name, title, symbol, dimension, unit, options, mayBeBlank } of columns) {
    builder.text({
      cell: '',
      path: `${row.name}.${name}`,
      text: row.values[name] ?? '',
      kind: 'library',
      title: `${row.title}: ${title.toLowerCase()}`,
      symbol,
      doc: row.source,
      unit,
      wants: options ? { options } : { dimension },
      blank: mayBeBlank ? Number.NaN : undefined,
      mayBeBlank,
    });
  }
}
