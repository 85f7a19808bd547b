import type { Dimension, Ways } from '../units/index';

/** What runs together along a trace: the first column along, the others against it. */
export interface TraceColumn {
  readonly name: string;
  readonly title: string;
  readonly symbol: string;
  readonly doc: string;
  readonly dimension: Dimension;
  /** Unit it is shown in, in the document's unit set; '' = plain number. */
  readonly unit: string;
  readonly suffix: string;
  /** Words for a value above and below zero, said in place of its sign. */
  readonly ways?: Ways;
}

/** Pull around the lap, shape of the lines and the like: `path` is cell.trace. */
export interface TraceAnswer {
  readonly revision: number;
  readonly path: string;
  readonly title: string;
  readonly doc: string;
  readonly columns: readonly TraceColumn[];
  /** One array a column, SI; empty where there is no answer. */
  readonly present: readonly Float64Array[];
  /** The same for the baseline, where there is one and it has an answer. */
  readonly baseline?: readonly Float64Array[];
  /** Why `present` is empty. */
  readonly message?: string;
}
