import { nearestName } from '../../formula/index';
import type { Live } from '../../sheet/live';
import { changesOfVariant, variantsOf } from '../../sheet/variants';
import { isHere } from '../variants/designs';

interface VariantSet {
  readonly texts: readonly (readonly [path: string, text: string])[];
  /** What the variant says of things that the design hasn't any more. */
  readonly notes: readonly string[];
}

/** What a variant types into its design, or the sentence that says that there is none; none for no name. */
export function variantTexts(live: Live, name: string): VariantSet | string {
  if (name === '') return { texts: [], notes: [] };
  const { document } = live.compiled;
  const variant = variantsOf(document).find((each) => each.name === name);
  if (!variant) {
    const known = variantsOf(document).map((each) => each.name);
    const near = nearestName(name, known);
    const there = known.length === 0 ? 'This design has none.' : `The variants are ${known.join(', ')}.`;
    return `There is no variant called “${name}”. ${there}${near === undefined ? '' : ` Did you mean ${near}?`}`;
  }
  const { texts, gone } = changesOfVariant(document, variant, (path) => isHere(live, path));
  const notes = gone.map((path) => `${name} changes ${path}, which is not in the design: left out.`);
  return { texts, notes };
}
