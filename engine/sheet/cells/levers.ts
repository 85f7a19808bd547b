import * as v from 'valibot';
import { unitNamed } from '../../units/index';
import { LEVER_WAYS, type LeverRow, type LeversCell } from '../document';
import { allNamed, allOptions, named, quoted } from '../named';
import type { Builder, Reach } from '../specs';
import { baseEntries } from './entries';
import type { CellKindOf, Rewrite } from './kind';
import { mapFields, mapRows, withRow } from './rows';
import { checkWanted, type Say } from './wanted';

const CHANGED: ReadonlySet<Reach['kind']> = new Set(['variable', 'choice', 'field']);

/** Path of what is typed for one row: `pull_levers.row1.change`. */
export const leverPath = (cell: Pick<LeversCell, 'name'>, row: number): string => `${cell.name}.row${row + 1}.change`;

/** What could be changed, one thing at a time, and which results tell what that does. */
export const leversCell: CellKindOf<LeversCell> = {
  kind: 'what_helps',
  schema: v.strictObject({
    ...baseEntries('what_helps'),
    rows: v.array(
      v.strictObject({
        of: v.string(),
        way: v.picklist(LEVER_WAYS),
        text: v.string(),
        options: v.optional(v.array(v.string())),
      }),
    ),
    wanted: v.array(v.string()),
    rank: v.string(),
    per: v.string(),
  }),
  owns: (cell) => [cell.name],
  texts: (cell) => cell.rows.map(({ text }, k) => ({ path: leverPath(cell, k), text })),
  put(cell, path, text) {
    const k = cell.rows.findIndex((_, index) => leverPath(cell, index) === path);
    return k < 0 ? undefined : { ...cell, rows: withRow(cell.rows, k, { ...cell.rows[k]!, text }) };
  },
  rename: (cell, path, to) => (path === cell.name ? { ...cell, name: to } : undefined),
  rewrite: (cell, change) =>
    mapFields(cell, {
      rows: mapRows(cell.rows, (row) => rewriteRow(row, change)),
      wanted: mapRows(cell.wanted, change.path),
      rank: change.path(cell.rank),
      per: change.path(cell.per),
    }),
  lay(cell, builder) {
    if (!builder.claim(cell.name, cell.id)) return;
    const say: Say = (message) => builder.fault({ cell: cell.id, path: cell.name, message });
    if (cell.rows.length === 0) say(`${named(cell.name)} has nothing to change. Add something to it.`);
    if (cell.wanted.length === 0) say(`${named(cell.name)} has no results to show. Add one under “Results asked for”.`);
    checkRank(cell, say);
    for (const [k, row] of cell.rows.entries()) {
      // A blank one is a fault unless it belongs to a choice, which only `checkRow` can tell.
      if (row.text.trim() !== '') layChange(cell, k, row, builder);
      builder.later(() => checkRow(cell, k, builder, say));
    }
    builder.later(() => checkWanted(cell, builder, say));
  },
};

function rewriteRow(row: LeverRow, { formula, path, option }: Rewrite): LeverRow {
  const change = { of: path(row.of), text: formula(row.text) };
  if (!row.options) return mapFields(row, change);
  return mapFields(row, { ...change, options: mapRows(row.options, (name) => option(row.of, name)) });
}

function checkRank({ name, wanted, rank, per }: LeversCell, say: Say): void {
  for (const path of [rank, per]) {
    if (path === '' || wanted.includes(path)) continue;
    say(`${named(name)} ranks by ${quoted(path)}, which is not among its results: ${allNamed(wanted)}.`);
  }
  if (per !== '' && per === (rank || wanted[0])) {
    say(
      `${named(name)} ranks by the change of ${named(per)} for each change of ${named(per)}. Take two different results.`,
    );
  }
}

const TITLES = { both: 'up and down by', up: 'up by', down: 'down by', to: 'changed to' } as const;

function layChange(cell: LeversCell, k: number, row: LeverRow, builder: Builder): void {
  builder.text({
    cell: cell.id,
    path: leverPath(cell, k),
    text: row.text,
    kind: 'limit',
    title: `${named(row.of)}, ${TITLES[row.way]}`,
    like: row.of,
    apart: row.way !== 'to',
    unit: '',
    wants: 'anything',
    detail: true,
  });
}

function checkRow(cell: LeversCell, k: number, builder: Builder, say: Say): void {
  const row = cell.rows[k]!;
  const { of } = row;
  const reach = builder.find(of);
  if (!reach) {
    say(`${named(cell.name)} changes “${of}”: nothing has that name.${builder.meant(of)}`);
  } else if (!reach.settable || !CHANGED.has(reach.kind)) {
    say(
      `${named(cell.name)} changes ${named(of)}. Only what is typed can be changed: a variable, a choice or something typed in the model. Make it a variable and change that.`,
    );
  } else if (reach.type?.kind === 'option') checkOptions(cell, row, reach.type.options, say);
  else checkAmount(cell, k, reach, builder);
}

function checkOptions({ name }: LeversCell, { of, options }: LeverRow, known: readonly string[], say: Say): void {
  const strange = options?.find((option) => !known.includes(option));
  if (strange === undefined) return;
  say(`${named(name)} changes ${named(of)} to “${strange}”. Its options are ${allOptions(of, known)}.`);
}

function checkAmount(cell: LeversCell, k: number, { shown: unit }: Reach, builder: Builder): void {
  const { of, way, text } = cell.rows[k]!;
  const onScale = (unitNamed(unit)?.offset ?? 0) !== 0;
  const example = onScale && way !== 'to' ? '2 K' : `2 ${unit}`.trim();
  if (text.trim() !== '') return;
  const what = way === 'to' ? 'value to be changed to' : 'amount to be changed by';
  const message = `${named(of)} has no ${what}. Type one, such as “${example}”.`;
  builder.fault({ cell: cell.id, path: leverPath(cell, k), message });
}
