import {
  type BlockCell,
  cellsOf,
  type Document,
  type FitCell,
  type LogCell,
  type LogColumn,
  type LogRow,
} from '../../../engine/index';

type Contents<C> = Omit<C, 'id' | 'name' | 'title'>;

/** How far readings may be off: common practice, no source. */
export const USUAL_ERRORS = { time: '0.05 s', pull: '2 N', rpm: '100 rpm' } as const;

export const newLogRow = (label: string): LogRow => ({ label, laps: '10', time: '', values: {}, note: '' });

/** Time, pull, rpm and wind, as far as the sheet has blocks for them, and one row to begin with. */
export function newLog(document: Document): Contents<LogCell> {
  const named = (kind: string): string | undefined => blocksOf(document, kind)[0]?.name;
  const [flight, lap, air] = [named('flight'), named('lap'), named('air')];
  const columns: LogColumn[] = [];
  if (flight !== undefined) {
    columns.push({ name: 'pull', of: `${flight}.pull_at_handle`, error: USUAL_ERRORS.pull });
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
  };
}

/** Engines whose power a factor corrects. */
const WITH_POWER = ['two_stroke', 'tachometer', 'thrust_law', 'measured_lap'];

/** Drag and power from the last log of the sheet. */
export function newFit(document: Document): Contents<FitCell> {
  const flight = blocksOf(document, 'flight')[0]?.name;
  const engine = WITH_POWER.flatMap((kind) => blocksOf(document, kind))[0]?.name;
  return {
    kind: 'fit',
    log: cellsOf(document).findLast((cell) => cell.kind === 'log')?.name ?? '',
    factors: [
      ...(flight === undefined ? [] : [`${flight}.drag_factor`]),
      ...(engine === undefined ? [] : [`${engine}.power_factor`]),
    ],
    wanted: [],
    errors: 'scatter',
  };
}

const blocksOf = (document: Document, kind: string): readonly BlockCell[] =>
  cellsOf(document).filter((cell): cell is BlockCell => cell.kind === 'model' && cell.of === kind);
