import { useState } from 'preact/hooks';
import type { LogCell } from '../../../engine/index';
import { formatNumber, logRowPath } from '../../../engine/index';
import { useSheet } from '../../store/context';
import type { Sheet } from '../../store/sheet';
import { withFlightToday } from './edits';
import { FlightForm } from './flight-form';
import { clockWords } from './timer/words';
import { flightTitle } from './words';

/** The flights, one line each; the one that is open is typed by thumb, a field below the other. */
export function Flights({
  cell,
  open,
  onOpen,
}: {
  cell: LogCell;
  open: number | undefined;
  onOpen(row: number | undefined): void;
}) {
  const sheet = useSheet();
  const [every, showEvery] = useState(false);
  const first = every ? 0 : Math.max(0, cell.rows.length - SHOWN);
  const add = (): void => {
    sheet.changeCell(withFlightToday(cell, sheet));
    onOpen(cell.rows.length);
  };
  return (
    <div class="flights">
      {first > 0 && (
        <button type="button" class="word quiet" onClick={() => showEvery(true)}>
          Show {first} earlier
        </button>
      )}
      <ol start={first + 1}>
        {cell.rows.slice(first).map((_, k) => {
          const row = first + k;
          const opened = open === row;
          return (
            <li key={row}>
              <button
                type="button"
                class="flight-line"
                aria-expanded={opened}
                onClick={() => onOpen(opened ? undefined : row)}
              >
                <strong>{flightTitle(cell, row)}</strong> {flightWords(cell, row, sheet)}
              </button>
              {opened && <FlightForm cell={cell} k={row} onGone={() => onOpen(undefined)} />}
            </li>
          );
        })}
      </ol>
      {cell.rows.length === 0 && <p class="aside">No flight yet.</p>}
      <button type="button" class="word log-add" onClick={add}>
        Add a flight
      </button>
    </div>
  );
}

/** So many of the latest stand in the list until all are asked for. */
const SHOWN = 12;

/** "2026-09-05, 10 laps in 0:50.4, a lap 5.04 s, pull 24 N" */
function flightWords(cell: LogCell, k: number, sheet: Sheet): string {
  const row = cell.rows[k]!;
  const path = logRowPath(cell, k);
  const [time, laps] = [sheet.value(`${path}.time`), sheet.value(`${path}.laps`)];
  const lap = time / laps;
  const shown = cell.columns.flatMap(({ name, of }) => {
    if (!row.values[name] || sheet.name(of)?.settable) return [];
    return [sheet.entry(`${path}.${name}`).replaceAll(' ', '\u00a0')];
  });
  return [
    row.label === '' ? '' : row.date,
    Number.isNaN(time) ? '' : `${formatNumber(laps)} laps in ${clockWords(time, 1)}`,
    Number.isNaN(lap) ? '' : `a lap ${lap.toFixed(2)}\u00a0s`,
    ...shown,
    row.flown_as,
  ]
    .filter((words) => words !== '')
    .join(', ');
}
