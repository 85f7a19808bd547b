import { cellsOf, type Document, type LeverRow, type LeversCell, unitNamed } from '../../../engine/index';
import { type Contents, cellOf, type Offer } from '../shared/new-cell';

/** Things that new levers begin with, and their step as a share of the way that the slide has. */
const FIRST_LEVERS = 5;
const FIRST_STEP = 10;

/** The first variables that have a slide, each by a tenth of it, and the first two key figures. */
function newLevers(document: Document): Contents<LeversCell> {
  const rows = cellsOf(document).flatMap((cell) => (cell.kind === 'variables' ? cell.rows : []));
  const fit = rows.filter(({ unit, low, high }) => low !== '' && high !== '' && (unitNamed(unit)?.offset ?? 0) === 0);
  return {
    kind: 'what_helps',
    rows: fit
      .slice(0, FIRST_LEVERS)
      .map(({ name }): LeverRow => ({ of: name, way: 'both', text: `(${name}.high − ${name}.low) ÷ ${FIRST_STEP}` })),
    wanted: document.figures.slice(0, 2),
    rank: '',
    per: '',
  };
}

export const leversOffers: readonly Offer[] = [
  {
    key: 'levers',
    word: 'What helps most',
    about: 'What a change here or there does to the results, one at a time, the strongest first.',
    make: (document) => cellOf(document, 'what_helps', 'What helps most', newLevers(document)),
  },
];
