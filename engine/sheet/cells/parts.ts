import * as v from 'valibot';
import { ONE } from '../../units/index';
import { PART_SHAPES, type Part, type PartsCell } from '../document';
import type { Slot } from '../program';
import type { Builder } from '../specs';
import { cutFrom } from './cut-from';
import { baseEntries, textsEntry } from './entries';
import type { CellKindOf, Rewrite } from './kind';
import { isPartField, partFields } from './part-fields';
import { layPart } from './part-row';
import { mapFields, mapRows, mapTexts, withRow, withText } from './rows';

/** Share of the fuel on board when nothing is typed: the middle of the flight. */
const HALF_TANK = 0.5;

/** The weight and balance table. */
export const partsCell: CellKindOf<PartsCell> = {
  kind: 'parts',
  schema: v.strictObject({
    ...baseEntries('parts'),
    fuel: v.string(),
    rows: v.array(
      v.strictObject({
        name: v.string(),
        title: v.string(),
        shape: v.picklist(PART_SHAPES),
        fuel: v.optional(v.boolean()),
        weighed_as: v.optional(v.string()),
        fields: textsEntry,
      }),
    ),
  }),
  owns: (cell) => [cell.name, ...cell.rows.map((row) => `${cell.name}.${row.name}`)],
  texts: (cell) => [
    { path: `${cell.name}.fuel`, text: cell.fuel },
    ...cell.rows.flatMap((row) =>
      partFields(row.shape)
        // What is kept with the scale's word is nothing that somebody types.
        .filter(({ asWeighed }) => asWeighed === undefined)
        .map((field) => ({
          path: `${cell.name}.${row.name}.${field.name}`,
          text: row.fields[field.name] ?? '',
        })),
    ),
  ],
  put(cell, path, text) {
    if (path === `${cell.name}.fuel`) return { ...cell, fuel: text };
    for (const [k, row] of cell.rows.entries()) {
      const within = `${cell.name}.${row.name}.`;
      if (!path.startsWith(within)) continue;
      const name = path.slice(within.length);
      if (!isPartField(name)) return undefined;
      return { ...cell, rows: withRow(cell.rows, k, { ...row, fields: withText(row.fields, name, text) }) };
    }
    return undefined;
  },
  rename(cell, path, to) {
    if (path === cell.name) return { ...cell, name: to };
    const k = cell.rows.findIndex((row) => path === `${cell.name}.${row.name}`);
    return k < 0 ? undefined : { ...cell, rows: withRow(cell.rows, k, { ...cell.rows[k]!, name: to }) };
  },
  rewrite(cell, change) {
    const { formula } = change;
    const rows = mapRows(cell.rows, (row) =>
      mapFields(row, { fields: mapTexts(row.fields, formula), ...weighedAsAfter(row, change) }),
    );
    return mapFields(cell, { fuel: formula(cell.fuel), rows });
  },
  lay(cell, builder) {
    if (builder.claim(cell.name, cell.id)) layParts(cell, builder);
  },
};

/** What it was made of has the name that this has now. */
const weighedAsAfter = (row: Part, { formula, option }: Rewrite): Partial<Part> =>
  row.weighed_as === undefined ? {} : { weighed_as: option(cutFrom(row) ?? '', formula(row.weighed_as)) };

function layParts(cell: PartsCell, builder: Builder): void {
  const { trade } = builder;
  const fuelPath = `${cell.name}.fuel`;
  builder.claim(fuelPath, cell.id);
  const fuelShare = builder.text({
    cell: cell.id,
    path: fuelPath,
    text: cell.fuel,
    kind: 'part',
    title: 'Fuel on board',
    symbol: 'f',
    doc: 'Share of a full tank, 0 to 1. Blank: half.',
    unit: '',
    wants: { dimension: ONE },
    blank: HALF_TANK,
    range: [0, 1],
  });
  const slots = new Map<string, Slot>();
  for (const [name, spec] of Object.entries(trade.partsResults)) {
    const path = `${cell.name}.${name}`;
    builder.claim(path, cell.id);
    const slot = builder.slots(path);
    builder.value({ cell: cell.id, path, slot, ...spec, kind: 'fold' });
    slots.set(name, slot);
  }
  const rows: (ReturnType<typeof layPart> & { row: Part })[] = [];
  for (const row of cell.rows) {
    if (builder.claim(`${cell.name}.${row.name}`, cell.id)) rows.push({ ...layPart(cell, row, builder), row });
  }
  builder.offer({
    cell: cell.id,
    name: cell.name,
    kind: trade.partsRole,
    role: trade.partsRole,
    results: trade.partsResults,
    slots,
  });
  builder.later(() => {
    builder.step(
      trade.foldParts({
        cell: cell.id,
        path: cell.name,
        fuelShare,
        rows: rows.map(({ row, numbers }) => ({
          path: `${cell.name}.${row.name}`,
          fuel: row.fuel ?? false,
          cutFrom: cutFrom(row),
          row: numbers,
        })),
        folds: [...slots.values()],
        moments: rows.map((laid) => laid.moment),
        shares: rows.map((laid) => laid.share),
      }),
    );
  });
}
