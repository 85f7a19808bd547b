import { cellsOf, type Document, type FitCell } from '../../../engine/index';
import { blocksOf } from '../shared/blocks-of';
import { type Contents, cellOf, type Offer } from '../shared/new-cell';

/** Engines whose power a factor corrects. */
const WITH_POWER = ['two_stroke', 'tachometer', 'thrust_law', 'measured_lap'];

/** A fit of the drag to one log: what its laps alone can tell. */
export const fitFor = (document: Document, log: string): FitCell => {
  const fit = newFit(document);
  return cellOf(document, 'fit', 'Fit to flown laps', { ...fit, log, factors: fit.factors.slice(0, 1) }) as FitCell;
};

/** Drag and power from the last log of the sheet. */
function newFit(document: Document): Contents<FitCell> {
  const flight = blocksOf(document, 'flight')[0]?.name;
  const engine = WITH_POWER.flatMap((kind) => blocksOf(document, kind))[0]?.name;
  return {
    kind: 'fit',
    log: cellsOf(document).findLast((cell) => cell.kind === 'log')?.name ?? '',
    factors: [
      ...(flight === undefined ? [] : [`${flight}.drag_factor`]),
      ...(engine === undefined ? [] : [`${engine}.power_factor`]),
    ],
    wanted: [],
    errors: 'scatter',
  };
}

export const fitOffers: readonly Offer[] = [
  {
    key: 'fit',
    word: 'Fit to flown laps',
    about: 'Drag, power or other factors for which the model comes nearest to a log.',
    make: (document) => cellOf(document, 'fit', 'Fit to flown laps', newFit(document)),
  },
];
