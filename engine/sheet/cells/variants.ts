import * as v from 'valibot';
import type { VariantsCell } from '../document';
import { named } from '../named';
import { baseEntries } from './entries';
import type { CellKindOf } from './kind';
import { mapFields, mapRows } from './rows';
import { checkWanted } from './wanted';

/** Which results the variants of the design are compared by. */
export const variantsCell: CellKindOf<VariantsCell> = {
  kind: 'variants',
  schema: v.strictObject({ ...baseEntries('variants'), wanted: v.array(v.string()) }),
  owns: (cell) => [cell.name],
  texts: () => [],
  put: () => undefined,
  rename: (cell, path, to) => (path === cell.name ? { ...cell, name: to } : undefined),
  rewrite: (cell, change) => mapFields(cell, { wanted: mapRows(cell.wanted, change.path) }),
  lay(cell, builder) {
    if (!builder.claim(cell.name, cell.id)) return;
    const say = (message: string): void => builder.fault({ cell: cell.id, path: cell.name, message });
    if (cell.wanted.length === 0) say(`${named(cell.name)} has no results to show. Add one under “Results asked for”.`);
    builder.later(() => checkWanted(cell, builder, say));
  },
};
