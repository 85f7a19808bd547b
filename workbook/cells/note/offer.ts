import { cellOf, type Offer } from '../shared/new-cell';

export const noteOffers: readonly Offer[] = [
  {
    key: 'note',
    word: 'Note',
    about: 'Words: what is to be decided, what was found.',
    make: (document) => cellOf(document, 'new_note', 'New note', { kind: 'note', text: '' }),
  },
];
