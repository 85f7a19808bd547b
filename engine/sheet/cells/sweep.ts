import * as v from 'valibot';
import type { Axis, SweepCell } from '../document';
import { allOptions, named } from '../named';
import type { Builder, Reach } from '../specs';
import { baseEntries } from './entries';
import type { CellKindOf, Rewrite } from './kind';
import { mapFields, mapRows, withRow } from './rows';

const LIMITS = ['low', 'high'] as const;
const MOST_AXES = 4;
const MOST_POINTS = 1001;
const SWEPT: ReadonlySet<Reach['kind']> = new Set(['variable', 'choice', 'field']);

/** Path of what is typed for one axis: `pull_sweep.axis1.low`. */
export const axisPath = (cell: SweepCell, axis: number): string => `${cell.name}.axis${axis + 1}`;

/** Many designs along one to four axes. */
export const sweepCell: CellKindOf<SweepCell> = {
  kind: 'trial_series',
  schema: v.strictObject({
    ...baseEntries('trial_series'),
    axes: v.array(
      v.strictObject({
        of: v.string(),
        low: v.string(),
        high: v.string(),
        count: v.pipe(v.number(), v.integer()),
        options: v.optional(v.array(v.string())),
      }),
    ),
    wanted: v.array(v.string()),
  }),
  owns: (cell) => [cell.name],
  texts: (cell) =>
    cell.axes.flatMap((axis, k) =>
      LIMITS.map((limit) => ({ path: `${axisPath(cell, k)}.${limit}`, text: axis[limit] })),
    ),
  put(cell, path, text) {
    for (const [k, axis] of cell.axes.entries()) {
      const limit = LIMITS.find((each) => path === `${axisPath(cell, k)}.${each}`);
      if (limit) return { ...cell, axes: withRow(cell.axes, k, { ...axis, [limit]: text }) };
    }
    return undefined;
  },
  rename: (cell, path, to) => (path === cell.name ? { ...cell, name: to } : undefined),
  rewrite: (cell, change) =>
    mapFields(cell, {
      axes: mapRows(cell.axes, (axis) => rewriteAxis(axis, change)),
      wanted: mapRows(cell.wanted, change.path),
    }),
  lay(cell, builder) {
    if (!builder.claim(cell.name, cell.id)) return;
    const say = (message: string) => builder.fault({ cell: cell.id, path: cell.name, message });
    if (cell.axes.length < 1 || cell.axes.length > MOST_AXES) {
      say(`${named(cell.name)} has ${cell.axes.length} axes. One to ${MOST_AXES} are allowed.`);
    }
    if (cell.wanted.length === 0) say(`${named(cell.name)} has no results to show. Add one under “Results asked for”.`);
    for (const [k, axis] of cell.axes.entries()) {
      for (const limit of LIMITS) layLimit(cell, k, axis, limit, builder);
      builder.later(() => checkAxis(cell, axis, builder, say));
    }
    builder.later(() => checkWanted(cell, builder, say));
  },
};

function rewriteAxis(axis: Axis, { formula, path, option }: Rewrite): Axis {
  const change = { of: path(axis.of), low: formula(axis.low), high: formula(axis.high) };
  if (!axis.options) return mapFields(axis, change);
  return mapFields(axis, { ...change, options: mapRows(axis.options, (name) => option(axis.of, name)) });
}

function layLimit(cell: SweepCell, k: number, axis: Axis, limit: (typeof LIMITS)[number], builder: Builder): void {
  builder.text({
    cell: cell.id,
    path: `${axisPath(cell, k)}.${limit}`,
    text: axis[limit],
    kind: 'limit',
    title: `${named(axis.of)}, ${limit === 'low' ? 'from' : 'to'}`,
    doc: 'Blank: the limit of the variable itself.',
    like: axis.of,
    unit: '',
    wants: 'anything',
    blank: Number.NaN,
    detail: true,
  });
}

function checkAxis(cell: SweepCell, axis: Axis, builder: Builder, say: (message: string) => void): void {
  const reach = builder.find(axis.of);
  if (!reach) {
    say(`${named(cell.name)} runs along “${axis.of}”: nothing has that name.${builder.meant(axis.of)}`);
  } else if (!reach.settable || !SWEPT.has(reach.kind)) {
    say(
      `${named(cell.name)} runs along ${named(axis.of)}. An axis is a variable, a choice or something typed in the model: make it a variable and run along that.`,
    );
  } else if (reach.type?.kind === 'option') checkOptions(cell, axis, reach.type.options, say);
  else checkNumbers(cell, axis, reach, say);
}

function checkOptions(cell: SweepCell, axis: Axis, options: readonly string[], say: (message: string) => void): void {
  const strange = axis.options?.find((option) => !options.includes(option));
  if (strange === undefined) return;
  say(
    `${named(cell.name)} asks for “${strange}” of ${named(axis.of)}. Its options are ${allOptions(axis.of, options)}.`,
  );
}

function checkNumbers(cell: SweepCell, axis: Axis, reach: Reach, say: (message: string) => void): void {
  if (axis.count < 2 || axis.count > MOST_POINTS) {
    say(`${named(cell.name)} asks for ${axis.count} values of ${named(axis.of)}. 2 to ${MOST_POINTS} are allowed.`);
  }
  const bare = LIMITS.find((limit) => axis[limit].trim() === '');
  if (bare && reach.kind !== 'variable') {
    say(
      `${named(cell.name)} has no ${bare === 'low' ? 'least' : 'greatest'} value for ${named(axis.of)}. Type one: only a variable has limits of its own.`,
    );
  }
}

function checkWanted(cell: SweepCell, builder: Builder, say: (message: string) => void): void {
  for (const path of cell.wanted) {
    const reach = builder.find(path);
    if (!reach) say(`${named(cell.name)} asks for “${path}”: nothing has that name.${builder.meant(path)}`);
    else if (reach.kind === 'curve')
      say(`${named(cell.name)} asks for ${named(path)}, which is a curve. Take a single number.`);
  }
}
