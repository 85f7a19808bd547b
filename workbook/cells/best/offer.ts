import { type BestCell, type BestGoal, cellsOf, type Document } from '../../../engine/index';
import { blocksOf } from '../shared/blocks-of';
import { type Contents, cellOf, type Offer } from '../shared/new-cell';

/** Axes that a new one begins with, and their values. */
const FIRST_AXES = 3;
const POINTS = 9;

/** Least weight and most pull where the design has them, along its first slides. */
function newBest(document: Document): Contents<BestCell> {
  const rows = cellsOf(document).flatMap((cell) => (cell.kind === 'variables' ? cell.rows : []));
  const slides = rows.filter((row) => row.low !== '' && row.high !== '').slice(0, FIRST_AXES);
  const flight = blocksOf(document, 'flight')[0]?.name;
  const parts = cellsOf(document).find(({ kind }) => kind === 'parts')?.name;
  const goals: readonly BestGoal[] = [
    ...(parts === undefined ? [] : [{ of: `${parts}.mass`, way: 'least' } as const]),
    ...(flight === undefined ? [] : [{ of: `${flight}.pull`, way: 'most' } as const]),
  ];
  return {
    kind: 'best_compromises',
    axes: slides.map(({ name }) => ({ of: name, low: '', high: '', count: POINTS })),
    goals,
    wanted: flight === undefined ? [] : [`${flight}.lap_time`],
  };
}

export const bestOffers: readonly Offer[] = [
  {
    key: 'best',
    word: 'Best compromises',
    about:
      'Two or three results wanted at once, such as least weight and most pull: the designs that no other beats in all of them, within the limits.',
    make: (document) => cellOf(document, 'best_compromises', 'Best compromises', newBest(document)),
  },
];
