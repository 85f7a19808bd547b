import { cellsOf, type Document, type SweepCell } from '../../../engine/index';
import { type Contents, cellOf, type Offer } from '../shared/new-cell';

/** Points of a new axis: enough for a smooth line, few enough to be there at once. */
const POINTS = 21;

/** Runs along the first variable that has a slide and asks for the first key figure, where the sheet has them. */
function newSweep(document: Document): Contents<SweepCell> {
  const rows = cellsOf(document).flatMap((cell) => (cell.kind === 'variables' ? cell.rows : []));
  const variable = rows.find((row) => row.low !== '' && row.high !== '');
  return {
    kind: 'trial_series',
    axes: variable ? [{ of: variable.name, low: '', high: '', count: POINTS }] : [],
    wanted: document.figures.slice(0, 1),
  };
}

export const sweepOffers: readonly Offer[] = [
  {
    key: 'sweep',
    word: 'Trial series',
    about: 'Many designs at once along one to four variables or choices.',
    make: (document) => cellOf(document, 'new_series', 'New trial series', newSweep(document)),
  },
];
