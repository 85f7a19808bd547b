import * as v from 'valibot';
import type { Builder } from '../build';
import type { ChartCell, SweepCell } from '../document';
import { baseEntries } from './entries';
import type { CellKindOf } from './kind';
import { mapFields, mapRows } from './rows';

/** A picture of a sweep. */
export const chartCell: CellKindOf<ChartCell> = {
  kind: 'chart',
  schema: v.strictObject({
    ...baseEntries('chart'),
    chart: v.picklist(['line']),
    sweep: v.string(),
    across: v.string(),
    up: v.array(v.string()),
    lines: v.string(),
  }),
  owns: (cell) => [cell.name],
  texts: () => [],
  put: () => undefined,
  rename: (cell, path, to) => (path === cell.name ? { ...cell, name: to } : undefined),
  rewrite: (cell, { path }) =>
    mapFields(cell, {
      sweep: path(cell.sweep),
      across: path(cell.across),
      up: mapRows(cell.up, path),
      lines: path(cell.lines),
    }),
  lay(cell, builder) {
    if (builder.claim(cell.name, cell.id)) checkChart(cell, builder);
  },
};

function checkChart(cell: ChartCell, builder: Builder): void {
  const say = (message: string) => builder.fault({ cell: cell.id, path: cell.name, message });
  const sweeps = builder.document.cells.filter((each): each is SweepCell => each.kind === 'sweep');
  const sweep = sweeps.find((each) => each.name === cell.sweep);
  if (!sweep) {
    const names = sweeps.map((each) => each.name);
    const list = names.length === 0 ? 'There is none yet; add one.' : `The sweeps are ${names.join(', ')}.`;
    say(
      `${cell.name} shows the sweep "${cell.sweep}": there is none of that name. ${list}${builder.meant(cell.sweep, names)}`,
    );
    return;
  }
  const axes = sweep.axes.map((axis) => axis.of);
  const wrongAxis = [cell.across, ...(cell.lines === '' ? [] : [cell.lines])].find((path) => !axes.includes(path));
  if (wrongAxis !== undefined) {
    say(
      `${cell.name} needs "${wrongAxis}" as an axis of ${sweep.name}. The axes of ${sweep.name} are ${axes.join(', ')}.`,
    );
  }
  const wrong = cell.up.find((path) => !sweep.wanted.includes(path));
  if (wrong !== undefined) {
    say(`${cell.name} shows "${wrong}", which ${sweep.name} does not compute. It computes ${sweep.wanted.join(', ')}.`);
  }
  if (cell.up.length === 0) say(`${cell.name} shows nothing. Name at least one result of ${sweep.name}.`);
}
