import { cellsOf, type Document, type SpreadCell, type SpreadRow, unitNamed } from '../../../engine/index';
import { type Contents, cellOf, type Offer } from '../shared/new-cell';

/** Things that a new spread begins with, and by how much: an amount to be corrected, which the page calls a guess. */
const FIRST_DIFFERING = 3;
export const beginning = (name: string): string => `2 % × ${name}`;
const FIRST_DESIGNS = 500;
const FIRST_RESULTS = 3;

/** The first variables that are more than nothing, each by a little, all parts, and the first key figures. */
function newSpread(document: Document): Contents<SpreadCell> {
  const rows = cellsOf(document).flatMap((cell) => (cell.kind === 'variables' ? cell.rows : []));
  // A share of nothing is nothing, and of a point on a scale it has no meaning.
  const fit = rows.filter(({ text, unit }) => /^\s*[\d.]*[1-9]/.test(text) && unitNamed(unit)?.offset === 0);
  return {
    kind: 'tolerances',
    rows: fit.slice(0, FIRST_DIFFERING).map(
      ({ name }): SpreadRow => ({
        ...{ of: name, distribution: 'normal', size: beginning(name), above: '' },
      }),
    ),
    parts: cellsOf(document).some((cell) => cell.kind === 'parts' && cell.rows.length > 0),
    wanted: document.figures.slice(0, FIRST_RESULTS),
    samples: FIRST_DESIGNS,
    seed: 1,
  };
}

export const spreadOffers: readonly Offer[] = [
  {
    key: 'spread',
    word: 'Tolerances',
    about: 'What becomes of the results when weights, stations and settings are not quite as typed.',
    make: (document) => cellOf(document, 'tolerances', 'Tolerances', newSpread(document)),
  },
];
