import { cellOf, type Offer } from '../shared/new-cell';

export const partsOffers: readonly Offer[] = [
  {
    key: 'parts',
    word: 'Parts',
    about: 'The table of weight and balance: what each part weighs and where it is.',
    make: (document) => cellOf(document, 'parts', 'Weight and balance', { kind: 'parts', fuel: '', rows: [] }),
  },
];
