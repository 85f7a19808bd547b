import { type Bench, fillBench, layBench } from '../../sheet/bench';
import type { Compiled } from '../../sheet/compile';
import { type Program, SETTLED } from '../../sheet/program';
import { wiringOf } from '../../sheet/wiring';
import { causeOf } from './cause';
import type { Fill } from './fill';
import type { Orderless } from './plan';

/** Samples that run side by side: enough to share the calls of a step, few enough to stay in the cache. */
export const CHUNK = 64;

/** What some samples of a plan gave. */
export interface Rows {
  readonly samples: Uint32Array;
  /** columns[w][k]: wanted result w of samples[k]; NaN where it has no answer. */
  readonly columns: readonly Float64Array[];
  /** Per sample: 0 where every wanted result has an answer, else 1 + index into `sentences`. */
  readonly why: Uint32Array;
  /** Each different one once, in the order in which the samples first have it. */
  readonly sentences: readonly string[];
}

export interface Runner {
  run(samples: Uint32Array): Rows;
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
export function startRunner(compiled: Compiled, plan: Orderless, fill: Fill): Runner {
  const { program } = compiled;
  if (program.shape !== plan.shape) {
    throw new RangeError(`A plan for program ${plan.shape} cannot run on program ${program.shape}`);
  }
  const bench = takeBench(program);
  fillBench(bench, plan.base, plan.why, CHUNK);
  const now = new Float64Array(plan.axes.length);
  const places = plan.axes.map((axis) => bench.column(axis.slot));
  const starts = plan.wanted.map(({ slot }) => bench.column(slot));
  freeAxes(bench, plan);

  function runSome(samples: Uint32Array): void {
    for (let i = 0; i < samples.length; i++) {
      fill(samples[i]!, now);
      for (let a = 0; a < places.length; a++) bench.m[places[a]! + i] = now[a]!;
    }
    bench.run(plan.each, samples.length);
  }

  return {
    run(samples) {
      const columns = plan.wanted.map(() => new Float64Array(samples.length));
      const why = new Uint32Array(samples.length);
      const codes = new Map<string, number>();
      for (let from = 0; from < samples.length; from += CHUNK) {
        const some = samples.subarray(from, from + CHUNK);
        runSome(some);
        for (let w = 0; w < columns.length; w++) {
          const start = starts[w]!;
          for (let i = 0; i < some.length; i++) columns[w]![from + i] = bench.m[start + i]!;
        }
        for (let i = 0; i < some.length; i++) {
          if (lacks(columns, from + i)) why[from + i] = codeOf(codes, reasonOf(compiled, bench, plan, i));
        }
      }
      return { samples, columns, why, sentences: [...codes.keys()] };
    },
    finish: () => giveBack(bench),
  };
}

/** A wanted result of row k has no answer. */
function lacks(columns: readonly Float64Array[], k: number): boolean {
  for (let w = 0; w < columns.length; w++) if (Number.isNaN(columns[w]![k]!)) return true;
  return false;
}

function codeOf(codes: Map<string, number>, reason: string): number {
  const known = codes.get(reason);
  if (known !== undefined) return known;
  codes.set(reason, codes.size + 1);
  return codes.size;
}

/** A formula whose place an axis takes may have no answer: nothing waits for it any more. */
function freeAxes(bench: Bench, plan: Orderless): void {
  const { writer } = wiringOf(bench.program);
  for (const { slot } of plan.axes) {
    const k = writer[slot]!;
    if (k >= 0) bench.why.fill(SETTLED, k * bench.stride, (k + 1) * bench.stride);
  }
}

/** Why the first wanted result without an answer has none. */
function reasonOf(compiled: Compiled, bench: Bench, plan: Orderless, i: number): string {
  for (const { path, slot } of plan.wanted) {
    if (!Number.isNaN(bench.m[bench.column(slot) + i]!)) continue;
    return causeOf(compiled, bench, slot, i) ?? `${path} has no value: nothing is typed there or nothing is known.`;
  }
  return '';
}
