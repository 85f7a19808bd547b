import type { LogCell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import type { Slot } from '../../sheet/program';
import { changesOfVariant, variantsOf } from '../../sheet/variants';
import { isHere } from '../variants/designs';

/** What variants set on the flights that were flown as them. */
export interface FlownAs {
  /** The value in each row of the log, as the design has it where another or no variant was flown. */
  readonly conditions: readonly { readonly path: string; readonly slot: Slot; readonly values: Float64Array }[];
  /** Row → why the design can’t be flown as it was. */
  readonly strange: ReadonlyMap<number, string>;
}

export function flownAs({ compiled, state }: Live, log: LogCell): FlownAs {
  const conditions = new Map<Slot, { readonly path: string; readonly slot: Slot; readonly values: Float64Array }>();
  const strange = new Map<number, string>();
  for (const [row, { flown_as: name }] of log.rows.entries()) {
    if (name === '') continue;
    const variant = variantsOf(compiled.document).find((each) => each.name === name);
    if (!variant) {
      strange.set(row, `It was flown as “${name}”, and the design has no variant of that name.`);
      continue;
    }
    const { texts } = changesOfVariant(compiled.document, variant, (path) => isHere({ compiled, state }, path));
    for (const [path, text] of texts) {
      const slot = compiled.program.constants.get(path);
      const value = compiled.constant(path, text);
      if (slot === undefined || value === undefined) {
        strange.set(row, `It was flown as “${name}”, which has a formula where only numbers can be flown here.`);
        break;
      }
      const present = state.m[slot]!;
      const known = conditions.get(slot) ?? { path, slot, values: new Float64Array(log.rows.length).fill(present) };
      known.values[row] = value;
      conditions.set(slot, known);
    }
  }
  return { conditions: [...conditions.values()], strange };
}
