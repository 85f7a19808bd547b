import * as v from 'valibot';
import type { FormulaCell } from '../document';
import { baseEntries, unitEntry } from './entries';
import type { CellKindOf } from './kind';
import { mapFields, mapRows, withRow } from './rows';

/** Calculation lines. */
export const formulaCell: CellKindOf<FormulaCell> = {
  kind: 'formula',
  schema: v.strictObject({
    ...baseEntries('formula'),
    lines: v.array(v.strictObject({ name: v.string(), text: v.string(), unit: unitEntry })),
  }),
  owns: (cell) => [cell.name, ...cell.lines.map((line) => line.name)],
  texts: (cell) => cell.lines.map((line) => ({ path: line.name, text: line.text })),
  put(cell, path, text) {
    const k = cell.lines.findIndex((line) => line.name === path);
    return k < 0 ? undefined : { ...cell, lines: withRow(cell.lines, k, { ...cell.lines[k]!, text }) };
  },
  rename(cell, path, to) {
    if (path === cell.name) return { ...cell, name: to };
    const k = cell.lines.findIndex((line) => line.name === path);
    return k < 0 ? undefined : { ...cell, lines: withRow(cell.lines, k, { ...cell.lines[k]!, name: to }) };
  },
  rewrite(cell, { formula }) {
    return mapFields(cell, { lines: mapRows(cell.lines, (line) => mapFields(line, { text: formula(line.text) })) });
  },
  lay(cell, builder) {
    builder.claim(cell.name, cell.id);
    for (const line of cell.lines) {
      if (!builder.claim(line.name, cell.id)) continue;
      const dimension = builder.unit(line.unit, line.name, cell.id);
      if (!dimension) continue;
      builder.text({
        cell: cell.id,
        path: line.name,
        text: line.text,
        kind: 'formula',
        // A line has no title of its own: its name is read as words.
        title: line.name.replaceAll('_', ' '),
        unit: line.unit,
        // Without a unit the line may give anything; with one it has to give that.
        wants: line.unit === '' ? 'anything' : { dimension },
      });
    }
  },
};
