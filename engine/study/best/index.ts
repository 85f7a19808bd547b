import type { BestCell } from '../../sheet/document';
import type { StudyKind } from '../kinds/kind';
import { fillTogether } from '../run/fill';
import { answerOf, bestNow } from './best';
import { bestData, bestTable } from './command';
import type { Flight } from './fly';
import { BEST, type BestPlan, planBest } from './plan';
import { search } from './search';

/** Designs that none of the others beats in everything that is wanted: where to look closer goes by what was flown before. */
export const best: StudyKind<BestCell, BestPlan, Flight, typeof search, typeof answerOf> = {
  ...BEST,
  plan: planBest,
  fill: fillTogether,
  gather: () => search,
  tell: () => answerOf,
  command(cell, live, names) {
    const answer = bestNow(live, cell.name);
    if (answer.message !== undefined) return { out: '', data: {}, faults: [answer.message] };
    return { out: bestTable(answer, names), data: { best: bestData(answer) }, faults: [] };
  },
};
