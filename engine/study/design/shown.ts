import { catchUp, isBehind } from '../../sheet/evaluate';
import type { Live } from '../../sheet/live';
import { neededFor } from '../../sheet/needed';
import type { Program, Slot } from '../../sheet/program';
import { wiringOf } from '../../sheet/wiring';
import type { Shown } from '../told';

/** The steps that give what is shown. */
export function stepsShown({ compiled }: Live, { cells, paths }: Shown): number[] {
  const { program } = compiled;
  const here = new Set(cells);
  const own = [...program.steps.keys()].filter((k) => here.has(program.steps[k]!.cell));
  return [
    ...own,
    ...writersOf(
      program,
      paths.flatMap((path) => program.slotOf.get(path) ?? []),
    ),
  ];
}

/** Computes what was left behind of these slots, of these pieces, and of all that they rest on. */
export function settleFor(live: Live, slots: Iterable<Slot>, cells: readonly string[] = []): void {
  if (!isBehind(live.state)) return;
  const { program } = live.compiled;
  const asked = [...stepsShown(live, { cells, paths: [] }), ...writersOf(program, slots)];
  catchUp(live.state, neededFor(program, asked));
}

/** Values of every slot with NaN in what is behind, and those slots. */
export function valuesOf({ state }: Live): { readonly values: Float64Array; readonly behind?: Int32Array } {
  const values = state.m.slice();
  if (!isBehind(state)) return { values };
  const behind = state.program.steps.flatMap(({ writes }, k) => (state.behind[k] === 1 ? writes : []));
  for (const slot of behind) values[slot] = Number.NaN;
  return { values, behind: Int32Array.from(behind) };
}

function writersOf(program: Program, slots: Iterable<Slot>): number[] {
  const { writer } = wiringOf(program);
  return [...slots].map((slot) => writer[slot]!).filter((k) => k >= 0);
}
