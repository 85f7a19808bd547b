import type { VariantsCell } from '../../sheet/document';
import type { StudyKind } from '../kinds/kind';
import { fillTogether } from '../run/fill';
import { type Gathering, startGathering, type Tell } from '../run/gathering';
import { startRunner } from '../run/runner';
import { runToEnd } from '../run/to-end';
import { variantsData, variantsTable } from './command';
import { planVariants, type VariantsPlan } from './plan';
import { tellVariants } from './tell';

const gather = (plan: VariantsPlan): Gathering => startGathering(plan, tellVariants(plan));

/** The variants of the design side by side: each is one sample of its program. */
export const variants: StudyKind<VariantsCell, VariantsPlan, VariantsPlan, Gathering, Tell> = {
  kind: 'variants',
  words: { none: 'is no table of variants', all: 'tables of variants' },
  plan: planVariants,
  fill: fillTogether,
  gather,
  tell: tellVariants,
  command(cell, live, names) {
    const plan = planVariants(cell, live, 0);
    const { variants } = runToEnd(plan, startRunner(live.compiled, plan, fillTogether(plan)), gather(plan));
    return {
      out: variantsTable(cell.wanted, variants!, names),
      data: { variants: variantsData(cell.wanted, variants!) },
      faults: [],
    };
  },
};
