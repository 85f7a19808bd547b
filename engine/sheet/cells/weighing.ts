import * as v from 'valibot';
import { LENGTH } from '../../units/index';
import type { WeighingCell } from '../document';
import { allNamed, named } from '../named';
import { cellsOf } from '../sheets';
import type { Builder } from '../specs';
import { baseEntries } from './entries';
import type { CellKindOf } from './kind';
import { mapFields, mapRows } from './rows';

/** Paths of what is typed for where the CG is wanted, and for how far it may lie from there. */
export const weighingPaths = ({ name }: Pick<WeighingCell, 'name'>) =>
  ({ text: `${name}.wanted`, within: `${name}.within` }) as const;

/** The bench: which parts have been on the scale, and in which order. */
export const weighingCell: CellKindOf<WeighingCell> = {
  kind: 'weighing',
  schema: v.strictObject({
    ...baseEntries('weighing'),
    parts: v.string(),
    order: v.array(v.string()),
    text: v.string(),
    within: v.string(),
  }),
  owns: (cell) => [cell.name],
  texts: (cell) => {
    const paths = weighingPaths(cell);
    return [
      { path: paths.text, text: cell.text },
      { path: paths.within, text: cell.within },
    ];
  },
  put(cell, path, text) {
    const paths = weighingPaths(cell);
    if (path === paths.text) return { ...cell, text };
    return path === paths.within ? { ...cell, within: text } : undefined;
  },
  rename: (cell, path, to) => (path === cell.name ? { ...cell, name: to } : undefined),
  rewrite: (cell, { path, formula }) =>
    mapFields(cell, {
      parts: cell.parts === '' ? '' : path(cell.parts),
      order: mapRows(cell.order, path),
      text: formula(cell.text),
      within: formula(cell.within),
    }),
  lay(cell, builder) {
    if (!builder.claim(cell.name, cell.id)) return;
    layTexts(cell, builder);
    builder.later(() => check(cell, builder));
  },
};

function layTexts(cell: WeighingCell, builder: Builder): void {
  const paths = weighingPaths(cell);
  const told = { cell: cell.id, kind: 'limit', unit: 'mm', wants: { dimension: LENGTH }, detail: true } as const;
  builder.text({ ...told, path: paths.text, text: cell.text, title: 'CG station, wanted', blank: Number.NaN });
  builder.text({
    ...{ ...told, path: paths.within, text: cell.within, title: 'CG station, allowed to either side' },
    ...{ blank: 0, range: [0, Number.POSITIVE_INFINITY] },
  });
}

function check({ id, name, parts }: WeighingCell, builder: Builder): void {
  const tables = cellsOf(builder.document).flatMap((cell) => (cell.kind === 'parts' ? cell.name : []));
  if (tables.includes(parts)) return;
  const list = tables.length === 0 ? 'There is none yet; add one.' : `There is ${allNamed(tables)}.`;
  const message =
    parts === ''
      ? `${named(name)} has no table of parts to weigh. ${list}`
      : `${named(name)} weighs the parts of “${parts}”: there is no table of parts of that name. ${list}`;
  builder.fault({ cell: id, path: name, message });
}
