import * as v from 'valibot';
import type { Axis } from '../document';
import { allOptions, named } from '../named';
import type { Builder, Reach } from '../specs';
import type { Rewrite, Text } from './kind';
import { mapFields, mapRows, withRow } from './rows';
import type { Say } from './wanted';

/** A piece that flies the design along axes. */
export interface WithAxes {
  readonly id: string;
  readonly name: string;
  readonly axes: readonly Axis[];
}

const LIMITS = ['low', 'high'] as const;
const MOST_AXES = 4;
const MOST_POINTS = 1001;
const SWEPT: ReadonlySet<Reach['kind']> = new Set(['variable', 'choice', 'field']);

/** Path of what is typed for one axis: `pull_sweep.axis1.low`. */
export const axisPath = (cell: Pick<WithAxes, 'name'>, axis: number): string => `${cell.name}.axis${axis + 1}`;

export const axesSchema = v.array(
  v.strictObject({
    of: v.string(),
    low: v.string(),
    high: v.string(),
    count: v.pipe(v.number(), v.integer()),
    options: v.optional(v.array(v.string())),
  }),
);

export const axisTexts = (cell: WithAxes): readonly Text[] =>
  cell.axes.flatMap((axis, k) => LIMITS.map((limit) => ({ path: `${axisPath(cell, k)}.${limit}`, text: axis[limit] })));

/** Undefined where the path isn't one of its axes' texts. */
export function putAxis<C extends WithAxes>(cell: C, path: string, text: string): C | undefined {
  for (const [k, axis] of cell.axes.entries()) {
    const limit = LIMITS.find((each) => path === `${axisPath(cell, k)}.${each}`);
    if (limit) return { ...cell, axes: withRow(cell.axes, k, { ...axis, [limit]: text }) };
  }
  return undefined;
}

export const rewriteAxes = (axes: readonly Axis[], change: Rewrite): readonly Axis[] =>
  mapRows(axes, (axis) => rewriteAxis(axis, change));

function rewriteAxis(axis: Axis, { formula, path, option }: Rewrite): Axis {
  const change = { of: path(axis.of), low: formula(axis.low), high: formula(axis.high) };
  if (!axis.options) return mapFields(axis, change);
  return mapFields(axis, { ...change, options: mapRows(axis.options, (name) => option(axis.of, name)) });
}

/** Lays the limits of the axes, and says what is wrong with them. */
export function layAxes(cell: WithAxes, builder: Builder, say: Say): void {
  if (cell.axes.length < 1 || cell.axes.length > MOST_AXES) {
    say(`${named(cell.name)} has ${cell.axes.length} axes. One to ${MOST_AXES} are allowed.`);
  }
  for (const [k, axis] of cell.axes.entries()) {
    for (const limit of LIMITS) layLimit(cell, k, axis, limit, builder);
    builder.later(() => checkAxis(cell, axis, builder, say));
  }
}

function layLimit(cell: WithAxes, k: number, axis: Axis, limit: (typeof LIMITS)[number], builder: Builder): void {
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

function checkAxis(cell: WithAxes, axis: Axis, builder: Builder, say: Say): void {
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

function checkOptions(cell: WithAxes, axis: Axis, options: readonly string[], say: Say): void {
  const strange = axis.options?.find((option) => !options.includes(option));
  if (strange === undefined) return;
  say(
    `${named(cell.name)} asks for “${strange}” of ${named(axis.of)}. Its options are ${allOptions(axis.of, options)}.`,
  );
}

function checkNumbers(cell: WithAxes, axis: Axis, reach: Reach, say: Say): void {
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
