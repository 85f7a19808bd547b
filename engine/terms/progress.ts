import type { VariantsTold } from './variants';

/** Stands in `why` for a sample that isn't computed yet. */
export const NOT_COMPUTED = 0xffff;

export interface SweepAxisValues {
  readonly path: string;
  /** SI values, or option indices. */
  readonly values: Float64Array;
}

/** Rows of a sweep so far. Sample number = row; the last axis runs fastest. */
export interface SweepProgress {
  readonly revision: number;
  readonly sweep: string;
  readonly axes: readonly SweepAxisValues[];
  readonly wanted: readonly string[];
  /** columns[w][sample]; NaN where not yet computed or no answer. */
  readonly columns: readonly Float64Array[];
  /** Per sample: 0 settled; else 1 + index into `sentences`. 65535 = not computed yet. */
  readonly why: Uint16Array;
  readonly sentences: readonly string[];
  readonly done: number;
  readonly total: number;
  readonly state: 'running' | 'done' | 'stopped' | 'fault';
  /** About how much longer it runs, ms; where that can be told. */
  readonly left?: number;
  /** The sentence when state is fault. */
  readonly message?: string;
  /**
   * Of a spread only. `axes` is empty then; `wanted` and `columns` are its results and after them what differs, one design a
   * row: the first ones where there are very many.
   */
  readonly spread?: SpreadTold;
  /** Of levers only. `axes` is empty then, and each sample is one change. */
  readonly levers?: LeversTold;
  /** Of variants only. `axes` and `columns` are empty then. */
  readonly variants?: VariantsTold;
}

/** One thing changed, everything else as the design has it; SI, or an index of options. */
export interface LeverChange {
  /** Row of the cell that asks for it. */
  readonly row: number;
  readonly path: string;
  readonly way: 'up' | 'down' | 'to';
  readonly from: number;
  readonly to: number;
}

export interface LeversTold {
  /** One for each sample, in the order of the rows. */
  readonly changes: readonly LeverChange[];
  /** What the wanted results are without a change, SI; NaN where one has no answer. */
  readonly present: readonly number[];
}

/** Something that differs in a spread, by itself: its share of the variance is told. */
export interface SpreadFactor {
  /** What is typed, or a number of a part. */
  readonly path: string;
  /** `place`: all three stations of the part together; `stuff`: all that is cut from one material; `together`: what is correlated. */
  readonly what: 'value' | 'mass' | 'station' | 'place' | 'stuff' | 'together';
  /** Of `together`: all of them. */
  readonly paths?: readonly string[];
}

/** What a spread makes of one result, SI. */
export interface SpreadOfResult {
  readonly path: string;
  readonly mean: number;
  readonly deviation: number;
  /** Below which 5 %, 50 % and 95 % of the designs lie. */
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  /** Designs that have no answer. */
  readonly missing: number;
  /** Share of the variance by each factor alone, and with all others; with the standard errors of both. None while they aren't known. */
  readonly first: readonly number[];
  readonly total: readonly number[];
  readonly firstError: readonly number[];
  readonly totalError: readonly number[];
}

export interface SpreadTold {
  /** Designs that means and percentiles are of, so far, and how many are wanted. */
  readonly designs: number;
  readonly samples: number;
  /** Designs that the shares rest on so far; each is computed anew for every factor. */
  readonly compared: number;
  readonly factors: readonly SpreadFactor[];
  readonly results: readonly SpreadOfResult[];
  /** Why designs have no answer, numbers left out of the sentences; the most frequent first. */
  readonly causes: readonly { readonly reason: string; readonly count: number }[];
}
