import type { TableColumn } from './told';

/** A column of a table of results: SI, or indices of options. */
export interface Column extends TableColumn {
  readonly numbers: ArrayLike<number>;
}
