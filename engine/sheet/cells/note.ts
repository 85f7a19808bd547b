import * as v from 'valibot';
import type { NoteCell } from '../document';
import { baseEntries } from './entries';
import type { CellKindOf } from './kind';
import { noteFormulas, saidPath, standsInBraces, withFormulas } from './note-pieces';
import { mapFields } from './rows';

/** Words for the reader, with formulas in braces whose values stand in their place. */
export const noteCell: CellKindOf<NoteCell> = {
  kind: 'note',
  schema: v.strictObject({ ...baseEntries('note'), text: v.string() }),
  owns: (cell) => [cell.name],
  texts: (cell) => noteFormulas(cell.text).map((text, k) => ({ path: saidPath(cell.name, k), text })),
  put(cell, path, text) {
    const at = noteFormulas(cell.text).findIndex((_, k) => path === saidPath(cell.name, k));
    if (at < 0 || !standsInBraces(text)) return undefined;
    return { ...cell, text: withFormulas(cell.text, (formula, k) => (k === at ? text : formula)) };
  },
  rename: (cell, path, to) => (path === cell.name ? { ...cell, name: to } : undefined),
  rewrite: (cell, { formula }) => mapFields(cell, { text: withFormulas(cell.text, formula) }),
  lay(cell, builder) {
    if (!builder.claim(cell.name, cell.id)) return;
    for (const [k, text] of noteFormulas(cell.text).entries()) {
      builder.text({
        cell: cell.id,
        path: saidPath(cell.name, k),
        text,
        kind: 'formula',
        title: `${cell.title}: {${text}}`,
        unit: '',
        wants: 'anything',
        detail: true,
      });
    }
  },
};
