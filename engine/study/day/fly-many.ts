import type { Live } from '../../sheet/live';
import { type Predictions, predict } from '../fit/predict';
import { typedSlot } from '../run/axis';

/** A number of the design with its value in each of many designs, SI. */
export interface Tried {
  readonly path: string;
  readonly values: readonly number[];
}

/** Flies so many designs that differ in some numbers: results by path, one array each. The same program as everything else. */
export function* flyMany(
  live: Live,
  tried: readonly Tried[],
  wanted: readonly string[],
): Generator<void, ReadonlyMap<string, Float64Array>, void> {
  const count = tried[0]!.values.length;
  if (count === 0) return new Map();
  const known = wanted.filter((path) => live.compiled.program.slotOf.has(path));
  const measured = known.map((path) => ({ row: 0, path, value: 0, error: 1 }));
  const conditions = tried.map(({ path, values }) => ({
    path,
    slot: typedSlot(path, live.compiled.program),
    values: Float64Array.from(values),
  }));
  const log = { measured, conditions, strange: [] };
  const plan = { cell: { name: 'day' }, log, factors: [] };
  const { values }: Predictions = yield* predict(live, plan, [new Float64Array(0)], count);
  return new Map(known.map((path, w) => [path, values[w]!]));
}
