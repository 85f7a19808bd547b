import type { MendsCell } from '../../sheet/document';
import type { StudyKind } from '../kinds/kind';
import { fillTogether } from '../run/fill';
import { mendsData, mendsTable } from './command';
import { MENDS, type MendsPlan, mendNow, mendsBy, planMends, ranked } from './mends';
import type { Along } from './solve';

/** What would bring a result where it is wanted: the design is flown with each lever elsewhere until it does. */
export const mends: StudyKind<MendsCell, MendsPlan, Along, typeof mendsBy, typeof ranked> = {
  ...MENDS,
  plan: planMends,
  fill: fillTogether,
  gather: () => mendsBy,
  tell: () => ranked,
  command(cell, live, names) {
    const answer = mendNow(live, cell.name);
    if (answer.message !== undefined) return { out: '', data: {}, faults: [answer.message] };
    return { out: mendsTable(cell, answer, names), data: { mends: mendsData(answer) }, faults: [] };
  },
};
