import { cellsOf, type Document, type GuessCell } from '../../../engine/index';
import { type Contents, cellOf, type Offer } from '../shared/new-cell';

/** Asks for the first key figure, which whoever sets the question changes. */
function newGuess(document: Document): Contents<GuessCell> {
  const sweep = cellsOf(document).findLast((cell) => cell.kind === 'trial_series' && cell.axes.length === 1);
  return {
    ...{ kind: 'guess', question: '', way: 'number', of: document.figures[0] ?? '', unit: '', options: [] },
    ...{ series: sweep?.name ?? '', why: '', try_this: '', instructor: '', guesses: [] },
  };
}

export const guessOffers: readonly Offer[] = [
  {
    key: 'guess',
    word: 'Guess',
    about:
      'A question that is guessed first, by number, choice or a drawn line; then the design answers it, and says why.',
    make: (document) => cellOf(document, 'new_guess', 'New question', newGuess(document)),
  },
];
