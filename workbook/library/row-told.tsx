import type { RowDescription, TableDescription } from '../../engine/index';
import { useSheet } from '../store/context';
import { numbersTold } from './told';

/** What a row of the library gives, where that comes from, and whether it was recalled. */
export function RowTold({ table, row }: { table: TableDescription; row: RowDescription }) {
  const sheet = useSheet();
  const words = Object.entries(row.words).filter(([, text]) => text !== '');
  return (
    <p class="aside row-told">
      {sentence(numbersTold(table, row, sheet.part('units')))} {words.map(([title, text]) => `${title}: ${text}. `)}
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
