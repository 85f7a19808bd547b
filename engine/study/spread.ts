import {
  latinHypercube,
  percentile,
  quantileOf,
  type Spread,
  seededRandom,
  sobolIndices,
  summarize,
} from '../numerics/index';
import type { Live } from '../sheet/live';
import type { Slot } from '../sheet/program';
import { cone } from './cone';
import { startRunner } from './run';

/** A number that may differ from what is typed. */
export interface SpreadInput {
  readonly path: string;
  readonly slot: Slot;
  readonly spread: Spread;
}

/** What a result makes of it, SI. */
export interface SpreadOfResult {
  readonly path: string;
  readonly mean: number;
  readonly deviation: number;
  /** Below which 5 %, 50 % and 95 % of the designs lie. */
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  /** Designs that have no answer. */
  readonly missing: number;
  /** Share of the variance by each input alone, and with all others; with the standard errors of both. */
  readonly first: readonly number[];
  readonly total: readonly number[];
  readonly firstError: readonly number[];
  readonly totalError: readonly number[];
}

/**
 * Designs whose inputs differ by their spreads: a Latin hypercube of n designs and, for the shares of the variance, as many again of another one
 * and of the first with one input of the second at a time. The same seed gives the same designs.
 */
export function runSpread(
  live: Live,
  inputs: readonly SpreadInput[],
  wanted: readonly string[],
  n: number,
  seed: number,
): SpreadOfResult[] {
  const u = latinHypercube(n, 2 * inputs.length, seededRandom(seed));
  const columns = u.map((column, k) => column.map((share) => quantileOf(inputs[k % inputs.length]!.spread, share)));
  const [a, b] = [columns.slice(0, inputs.length), columns.slice(inputs.length)];
  const run = (values: readonly Float64Array[]): readonly Float64Array[] =>
    runTogether(live, inputs, values, wanted, n);
  const [ofA, ofB] = [run(a), run(b)];
  const mixed = a.map((_, i) => run(a.map((column, j) => (j === i ? b[j]! : column))));
  return wanted.map((path, w) => {
    const told = summarize(ofA[w]!);
    const shares = sobolIndices(
      ofA[w]!,
      ofB[w]!,
      mixed.map((results) => results[w]!),
    );
    return {
      path,
      mean: told.mean,
      deviation: told.deviation,
      low: percentile(told.sorted, 0.05),
      middle: percentile(told.sorted, 0.5),
      high: percentile(told.sorted, 0.95),
      missing: told.missing,
      first: [...shares.first],
      total: [...shares.total],
      firstError: [...shares.firstError],
      totalError: [...shares.totalError],
    };
  });
}

function runTogether(
  { compiled, state }: Live,
  inputs: readonly SpreadInput[],
  values: readonly Float64Array[],
  wanted: readonly string[],
  n: number,
): readonly Float64Array[] {
  const { program } = compiled;
  const slots = wanted.map((path) => ({ path, slot: program.slotOf.get(path)! }));
  const runner = startRunner(compiled, {
    shape: program.shape,
    revision: 0,
    sweep: '',
    base: state.m.slice(0, program.size),
    why: state.why.slice(0, program.steps.length),
    axes: inputs.map(({ path, slot }, k) => ({ path, slot, values: values[k]!, choice: false })),
    wanted: slots,
    together: true,
    each: cone(
      program,
      inputs.map(({ slot }) => slot),
      slots.map(({ slot }) => slot),
    ),
  });
  const { columns } = runner.run(Uint32Array.from({ length: n }, (_, k) => k));
  runner.finish();
  return columns;
}
