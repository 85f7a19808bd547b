import type { ChartCell, NameInfo, PartsCell, TraceAnswer } from '../../../engine/index';
import { type Dimension, FORCE, LENGTH, MASS, ONE, timesDimension } from '../../../engine/units/index';
import type { PartsChartProps, TraceChartProps } from '../../../workbook/charts/frame/props';

/** Parts of an invented model: mass in grams and station in millimetres behind the CG, now and in the baseline. */
const PARTS: readonly (readonly [name: string, title: string, mass: number, behind: number, then: number])[] = [
  ['engine', 'Engine with muffler', 252, -152, 252],
  ['propeller', 'Propeller and spinner', 38, -205, 38],
  ['tank', 'Fuel tank, half full', 62, -82, 62],
  ['wheels', 'Wheels and gear', 58, -40, 58],
  ['wing', 'Wing with covering', 176, 24, 176],
  ['bellcrank', 'Bellcrank and leadouts', 34, 12, 34],
  ['body', 'Fuselage', 118, 209.415, 118],
  ['stabiliser', 'Stabiliser', 24, 402, 16],
  ['elevator', 'Elevator', 17, 448, 12],
  ['fin', 'Fin', 7, 415, 7],
  ['horn', 'Horn and pushrod', 12, 250, 12],
  ['hinges', 'Hinges', 2, 430, 2],
  ['tip_weight', 'Tip weight', 21, 6, 21],
  ['paint', 'Paint', Number.NaN, 0, Number.NaN],
];

const names = new Map<string, NameInfo>();
const slots: number[] = [];
const before: number[] = [];
function add(path: string, title: string, unit: string, dimension: Dimension, now: number, then: number): void {
  names.set(path, {
    ...{ path, slot: slots.length, title, unit, dimension },
    ...{ kind: 'part', cell: 'p', symbol: '', suffix: '', doc: '', settable: false },
  });
  slots.push(now);
  before.push(then);
}
for (const [name, title, mass, behind, then] of PARTS) {
  add(`parts.${name}.mass`, title, 'g', MASS, mass / 1000, then / 1000);
  const about = (m: number): number => (m * behind) / 1e6;
  const of = timesDimension(MASS, LENGTH);
  add(`parts.${name}.moment`, `${title}: moment about the CG`, 'g·mm', of, about(mass), about(then));
}
add('least_pull.low', 'Least pull, least', 'N', FORCE, 12, 12);
add('flight.pull', 'Line pull', 'N', FORCE, 25, 24);

const parts: PartsCell = {
  ...{ kind: 'parts', id: 'p', name: 'parts', title: 'Weight and balance', fuel: '' },
  rows: PARTS.map(([name, title]) => ({ name, title, shape: 'point', fields: {} })),
};

const chart = (more: Partial<ChartCell>): ChartCell => ({
  ...{ id: 'c', name: 'parts_chart', title: 'What each part weighs', kind: 'chart', chart: 'bars' },
  ...{ series: '', of: 'parts', across: '', up: ['mass'], lines: '' },
  ...more,
});

export const partsProps = (more: Partial<ChartCell> = {}): PartsChartProps => ({
  cell: chart(more),
  parts,
  names,
  values: Float64Array.from(slots),
  baseline: Float64Array.from(before),
  checks: [],
});

const ANGLES = 49;
const around = (f: (angle: number) => number): Float64Array =>
  Float64Array.from({ length: ANGLES }, (_, k) => f((2 * Math.PI * k) / (ANGLES - 1)));

/** Pull around the lap in a wind, made up. */
const trace: TraceAnswer = {
  ...{ revision: 1, path: 'lap.ring', title: 'Around the lap', doc: '' },
  columns: [
    { name: 'azimuth', title: 'Angle from downwind', symbol: 'ψ', doc: '', dimension: ONE, unit: '°', suffix: '' },
    { name: 'pull', title: 'Line pull', symbol: 'T', doc: '', dimension: FORCE, unit: 'N', suffix: '' },
    { name: 'bearing', title: 'Bearing', symbol: 'β', doc: '', dimension: ONE, unit: '°', suffix: '' },
  ],
  // Anticlockwise in a wind from 270°: straight downwind bears 90°, and bearings fall along the lap.
  present: [
    around((a) => a),
    around((a) => 25 + 7 * Math.cos(a - 0.4)),
    around((a) => (2.5 * Math.PI - a) % (2 * Math.PI)),
  ],
  baseline: [around((a) => a), around((a) => 22 + 4 * Math.cos(a - 0.2)), around(() => 0)],
};

export const ringProps = (more: Partial<ChartCell> = {}): TraceChartProps => ({
  cell: chart({
    title: 'Pull around the lap',
    chart: 'ring',
    of: 'lap.ring',
    up: ['pull'],
    checks: ['least_pull'],
    ...more,
  }),
  trace,
  names,
  values: Float64Array.from(slots),
  checks: [
    {
      ...{ id: 'k', name: 'least_pull', title: 'Least pull', kind: 'check', of: 'flight.pull' },
      ...{ low: '12 N', high: '', below: 'lines go slack', above: '' },
    },
  ],
});
