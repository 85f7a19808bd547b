import { type Culprit, formatQuantity, type NameInfo, type Reconciliation } from '../../../engine/index';

/** What a piece that finds the CG says of itself, by the names of its results. */
export interface Told {
  value(result: string): number;
  shown(result: string): string;
}

/** How the CG found stands to the table, and what would explain it: a sentence each. */
export function verdictOf({ state, differs }: Omit<Reconciliation, 'culprits'>, told: Told): readonly string[] {
  const { shown } = told;
  if (state === 'unmeasured') {
    return ['Nothing tells the CG yet. Type what you find in any one of these ways; each further one makes it surer.'];
  }
  const found = `The CG is at ${shown('x')}, ± ${shown('x_error')}; the table has it at ${shown('table_x')}.`;
  if (state === 'agrees') return [found, 'They agree within twice what is unsure of both.'];
  const off = {
    x: `It lies ${shown('difference_x')} of the table’s, where ± ${shown('unsure_x')} is unsure.`,
    y: `Across it lies ${shown('difference_y')} of the table’s.`,
    mass: `The model weighs ${shown('difference_mass')} than the table.`,
  };
  return [found, ...differs.map((each) => off[each]), ...explained(told)];
}

function explained({ value, shown }: Told): readonly string[] {
  const [mass, weighed] = [value('lacking_mass'), !Number.isNaN(value('mass'))];
  if (Number.isNaN(mass)) return [];
  if (weighed && Number.isNaN(value('lacking_x'))) {
    return ['It weighs what the table says: something stands elsewhere than it is typed.'];
  }
  const amount = shown('lacking_mass').replace(/\s(?:missing|too much)$/, '');
  const where = `${amount} at ${shown('lacking_x')}`;
  const what =
    mass < 0 ? `${where} that are counted in the table and not there` : `${where} that are missing in the table`;
  const guess = weighed ? '' : ' Put the whole model on the scale, and it can be told how much and where.';
  return [`${what} would explain it.${guess}`];
}

/** "3 g at 548 mm, takes 40 % of the difference; +1.2 mm is left". */
export function culpritWords(
  { thing, explains, leftX }: Culprit,
  mass: NameInfo | undefined,
  x: NameInfo | undefined,
): string {
  const unit = x?.unit ?? 'mm';
  const left = formatQuantity(leftX, unit, { difference: true, sign: true });
  return `${formatQuantity(thing.mass, mass?.unit ?? 'g')} at ${formatQuantity(thing.x, unit)}: takes ${formatQuantity(explains, '%')} of what does not fit, and leaves the CG off by ${left}.`;
}
