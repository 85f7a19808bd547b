import { latinHypercube, quantileOf, type Spread, seededRandom } from '../../numerics/index';
import type { SpreadFactor } from '../../terms/index';
import type { PlannedAxis } from '../run/axis';
import type { Fill } from '../run/fill';

/**
 * The designs of a spread. A and B are `count` designs each, of one Latin hypercube; for every factor there are as many
 * more, which are those of A with this factor as it is in B. Sample = set × count + design; the sets are A, B, then one a
 * factor.
 */
export interface Mixed {
  readonly count: number;
  readonly seed: number;
  /** Per axis: the factor that it belongs to. Axes of one factor go over to B together. */
  readonly factors: readonly number[];
  readonly told: readonly SpreadFactor[];
}

/** Something that differs in a spread. `values` are shares of A, of which its spread makes numbers. */
export interface SpreadAxis extends PlannedAxis {
  readonly spread: Spread;
  /** Shares of B. */
  readonly others: Float64Array;
  /** Added to be shown: the slot holds only how far a number is off. */
  readonly about?: number;
  /** Told design by design. */
  readonly shown: boolean;
}

/** What every axis is in one sample. */
export function fillDesigns({ axes, mixed }: { readonly axes: readonly SpreadAxis[]; readonly mixed: Mixed }): Fill {
  const { count, factors } = mixed;
  return (sample, values) => {
    const set = Math.floor(sample / count);
    const design = sample - set * count;
    for (let a = 0; a < axes.length; a++) {
      const axis = axes[a]!;
      const fromB = set === 1 || set === factors[a]! + 2;
      values[a] = quantileOf(axis.spread, (fromB ? axis.others : axis.values)[design]!);
    }
  };
}

/** Designs of A that are enough for a first look, while a finger is down. */
const COARSE_DESIGNS = 200;

export interface MixedDesigns {
  /** Shares of A, and of B, one column an axis. */
  readonly a: readonly Float64Array[];
  readonly b: readonly Float64Array[];
  readonly order: Uint32Array;
  readonly coarse: number;
}

/** The last ones: a moving finger asks for the same again and again. */
const KEPT = 2;
const MOST_KEPT = 1_000_000;
const kept = new Map<string, MixedDesigns>();

/**
 * Draws the designs and says in which order they are computed: all of A first, of which mean and percentiles are told, then
 * design by design the other sets, so that the shares of what there is can be told at any time.
 */
export function drawDesigns(count: number, axes: number, sets: number, seed: number): MixedDesigns {
  const key = `${count} ${axes} ${sets} ${seed}`;
  const known = kept.get(key);
  if (known) return known;
  const u = latinHypercube(count, 2 * axes, seededRandom(seed));
  const order = new Uint32Array(count * sets);
  for (let k = 0; k < count; k++) order[k] = k;
  let at = count;
  for (let k = 0; k < count; k++) for (let set = 1; set < sets; set++) order[at++] = set * count + k;
  const drawn = { a: u.slice(0, axes), b: u.slice(axes), order, coarse: Math.min(count, COARSE_DESIGNS) };
  // Very many take more room than it is worth to keep twice.
  if (order.length > MOST_KEPT) kept.clear();
  if (kept.size >= KEPT) kept.delete(kept.keys().next().value!);
  kept.set(key, drawn);
  return drawn;
}
