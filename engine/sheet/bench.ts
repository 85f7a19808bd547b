import { type Program, SETTLED, type Slot, WAITS } from './program';
import { wiringOf } from './wiring';

/**
 * A program laid out on columns for up to `stride` samples at a time. The one evaluator: a slider uses it with one sample,
 * a sweep with many, and a sample's numbers don't depend on its neighbours.
 */
export interface Bench {
  readonly program: Program;
  readonly stride: number;
  /** Sample i of slot s is `m[column(s) + i]`. */
  readonly m: Float64Array;
  /** Sample i of step k is `why[k * stride + i]`. */
  readonly why: Uint16Array;
  readonly column: (s: Slot) => number;
  /** Runs these steps, given in computing order, for samples 0 … n−1. */
  run(steps: Iterable<number>, n: number): void;
}

/** `column`: where each slot lies; the slots of a curve have to lie one after another. Missing: in the order of their numbers. */
export function layBench(program: Program, stride: number, column = (s: Slot): number => s * stride): Bench {
  const { steps, size } = program;
  const m = new Float64Array(size * stride);
  const why = new Uint16Array(steps.length * stride);
  const whyOf = steps.map((_, k) => why.subarray(k * stride, (k + 1) * stride));
  const bound = steps.map((step) => step.bind(column, stride));
  const writes = steps.map((step) => Int32Array.from(step.writes, column));
  const wait = waiter(program, stride, why, m, column);

  function runStep(k: number, n: number): void {
    const own = whyOf[k]!;
    own.fill(SETTLED, 0, n);
    wait(k, own, n);
    bound[k]!(m, own, n);
    for (let i = 0; i < n; i++) {
      if (own[i] === SETTLED) continue;
      for (const at of writes[k]!) m[at + i] = Number.NaN;
    }
  }

  return {
    program,
    stride,
    m,
    why,
    column,
    run(chosen, n) {
      for (const k of chosen) runStep(k, n);
    },
  };
}

/** Marks the samples of a step that wait: for the step where the trouble began, not for the last one that passed it on. */
function waiter(program: Program, stride: number, why: Uint16Array, m: Float64Array, column: (s: Slot) => number) {
  const { needs, groups } = wiringOf(program);
  const by = program.steps.map((step) => (step.picks ? column(step.picks.by) : -1));
  const waitFor = (own: Uint16Array, i: number, other: number): void => {
    const reason = why[other * stride + i]!;
    if (reason !== SETTLED && own[i] === SETTLED) own[i] = reason >= WAITS ? reason : WAITS + other;
  };
  return (k: number, own: Uint16Array, n: number): void => {
    for (const other of needs[k]!) for (let i = 0; i < n; i++) waitFor(own, i, other);
    const group = groups[k];
    if (!group) return;
    for (let i = 0; i < n; i++) {
      if (own[i] !== SETTLED) continue;
      for (const other of group[m[by[k]! + i]!]!) waitFor(own, i, other);
    }
  };
}

/** Puts one value of each slot, and one reason of each step, into all n samples: what a sweep doesn't touch. */
export function fillBench(bench: Bench, values: Float64Array, why: Uint16Array, n: number): void {
  const { program, stride, m, column } = bench;
  for (let s = 0; s < program.size; s++) m.fill(values[s]!, column(s), column(s) + n);
  for (let k = 0; k < program.steps.length; k++) bench.why.fill(why[k]!, k * stride, k * stride + n);
}
