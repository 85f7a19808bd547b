import { normalQuantile, seededRandom } from '../../../../engine/numerics/index';
import type { BlockCell, Cell, Document, FitCell, LogCell, LogRow } from '../../../../engine/sheet/document';
import { type Live, openLive } from '../../../../engine/sheet/live';
import { cellsOf } from '../../../../engine/sheet/sheets';
import { fitNow } from '../../../../engine/study/fit/index';
import { library } from '../../../../engine/study/index';
import { type Fields, read, withEngine } from '../../blocks/engine-designs';
import { onOneSheet } from '../../sheet/one-sheet';

/*
 * Flights of the invented Quern 25 with its engine by data, made from known factors: all numbers are invented. The rows differ in line
 * length and wind, so that drag and power do not act alike.
 */
export interface Flight {
  readonly lines: number;
  readonly wind?: number;
}
export const FLIGHTS: readonly Flight[] = [15, 16, 17, 18.3, 19, 20, 21, 21.5].map((lines) => ({ lines }));

export const LAP = { kind: 'model', id: 'b_lap', name: 'lap', title: 'Lap in wind', of: 'lap', fields: {} } as const;

export const COLUMNS: LogCell['columns'] = [
  { name: 'pull', of: 'flight.pull_at_handle', error: '2 N' },
  { name: 'rpm', of: 'flight.shaft_speed', error: '100 rpm' },
  { name: 'lines', of: 'line_length', error: '' },
  { name: 'wind', of: 'air.wind', error: '' },
];

export const logOf = (rows: readonly LogRow[], more: Partial<LogCell> = {}): LogCell => ({
  ...{ kind: 'log', id: 'l1', name: 'flown', title: 'Laps flown', time: 'flight.lap_time', stopwatch: '0.05 s' },
  ...{ columns: COLUMNS, rows, line_sets: [], taken: [], ...more },
});

export const fitOf = (factors: readonly string[], more: Partial<FitCell> = {}): FitCell => ({
  ...{
    kind: 'fit',
    id: 'f1',
    name: 'found',
    title: 'Fit',
    log: 'flown',
    factors,
    wanted: [],
    errors: 'stated',
    ...more,
  },
});

export const row = (label: string, values: Fields, more: Partial<LogRow> = {}): LogRow => ({
  ...{ label, date: '', flown_as: '', line_set: '', laps: '10', time: '', splits: '', all_laps: '' },
  ...{ fuel_in: '', fuel_left: '', propeller: '', needle: '', plug: '', values, note: '', ...more },
});

export function withCells(
  cells: readonly Cell[],
  fields: Readonly<Record<string, Fields>> = {},
  kind = 'two_stroke',
): Document {
  const design = withEngine(kind);
  const typed = cellsOf(design).map((cell): Cell => {
    const more = cell.kind === 'model' ? fields[cell.name] : undefined;
    return more ? { ...(cell as BlockCell), fields: { ...(cell as BlockCell).fields, ...more } } : cell;
  });
  return { ...design, sheets: onOneSheet([...typed, ...cells]), baseline: undefined };
}

export const openWith = (...rest: Parameters<typeof withCells>): Live => openLive(withCells(...rest), library);
export const fitted = (...rest: Parameters<typeof withCells>) => fitNow(openWith(...rest), 'found');

/** What the model says of the flights with these fields: lap time, pull and shaft speed of each, SI. */
export function flown(flights: readonly Flight[], fields: Readonly<Record<string, Fields>>, kind = 'two_stroke') {
  return flights.map((flight) => {
    const air = { ...fields.air, wind: `${flight.wind ?? 0} m/s` };
    const design = withCells(flight.wind === undefined ? [] : [LAP], { ...fields, air }, kind);
    const cells = cellsOf(design).map(
      (cell): Cell =>
        cell.kind === 'variables'
          ? {
              ...cell,
              rows: cell.rows.map((each) =>
                each.name === 'line_length' ? { ...each, text: `${flight.lines} m` } : each,
              ),
            }
          : cell,
    );
    const live = openLive({ ...design, sheets: onOneSheet(cells) }, library);
    return {
      time: read(live, flight.wind === undefined ? 'flight.lap_time' : 'lap.lap_time'),
      pull: read(live, 'flight.pull_at_handle'),
      rpm: read(live, 'flight.shaft_speed'),
    };
  });
}

/** Rows of a log with the numbers of flights, and noise of the stated measuring errors where a seed is given. */
export function rowsOf(
  flights: readonly Flight[],
  made: ReturnType<typeof flown>,
  { seed, laps = 10 }: { readonly seed?: number; readonly laps?: number } = {},
): LogRow[] {
  const random = seededRandom(seed ?? 1);
  // The first number of a small seed lies next to 1.
  random();
  const noise = (error: number): number => (seed === undefined ? 0 : error * normalQuantile(Math.max(random(), 1e-12)));
  return flights.map(({ lines, wind = 0 }, k) => {
    const { time, pull, rpm } = made[k]!;
    const values = {
      pull: `${pull + noise(2)} N`,
      rpm: `${((rpm + noise((100 * 2 * Math.PI) / 60)) * 60) / (2 * Math.PI)} rpm`,
      lines: `${lines} m`,
      wind: `${wind} m/s`,
    };
    return row(`flight ${k + 1}`, values, { laps: String(laps), time: `${time * laps + noise(0.05)} s` });
  });
}
