import * as v from 'valibot';
import { type Kept, MEASURES, type SweepCell, TABLE_ROWS, type TableCell } from '../document';
import { allNamed, named, quoted } from '../named';
import { cellsOf } from '../sheets';
import type { Builder } from '../specs';
import { baseEntries } from './entries';
import type { CellKindOf, Rewrite } from './kind';
import { mapFields, mapRows, withRow } from './rows';

const LIMITS = ['low', 'high'] as const;

/** Path of what is typed for one limit of the rows: `pull_table.keep1.low`. */
export const keptPath = (cell: TableCell, k: number): string => `${cell.name}.keep${k + 1}`;

/** The designs of a sweep as rows: sorted, some of them kept, or in groups. */
export const tableCell: CellKindOf<TableCell> = {
  kind: 'table',
  schema: v.strictObject({
    ...baseEntries('table'),
    series: v.string(),
    columns: v.array(v.string()),
    keep: v.array(
      v.strictObject({
        of: v.string(),
        low: v.string(),
        high: v.string(),
        options: v.optional(v.array(v.string())),
      }),
    ),
    rows: v.picklist(TABLE_ROWS),
    reason: v.string(),
    groups: v.array(v.string()),
    measures: v.array(v.picklist(MEASURES)),
    sort: v.string(),
    descending: v.boolean(),
  }),
  owns: (cell) => [cell.name],
  texts: (cell) =>
    cell.keep.flatMap((kept, k) =>
      LIMITS.map((limit) => ({ path: `${keptPath(cell, k)}.${limit}`, text: kept[limit] })),
    ),
  put(cell, path, text) {
    for (const [k, kept] of cell.keep.entries()) {
      const limit = LIMITS.find((each) => path === `${keptPath(cell, k)}.${each}`);
      if (limit) return { ...cell, keep: withRow(cell.keep, k, { ...kept, [limit]: text }) };
    }
    return undefined;
  },
  rename: (cell, path, to) => (path === cell.name ? { ...cell, name: to } : undefined),
  rewrite(cell, change) {
    const [of = '', measure] = cell.sort.split(' ');
    const sorted = of === '' || of === 'count' ? of : change.path(of);
    return mapFields(cell, {
      series: cell.series === '' ? '' : change.path(cell.series),
      columns: mapRows(cell.columns, change.path),
      keep: mapRows(cell.keep, (kept) => rewriteKept(kept, change)),
      groups: mapRows(cell.groups, change.path),
      sort: measure === undefined ? sorted : `${sorted} ${measure}`,
    });
  },
  lay(cell, builder) {
    if (!builder.claim(cell.name, cell.id)) return;
    for (const [k, kept] of cell.keep.entries()) {
      for (const limit of LIMITS) layLimit(cell, k, kept, limit, builder);
    }
    builder.later(() => check(cell, builder));
  },
};

function rewriteKept(kept: Kept, { formula, path, option }: Rewrite): Kept {
  const change = { of: path(kept.of), low: formula(kept.low), high: formula(kept.high) };
  if (!kept.options) return mapFields(kept, change);
  return mapFields(kept, { ...change, options: mapRows(kept.options, (name) => option(kept.of, name)) });
}

function layLimit(cell: TableCell, k: number, kept: Kept, limit: (typeof LIMITS)[number], builder: Builder): void {
  builder.text({
    cell: cell.id,
    path: `${keptPath(cell, k)}.${limit}`,
    text: kept[limit],
    kind: 'limit',
    title: `${named(kept.of)}, ${limit === 'low' ? 'from' : 'to'}`,
    doc: 'Blank: no limit on this side.',
    like: kept.of,
    unit: '',
    wants: 'anything',
    blank: Number.NaN,
    detail: true,
  });
}

function check(cell: TableCell, builder: Builder): void {
  const say = (message: string) => builder.fault({ cell: cell.id, path: cell.name, message });
  const sweeps = cellsOf(builder.document).filter((each): each is SweepCell => each.kind === 'trial_series');
  const sweep = sweeps.find((each) => each.name === cell.series);
  if (!sweep) {
    const names = sweeps.map((each) => each.name);
    const list = names.length === 0 ? 'There is none yet; add one.' : `The trial series are ${allNamed(names)}.`;
    say(
      cell.series === ''
        ? `${named(cell.name)} has no trial series to show. ${list}`
        : `${named(cell.name)} shows the trial series “${cell.series}”: there is none of that name. ${list}${builder.meant(cell.series, names, named)}`,
    );
    return;
  }
  const axes = sweep.axes.map((axis) => axis.of);
  const columns = [...axes, ...sweep.wanted];
  const wrong = [...cell.columns, ...cell.keep.map((kept) => kept.of)].find((path) => !columns.includes(path));
  if (wrong !== undefined) {
    say(
      `${named(cell.name)} shows ${quoted(wrong)}, which ${named(sweep.name)} does not have. It has ${allNamed(columns)}.`,
    );
  }
  const group = cell.groups.find((path) => !axes.includes(path));
  if (group !== undefined) {
    say(
      `${named(cell.name)} makes groups by ${quoted(group)}, which is no axis of ${named(sweep.name)}. Its axes are ${allNamed(axes)}.`,
    );
  }
}
