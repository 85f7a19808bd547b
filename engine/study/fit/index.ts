import type { FitCell } from '../../sheet/document';
import type { StudyKind } from '../kinds/kind';
import { fillTogether } from '../run/fill';
import { tellFit } from './command';
import { answerOf } from './fit';
import { FIT, type FitPlan, planFit } from './plan';
import { type Flights, predict } from './predict';

export { fitNow } from './fit';

/** Factors of the design for which the model comes nearest to a log: its flights are flown again and again. */
export const fit: StudyKind<FitCell, FitPlan, Flights, typeof predict, typeof answerOf> = {
  ...FIT,
  plan: planFit,
  fill: fillTogether,
  gather: () => predict,
  tell: () => answerOf,
  command(cell, live, names) {
    const { text, data, fault } = tellFit(cell, live, names);
    return { out: text, data: { fits: [data] }, faults: fault === undefined ? [] : [fault] };
  },
};
