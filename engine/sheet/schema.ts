import * as v from 'valibot';
import { idEntry, textsEntry, unitEntry } from './cells/entries';
import { cellKinds } from './cells/index';
import type { Cell, CellKind, Document } from './document';
import { FORMAT, VERSION } from './document';
import { ownRowSchema } from './own-rows';
import { variantSchema } from './variant-schema';

export { designsSchema } from './designs-schema';
export { KEPT_NAMES } from './kept-names';

type CellSchema = v.StrictObjectSchema<{ readonly kind: v.LiteralSchema<CellKind, undefined> }, undefined>;

/** One cell of any kind: its kind decides on the rest. Each schema's own type was checked against its cell where it is written. */
const cellSchema = v.variant(
  'kind',
  cellKinds.map((kind) => kind.schema as unknown as CellSchema),
) as unknown as v.GenericSchema<unknown, Cell>;

const sheetSchema = v.strictObject({
  id: idEntry,
  title: v.string(),
  pieces: v.array(cellSchema),
  took: v.optional(textsEntry),
});

/** What a file holds, in the order in which it holds it. */
export const documentSchema = v.strictObject({
  format: v.literal(FORMAT),
  version: v.pipe(v.number(), v.integer(), v.minValue(1)),
  title: v.string(),
  drawn: v.string(),
  date: v.string(),
  class: v.optional(v.string()),
  units: v.picklist(['metric', 'inch_pound']),
  invented: v.optional(v.boolean()),
  sheets: v.pipe(v.array(sheetSchema), v.minLength(1)),
  rows: v.array(ownRowSchema),
  figures: v.array(v.string()),
  baseline: v.optional(textsEntry),
  baseline_design: v.optional(v.strictObject({ sheets: v.array(sheetSchema), rows: v.array(ownRowSchema) })),
  variants: v.optional(v.array(variantSchema)),
}) satisfies v.GenericSchema<unknown, Document>;

/** A file as this build writes it: the version is the newest. */
export const fileSchema = v.strictObject({ ...documentSchema.entries, version: v.literal(VERSION) });

/** What the published schema says once: each kind of cell by its name, and the units. */
export const namedSchemas: Readonly<Record<string, v.GenericSchema>> = {
  unit: unitEntry,
  ...Object.fromEntries(cellKinds.map(({ kind, schema }) => [kind, schema])),
};
