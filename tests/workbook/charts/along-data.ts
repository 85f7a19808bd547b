import type { ChartCell, NameInfo, TraceAnswer, TraceColumn } from '../../../engine/index';
import { type Dimension, FORCE, LENGTH, PRESSURE, SPEED, VOLUME } from '../../../engine/units/index';
import type { TraceChartProps } from '../../../workbook/charts/frame/props';

/** Made-up traces of believable size, for tests of the charts. */
const column = (name: string, title: string, unit: string, dimension: Dimension): TraceColumn => ({
  ...{ name, title, unit, dimension, symbol: '', suffix: '', doc: '' },
});
const PLACES = 21;
const along = (f: (share: number) => number): Float64Array =>
  Float64Array.from({ length: PLACES }, (_, k) => f(k / (PLACES - 1)));

/** A run on the wheels: the lines pull least a little after release. */
export const runTrace: TraceAnswer = {
  ...{ revision: 1, path: 'launch.run', title: 'Along the run', doc: '' },
  columns: [
    column('distance', 'Distance run', 'm', LENGTH),
    column('pull', 'Line pull', 'N', FORCE),
    column('side_force', 'Side force', 'N', FORCE),
    column('speed', 'Speed', 'm/s', SPEED),
  ],
  present: [
    along((s) => 24 * s ** 2),
    along((s) => 1.2 - 6 * s + 14 * s ** 2),
    along((s) => -1.5 + s),
    along((s) => 13 * s),
  ],
  baseline: [
    along((s) => 21 * s ** 2),
    along((s) => 2.5 - 6 * s + 15 * s ** 2),
    along((s) => -1.5 + s),
    along((s) => 13 * s),
  ],
};

/** A tank that empties: what runs along goes down. */
export const drainTrace: TraceAnswer = {
  ...{ revision: 1, path: 'tank.drain', title: 'As the tank empties', doc: '' },
  columns: [column('left', 'Fuel left', 'mL', VOLUME), column('head', 'Head', 'Pa', PRESSURE)],
  present: [along((s) => (45 - 40 * s) * 1e-6), along((s) => 420 - 300 * s)],
};

const info = (path: string, slot: number, dimension: Dimension, unit: string): NameInfo => ({
  ...{ path, slot, dimension, unit, kind: 'result', cell: '', title: 'Least pull in the run', symbol: '' },
  ...{ suffix: '', doc: '', settable: false },
});
const names = new Map(
  [info('launch.least_pull', 0, FORCE, 'N'), info('tight.low', 1, FORCE, 'N')].map((n) => [n.path, n]),
);

const cell: ChartCell = {
  ...{ id: 'c', name: 'run_chart', title: 'Pull and speed along the run', kind: 'chart', chart: 'along' },
  ...{ series: '', of: 'launch.run', across: 'distance', up: ['pull', 'speed', 'side_force'], lines: '' },
  checks: ['tight'],
};

export const alongProps = (more: Partial<ChartCell> = {}, trace: TraceAnswer = runTrace): TraceChartProps => ({
  ...{ cell: { ...cell, ...more }, trace, names, values: Float64Array.of(0.56, 2) },
  checks: [
    {
      ...{ id: 'k', name: 'tight', title: 'Lines tight', kind: 'check', of: 'launch.least_pull' },
      ...{ low: '2 N', high: '', below: 'the lines go slack', above: '' },
    },
  ],
});
