import type { LogCell } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { saveText } from '../../store/files';
import { SetUp } from '../shared/set-up';
import { logCsv } from './csv';
import { withRowBelow } from './edits';
import { LogForm } from './form';
import { PasteRows } from './paste';
import { LogTable } from './table';
import { LapTimer } from './timer/timer';

/** What was measured on flights, to be typed in at the field. */
export function LogView({ cell }: { cell: LogCell }) {
  const sheet = useSheet();
  const isSet = (path: string): boolean => sheet.name(path)?.settable ?? false;
  const fresh = cell.columns.length === 0 && cell.time === '';
  return (
    <div class="log">
      <LapTimer cell={cell} onPut={() => {}} />
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
