import type { Spread } from '../../numerics/index';
import type { Slot } from '../../sheet/program';
import type { SpreadFactor } from '../../terms/index';

/** A number that may differ from what is typed. */
export interface SpreadInput {
  readonly path: string;
  readonly slot: Slot;
  readonly spread: Spread;
  /** Added to be shown: the slot holds only how far the number is off. */
  readonly about?: number;
  /** Numbers of one factor go together when shares are told; missing: a factor of its own. */
  readonly factor?: SpreadFactor;
  /** Not told design by design: one of very many. */
  readonly unshown?: true;
}
