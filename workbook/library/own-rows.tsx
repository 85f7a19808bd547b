import { useSignal } from '@preact/signals';
import type { OwnRow, TableDescription } from '../../engine/index';
import { useSheet } from '../store/context';
import { AddOwnRow } from './add-own-row';
import { OwnRowEditor } from './own-row-editor';

/** Rows of one table that live with the sheet: they are added, changed and taken away where they are picked. */
export function OwnRows({ table, onAdd }: { table: TableDescription; onAdd?: (row: OwnRow) => void }) {
  const sheet = useSheet();
  const adding = useSignal(false);
  const own = sheet.part('rows').filter((row) => row.table === table.name);
  return (
    <details class="own-rows">
      <summary>
        Own {table.title.toLowerCase()}
        {own.length > 0 && `: ${own.length}`}
      </summary>
      {own.map((row) => (
        <OwnRowEditor key={row.name} table={table} row={row} />
      ))}
      {adding.value ? (
        <AddOwnRow
          table={table}
          onDone={(row) => {
            adding.value = false;
            if (row) onAdd?.(row);
          }}
        />
      ) : (
        <button
          type="button"
          class="word"
          onClick={() => {
            adding.value = true;
          }}
        >
          Add an own {table.one}
        </button>
      )}
    </details>
  );
}
