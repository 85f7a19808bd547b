import type { ChartCell, SpreadTold, SweepProgress } from '../../../engine/index';
import type { SweepChartProps } from '../../../workbook/charts/frame/props';
import { designValues, sweepNames } from './sweeps';

/** A spread with made-up numbers of believable size: 300 designs of the invented Quern 25, twelve of which lack an answer. */
const COUNT = 300;
const bell = Array.from({ length: COUNT }, (_, k) => {
  const u = ((k * 97) % COUNT) / COUNT + 0.5 / COUNT;
  return Math.log(u / (1 - u)) / 1.7;
});
const missing = (k: number): boolean => k % 25 === 3;
const lengths = Float64Array.from(bell, (z) => 18.3 + 0.1 * z);
const pulls = Float64Array.from(bell, (z, k) =>
  missing(k) ? Number.NaN : 25.7 - 0.2 * z + 0.25 * bell[(k * 7) % COUNT]!,
);

export const told: SpreadTold = {
  ...{ designs: COUNT, samples: COUNT, compared: COUNT },
  factors: [
    { path: 'line_length', what: 'value' },
    { path: 'engine_station', what: 'value' },
    { path: 'flight.lap_time', what: 'mass' },
  ],
  results: [
    {
      ...{ path: 'flight.pull', mean: 25.7, deviation: 0.32, low: 25.17, middle: 25.69, high: 26.24, missing: 12 },
      ...{ first: [0.39, 0.58, -0.004], firstError: [0.04, 0.05, 0.01], total: [0.41, 0.6, 0.003] },
      totalError: [0.03, 0.04, 0.002],
    },
  ],
  causes: [{ reason: 'Too little thrust: … N are missing.', count: 12 }],
};
export const spreadProgress: SweepProgress = {
  ...{ revision: 1, sweep: 'shop', axes: [], wanted: ['flight.pull', 'line_length'], columns: [pulls, lengths] },
  why: Uint16Array.from(bell, (_, k) => (missing(k) ? 1 : 0)),
  ...{ sentences: ['Too little thrust: 0.3 N are missing.'], done: COUNT, total: COUNT, state: 'done', spread: told },
};
export const spreadChart = (chart: ChartCell['chart'], more: Partial<ChartCell> = {}): SweepChartProps => ({
  cell: {
    ...{ kind: 'chart', id: 'c', name: 'pulls', title: 'Pull in the shop', chart, series: 'shop' },
    ...{ across: '', up: ['flight.pull'], lines: '' },
    ...more,
  },
  ...{ names: sweepNames, checks: [], progress: spreadProgress, values: designValues() },
});
