import { cellsOf, type Document, type WeighingCell } from '../../../engine/index';
import { blocksOf } from '../shared/blocks-of';
import { type Contents, cellOf, type Offer } from '../shared/new-cell';

/** The bench of the first table of parts, with the CG wanted where the ballast of the design wants it. */
function newWeighing(document: Document): Contents<WeighingCell> {
  const parts = cellsOf(document).find(({ kind }) => kind === 'parts')?.name ?? '';
  const ballast = blocksOf(document, 'ballast')[0]?.name;
  return {
    ...{ kind: 'weighing', parts, order: [] },
    text: ballast === undefined ? '' : `${ballast}.wanted_x`,
    within: ballast === undefined ? '' : document.units === 'metric' ? '3 mm' : '1/8 in',
  };
}

export const weighingOffers: readonly Offer[] = [
  {
    key: 'weighing',
    word: 'Weigh the parts',
    about:
      'The bench: one part after another on the scale, where the CG comes to lie and how sure that is, what the rest may weigh, which part comes next.',
    make: (document) => cellOf(document, 'bench', 'Weigh the parts', newWeighing(document)),
  },
];
