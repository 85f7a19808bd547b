import { cellsOf, type Document, type MendsCell } from '../../../engine/index';
import { blocksOf } from '../shared/blocks-of';
import { type Contents, cellOf, type Offer } from '../shared/new-cell';

/** The CG where the design wants it, else the first key figure, which still has to be told where it is wanted. */
function newMends(document: Document): Contents<MendsCell> {
  const balance = blocksOf(document, 'balance')[0]?.name;
  const ballast = blocksOf(document, 'ballast')[0]?.name;
  const flight = blocksOf(document, 'flight')[0]?.name;
  const parts = cellsOf(document).find(({ kind }) => kind === 'parts')?.name;
  return {
    kind: 'what_mends',
    of: balance === undefined ? (document.figures[0] ?? '') : `${balance}.cg_x`,
    way: 'to',
    text: balance === undefined || ballast === undefined ? '' : `${ballast}.wanted_x`,
    wanted: [
      ...(parts === undefined ? [] : [`${parts}.mass`]),
      ...(flight === undefined ? [] : [`${flight}.pull`, `${flight}.lap_time`]),
    ],
  };
}

export const mendsOffers: readonly Offer[] = [
  {
    key: 'mends',
    word: 'What mends it',
    about:
      'Every single change that brings a result where it is wanted, the cheapest first: what costs no weight, then useful strength, a lighter part, lead.',
    make: (document) => cellOf(document, 'what_mends', 'What mends it', newMends(document)),
  },
];
