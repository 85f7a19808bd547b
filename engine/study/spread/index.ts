import type { SpreadCell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import type { NameInfo, SpreadTold } from '../../terms/index';
import type { Section, StudyKind } from '../kinds/kind';
import { type Gathering, startGathering, type Tell } from '../run/gathering';
import { startRunner } from '../run/runner';
import { runToEnd } from '../run/to-end';
import { spreadTable } from './command';
import { fillDesigns } from './designs';
import { planSpread, type SpreadPlan } from './plan';
import { tellDesigns } from './tell';

const gather = (plan: SpreadPlan): Gathering => startGathering(plan, tellDesigns(plan));

/** Many designs whose numbers differ at random from what is typed. */
export const spread: StudyKind<SpreadCell, SpreadPlan, SpreadPlan, Gathering, Tell> = {
  kind: 'tolerances',
  words: { none: 'are no tolerances', all: 'tolerances' },
  plan: planSpread,
  fill: fillDesigns,
  gather,
  tell: tellDesigns,
  command(cell, live, names) {
    const plan = planSpread(cell, live, 0);
    return typeof plan === 'string' ? { out: '', data: {}, faults: [plan] } : spreadSection(live, plan, names);
  },
};

/** What a plan of designs makes of the results, from beginning to end. */
const runSpread = ({ compiled }: Live, plan: SpreadPlan): SpreadTold =>
  runToEnd(plan, startRunner(compiled, plan, fillDesigns(plan)), gather(plan)).spread!;

export function spreadSection(live: Live, plan: SpreadPlan, names: ReadonlyMap<string, NameInfo>): Section {
  const told = runSpread(live, plan);
  return { out: spreadTable(told, names), data: { spread: told }, faults: [] };
}
