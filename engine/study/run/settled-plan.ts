import { catchUp, isBehind } from '../../sheet/evaluate';
import type { Live } from '../../sheet/live';
import { cellsOf } from '../../sheet/sheets';
import { settleFor } from '../design/shown';
import { type Plan, planFor } from '../kinds/index';
import { restsOn } from './depends';

/**
 * The plan of a study of the design as it stands. What was left behind and it rests on is computed before: for a trial series
 * what its samples read and what its axes are made of, for the others, which ask more of the design, everything.
 */
export function settledPlan(live: Live, revision: number, study: string): Plan | string {
  const plan = planFor(live, revision, study);
  if (!isBehind(live.state)) return plan;
  if (typeof plan === 'string' || plan.kind !== 'trial_series') catchUp(live.state);
  else {
    const own = cellsOf(live.compiled.document).filter(({ name }) => name === study);
    settleFor(
      live,
      restsOn(live.compiled.program, plan),
      own.map(({ id }) => id),
    );
  }
  return planFor(live, revision, study);
}
