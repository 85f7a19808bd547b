import type { Shape } from '../blocks/block';
import type { Fault, NameInfo } from '../terms/index';

export interface Snapshot {
  /** Counts every edit that the engine took; a sweep answers for one revision. */
  readonly revision: number;
  /** Identifies the slot numbering; `names` is sent only when it changes. */
  readonly shape: string;
  readonly names?: readonly NameInfo[];
  /** One value a slot, SI. NaN: no answer or nothing typed. */
  readonly values: Float64Array;
  /** The same slots for the baseline, when there is one. */
  readonly baseline?: Float64Array;
  readonly faults: readonly Fault[];
  /** The scale drawing of the present design and of the baseline. */
  readonly drawing: readonly Shape[];
  /** Slots that wait for the hand to rest: NaN among the values. Missing where none does. */
  readonly behind?: Int32Array;
  readonly ghost?: readonly Shape[];
}

/** What is on the screen while a hand moves the design: what is slow and isn't among this waits. */
export interface Shown {
  /** Ids of pieces. */
  readonly cells: readonly string[];
  /** Names of numbers that stand elsewhere than in their piece. */
  readonly paths: readonly string[];
}

export interface SweepRequest {
  /** Name of a sweep cell, of a spread or of levers. */
  readonly sweep: string;
  /** Only the coarse lattice (a finger is down). */
  readonly coarse?: boolean;
  /**
   * Paths of axes: the baseline's design instead of the present one, along these axes only and the others as they are in it.
   * Their values are those of the present sweep, so that both can stand on one scale.
   */
  readonly baseline?: readonly string[];
  /** With `baseline`: the design of this variant in the place of the baseline's. */
  readonly variant?: string;
}

/** What the charts show of the variants that stand on them. */
export interface VariantGhosts {
  readonly revision: number;
  readonly variants: readonly VariantGhost[];
}
export interface VariantGhost {
  readonly name: string;
  /** One value for each slot of the design as set, SI; NaN where it has no answer. */
  readonly values: Float64Array;
}

/** A text as the engine reads it, SI; or what is wrong with it. */
export type Checked = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly fault: Fault };
