import type { Live } from '../../sheet/live';
import { fillTogether } from '../run/fill';
import { type Orderless, type PlanOf, planCore } from '../run/plan';
import { startRunner } from '../run/runner';
import type { FitPlan } from './plan';

/** Every row of the log with every set of factors. */
export type Flights = Orderless<PlanOf<'fit'>>;

/** So many designs between two rests: a lap in wind takes part of a millisecond. */
const BETWEEN_RESTS = 16;

/** What the model says of flights, one array a result, and why it says nothing. */
export interface Predictions {
  /** values[w][k]: result w of sample k. */
  readonly values: readonly Float64Array[];
  /** The reason of sample k where it has one. */
  reason(k: number): string;
}

/** Results that are measured, in the order of `Predictions.values`. */
export const resultsOf = ({ log }: Pick<FitPlan, 'log'>): readonly string[] => [
  ...new Set(log.measured.map(({ path }) => path)),
];

/**
 * Flies every row of the log with each set of factors: sample p · rows + row. The same program as everything else, with the factors and
 * what was set on the day in the place of what is typed. Yields between some of the designs, so that others get their turn.
 */
export function* predict(
  { compiled, state }: Live,
  plan: Pick<FitPlan, 'log' | 'factors'> & { readonly cell: { readonly name: string } },
  points: readonly Float64Array[],
  rows: number,
): Generator<void, Predictions, void> {
  const { program } = compiled;
  const { factors, log } = plan;
  const wanted = resultsOf(plan);
  const count = points.length * rows;
  const axes = [
    ...factors.map(({ path, slot }, j) => ({
      path,
      slot,
      values: spreadOut(count, (k) => points[Math.floor(k / rows)]![j]!),
    })),
    ...log.conditions.map(({ path, slot, values }) => ({
      path,
      slot,
      values: spreadOut(count, (k) => values[k % rows]!),
    })),
  ].map((axis) => ({ ...axis, choice: false }));
  const start = { revision: 0, name: plan.cell.name, values: state.m, why: state.why };
  const flights: Flights = { kind: 'fit', ...planCore(program, start, axes, wanted), axes, key: '' };
  const runner = startRunner(compiled, flights, fillTogether(flights));
  const values = wanted.map(() => new Float64Array(count));
  const reasons = new Map<number, string>();
  try {
    for (let from = 0; from < count; from += BETWEEN_RESTS) {
      const samples = Uint32Array.from({ length: Math.min(BETWEEN_RESTS, count - from) }, (_, k) => from + k);
      const found = runner.run(samples);
      for (const [w, column] of found.columns.entries()) values[w]!.set(column, from);
      for (const [k, code] of found.why.entries()) if (code > 0) reasons.set(from + k, found.sentences[code - 1]!);
      yield;
    }
  } finally {
    runner.finish();
  }
  return { values, reason: (k) => reasons.get(k) ?? '' };
}

const spreadOut = (count: number, value: (k: number) => number): Float64Array =>
  Float64Array.from({ length: count }, (_, k) => value(k));
