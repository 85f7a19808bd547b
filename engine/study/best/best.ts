import { beats, spreadOver } from '../../numerics/index';
import type { BestCell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { findStudy } from '../kinds/find';
import { flierAlong } from './fly';
import { BEST, type BestPlan, planBest } from './plan';
import { type BestPoint, costsOf, type Found, type Searching, search } from './search';
import type { BestAnswer } from './told';

type Answer = Omit<BestAnswer, 'revision'>;

/** News on the way, with the answer as it would be if it ended there. */
export interface BestNews extends Omit<Searching, 'found'> {
  readonly soFar: () => Answer;
}

/** Rows of the table: as many as a person looks at. */
const MOST_SHOWN = 24;

/** The same to its end without a rest. */
export function bestNow(live: Live, name: string): Answer {
  const steps = bestSteps(live, name);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

/** Finds the designs that none of the others beats in everything that is wanted. Yields between pieces of its work. */
export function* bestSteps(live: Live, name: string): Generator<BestNews, Answer, void> {
  const cell = findStudy<BestCell>(live, BEST, name);
  if (typeof cell === 'string') return faultyBest(name, cell);
  const plan = planBest(cell, live);
  if (typeof plan === 'string') return faultyBest(name, plan);
  const steps = search(live, plan);
  try {
    let step = steps.next();
    while (!step.done) {
      const { found, ...news } = step.value;
      yield { ...news, soFar: () => answerOf(live, plan, found(), 'halted') };
      step = steps.next();
    }
    return answerOf(live, plan, step.value, 'settled');
  } finally {
    steps.return({} as Found);
  }
}

/** What is told of what a search has found. */
export function answerOf(live: Live, plan: BestPlan, found: Found, state: 'settled' | 'halted'): Answer {
  const { cell, axes } = plan;
  const { points, others, ...counts } = found;
  const inFirst = (a: BestPoint, b: BestPoint): number => a.costs[0]! - b.costs[0]!;
  const shown = spreadOver(points, MOST_SHOWN).toSorted(inFirst);
  const best = new Set(points.map(({ design }) => design.at));
  return {
    ...{ best: cell.name, state, goals: cell.goals, wanted: cell.wanted, ...counts },
    axes: axes.map(({ path }) => path),
    front: points.length,
    shown: shown.map(({ design }) => design),
    beaten: others.filter(
      ({ at, goals }) => !best.has(at) && points.some((point) => beats(point.costs, costsOf(cell, goals))),
    ),
    present: presentIn(live, plan, points),
  };
}

function presentIn(live: Live, plan: BestPlan, points: readonly BestPoint[]): Answer['present'] {
  const goals = plan.cell.goals.map(({ of }) => of);
  const flier = flierAlong(live, plan, { goals, limits: plan.limits, wanted: [] });
  try {
    const [now] = flier.at([plan.axes.map(({ slot }) => live.state.m[slot]!)]);
    const { goals: values, reason, breaks } = now!;
    const costs = costsOf(plan.cell, values);
    const beatenBy = values.some(Number.isNaN) ? 0 : points.filter((point) => beats(point.costs, costs)).length;
    return { goals: values, keeps: reason === '' && breaks.length === 0, beatenBy };
  } finally {
    flier.finish();
  }
}

export const faultyBest = (best: string, message: string): Answer => ({
  ...{ best, state: 'fault', message, axes: [], goals: [], wanted: [], tried: 0, unanswered: 0, reason: '' },
  ...{ broken: [], front: 0, shown: [], beaten: [], present: { goals: [], keeps: false, beatenBy: 0 } },
});
