import type { Document, LogCell, LogColumn, LogRow } from '../../../engine/index';
import { blocksOf } from '../shared/blocks-of';
import { type Contents, cellOf } from '../shared/new-cell';

/** How far readings may be off: common practice, no source. */
export const USUAL_ERRORS = { time: '0.05 s', pull: '2 N', rpm: '100 rpm' } as const;
export const PULL_IN_POUNDS = '0.5 lbf';

export const newLogRow = (label: string): LogRow => ({
  ...{ label, date: '', flown_as: '', line_set: '', laps: '10', time: '', splits: '', all_laps: '' },
  ...{ fuel_in: '', fuel_left: '', propeller: '', needle: '', plug: '', values: {}, note: '' },
});

/** Time, pull, rpm and wind, as far as the sheet has blocks for them, and one row to begin with. */
function logContents(document: Document): Contents<LogCell> {
  const named = (kind: string): string | undefined => blocksOf(document, kind)[0]?.name;
  const [flight, lap, air] = [named('flight'), named('lap'), named('air')];
  const columns: LogColumn[] = [];
  if (flight !== undefined) {
    columns.push({
      name: 'pull',
      of: `${flight}.pull_at_handle`,
      error: document.units === 'metric' ? USUAL_ERRORS.pull : PULL_IN_POUNDS,
    });
    columns.push({ name: 'rpm', of: `${flight}.shaft_speed`, error: USUAL_ERRORS.rpm });
  }
  if (air !== undefined) columns.push({ name: 'temperature', of: `${air}.temperature`, error: '' });
  if (air !== undefined && lap !== undefined) columns.push({ name: 'wind', of: `${air}.wind`, error: '' });
  const timed = lap ?? flight;
  return {
    kind: 'log',
    time: timed === undefined ? '' : `${timed}.lap_time`,
    stopwatch: USUAL_ERRORS.time,
    columns,
    rows: [newLogRow('1')],
    line_sets: [],
    taken: [],
  };
}

/** A log of flown laps as it begins for a design. */
export const newLog = (document: Document): LogCell =>
  cellOf(document, 'flown', 'Laps flown', logContents(document)) as LogCell;
