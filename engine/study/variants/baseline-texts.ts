import { isCompared } from '../../sheet/baseline';
import type { Live } from '../../sheet/live';
import { textAt } from '../../sheet/paths';
import { type PlannedAxis, typedSlot } from '../run/axis';
import { cone } from '../run/cone';
import { fillTogether } from '../run/fill';
import { planCore } from '../run/plan';
import { startRunner } from '../run/runner';

/** Texts that a design has otherwise than the one that stands. */
export type Otherwise = ReadonlyMap<string, string>;

/**
 * The texts of a baseline that is made of the same pieces. A field that has been given the name of a variable since, with the
 * number that it had, is no other: it is left out, so that what is told is what was changed, and not how it is typed.
 */
export function baselineTexts(live: Live): Otherwise {
  const { document } = live.compiled;
  const all = Object.entries(document.baseline ?? {}).filter(
    ([path, text]) => isCompared(document, path) && (textAt(document, path) ?? text) !== text,
  );
  const texts = new Map(all);
  for (const path of linksOnly(live, all)) texts.delete(path);
  return texts;
}

type Texts = readonly (readonly [path: string, text: string])[];

/** Paths at which the formula of today gives, in the baseline, the number that was typed then. */
function linksOnly(live: Live, texts: Texts): readonly string[] {
  const { compiled } = live;
  const { program } = compiled;
  const numbers = new Map<string, number>();
  const axes: PlannedAxis[] = [];
  for (const [path, text] of texts) {
    const value = compiled.constant(path, text);
    const slot = typedSlot(path, program);
    if (value !== undefined) axes.push({ path, slot, values: Float64Array.of(value), choice: false });
    else if (!program.constants.has(path)) {
      const reading = compiled.read(path, text);
      if (reading?.is === 'constant') numbers.set(path, reading.value);
    }
  }
  const paths = [...numbers.keys()];
  if (paths.length === 0) return [];
  const wanted = paths.map((path) => ({ path, slot: typedSlot(path, program) }));
  const found = valuesAt(live, axes, wanted);
  return paths.filter((path, k) => Object.is(numbers.get(path), found[k]));
}

type Wanted = ReturnType<typeof planCore>['wanted'];

/** What stands at these places with other constants in the design. */
function valuesAt({ compiled, state }: Live, axes: readonly PlannedAxis[], wanted: Wanted): readonly number[] {
  const start = { revision: 0, name: '', values: state.m, why: state.why };
  const core = { ...planCore(compiled.program, start, axes, []), wanted };
  const slots = axes.map(({ slot }) => slot);
  const each = cone(
    compiled.program,
    slots,
    wanted.map(({ slot }) => slot),
  );
  const plan = { kind: 'variants', ...core, each, axes, key: '' };
  const runner = startRunner(compiled, plan, fillTogether(plan));
  const { columns } = runner.run(Uint32Array.of(0));
  runner.finish();
  return columns.map((column) => column[0]!);
}
