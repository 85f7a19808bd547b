import type { Live } from '../../../engine/sheet/live';
import { gatheringOf, type Plan, planFor, runnerOf } from '../../../engine/study/kinds/index';
import { runToEnd } from '../../../engine/study/run/to-end';
import type { SweepProgress } from '../../../engine/terms/index';

/** All samples of a plan. */
export const runPlan = (live: Live, plan: Plan): SweepProgress =>
  runToEnd(plan, runnerOf(live.compiled, plan), gatheringOf(plan));

/** A study from beginning to end, or the sentence that says why it can't run. */
export function wholeOf(live: Live, name: string): SweepProgress | string {
  const plan = planFor(live, 0, name);
  return typeof plan === 'string' ? plan : runPlan(live, plan);
}
