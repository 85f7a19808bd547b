import { fromSI, toSI } from '../../units/index';
import type { PlannedAxis } from '../run/axis';
import { positions } from '../sweep/lattice';

/** How often steps are halved about the best designs. */
export const ROUNDS = 4;
/** Places that the finest steps make of one of the first. */
export const FINEST = 2 ** ROUNDS;

/** A design by its place along each axis in the finest steps: whole numbers. */
export type Place = readonly number[];

/** Every design of the first grid. */
export function* firstPlaces(axes: readonly PlannedAxis[], order: Uint32Array): Iterable<Place> {
  const counts = axes.map(({ values }) => values.length);
  const at = new Uint32Array(counts.length);
  for (const sample of order) {
    positions(sample, counts, at);
    yield Array.from(at, (k) => k * FINEST);
  }
}

/** An axis of a search. */
export interface BestAxis extends PlannedAxis {
  /** Unit in which its numbers are typed; '' = plain number. */
  readonly unit: string;
}

/**
 * What is at a place along an axis: between two of the values of the first grid it goes evenly from one to the other. A number is
 * rounded to as many digits of its unit as tell the finest steps apart, so that it can be typed; the ends stay as they are.
 */
export function valueAt(axis: BestAxis, place: number): number {
  const { values, choice, unit } = axis;
  const even = evenAt(axis, place);
  if (choice || place === 0 || place === (values.length - 1) * FINEST) return even;
  const finest = Math.abs(fromSI(evenAt(axis, 1), unit) - fromSI(values[0]!, unit));
  const decimals = Math.min(MOST_DECIMALS, Math.max(0, Math.ceil(-Math.log10(finest))));
  return toSI(Number(fromSI(even, unit).toFixed(decimals)), unit);
}

const MOST_DECIMALS = 15;

function evenAt({ values }: PlannedAxis, place: number): number {
  const k = Math.floor(place / FINEST);
  const part = (place % FINEST) / FINEST;
  const low = values[k]!;
  return part === 0 ? low : low + part * (values[k + 1]! - low);
}

/** The places one step to any side in any number of the axes that are numbers; an option stays. */
export function placesAround(place: Place, axes: readonly PlannedAxis[], step: number): readonly Place[] {
  let around: Place[] = [[]];
  for (const [a, { choice, values }] of axes.entries()) {
    const here = place[a]!;
    const last = (values.length - 1) * FINEST;
    const ways = choice ? [here] : [here, here - step, here + step].filter((to) => to >= 0 && to <= last);
    around = around.flatMap((begun) => ways.map((to) => [...begun, to]));
  }
  return around.slice(1);
}

/** Tells places apart. */
export function keyOf(place: Place, axes: readonly PlannedAxis[]): number {
  return place.reduce((key, k, a) => key * (axes[a]!.values.length * FINEST) + k, 0);
}
