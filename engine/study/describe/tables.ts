import { isOptionColumn, isWordColumn, type LibraryRow, type LibraryTable } from '../../library/index';
import { valueColumns } from '../../sheet/library-numbers';
import type { RowDescription, TableDescription } from '../../terms/index';
import { shownUnit } from '../../units/index';

/** A table of the library as plain data: all that a list, a form or a reference page needs. */
export function describeTable(table: LibraryTable): TableDescription {
  const { name, title, one, doc, caution, feeds } = table;
  return {
    name,
    title,
    one,
    doc,
    caution: caution ?? '',
    feeds: feeds ?? '',
    columns: valueColumns(table).map((column) => ({
      ...column,
      tradeUnit: shownUnit(column.unit, 'inch_pound', column.tradeUnit),
      mayBeBlank: column.mayBeBlank ?? false,
      seldom: column.seldom ?? false,
    })),
    rows: table.rows.map((row) => describeRow(row, table)),
  };
}

function describeRow(row: LibraryRow, { columns, group }: LibraryTable): RowDescription {
  const { name, title, inchTitle = title, values, source, memory } = row;
  const words = Object.entries(columns).flatMap(([key, column]) =>
    isWordColumn(column) && key !== group ? [[column.title, row.words[key]!] as const] : [],
  );
  return {
    name,
    title,
    inchTitle,
    group: groupOf(row, group, columns),
    values,
    words: Object.fromEntries(words),
    source,
    memory,
  };
}

/** In the words that a list of its table is grouped by. */
function groupOf({ words, values }: LibraryRow, group: string | undefined, columns: LibraryTable['columns']): string {
  const column = group === undefined ? undefined : columns[group];
  if (group === undefined || !column) return '';
  if (isOptionColumn(column)) return (column.option[values[group]!] ?? '').replaceAll('_', ' ');
  return words[group] ?? '';
}
