import * as v from 'valibot';
import type { CheckCell } from '../document';
import { baseEntries } from './entries';
import type { CellKindOf } from './kind';
import { mapFields } from './rows';

const LIMITS = ['low', 'high'] as const;

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
  ],
  put(cell, path, text) {
    if (path === cell.name) return { ...cell, of: text };
    const limit = LIMITS.find((each) => path === `${cell.name}.${each}`);
    return limit && { ...cell, [limit]: text };
  },
  rename: (cell, path, to) => (path === cell.name ? { ...cell, name: to } : undefined),
  rewrite: (cell, { formula }) =>
    mapFields(cell, { of: formula(cell.of), low: formula(cell.low), high: formula(cell.high) }),
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
      needed: `${cell.name} has nothing to watch. Write the name of a result in it, such as "flight.pull".`,
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
  },
};
