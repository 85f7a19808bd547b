import * as v from 'valibot';
import { CHART_KINDS, type ChartCell } from '../document';
import { checkChart } from './chart-faults';
import { chartSource } from './chart-kinds';
import { baseEntries } from './entries';
import type { CellKindOf } from './kind';
import { mapFields, mapRows } from './rows';

/** A picture of a sweep, of a weight and balance table or of what runs along something. */
export const chartCell: CellKindOf<ChartCell> = {
  kind: 'chart',
  schema: v.strictObject({
    ...baseEntries('chart'),
    chart: v.picklist(CHART_KINDS),
    series: v.string(),
    of: v.optional(v.string()),
    across: v.string(),
    up: v.array(v.string()),
    lines: v.string(),
    together: v.optional(v.boolean()),
    checks: v.optional(v.array(v.string())),
  }),
  owns: (cell) => [cell.name],
  texts: () => [],
  put: () => undefined,
  rename: (cell, path, to) => (path === cell.name ? { ...cell, name: to } : undefined),
  rewrite(cell, { path }) {
    // What bars of parts and traces show is named within what they are drawn from.
    const within = chartSource(cell) !== 'sweep';
    const up = within ? cell.up : mapRows(cell.up, path);
    return mapFields(cell, {
      series: path(cell.series),
      ...(cell.of === undefined ? {} : { of: path(cell.of) }),
      across: within ? cell.across : path(cell.across),
      up,
      lines: path(cell.lines),
      ...(cell.checks === undefined ? {} : { checks: mapRows(cell.checks, path) }),
    });
  },
  lay(cell, builder) {
    if (builder.claim(cell.name, cell.id)) builder.later(() => checkChart(cell, builder));
  },
};
