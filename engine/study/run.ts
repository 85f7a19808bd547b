import { type Bench, fillBench, layBench } from '../sheet/bench';
import type { Compiled } from '../sheet/compile';
import { type Program, SETTLED } from '../sheet/program';
import { wiringOf } from '../sheet/wiring';
import { causeOf } from './cause';
import { positions } from './lattice';
import type { SweepPlan } from './plan';

/** Samples that run side by side: enough to share the calls of a step, few enough to stay in the cache. */
export const CHUNK = 64;

/** What some samples of a sweep gave. */
export interface Rows {
  readonly samples: Uint32Array;
  /** columns[w][k]: wanted result w of samples[k]; NaN where it has no answer. */
  readonly columns: readonly Float64Array[];
  /** Per sample: '' where every wanted result has an answer, else the sentence that says why not. */
  readonly reasons: readonly string[];
}

export interface Runner {
  /** Runs samples order[from] … order[to − 1] of the plan; at most CHUNK of them. */
  run(from: number, to: number): Rows;
  /** Gives its bench back for the next runner. Not to be run afterwards. */
  finish(): void;
}

/** Benches that nobody uses: laying one costs more than running a chunk, and a moving finger asks for one after another. */
const idle = new WeakMap<Program, Bench[]>();

function takeBench(program: Program): Bench {
  return idle.get(program)?.pop() ?? layBench(program, CHUNK);
}

function giveBack(bench: Bench): void {
  const others = idle.get(bench.program);
  if (others) others.push(bench);
  else idle.set(bench.program, [bench]);
}

/** Runs a plan on a program of the same shape. Every sample begins from the plan's base, so a sample depends on itself alone. */
export function startRunner(compiled: Compiled, plan: SweepPlan): Runner {
  const { program } = compiled;
  if (program.shape !== plan.shape) {
    throw new RangeError(`A plan for program ${plan.shape} cannot run on program ${program.shape}`);
  }
  const bench = takeBench(program);
  fillBench(bench, plan.base, plan.why, CHUNK);
  const counts = plan.axes.map((axis) => axis.values.length);
  const at = new Uint32Array(counts.length);
  freeAxes(bench, plan);
  return {
    run(from, to) {
      const n = to - from;
      if (!(n >= 0 && n <= CHUNK)) throw new RangeError(`${n} samples were asked for; 0 to ${CHUNK} run at once`);
      const samples = plan.order.slice(from, to);
      for (let i = 0; i < n; i++) {
        positions(samples[i]!, counts, at);
        for (const [a, axis] of plan.axes.entries()) bench.m[bench.column(axis.slot) + i] = axis.values[at[a]!]!;
      }
      bench.run(plan.each, n);
      return {
        samples,
        columns: plan.wanted.map(({ slot }) => bench.m.slice(bench.column(slot), bench.column(slot) + n)),
        reasons: Array.from({ length: n }, (_, i) => reasonOf(compiled, bench, plan, i)),
      };
    },
    finish: () => giveBack(bench),
  };
}

/** A formula whose place an axis takes may have no answer: nothing waits for it any more. */
function freeAxes(bench: Bench, plan: SweepPlan): void {
  const { writer } = wiringOf(bench.program);
  for (const { slot } of plan.axes) {
    const k = writer[slot]!;
    if (k >= 0) bench.why.fill(SETTLED, k * bench.stride, (k + 1) * bench.stride);
  }
}

/** Why the first wanted result without an answer has none. */
function reasonOf(compiled: Compiled, bench: Bench, plan: SweepPlan, i: number): string {
  for (const { path, slot } of plan.wanted) {
    if (!Number.isNaN(bench.m[bench.column(slot) + i]!)) continue;
    return causeOf(compiled, bench, slot, i) ?? `${path} has no value: nothing is typed there or nothing is known.`;
  }
  return '';
}
