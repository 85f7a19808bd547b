import { type Column, isOptionColumn, isWordColumn, type LibraryRow, type LibraryTable } from '../library/index';
import { formatQuantity } from '../units/index';
import type { Chapter, Piece } from './chapter';

const MARKS =
  'A row marked “from memory” was recalled and not looked up: open its source, or weigh a piece, before you rest anything on it.';

/** A table of the library, row by row with its source. */
export function tableChapter(table: LibraryTable): Chapter {
  const { name, title, one, doc, caution } = table;
  const columns = Object.entries<Column>(table.columns);
  const cautions: Piece[] = caution === undefined ? [] : [{ kind: 'text', text: caution }];
  return {
    id: name,
    group: 'Data',
    title,
    pieces: [
      { kind: 'text', text: `${doc} ${MARKS}` },
      ...cautions,
      {
        kind: 'table',
        title,
        columns: [one, 'name', ...columns.map(([, column]) => column.title.toLowerCase()), 'source', 'mark'],
        rows: table.rows.map((row) => [
          row.inchTitle === undefined ? row.title : `${row.title}; in inches: ${row.inchTitle}`,
          row.name,
          ...columns.map(([key, column]) => cellText(row, key, column)),
          row.source,
          row.memory ? 'from memory' : '',
        ]),
      },
    ],
  };
}

function cellText({ values, words }: LibraryRow, key: string, column: Column): string {
  if (isWordColumn(column)) return words[key]!;
  const value = values[key]!;
  if (Number.isNaN(value)) return '';
  if (isOptionColumn(column)) return column.option[value]!.replaceAll('_', ' ');
  return formatQuantity(value, column.unit, { significant: 4 });
}
