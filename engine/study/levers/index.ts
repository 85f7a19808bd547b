import type { LeversCell } from '../../sheet/document';
import type { StudyKind } from '../kinds/kind';
import { fillTogether } from '../run/fill';
import { copyRows, type Gathering, startGathering, type Tell } from '../run/gathering';
import { startRunner } from '../run/runner';
import { runToEnd } from '../run/to-end';
import { leversData, leversTable, rankedAnswer } from './command';
import { type LeversPlan, planLevers } from './plan';

/** The changes are told by themselves, with all news. */
const tell = (): Tell => copyRows;

const gather = (plan: LeversPlan): Gathering => startGathering(plan, tell(), { levers: plan.levers });

/** One change at a time from the design as it stands. */
export const levers: StudyKind<LeversCell, LeversPlan, LeversPlan, Gathering, Tell> = {
  kind: 'what_helps',
  words: { none: 'is no list of what helps most', all: 'lists of what helps most' },
  plan: planLevers,
  fill: fillTogether,
  gather,
  tell,
  command(cell, live, names) {
    const plan = planLevers(cell, live, 0);
    if (typeof plan === 'string') return { out: '', data: {}, faults: [plan] };
    const answer = rankedAnswer(
      cell,
      runToEnd(plan, startRunner(live.compiled, plan, fillTogether(plan)), gather(plan)),
    );
    return { out: leversTable(answer, names), data: { levers: leversData(answer) }, faults: [] };
  },
};
