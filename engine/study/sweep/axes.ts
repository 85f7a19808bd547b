import type { Axis } from '../../sheet/document';
import { named } from '../../sheet/named';
import type { Program } from '../../sheet/program';
import { type PlannedAxis, typedSlot } from '../run/axis';

export type Axes =
  | { readonly ok: true; readonly axes: readonly PlannedAxis[] }
  | { readonly ok: false; readonly message: string };

/** Columns of the results of more designs than this are no longer something that a person looks at. */
const MOST_DESIGNS = 1_000_000;

/**
 * The values along every axis of a study, for the design as it stands. `options(path)` lists the options of a choice.
 * What a compiled document has found wrong with it is not looked for again.
 */
export function axesOf(
  cell: { readonly name: string; readonly axes: readonly Axis[] },
  program: Program,
  design: Float64Array,
  options: (path: string) => readonly string[] | undefined,
): Axes {
  const axes: PlannedAxis[] = [];
  for (const [k, axis] of cell.axes.entries()) {
    const slot = typedSlot(axis.of, program);
    const names = options(axis.of);
    if (names) {
      const picked = axis.options?.map((option) => names.indexOf(option)) ?? names.keys();
      axes.push({ path: axis.of, slot, values: Float64Array.from(picked), choice: true });
      continue;
    }
    const limit = (side: 'low' | 'high'): number => {
      const typed = valueAt(`${cell.name}.axis${k + 1}.${side}`, program, design);
      return Number.isNaN(typed) ? valueAt(`${axis.of}.${side}`, program, design) : typed;
    };
    const [low, high] = [limit('low'), limit('high')];
    if (Number.isNaN(low) || Number.isNaN(high)) {
      const missing = Number.isNaN(low) ? 'least' : 'greatest';
      return no(
        `${named(cell.name)} does not know the ${missing} value of ${named(axis.of)}. Type it there, or give the variable limits.`,
      );
    }
    axes.push({ path: axis.of, slot, values: evenly(low, high, axis.count), choice: false });
  }
  const designs = axes.reduce((product, { values }) => product * values.length, 1);
  if (designs > MOST_DESIGNS) {
    return no(`${named(cell.name)} asks for ${designs} designs. ${MOST_DESIGNS} are allowed: take fewer values.`);
  }
  return { ok: true, axes };
}

const no = (message: string): Axes => ({ ok: false, message });

const valueAt = (path: string, program: Program, design: Float64Array): number => {
  const slot = program.slotOf.get(path);
  return slot === undefined ? Number.NaN : design[slot]!;
};

/** Both ends exactly as given. */
const evenly = (low: number, high: number, count: number): Float64Array =>
  Float64Array.from({ length: count }, (_, k) => (k === count - 1 ? high : low + ((high - low) * k) / (count - 1)));
