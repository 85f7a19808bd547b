import { Worker } from 'node:worker_threads';
import type { Document, SweepCell } from '../../engine/sheet/document';
import { startState } from '../../engine/sheet/evaluate';
import { openText } from '../../engine/sheet/file';
import { openLive } from '../../engine/sheet/live';
import { cellsOf } from '../../engine/sheet/sheets';
import { type FromSampler, library, type PoolPorts, startEngine } from '../../engine/study/index';
import type { SweepProgress } from '../../engine/terms/index';
import demo from '../designs/quern.tetherwright.json?raw';
import { onOneSheet } from '../engine/sheet/one-sheet';

/** Results of a flight, eight of them. */
const FLIGHT = ['speed', 'lap_time', 'pull', 'pull_per_weight', 'nose_out', 'outboard_low', 'lift', 'drag'].map(
  (name) => `flight.${name}`,
);
/** Runs of a sweep of which the best counts: what the machine does while nothing else is in the way. */
const RUNS = 7;

const now = (): number => performance.now();
/** Time that the processor spent on this process, ms: the same whoever else is at work on the machine. */
const spent = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** What is swept, the first of them first; not the tip weight, which makes every run another design. */
const AXES = [
  { of: 'engine_station', low: '', high: '' },
  { of: 'line_length', low: '', high: '' },
  { of: 'guide_x', low: '', high: '' },
  { of: 'flight.height', low: '1.5 m', high: '4 m' },
];

/** The demo with a sweep of this size, one count an axis. */
function sheetWith(counts: readonly number[], wanted: readonly string[]): Document {
  const opened = openText(demo);
  if (!opened.ok) throw new Error(opened.message);
  const cell: SweepCell = {
    kind: 'trial_series',
    id: 'speed',
    name: 'speed',
    title: '',
    axes: counts.map((count, k) => ({ ...AXES[k]!, count })),
    wanted,
  };
  return { ...opened.document, sheets: onOneSheet([...cellsOf(opened.document), cell]) };
}

function threads(size: number, sampler: string): PoolPorts & { end(): Promise<void> } {
  const running: Worker[] = [];
  return {
    size,
    spawn(hear, died) {
      const worker = new Worker(new URL(sampler));
      running.push(worker);
      worker.on('message', (answer: FromSampler) => hear(answer));
      worker.on('error', died);
      return { post: (message) => worker.postMessage(message), end: () => void worker.terminate() };
    },
    later(ms, act) {
      const timer = setTimeout(act, ms);
      timer.unref();
      return () => clearTimeout(timer);
    },
    async end() {
      await Promise.all(running.map((worker) => worker.terminate()));
    },
  };
}

/** Lets messages of the threads in. */
const pause = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

type Watch = (p: SweepProgress) => void;

/** Milliseconds of each run by a clock. Before each the design is another one, so that nothing is known already. */
async function timeSweep(
  document: Document,
  runs: number,
  clock: () => number,
  more: { pool?: PoolPorts; watch?: Watch } = {},
) {
  const { pool, watch } = more;
  const engine = startEngine(library, { pause, now, ...(pool ? { pool } : {}) });
  await engine.open(document);
  const times: number[] = [];
  for (let k = 0; k < runs; k++) {
    await engine.set([['tip_weight', `${12 + 0.01 * k} g`]]);
    const before = clock();
    let last: SweepProgress['state'] | undefined;
    await engine.sweep({ sweep: 'speed' }, (p) => {
      last = p.state;
      watch?.(p);
    });
    times.push(clock() - before);
    if (last !== 'done') throw new Error(`the measured sweep ended as ${last}`);
  }
  return times;
}

export interface PoolTimes {
  /** Workers → best ms of a 100 × 100 sweep of the flight with eight results. */
  readonly ms: ReadonlyMap<number, number>;
  /** Share of a worker's time that is not lost by having another one. */
  readonly efficiency: number;
}

/** `sampler`: address of the file that runs samples in a thread. */
export async function measurePool(sampler: string): Promise<PoolTimes> {
  const document = sheetWith([100, 100], FLIGHT);
  const ms = new Map<number, number>();
  for (const size of [1, 2]) {
    const pool = threads(size, sampler);
    // The first runs start the threads and warm their code up.
    const times = await timeSweep(document, RUNS + 5, now, { pool });
    ms.set(size, Math.min(...times.slice(5)));
    await pool.end();
  }
  return { ms, efficiency: ms.get(1)! / (2 * ms.get(2)!) };
}

/** What a whole sheet costs a design, and what a sweep of some results does, µs of processor time each. */
export async function measureShare(): Promise<{ whole: number; balance: number; flight: number }> {
  const { program } = openLive(sheetWith([2, 2], FLIGHT), library).compiled;
  const laps = 1000;
  let whole = Number.POSITIVE_INFINITY;
  for (let round = 0; round < RUNS; round++) {
    const state = startState(program);
    const all = program.steps.map((_, k) => k);
    const before = spent();
    for (let k = 0; k < laps; k++) state.run(all, 1);
    whole = Math.min(whole, (1000 * (spent() - before)) / laps);
  }
  const each = async (wanted: readonly string[]): Promise<number> =>
    (1000 * Math.min(...(await timeSweep(sheetWith([100, 100], wanted), RUNS, spent)))) / 10_000;
  return { whole, balance: await each(['balance.cg_x', 'parts.mass']), flight: await each(FLIGHT) };
}

export interface SizeCost {
  readonly designs: number;
  /** µs of processor time a design, where the engine runs alone. */
  readonly each: number;
  /** Most memory taken beyond what there was before, MB: of the whole process, and of arrays of numbers. */
  readonly memory: number;
  readonly arrays: number;
}

/** Cost of a design as the sweep grows, eight results of the flight. */
export async function measureSizes(): Promise<SizeCost[]> {
  const costs: SizeCost[] = [];
  for (const [a, b] of [
    [32, 31],
    [100, 100],
    [317, 316],
    [1000, 1000],
  ] as const) {
    const runs = a * b < 50_000 ? RUNS : 2;
    (globalThis as { gc?: () => void }).gc?.();
    const before = process.memoryUsage();
    let memory = 0;
    let arrays = 0;
    const look = (): void => {
      const { rss, arrayBuffers } = process.memoryUsage();
      memory = Math.max(memory, rss - before.rss);
      arrays = Math.max(arrays, arrayBuffers - before.arrayBuffers);
    };
    const times = await timeSweep(sheetWith([a, b], FLIGHT), runs, spent, { watch: look });
    look();
    costs.push({
      designs: a * b,
      each: (1000 * Math.min(...times)) / (a * b),
      memory: memory / 1e6,
      arrays: arrays / 1e6,
    });
  }
  return costs;
}

/** How the cost of a whole sweep grows with its designs: the exponent p of time ~ designs^p, by least squares on the logarithms. */
export function growthOf(costs: readonly SizeCost[]): number {
  const points = costs.map(({ designs, each }) => [Math.log(designs), Math.log(designs * each)] as const);
  const mean = (of: 0 | 1): number => points.reduce((sum, point) => sum + point[of], 0) / points.length;
  const [x, y] = [mean(0), mean(1)];
  const slope = points.reduce((sum, point) => sum + (point[0] - x) * (point[1] - y), 0);
  return slope / points.reduce((sum, point) => sum + (point[0] - x) ** 2, 0);
}

/** About a thousand designs along one to four axes. */
const ALONG = [[1000], [32, 31], [10, 10, 10], [6, 6, 6, 5]] as const;

/** µs of processor time a design, eight results of the flight, for sweeps along one, two, three and four axes. */
export async function measureAxes(): Promise<number[]> {
  const costs: number[] = [];
  // Warms the code up, which a thousand designs would still be busy with.
  await timeSweep(sheetWith([100, 100], FLIGHT), RUNS, spent);
  for (const counts of ALONG) {
    const designs = counts.reduce((product: number, count) => product * count, 1);
    costs.push((1000 * Math.min(...(await timeSweep(sheetWith(counts, FLIGHT), RUNS, spent)))) / designs);
  }
  return costs;
}
