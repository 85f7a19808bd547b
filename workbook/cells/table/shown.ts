import { type KeptRange, keptPath, type TableCell, type TableColumn, type TableView } from '../../../engine/index';

/** What the engine is asked to show: the cell with its limits as numbers. */
export function viewOf(cell: TableCell, value: (path: string) => number): TableView {
  const { series, columns, rows, reason, groups, measures, sort, descending } = cell;
  const keep = cell.keep.map(({ of, options }, k): KeptRange => {
    const path = keptPath(cell, k);
    return { of, low: value(`${path}.low`), high: value(`${path}.high`), ...(options ? { options } : {}) };
  });
  return { series, columns, keep, rows, reason, groups, measures, sort, descending };
}

export type Order = 'ascending' | 'descending' | 'none';

export function orderOf({ sort, descending }: TableCell, { key }: TableColumn): Order {
  if (sort !== key) return 'none';
  return descending ? 'descending' : 'ascending';
}

/** Pressing a column's head sorts by it, then the other way, then leaves the order of the sweep. */
export function pressed(cell: TableCell, column: TableColumn): TableCell {
  switch (orderOf(cell, column)) {
    case 'none':
      return { ...cell, sort: column.key, descending: false };
    case 'ascending':
      return { ...cell, descending: true };
    case 'descending':
      return { ...cell, sort: '', descending: false };
  }
}
