import type { SweepCell } from '../../sheet/document';
import type { StudyKind } from '../kinds/kind';
import { copyRows, type Gathering, startGathering, type Tell } from '../run/gathering';
import { startRunner } from '../run/runner';
import { runToEnd } from '../run/to-end';
import { sweepData, sweepTable } from './command';
import { fillGrid } from './lattice';
import { planSweep, type SweepPlan } from './plan';

const tell =
  ({ axes }: SweepPlan): Tell =>
  (rows) => ({ axes: axes.map(({ path, values }) => ({ path, values: values.slice() })), ...copyRows(rows) });

const gather = (plan: SweepPlan): Gathering => startGathering(plan, tell(plan));

/** Every value of each axis with every value of the others. */
export const sweep: StudyKind<SweepCell, SweepPlan, SweepPlan, Gathering, Tell> = {
  kind: 'trial_series',
  words: { none: 'is no trial series', all: 'trial series' },
  plan: planSweep,
  fill: fillGrid,
  gather,
  tell,
  command(cell, live, names) {
    const plan = planSweep(cell, live, 0);
    if (typeof plan === 'string') return { out: '', data: {}, faults: [plan] };
    const progress = runToEnd(plan, startRunner(live.compiled, plan, fillGrid(plan)), gather(plan));
    return { out: sweepTable(progress, names), data: { sweep: sweepData(progress, names) }, faults: [] };
  },
};
