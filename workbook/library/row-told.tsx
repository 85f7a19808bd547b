import type { RowDescription, TableDescription } from '../../engine/index';
import { useSheet } from '../store/context';
import { numbersTold, titleInside } from './told';

/** What a row of the library gives, where that comes from, and whether it was recalled. */
function RowTold({ table, row }: { table: TableDescription; row: RowDescription }) {
  const sheet = useSheet();
  const words = Object.entries(row.words).filter(([, text]) => text !== '');
  return (
    <p class="aside row-told">
      {sentence(numbersTold(table, row, sheet.units()))} {words.map(([title, text]) => `${title}: ${text}. `)}
      <SourceTold row={row} />
      {table.caution !== '' && <strong class="row-caution"> {table.caution}</strong>}
    </p>
  );
}

export function SourceTold({ row }: { row: Pick<RowDescription, 'source' | 'memory'> }) {
  return (
    <span>
      Source: {row.source}
      {row.memory && ' (recalled, not looked up)'}
    </span>
  );
}

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

/** The same of a row by its name, whether it is an own one of the sheet or one of the library. */
export function NamedRowTold({ table, name }: { table: TableDescription; name: string }) {
  const sheet = useSheet();
  const own = sheet.part('rows').find((row) => row.table === table.name && row.name === name);
  const row = table.rows.find((each) => each.name === name);
  if (!own) return row ? <RowTold table={table} row={row} /> : null;
  const told = table.columns.filter(({ name: column, seldom }) => !seldom || (own.values[column] ?? '') !== '');
  const numbers = told.map((column) => {
    const text = own.values[column.name] ?? '';
    return `${titleInside(column.title)} ${text === '' ? 'not known' : sheet.shown(`${name}.${column.name}`)}`;
  });
  return (
    <p class="aside row-told">
      Own {table.one}. {sentence(numbers.join(', '))} <SourceTold row={{ source: own.source, memory: false }} />
      {table.caution !== '' && <strong class="row-caution"> {table.caution}</strong>}
    </p>
  );
}
