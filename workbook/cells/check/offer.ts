import type { CheckCell, Document } from '../../../engine/index';
import { type Contents, cellOf, type Offer } from '../shared/new-cell';

/** Watches the first key figure without a limit yet. */
const newCheck = (document: Document): Contents<CheckCell> => ({
  kind: 'check',
  of: document.figures[0] ?? '',
  low: '',
  high: '',
  below: '',
  above: '',
});

export const checkOffers: readonly Offer[] = [
  {
    key: 'check',
    word: 'Check',
    about: 'Stop if a result is under or over a limit, with the reason.',
    make: (document) => cellOf(document, 'new_check', 'New check', newCheck(document)),
  },
];
