import type { Compiled } from '../../sheet/compile';
import type { Live } from '../../sheet/live';
import { cellsOf } from '../../sheet/sheets';
import { best } from '../best/index';
import { fit } from '../fit/index';
import { levers } from '../levers/index';
import type { LeversPlan } from '../levers/plan';
import { mends } from '../mends/index';
import type { Fill } from '../run/fill';
import type { Gathering } from '../run/gathering';
import type { Orderless } from '../run/plan';
import { type Runner, startRunner } from '../run/runner';
import { spread } from '../spread/index';
import type { SpreadPlan } from '../spread/plan';
import { sweep } from '../sweep/index';
import type { SweepPlan } from '../sweep/plan';
import { variants } from '../variants/index';
import type { VariantsPlan } from '../variants/plan';
import { weighing } from '../weighing/index';
import { findStudy } from './find';
import type { StudyCell } from './kind';

/** Every kind of study; one that lacks a verb does not compile. */
export const studyKinds = {
  trial_series: sweep,
  tolerances: spread,
  what_helps: levers,
  fit,
  variants,
  what_mends: mends,
  best_compromises: best,
  weighing,
} satisfies {
  [K in StudyCell['kind']]: { readonly kind: K };
};

/** Plans whose samples are flown once, in chunks, and whose rows are told as they come. */
export type Plan = SweepPlan | SpreadPlan | LeversPlan | VariantsPlan;

/** A kind of plan meets only plans of its own. */
interface Running {
  fill(plan: Orderless<Plan>): Fill;
  gather(plan: Plan): Gathering;
  plan(cell: StudyCell, live: Live, revision: number): Plan | string;
}
const { fit: _, what_mends: __, best_compromises: ___, weighing: ____, ...flownOnce } = studyKinds;
const running = flownOnce as unknown as Readonly<Record<Plan['kind'], Running>>;

export const gatheringOf = (plan: Plan): Gathering => running[plan.kind].gather(plan);

export const runnerOf = (compiled: Compiled, plan: Orderless<Plan>): Runner =>
  startRunner(compiled, plan, running[plan.kind].fill(plan));

/** The plan of the study of this name, or the sentence that says why it can't run; a name that nothing has is looked for among the sweeps. */
export function planFor(live: Live, revision: number, name: string): Plan | string {
  const named = cellsOf(live.compiled.document).find((each) => each.name === name && each.kind in running);
  const kind = (named?.kind ?? 'trial_series') as Plan['kind'];
  const cell = findStudy(live, studyKinds[kind], name);
  return typeof cell === 'string' ? cell : running[kind].plan(cell, live, revision);
}
