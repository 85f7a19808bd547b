import type { ChartCell, CheckCell, NameInfo, SweepProgress } from '../../../engine/index';
import { type Dimension, FORCE, LENGTH, MASS, ONE } from '../../../engine/units/index';
import type { SweepChartProps } from '../../../workbook/charts/frame/props';

/** A sweep over two axes of numbers with made-up values of believable size; one corner has no answer. */
const info = (
  path: string,
  slot: number,
  title: string,
  unit: string,
  dimension: Dimension,
  suffix = '',
): NameInfo => ({
  ...{ path, slot, title, unit, dimension, suffix },
  ...{ kind: 'result', cell: '', symbol: '', doc: '', settable: false },
});

const names = new Map(
  [
    info('engine_station', 0, 'engine station', 'mm', LENGTH),
    info('tip_weight', 1, 'tip weight', 'g', MASS),
    info('flight.pull', 2, 'Line pull', 'N', FORCE),
    info('flight.outboard_low', 3, 'Outboard wing low', '°', ONE),
    info('pull_check.low', 4, 'Pull, least', 'N', FORCE),
    info('roll_check.high', 5, 'Roll, most', '°', ONE),
  ].map((each) => [each.path, each]),
);

const pull = (station: number, tip: number): number => 25.6 + 14 * (station + 0.15) + 90 * (tip - 0.02);
const roll = (station: number, tip: number): number =>
  (Math.PI / 180) * (-0.4 + 160 * (tip - 0.021) + 900 * (tip - 0.021) ** 2 + 8 * (station + 0.15));

const between = (low: number, high: number, count: number): Float64Array =>
  Float64Array.from({ length: count }, (_, k) => low + ((high - low) * k) / (count - 1));

const stations = between(-0.18, -0.12, 13);
const tips = between(0, 0.05, 11);
const pairs = Array.from(stations).flatMap((station) => Array.from(tips, (tip) => [station, tip] as const));
const missing = pairs.map(([station, tip]) => (station < -0.17 && tip > 0.042 ? 1 : 0));

export const twoAxes: SweepProgress = {
  revision: 1,
  sweep: 'tip_sweep',
  axes: [
    { path: 'engine_station', values: stations },
    { path: 'tip_weight', values: tips },
  ],
  wanted: ['flight.pull', 'flight.outboard_low'],
  columns: [
    Float64Array.from(pairs, ([s, t], k) => (missing[k] ? Number.NaN : pull(s, t))),
    Float64Array.from(pairs, ([s, t], k) => (missing[k] ? Number.NaN : roll(s, t))),
  ],
  why: Uint16Array.from(missing),
  sentences: ['Lines slack at 15.0 m/s: the pull of the circle is used up.'],
  done: pairs.length,
  total: pairs.length,
  state: 'done',
};

/** The same with only the coarse lattice computed, as while a finger is down. */
export const coarsely: SweepProgress = {
  ...twoAxes,
  why: twoAxes.why.map((why, sample) =>
    latticePoints(13).has(Math.floor(sample / 11)) && latticePoints(11).has(sample % 11) ? why : 65535,
  ),
  state: 'running',
};
function latticePoints(count: number): ReadonlySet<number> {
  return new Set(Array.from({ length: 9 }, (_, k) => Math.round((k * (count - 1)) / 8)));
}

export const design = (station = -0.15, tip = 0.021): Float64Array =>
  Float64Array.of(station, tip, pull(station, tip), roll(station, tip), 25, (2 * Math.PI) / 180);

const checks: readonly CheckCell[] = [
  {
    ...{ id: 'k1', name: 'pull_check', title: 'Pull enough', kind: 'check', of: 'flight.pull' },
    ...{ low: '25 N', high: '', below: 'slack on the upwind side', above: '' },
  },
  {
    ...{ id: 'k2', name: 'roll_check', title: 'Roll', kind: 'check', of: 'flight.outboard_low' },
    ...{ low: '', high: '2°', below: '', above: 'outboard wing hangs: take tip weight off' },
  },
];

const cell = (more: Partial<ChartCell>): ChartCell => ({
  ...{ id: 'c', name: 'tip_chart', title: 'Engine station and tip weight', kind: 'chart', chart: 'carpet' },
  ...{ series: 'tip_sweep', across: 'engine_station', up: ['flight.pull'], lines: 'tip_weight' },
  ...more,
});

export const gridProps = (more: Partial<ChartCell> = {}): SweepChartProps => ({
  ...{ cell: cell(more), progress: twoAxes, names, checks },
  values: design(),
  baseline: design(-0.158, 0.012),
});
