import type { Fill } from '../run/fill';

/**
 * Order of the samples of a grid: a coarse lattice first, so that a chart has its shape early, then the rest in order.
 * Sample number = row, the last axis runs fastest; the order of computing never changes a number.
 */

/** Points an axis of numbers keeps in the coarse lattice: enough for a curve that bends once or twice. */
const COARSE_POINTS = 9;

export interface Lattice {
  /** Every sample once; the first `coarse` of them are the lattice. */
  readonly order: Uint32Array;
  readonly coarse: number;
}

/** Which of `count` points on an axis are in the coarse lattice: evenly spread, both ends among them. */
export function coarsePoints(count: number): readonly boolean[] {
  const chosen = new Array<boolean>(count).fill(count <= COARSE_POINTS);
  if (count > COARSE_POINTS) {
    for (let k = 0; k < COARSE_POINTS; k++) chosen[Math.round((k * (count - 1)) / (COARSE_POINTS - 1))] = true;
  }
  return chosen;
}

/** `choice[a]`: axis a is a choice, whose options are all wanted at once. */
export function lattice(counts: readonly number[], choice: readonly boolean[]): Lattice {
  const total = counts.reduce((product, count) => product * count, 1);
  const chosen = counts.map((count, a) => (choice[a] ? new Array<boolean>(count).fill(true) : coarsePoints(count)));
  const size = chosen.reduce((product, axis) => product * axis.filter((picked) => picked).length, 1);
  const order = new Uint32Array(total);
  let coarse = 0;
  let rest = size;
  for (let sample = 0; sample < total; sample++) {
    if (inLattice(sample, counts, chosen)) order[coarse++] = sample;
    else order[rest++] = sample;
  }
  return { order, coarse };
}

function inLattice(sample: number, counts: readonly number[], chosen: readonly (readonly boolean[])[]): boolean {
  let left = sample;
  for (let a = counts.length - 1; a >= 0; a--) {
    const count = counts[a]!;
    if (!chosen[a]![left % count]) return false;
    left = Math.floor(left / count);
  }
  return true;
}

/** What each axis is in one sample of the grid. */
export function fillGrid({ axes }: { readonly axes: readonly { readonly values: Float64Array }[] }): Fill {
  const counts = axes.map(({ values }) => values.length);
  const at = new Uint32Array(counts.length);
  return (sample, values) => {
    positions(sample, counts, at);
    for (let a = 0; a < axes.length; a++) values[a] = axes[a]!.values[at[a]!]!;
  };
}

/** Position along each axis of one sample, first axis first. */
export function positions(sample: number, counts: readonly number[], out: Uint32Array): void {
  let left = sample;
  for (let a = counts.length - 1; a >= 0; a--) {
    const count = counts[a]!;
    out[a] = left % count;
    left = Math.floor(left / count);
  }
}
