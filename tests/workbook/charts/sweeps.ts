import type { ChartCell, CheckCell, NameInfo, SweepProgress } from '../../../engine/index';
import { type Dimension, FORCE, LENGTH, ONE, TIME } from '../../../engine/units/index';

/** Two sweeps of the invented Quern 25 with made-up numbers of believable size, for tests of the charts. */
const slots: string[] = [];

function name(path: string, title: string, unit: string, dimension: Dimension, more: Partial<NameInfo> = {}): NameInfo {
  slots.push(path);
  return {
    path,
    slot: slots.length - 1,
    kind: 'result',
    cell: path.split('.')[0]!,
    title,
    symbol: '',
    dimension,
    unit,
    suffix: '',
    doc: '',
    settable: false,
    ...more,
  };
}

export const sweepNames: ReadonlyMap<string, NameInfo> = new Map(
  [
    name('engine_station', 'Engine station', 'mm', LENGTH),
    name('tail_stock', 'Tail stock', '', ONE, { options: ['balsa', 'balsa_ply', 'light_ply'] }),
    name('balance.cg_x', 'CG aft of the root leading edge', 'mm', LENGTH),
    name('balance.cg_share', 'CG on the mean chord', '%', ONE),
    name('cg_check.low', 'CG at least', 'mm', LENGTH),
    name('cg_check.high', 'CG at most', 'mm', LENGTH),
    name('line_length', 'Line length', 'm', LENGTH),
    name('line_set', 'Line set', '', ONE, { options: ['strand_30', 'strand_38', 'strand_46'] }),
    name('flight.pull', 'Line pull', 'N', FORCE),
    name('flight.pull_per_weight', 'Line pull per weight', '', ONE, { suffix: 'g' }),
    name('flight.lap_time', 'Lap time', 's', TIME),
    name('pull_check.low', 'Pull at least', '', ONE, { suffix: 'g' }),
    name('balance.leadout_x', 'Leadout guide', 'mm', LENGTH),
  ].map((n) => [n.path, n]),
);

/** Values of the slots by path; the rest has no answer. */
export function slotValues(set: Readonly<Record<string, number>>): Float64Array {
  const values = new Float64Array(slots.length).fill(Number.NaN);
  for (const [path, value] of Object.entries(set)) values[slots.indexOf(path)] = value;
  return values;
}

const cg = (station: number, stock: number): number => 0.041 + 0.005 * stock + 0.29 * (station + 0.15);
const share = (x: number): number => (x - 0.004) / 0.213;

export const designValues = (station = -0.15, stock = 1, length = 18.3, set = 1): Float64Array =>
  slotValues({
    engine_station: station,
    tail_stock: stock,
    'balance.cg_x': cg(station, stock),
    'balance.cg_share': share(cg(station, stock)),
    'cg_check.low': 0.038,
    'cg_check.high': 0.055,
    'balance.leadout_x': 0.062,
    line_length: length,
    line_set: set,
    'flight.pull': pull(length, set),
    'flight.pull_per_weight': pull(length, set) / 8.336,
    'flight.lap_time': lap(length, set),
    'pull_check.low': 2.6,
  });

const pull = (length: number, set: number): number => 466 / length - 1.1 * (set - 1) - 0.02 * (length - 18.3) ** 2;
const lap = (length: number, set: number): number => 4.93 + 0.29 * (length - 18.3) + 0.09 * (set - 1);

/** A grid over two axes, settled everywhere but where `fails` says why not. */
function grid(
  sweep: string,
  across: { path: string; values: Float64Array },
  lines: { path: string; values: Float64Array },
  wanted: Readonly<Record<string, (x: number, line: number) => number>>,
  fails: (x: number, line: number) => number = () => 0,
): SweepProgress {
  const total = across.values.length * lines.values.length;
  const why = new Uint16Array(total);
  const columns = Object.values(wanted).map(() => new Float64Array(total));
  for (const [i, x] of across.values.entries()) {
    for (const [k, line] of lines.values.entries()) {
      const sample = i * lines.values.length + k;
      why[sample] = fails(x, line);
      for (const [w, f] of Object.values(wanted).entries()) columns[w]![sample] = why[sample] ? Number.NaN : f(x, line);
    }
  }
  return {
    revision: 1,
    sweep,
    axes: [across, lines],
    wanted: Object.keys(wanted),
    columns,
    why,
    sentences: ['Lines slack at 15.0 m/s: the pull of the circle is used up.', 'Too little thrust by 0.6 N.'],
    done: total,
    total,
    state: 'done',
  };
}

const between = (low: number, high: number, count: number): Float64Array =>
  Float64Array.from({ length: count }, (_, k) => low + ((high - low) * k) / (count - 1));
const options = Float64Array.of(0, 1, 2);

export const balanceSweep = grid(
  'engine_sweep',
  { path: 'engine_station', values: between(-0.18, -0.12, 25) },
  { path: 'tail_stock', values: options },
  { 'balance.cg_x': cg, 'balance.cg_share': (x, k) => share(cg(x, k)) },
);

/** Two results in one unit along one axis. */
export const stationSweep: SweepProgress = {
  ...balanceSweep,
  axes: [balanceSweep.axes[0]!],
  wanted: ['balance.cg_x', 'balance.leadout_x'],
  columns: [balanceSweep.columns[0]!.filter((_, k) => k % 3 === 1), new Float64Array(25).fill(0.062)],
  why: new Uint16Array(25),
  done: 25,
  total: 25,
};

/** A baseline whose CG lies 3 mm ahead of the middle line. */
export const balanceGhost: SweepProgress = {
  ...balanceSweep,
  axes: [balanceSweep.axes[0]!],
  columns: balanceSweep.columns.map((column) => column.filter((_, k) => k % 3 === 1).map((v) => v - 0.003)),
  why: new Uint16Array(25),
  done: 25,
  total: 25,
};

export const pullSweep = grid(
  'line_sweep',
  { path: 'line_length', values: between(15, 21.5, 25) },
  { path: 'line_set', values: options },
  { 'flight.pull': pull, 'flight.pull_per_weight': (x, k) => pull(x, k) / 8.336, 'flight.lap_time': lap },
  (x, k) => (k === 2 && x > 20 ? 1 : k === 0 && x < 15.3 ? 2 : 0),
);

export const balanceChart: ChartCell = {
  id: 'c1',
  name: 'balance_chart',
  title: 'CG against engine station, for each tail stock',
  kind: 'chart',
  chart: 'line',
  series: 'engine_sweep',
  across: 'engine_station',
  up: ['balance.cg_x', 'balance.cg_share'],
  lines: 'tail_stock',
};

export const pullChart: ChartCell = {
  id: 'c2',
  name: 'pull_chart',
  title: 'Pull and lap time against line length',
  kind: 'chart',
  chart: 'line',
  series: 'line_sweep',
  across: 'line_length',
  up: ['flight.pull', 'flight.pull_per_weight', 'flight.lap_time'],
  lines: 'line_set',
};

export const checks: readonly CheckCell[] = [
  {
    id: 'k1',
    name: 'cg_check',
    title: 'CG between its limits',
    kind: 'check',
    of: 'balance.cg_x',
    low: '38 mm',
    high: '55 mm',
    below: 'nose-heavy: elevator runs out on grass',
    above: 'too far aft: static margin under 8 %',
  },
  {
    id: 'k2',
    name: 'pull_check',
    title: 'Pull enough',
    kind: 'check',
    of: 'flight.pull_per_weight',
    low: '2.6',
    high: '',
    below: 'lines too slack to steer by',
    above: '',
  },
];

export const optionTitles: Readonly<Record<string, string>> = {
  balsa_ply: 'balsa–ply',
  strand_30: '0.30 mm stranded',
  strand_38: '0.38 mm stranded',
  strand_46: '0.46 mm stranded',
};
