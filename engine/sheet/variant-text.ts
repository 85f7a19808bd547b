import * as v from 'valibot';
import type { Variant } from './document';
import { nestsTooDeep } from './json-fault';
import { keptNamesIn } from './validate';
import { variantSchema } from './variant-schema';

const FORMAT = 'tetherwright variants';

const textSchema = v.strictObject({
  format: v.literal(FORMAT),
  variants: v.pipe(v.array(variantSchema), v.minLength(1)),
});

/** Variants as a text that is carried to another design by hand. Charts of that one show what they like. */
export const writeVariants = (variants: readonly Variant[]): string =>
  `${JSON.stringify({ format: FORMAT, variants: variants.map(({ name, changes }) => ({ name, changes })) }, null, 2)}\n`;

export type ReadVariants =
  | { readonly ok: true; readonly variants: readonly Variant[] }
  | { readonly ok: false; readonly message: string };

/** Reads what `writeVariants` wrote. */
export function readVariants(text: string): ReadVariants {
  let plain: unknown;
  try {
    plain = JSON.parse(text);
  } catch {
    return { ok: false, message: REFUSED };
  }
  if (nestsTooDeep(plain)) return { ok: false, message: REFUSED };
  const read = v.safeParse(textSchema, plain);
  return read.success && keptNamesIn(plain, '').length === 0
    ? { ok: true, variants: read.output.variants }
    : { ok: false, message: REFUSED };
}

const REFUSED =
  'This text holds no variants. Press “Copy” at a variant of the other design, then paste the whole of it here. Nothing was added.';
