import * as v from 'valibot';
import type { Variable, VariablesCell } from '../document';
import type { Builder } from '../specs';
import { baseEntries, unitEntry } from './entries';
import type { CellKindOf, Text } from './kind';
import { mapFields, mapRows, withRow } from './rows';

const LIMITS = ['low', 'high', 'step'] as const;
const LIMIT_TITLES = { low: 'least', high: 'most', step: 'step' } as const;

/** A schedule of dimension lines. */
export const variablesCell: CellKindOf<VariablesCell> = {
  kind: 'variables',
  schema: v.strictObject({
    ...baseEntries('variables'),
    rows: v.array(
      v.strictObject({
        name: v.string(),
        title: v.string(),
        symbol: v.string(),
        unit: unitEntry,
        text: v.string(),
        low: v.string(),
        high: v.string(),
        step: v.string(),
      }),
    ),
  }),
  owns: (cell) => [cell.name, ...cell.rows.map((row) => row.name)],
  texts: (cell) => cell.rows.flatMap(rowTexts),
  put(cell, path, text) {
    for (const [k, row] of cell.rows.entries()) {
      const key = keyOf(row, path);
      if (key) return { ...cell, rows: withRow(cell.rows, k, { ...row, [key]: text }) };
    }
    return undefined;
  },
  rename(cell, path, to) {
    if (path === cell.name) return { ...cell, name: to };
    const k = cell.rows.findIndex((row) => row.name === path);
    return k < 0 ? undefined : { ...cell, rows: withRow(cell.rows, k, { ...cell.rows[k]!, name: to }) };
  },
  rewrite(cell, { formula }) {
    const rows = mapRows(cell.rows, (row) =>
      mapFields(row, {
        text: formula(row.text),
        low: formula(row.low),
        high: formula(row.high),
        step: formula(row.step),
      }),
    );
    return mapFields(cell, { rows });
  },
  lay(cell, builder) {
    builder.claim(cell.name, cell.id);
    for (const row of cell.rows) if (builder.claim(row.name, cell.id)) layRow(cell, row, builder);
  },
};

function rowTexts(row: Variable): Text[] {
  return [
    { path: row.name, text: row.text },
    ...LIMITS.map((limit) => ({ path: `${row.name}.${limit}`, text: row[limit] })),
  ];
}

function keyOf(row: Variable, path: string): 'text' | (typeof LIMITS)[number] | undefined {
  if (path === row.name) return 'text';
  return LIMITS.find((limit) => path === `${row.name}.${limit}`);
}

function layRow(cell: VariablesCell, row: Variable, builder: Builder): void {
  const dimension = builder.unit(row.unit, row.name, cell.id);
  if (!dimension) return;
  const told = { cell: cell.id, unit: row.unit, wants: { dimension }, symbol: row.symbol };
  builder.text({ ...told, path: row.name, text: row.text, kind: 'variable', title: row.title });
  for (const limit of LIMITS) {
    builder.text({
      ...told,
      path: `${row.name}.${limit}`,
      text: row[limit],
      kind: 'limit',
      title: `${row.title}, ${LIMIT_TITLES[limit]}`,
      blank: Number.NaN,
      detail: true,
    });
  }
}
