import type { LogCell } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { PasteRoom } from '../shared/paste-room';
import { rowsFromCsv } from './csv';

/** Rows typed elsewhere, put below those of the log. */
export function PasteRows({ cell }: { cell: LogCell }) {
  const sheet = useSheet();
  const names = ['flight', 'laps', 'time', ...cell.columns.map(({ name }) => name), 'note'];
  return (
    <PasteRoom
      id={`${cell.id}-paste`}
      title="Paste flights"
      reads
      label={`Comma-separated values, or rows copied from a table; the first line names the columns: ${names.join(', ')}`}
      rows={4}
      word="Add these flights"
      onTake={(text, separators) => {
        const titles = new Map(cell.columns.map(({ name, of }) => [name, sheet.name(of)?.title ?? of]));
        const pasted = rowsFromCsv(cell, titles, text, separators);
        if (!pasted.ok) return pasted;
        sheet.changeCell({ ...cell, rows: [...cell.rows, ...pasted.rows] });
        const count = pasted.rows.length;
        return { ok: true, message: count === 1 ? 'One flight was added.' : `${count} flights were added.` };
      }}
    />
  );
}
