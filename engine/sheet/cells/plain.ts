import type { Cell } from '../document';
import type { CellKindOf } from './kind';

/** What a cell kind does that has a name but no texts, no references and no numbers of its own. */
export const plain = <C extends Cell>(): Omit<CellKindOf<C>, 'kind' | 'schema'> => ({
  owns: (cell) => [cell.name],
  texts: () => [],
  put: () => undefined,
  rename: (cell, path, to) => (path === cell.name ? { ...cell, name: to } : undefined),
  rewrite: (cell) => cell,
  lay: (cell, builder) => {
    builder.claim(cell.name, cell.id);
  },
});
