import type { WeighingCell } from '../../sheet/document';
import type { StudyKind } from '../kinds/kind';
import { fillTogether } from '../run/fill';
import { weighingData, weighingTable } from './command';
import { planWeighing, WEIGHING, type WeighingPlan } from './plan';
import { weighingOf } from './weighing';

/** The bench: the design is computed with more and more of its parts on the scale. */
export const weighing: StudyKind<WeighingCell, WeighingPlan, WeighingPlan, typeof planWeighing, typeof weighingOf> = {
  ...WEIGHING,
  plan: planWeighing,
  fill: fillTogether,
  gather: () => planWeighing,
  tell: () => weighingOf,
  command(cell, live, names) {
    const answer = weighingOf(live, cell.name);
    if (answer.message !== undefined) return { out: '', data: {}, faults: [answer.message] };
    return { out: weighingTable(cell.parts, answer, names), data: { weighing: weighingData(answer) }, faults: [] };
  },
};
