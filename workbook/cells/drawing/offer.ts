import { cellOf, type Offer } from '../shared/new-cell';

export const drawingOffers: readonly Offer[] = [
  {
    key: 'drawing',
    word: 'Drawing',
    about: 'Plan and side view to scale. The first one stands beside the sheets.',
    make: (document) => cellOf(document, 'drawing', 'Scale drawing', { kind: 'drawing' }),
  },
];
