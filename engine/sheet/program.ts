/** A place for one number of every sample: a column of a Float64Array, SI. */
export type Slot = number;

/** Why a step has no answer, as a number: 0 it has one. Below WAITS: 1 + index of its own reason. From WAITS up: waits for step (why − WAITS). */
export const SETTLED = 0;
export const WAITS = 0x8000;

export interface Step {
  /** Same text ⇔ same computation on the same paths: what lets a recompiled program keep a step's values. */
  readonly key: string;
  readonly kind: 'formula' | 'choice' | 'part' | 'layer' | 'fold' | 'block';
  /** Id of the cell it belongs to and the path it computes (`flight`, `parts.fin`, `reserve`). */
  readonly cell: string;
  readonly path: string;
  readonly reads: readonly Slot[];
  readonly writes: readonly Slot[];
  /** Names of its own reasons, in the order of their codes. */
  readonly reasons: readonly string[];
  /** It takes only one group of its reads, by the index that `by` holds: a sample waits for what it takes and for nothing else. */
  readonly picks?: { readonly by: Slot; readonly groups: readonly (readonly Slot[])[] };
  /** While a hand moves the design, it and what follows from it wait unless they are shown. */
  readonly slow?: true;
  /**
   * Places the step on columns: `column(s)` is where slot s begins, samples lie one after another, a curve's knots `stride` apart.
   * The function it returns computes samples 0 … n−1 for which `why[i]` is 0 on entry, and sets `why[i]` to 1 + reason where there is no answer
   * (its writes are then NaN).
   */
  bind(column: (s: Slot) => number, stride: number): (m: Float64Array, why: Uint16Array, n: number) => void;
}

export interface Program {
  /** Changes exactly when names, slots or steps change, not when a constant's value does. */
  readonly shape: string;
  /** Number of slots. */
  readonly size: number;
  readonly slotOf: ReadonlyMap<string, Slot>;
  /**
   * Slot that the text at a path fills, whether by a constant or by a step. The same as `slotOf` but where a typed value and
   * what is read differ (an estimate that a field replaces, a part that has been weighed). Axes of a sweep go here.
   */
  readonly inputs: ReadonlyMap<string, Slot>;
  /** In computing order. */
  readonly steps: readonly Step[];
  /** Value of every slot before any step has run: constants as typed, the rest NaN. */
  readonly start: Float64Array;
  /** Slots that hold a typed constant (their edit is an edit of value), with the text's place. */
  readonly constants: ReadonlyMap<string, Slot>;
}
