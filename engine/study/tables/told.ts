import type { Measure, TableCell } from '../../sheet/document';

/** Rows of a sweep that are kept: numbers within limits (SI, NaN = none), or these options. */
export interface KeptRange {
  readonly of: string;
  readonly low: number;
  readonly high: number;
  readonly options?: readonly string[];
}

/** What a table shows of a sweep. The same as a table cell says, its limits as numbers. */
export interface TableView
  extends Pick<TableCell, 'series' | 'columns' | 'rows' | 'reason' | 'groups' | 'measures' | 'sort' | 'descending'> {
  readonly keep: readonly KeptRange[];
}

export interface TableColumn {
  /** What `sort` says to sort by it. */
  readonly key: string;
  /** Axis or result; '' for a count. */
  readonly path: string;
  /** Of a group: what is said of the result; how many designs it has, how many of them have no answer. */
  readonly measure?: Measure | 'count' | 'unanswered';
}

/** Some rows of a table. */
export interface TableAnswer {
  /** `waits`: the sweep isn't computed for the present design yet. */
  readonly state: 'ready' | 'waits';
  readonly columns: readonly TableColumn[];
  /** Designs of the sweep; rows that the view keeps of them, or groups. */
  readonly total: number;
  readonly rows: number;
  /** Number of the first row below. */
  readonly from: number;
  /** values[c][k]: column c of row from + k, SI or index of an option; NaN where there is no answer. */
  readonly values: readonly Float64Array[];
  /** Per row: its sample of the trial series; none for groups. */
  readonly samples: Uint32Array;
  /** Per row: why it has no answer, '' where it has one. */
  readonly reasons: readonly string[];
  /** Number of the row that is nearest to the present design, −1 where none is; whether it is the very design. */
  readonly present: number;
  readonly exact: boolean;
  /** Every different reason in the sweep, its numbers left out, with how many designs have it. */
  readonly causes: readonly { readonly reason: string; readonly count: number }[];
}

export type TableFormat = 'csv' | 'arrow';
