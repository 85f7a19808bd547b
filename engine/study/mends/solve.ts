import { findRoot } from '../../numerics/index';
import type { Live } from '../../sheet/live';
import { differenceFromSI, formatQuantity, fromSI, withUnit, writeQuantity } from '../../units/index';
import { type PlannedAxis, typedSlot } from '../run/axis';
import { fillTogether } from '../run/fill';
import { planCore } from '../run/plan';
import { startRunner } from '../run/runner';
import type { Lever, NumberLever } from './levers';

/** What the result is with a lever at some places, and the other results. */
interface Flown {
  readonly result: Float64Array;
  readonly others: readonly Float64Array[];
}

/** The design along one lever. */
export type Along = { readonly axes: readonly PlannedAxis[] };

/** Places that are flown side by side. */
const TOGETHER = 32;

/** Flies the design with one lever elsewhere, everything else as it is. */
export function flierOf(live: Live, { path }: Pick<Lever, 'path'>, of: string, wanted: readonly string[]) {
  const { compiled, state } = live;
  const slot = typedSlot(path, compiled.program);
  const axes: readonly PlannedAxis[] = [{ path, slot, values: new Float64Array(TOGETHER), choice: false }];
  const start = { revision: 0, name: '', values: state.m, why: state.why };
  const core = planCore(compiled.program, start, axes, [of, ...wanted]);
  const plan = { kind: 'what_mends', ...core, axes, key: '' };
  const runner = startRunner(compiled, plan, fillTogether(plan));
  return {
    at(places: readonly number[]): Flown {
      const columns = [of, ...wanted].map(() => new Float64Array(places.length));
      for (let from = 0; from < places.length; from += TOGETHER) {
        const some = places.slice(from, from + TOGETHER);
        axes[0]!.values.set(some);
        const found = runner.run(Uint32Array.from(some, (_, k) => k)).columns;
        for (const [w, column] of columns.entries()) column.set(found[w]!, from);
      }
      const [result, ...others] = columns;
      return { result: result!, others };
    },
    finish: runner.finish,
  };
}
export type Flier = ReturnType<typeof flierOf>;

/** Places looked at before a change of sign is closed in on. */
const LOOKED_AT = 17;
/** Share of the way within which a place is found. */
const FINE = 1e-10;

/** Where a lever brings the result to what is wanted: the place nearest to where it stands; NaN where there is none. */
export function placeFor({ from, most: [low, high] }: NumberLever, wanted: number, flier: Flier): number {
  const even = Array.from({ length: LOOKED_AT }, (_, k) => low + (k / (LOOKED_AT - 1)) * (high - low));
  const places = [...new Set([...even, from].filter((x) => x >= low && x <= high))].sort((a, b) => a - b);
  const off = flier.at(places).result.map((result) => result - wanted);
  let best = Number.NaN;
  for (let k = 0; k + 1 < places.length; k++) {
    const [a, b] = [places[k]!, places[k + 1]!];
    if (!(off[k]! * off[k + 1]! <= 0)) continue;
    const nearest = from < a ? a : from > b ? b : from;
    if (Math.abs(nearest - from) >= Math.abs(best - from)) continue;
    const root = findRoot((x) => flier.at([x]).result[0]! - wanted, a, b, { tolerance: FINE * (high - low) });
    if (root.status === 'settled') best = root.value;
  }
  return best;
}

/** Digits behind the point that are tried, the fewest first. */
const MOST_DECIMALS = 6;

/** A place as it is typed: with as few digits as leave the result within half of its last shown digit of what is wanted. */
export function typedPlace(
  place: number,
  { unit, travel }: NumberLever,
  accepts: (result: number) => boolean,
  flier: Flier,
): { readonly text: string; readonly value: number } {
  const shown = fromSI(place, unit);
  const scale = fromSI(1, unit) - fromSI(0, unit);
  const inside = place >= travel[0] && place <= travel[1];
  const rounded = Array.from({ length: MOST_DECIMALS + 1 }, (_, decimals) => Number(shown.toFixed(decimals)) + 0)
    .map((number) => ({ text: withUnit(String(number), unit), value: place + (number - shown) / scale }))
    .filter(({ value }) => !inside || (value >= travel[0] && value <= travel[1]));
  const results = flier.at(rounded.map(({ value }) => value)).result;
  return rounded.find((_, k) => accepts(results[k]!)) ?? { text: writeQuantity(place, unit), value: place };
}

/** Half of the last digit that any of these values shows, SI: a round one shows fewer than it is good for. */
export function halfDigit(values: readonly number[], unit: string): number {
  const decimals = values.map((value) => formatQuantity(value, unit).split('.')[1]?.replace(/\D.*$/s, '').length ?? 0);
  return Math.abs((0.5 * 10 ** -Math.max(...decimals)) / differenceFromSI(1, unit));
}
