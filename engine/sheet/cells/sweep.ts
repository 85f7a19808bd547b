import * as v from 'valibot';
import type { SweepCell } from '../document';
import { named } from '../named';
import type { Builder } from '../specs';
import { axesSchema, axisTexts, layAxes, putAxis, rewriteAxes } from './axes';
import { baseEntries } from './entries';
import type { CellKindOf } from './kind';
import { mapFields, mapRows } from './rows';

/** Many designs along one to four axes. */
export const sweepCell: CellKindOf<SweepCell> = {
  kind: 'trial_series',
  schema: v.strictObject({
    ...baseEntries('trial_series'),
    axes: axesSchema,
    wanted: v.array(v.string()),
  }),
  owns: (cell) => [cell.name],
  texts: axisTexts,
  put: putAxis,
  rename: (cell, path, to) => (path === cell.name ? { ...cell, name: to } : undefined),
  rewrite: (cell, change) =>
    mapFields(cell, { axes: rewriteAxes(cell.axes, change), wanted: mapRows(cell.wanted, change.path) }),
  lay(cell, builder) {
    if (!builder.claim(cell.name, cell.id)) return;
    const say = (message: string) => builder.fault({ cell: cell.id, path: cell.name, message });
    layAxes(cell, builder, say);
    if (cell.wanted.length === 0) say(`${named(cell.name)} has no results to show. Add one under “Results asked for”.`);
    builder.later(() => checkWanted(cell, builder, say));
  },
};

function checkWanted(cell: SweepCell, builder: Builder, say: (message: string) => void): void {
  for (const path of cell.wanted) {
    const reach = builder.find(path);
    if (!reach) say(`${named(cell.name)} asks for “${path}”: nothing has that name.${builder.meant(path)}`);
    else if (reach.kind === 'curve')
      say(`${named(cell.name)} asks for ${named(path)}, which is a curve. Take a single number.`);
  }
}
