import * as v from 'valibot';
import { BEST_WAYS, type BestCell } from '../document';
import { named, quoted } from '../named';
import type { Builder } from '../specs';
import { axesSchema, axisTexts, layAxes, putAxis, rewriteAxes } from './axes';
import { baseEntries } from './entries';
import type { CellKindOf } from './kind';
import { mapFields, mapRows } from './rows';
import { checkWanted, type Say } from './wanted';

const LEAST_GOALS = 2;
const MOST_GOALS = 3;

/** What is wanted, along what it is looked for, and which limits are kept. */
export const bestCell: CellKindOf<BestCell> = {
  kind: 'best_compromises',
  schema: v.strictObject({
    ...baseEntries('best_compromises'),
    axes: axesSchema,
    goals: v.array(v.strictObject({ of: v.string(), way: v.picklist(BEST_WAYS) })),
    keeps: v.optional(v.array(v.string())),
    wanted: v.array(v.string()),
  }),
  owns: (cell) => [cell.name],
  texts: axisTexts,
  put: putAxis,
  rename: (cell, path, to) => (path === cell.name ? { ...cell, name: to } : undefined),
  rewrite: (cell, change) =>
    mapFields(cell, {
      axes: rewriteAxes(cell.axes, change),
      goals: mapRows(cell.goals, (goal) => mapFields(goal, { of: change.path(goal.of) })),
      wanted: mapRows(cell.wanted, change.path),
      ...(cell.keeps ? { keeps: mapRows(cell.keeps, change.path) } : {}),
    }),
  lay(cell, builder) {
    if (!builder.claim(cell.name, cell.id)) return;
    const say: Say = (message) => builder.fault({ cell: cell.id, path: cell.name, message });
    layAxes(cell, builder, say);
    checkGoals(cell, say);
    builder.later(() => {
      const goals = cell.goals.map(({ of }) => of);
      checkWanted({ name: cell.name, wanted: [...goals, ...cell.wanted] }, builder, say);
      checkKept(cell, builder, say);
    });
  },
};

function checkGoals({ name, goals }: BestCell, say: Say): void {
  if (goals.length < LEAST_GOALS || goals.length > MOST_GOALS) {
    say(
      `${named(name)} has ${goals.length} wishes. Two or three are allowed: pick them under “What is wanted” in its form.`,
    );
  }
  const twice = goals.find(({ of }, k) => goals.findIndex((each) => each.of === of) < k);
  if (twice) say(`${named(name)} wants ${named(twice.of)} twice. Take two different results.`);
}

function checkKept({ name, keeps = [] }: BestCell, builder: Builder, say: Say): void {
  for (const path of keeps) {
    if (!builder.find(path))
      say(`${named(name)} keeps the limit of ${quoted(path)}: nothing has that name.${builder.meant(path)}`);
  }
}
