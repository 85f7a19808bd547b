import type { ForgottenThing } from './forgotten-thing';

/** Something that is often forgotten and would bring the table nearer to what was found. */
export interface Culprit {
  readonly thing: ForgottenThing;
  /** Share of what doesn't fit that goes with it, all that was measured counted by how sure it is; 1: all of it. */
  readonly explains: number;
  /** What is left between the CG found and the table's with it, m: aft positive. */
  readonly leftX: number;
}

/**
 * How the CG that was found stands to that of the table. `unmeasured`: nothing tells the CG yet; `agrees`: every difference is less
 * than twice its standard deviation; `differs`.
 */
export interface Reconciliation {
  readonly state: 'unmeasured' | 'agrees' | 'differs';
  /** Which of them differ: the station, the place across, the weight. */
  readonly differs: readonly ('x' | 'y' | 'mass')[];
  /** The likeliest first, three at most. */
  readonly culprits: readonly Culprit[];
}
