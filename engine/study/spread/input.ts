import type { Spread } from '../../numerics/index';
import type { Slot } from '../../sheet/program';
import type { SpreadFactor } from '../../terms/index';

/** How two inputs, by their places in the list, are off together. */
export interface Correlation {
  readonly one: number;
  readonly other: number;
  readonly r: number;
}

/** A number that may differ from what is typed. */
export interface SpreadInput {
  readonly path: string;
  readonly slot: Slot;
  readonly spread: Spread;
  /** Added to be shown: the slot holds only how far the number is off. */
  readonly about?: number;
  /** Numbers of one factor go together when shares are told; missing: a factor of its own. */
  readonly factor?: SpreadFactor;
  /** Inputs of one such name are off by the same draw. */
  readonly draw?: string;
  /** Not told design by design: one of very many. */
  readonly unshown?: true;
}
