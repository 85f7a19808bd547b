import * as v from 'valibot';
import type { CheckCell } from '../document';
import { named } from '../named';
import { baseEntries } from './entries';
import type { CellKindOf } from './kind';
import { noteFormulas, standsInBraces, withFormulas } from './note-pieces';
import { mapFields } from './rows';

const LIMITS = ['low', 'high'] as const;
const REASONS = ['below', 'above'] as const;

/** Path of the value of a formula in braces within a reason: `check_pull.below1` is the first. */
export const reasonPath = (check: string, end: (typeof REASONS)[number], index: number): string =>
  `${check}.${end}${index + 1}`;

const saidIn = (cell: CheckCell) =>
  REASONS.flatMap((end) =>
    noteFormulas(cell[end]).map((text, k) => ({ end, k, text, path: reasonPath(cell.name, end, k) })),
  );

/** "Stop if …": a limit with its reason. What it watches is read under the cell's own name. */
export const checkCell: CellKindOf<CheckCell> = {
  kind: 'check',
  schema: v.strictObject({
    ...baseEntries('check'),
    of: v.string(),
    low: v.string(),
    high: v.string(),
    below: v.string(),
    above: v.string(),
  }),
  owns: (cell) => [cell.name],
  texts: (cell) => [
    { path: cell.name, text: cell.of },
    ...LIMITS.map((limit) => ({ path: `${cell.name}.${limit}`, text: cell[limit] })),
    ...saidIn(cell).map(({ path, text }) => ({ path, text })),
  ],
  put(cell, path, text) {
    if (path === cell.name) return { ...cell, of: text };
    const limit = LIMITS.find((each) => path === `${cell.name}.${each}`);
    if (limit) return { ...cell, [limit]: text };
    const said = saidIn(cell).find((each) => path === each.path);
    if (!said || !standsInBraces(text)) return undefined;
    const { end } = said;
    return { ...cell, [end]: withFormulas(cell[end], (formula, k) => (k === said.k ? text : formula)) };
  },
  rename: (cell, path, to) => (path === cell.name ? { ...cell, name: to } : undefined),
  rewrite: (cell, { formula }) =>
    mapFields(cell, {
      ...{ of: formula(cell.of), low: formula(cell.low), high: formula(cell.high) },
      ...{ below: withFormulas(cell.below, formula), above: withFormulas(cell.above, formula) },
    }),
  lay(cell, builder) {
    if (!builder.claim(cell.name, cell.id)) return;
    builder.text({
      cell: cell.id,
      path: cell.name,
      text: cell.of,
      kind: 'formula',
      title: cell.title,
      unit: '',
      wants: 'anything',
      needed: `${named(cell.name)} has nothing to watch. Write the name of a result in it, such as “flight.pull”.`,
    });
    for (const limit of LIMITS) {
      builder.text({
        cell: cell.id,
        path: `${cell.name}.${limit}`,
        text: cell[limit],
        kind: 'limit',
        title: `${cell.title}, ${limit === 'low' ? 'least' : 'most'}`,
        // A bare limit is read in the unit of what is watched, and has to have its dimension.
        like: cell.name,
        unit: '',
        wants: 'anything',
        blank: Number.NaN,
      });
    }
    for (const { path, text } of saidIn(cell)) {
      const title = `${cell.title}: {${text}}`;
      builder.text({ cell: cell.id, path, text, kind: 'formula', title, unit: '', wants: 'anything', detail: true });
    }
  },
};
