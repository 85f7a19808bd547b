import type { CellKind, Description } from '../../engine/index';
import { bestOffers } from './best/offer';
import { blockOffer } from './block/offer';
import { chartOffers } from './chart/offer';
import { checkOffers } from './check/offer';
import { choiceOffers } from './choice/offer';
import { drawingOffers } from './drawing/offer';
import { fitOffers } from './fit/offer';
import { formulaOffers } from './formula/offer';
import { guessOffers } from './guess/offer';
import { leversOffers } from './levers/offer';
import { logOffers } from './log/offer';
import { mendsOffers } from './mends/offer';
import { noteOffers } from './note/offer';
import { partsOffers } from './parts/offer';
import type { Offer } from './shared/new-cell';
import { spreadOffers } from './spread/offer';
import { sweepOffers } from './sweep/offer';
import { tableOffers } from './table/offer';
import { variablesOffers } from './variables/offer';
import { variantsOffers } from './variants/offer';
import { weighingOffers } from './weighing/offer';

type Offered = Description | undefined;

/** What of each kind can be added, in the order in which a sheet is written; a kind without its offer does not compile. */
const offersOf: { readonly [K in CellKind]: (offered: Offered) => readonly Offer[] } = {
  note: () => noteOffers,
  variables: () => variablesOffers,
  choice: choiceOffers,
  formula: () => formulaOffers,
  parts: () => partsOffers,
  drawing: () => drawingOffers,
  trial_series: () => sweepOffers,
  tolerances: () => spreadOffers,
  what_helps: () => leversOffers,
  what_mends: () => mendsOffers,
  best_compromises: () => bestOffers,
  weighing: () => weighingOffers,
  variants: () => variantsOffers,
  chart: () => chartOffers,
  table: () => tableOffers,
  check: () => checkOffers,
  log: () => logOffers,
  fit: () => fitOffers,
  guess: () => guessOffers,
  model: (offered) => (offered?.blocks ?? []).map(blockOffer),
};

/** Everything but the pieces of the model. */
export const plainOffers = (offered: Offered): readonly Offer[] =>
  Object.entries(offersOf).flatMap(([kind, offers]) => (kind === 'model' ? [] : offers(offered)));
