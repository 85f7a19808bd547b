import { useState } from 'preact/hooks';
import type { LogCell } from '../../../engine/index';
import { saveText } from '../../store/files';
import { askingToListen } from '../../store/listening';
import { SetUp } from '../shared/set-up';
import { logCsv } from './csv';
import { FitNow } from './fit-now';
import { Flights } from './flights';
import { LogForm } from './form';
import { LineSets } from './line-sets';
import { Measured } from './measured';
import { PasteFlights } from './paste/paste-flights';
import { Seen } from './seen';
import { LogTable } from './table';
import { LapTimer } from './timer/timer';

/** As wide as a table of flights wants, px. */
const WIDE = 760;

/** What was timed, pulled, read and seen on flights, to be typed in at the field, and what it says of the design. */
export function LogView({ cell }: { cell: LogCell }) {
  const [open, setOpen] = useState<number | undefined>(undefined);
  const fresh = cell.columns.length === 0 && cell.time === '';
  return (
    <div class="log">
      <LapTimer cell={cell} onPut={setOpen} />
      <div class="log-line">
        <button
          type="button"
          class="word"
          onClick={() => {
            askingToListen.value = { log: cell.name };
          }}
        >
          Listen to a flight
        </button>
      </div>
      <Flights cell={cell} open={open} onOpen={setOpen} />
      <SetUp title="All flights as a table" open={globalThis.innerWidth >= WIDE}>
        <LogTable cell={cell} />
      </SetUp>
      <Measured cell={cell} />
      <FitNow cell={cell} />
      <Seen />
      <LineSets cell={cell} />
      <PasteFlights cell={cell} />
      <SetUp title="Columns and measuring errors" open={fresh}>
        <LogForm cell={cell} />
      </SetUp>
      <div class="log-line">
        <button
          type="button"
          class="word"
          onClick={() => saveText(logCsv(cell), `${cell.name}.csv`, 'text/csv;charset=utf-8;header=present')}
        >
          Save as CSV
        </button>
      </div>
    </div>
  );
}
