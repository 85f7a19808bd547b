import { cellsOf, type Document, type TableCell } from '../../../engine/index';
import { type Contents, cellOf, type Offer } from '../shared/new-cell';

/** All rows of the last sweep, in its order. */
const newTable = (document: Document): Contents<TableCell> => ({
  kind: 'table',
  series: cellsOf(document).findLast((cell) => cell.kind === 'trial_series')?.name ?? '',
  columns: [],
  keep: [],
  rows: 'all',
  reason: '',
  groups: [],
  measures: ['mean'],
  sort: '',
  descending: false,
});

export const tableOffers: readonly Offer[] = [
  {
    key: 'table',
    word: 'Rows of a trial series',
    about: 'The designs of a trial series as a table to sort, limit, group and save.',
    make: (document) => cellOf(document, 'new_rows', 'Rows of a trial series', newTable(document)),
  },
];
