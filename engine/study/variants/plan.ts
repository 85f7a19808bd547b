import type { VariantsCell } from '../../sheet/document';
import { carry } from '../../sheet/evaluate';
import type { Live } from '../../sheet/live';
import { type PlannedAxis, typedSlot } from '../run/axis';
import { causeOf } from '../run/cause';
import { type PlanOf, planCore } from '../run/plan';
import type { Otherwise } from './baseline-texts';
import { type Design, documentOf, type PlannedTable, planDesigns } from './designs';

export interface VariantsPlan extends PlanOf<'variants'> {
  readonly table: PlannedTable;
  /** For each design its sample, or what a program of its own has computed. */
  readonly found: readonly (number | Computed)[];
}

export interface Computed {
  readonly values: readonly number[];
  readonly reason: string;
}

/**
 * One sample for each design in which numbers and options are otherwise than in the one that stands. A design in which a
 * formula is otherwise has another program: it is computed here and now.
 */
export function planVariants(cell: VariantsCell, live: Live, revision: number): VariantsPlan {
  const { table, designs, whole } = planDesigns(live);
  const samples: Otherwise[] = [];
  let coarse = 0;
  const found = designs.map((design, k) => {
    if (!isSample(design, live)) return computed(design, live, cell.wanted);
    const sample = samples.push(design.texts) - 1;
    if (k < whole) coarse = samples.length;
    return sample;
  });
  const axes = axesOf(samples, live);
  const { compiled, state } = live;
  const core = planCore(
    compiled.program,
    { revision, name: cell.name, values: state.m, why: state.why },
    axes,
    cell.wanted,
  );
  const { columns } = table;
  return {
    ...{ kind: 'variants', ...core, axes, table, found, coarse },
    key: JSON.stringify([table.from, columns, found.map((each) => (typeof each === 'number' ? each : told(each)))]),
    order: Uint32Array.from(samples, (_, k) => k),
  };
}

const told = ({ values, reason }: Computed): unknown => [values.map(String), reason];

const isSample = (design: Design, { compiled }: Live): design is { readonly texts: Otherwise } =>
  'texts' in design && [...design.texts].every(([path, text]) => compiled.constant(path, text) !== undefined);

/** What a design gives with a program of its own; what doesn't change keeps the values of the one that stands. */
function computed(design: Design, { compiled, state }: Live, wanted: readonly string[]): Computed {
  const own = compiled.anew(documentOf(compiled.document, design));
  const run = carry(state, own.program).state;
  const slots = wanted.map((path) => own.program.slotOf.get(path));
  const values = slots.map((slot) => (slot === undefined ? Number.NaN : run.m[slot]!));
  const first = values.findIndex(Number.isNaN);
  if (first < 0) return { values, reason: '' };
  const [path, slot] = [wanted[first]!, slots[first]];
  const cause = slot === undefined ? undefined : causeOf(own, run, slot);
  return { values, reason: cause ?? `${path} has no value: nothing is typed there or nothing is known.` };
}

/** One axis for each path, which holds its present value in the samples that leave it. */
function axesOf(samples: readonly Otherwise[], { compiled, state }: Live): PlannedAxis[] {
  const paths = [...new Set(samples.flatMap((texts) => [...texts.keys()]))];
  return paths.map((path) => {
    const slot = typedSlot(path, compiled.program);
    const values = Float64Array.from(samples, (texts) => {
      const text = texts.get(path);
      return text === undefined ? state.m[slot]! : compiled.constant(path, text)!;
    });
    return { path, slot, values, choice: false };
  });
}
