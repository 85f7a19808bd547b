import type { LogCell } from '../../engine/index';
import { useSheet } from '../store/context';
import { saveText } from '../store/files';
import { logCsv } from './log/csv';
import { withRowBelow } from './log/edits';
import { LogForm } from './log/form';
import { PasteRows } from './log/paste';
import { LogTable } from './log/table';
import { SetUp } from './set-up/set-up';

/** What was measured on flights, to be typed in at the field. */
export function LogView({ cell }: { cell: LogCell }) {
  const sheet = useSheet();
  const isSet = (path: string): boolean => sheet.name(path)?.settable ?? false;
  const fresh = cell.columns.length === 0 && cell.time === '';
  return (
    <div class="log">
      <LogTable cell={cell} />
      <div class="log-line">
        <button
          type="button"
          class="word"
          onClick={() => sheet.changeCell(withRowBelow(cell, cell.rows.length - 1, isSet))}
        >
          Add a flight
        </button>
        <button
          type="button"
          class="word"
          onClick={() => saveText(logCsv(cell), `${cell.name}.csv`, 'text/csv;charset=utf-8;header=present')}
        >
          Save as CSV
        </button>
      </div>
      <PasteRows cell={cell} />
      <SetUp title="Columns and measuring errors" open={fresh}>
        <LogForm cell={cell} />
      </SetUp>
    </div>
  );
}
