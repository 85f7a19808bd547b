import * as v from 'valibot';
import { textsEntry } from './cells/entries';
import type { Variant } from './document';

/** A variant as files and copied texts hold it. */
export const variantSchema = v.strictObject({
  name: v.pipe(v.string(), v.minLength(1)),
  changes: textsEntry,
  on_charts: v.optional(v.boolean()),
}) satisfies v.GenericSchema<unknown, Variant>;
