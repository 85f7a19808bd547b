import * as v from 'valibot';
import { MEND_WAYS, type MendsCell } from '../document';
import { named, quoted } from '../named';
import type { Builder } from '../specs';
import { baseEntries } from './entries';
import type { CellKindOf } from './kind';
import { mapFields, mapRows } from './rows';
import { checkWanted, type Say } from './wanted';

/** Path of what is typed for where the result is wanted: `cg_mends.wanted`. */
export const mendPath = ({ name }: Pick<MendsCell, 'name'>): string => `${name}.wanted`;

const TITLES = { to: 'wanted', least: 'at least', most: 'at most' } as const;

/** Where a result is wanted; what would bring it there is found in the design. */
export const mendsCell: CellKindOf<MendsCell> = {
  kind: 'what_mends',
  schema: v.strictObject({
    ...baseEntries('what_mends'),
    of: v.string(),
    way: v.picklist(MEND_WAYS),
    text: v.string(),
    wanted: v.array(v.string()),
  }),
  owns: (cell) => [cell.name],
  texts: (cell) => [{ path: mendPath(cell), text: cell.text }],
  put: (cell, path, text) => (path === mendPath(cell) ? { ...cell, text } : undefined),
  rename: (cell, path, to) => (path === cell.name ? { ...cell, name: to } : undefined),
  rewrite: (cell, { path, formula }) =>
    mapFields(cell, {
      of: cell.of === '' ? '' : path(cell.of),
      text: formula(cell.text),
      wanted: mapRows(cell.wanted, path),
    }),
  lay(cell, builder) {
    if (!builder.claim(cell.name, cell.id)) return;
    const say: Say = (message) => builder.fault({ cell: cell.id, path: cell.name, message });
    if (cell.of === '') say(`${named(cell.name)} has no result to mend. Pick one under “Set up”.`);
    else layText(cell, builder);
    builder.later(() => {
      if (cell.of !== '') checkOf(cell, builder, say);
      checkWanted(cell, builder, say);
    });
  },
};

function layText(cell: MendsCell, builder: Builder): void {
  builder.text({
    ...{ cell: cell.id, path: mendPath(cell), text: cell.text, kind: 'limit', like: cell.of, unit: '' },
    ...{ title: `${named(cell.of)}, ${TITLES[cell.way]}`, wants: 'anything', detail: true },
  });
}

function checkOf({ name, of }: MendsCell, builder: Builder, say: Say): void {
  const reach = builder.find(of);
  if (!reach) say(`${named(name)} mends ${quoted(of)}: nothing has that name.${builder.meant(of)}`);
  else if (reach.kind === 'curve' || (reach.type && reach.type.kind !== 'quantity'))
    say(`${named(name)} mends ${named(of)}, which is no single number. Take one.`);
  else if (reach.settable) say(`${named(name)} mends ${named(of)}, which is typed. Take a result.`);
}
