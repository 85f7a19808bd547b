import type { Fault } from '../terms/index';
import type { Bench } from './bench';
import { calledIn, waits } from './called';
import type { Compiled } from './compile';
import type { State } from './evaluate';
import { named, withTitles } from './named';
import { SETTLED, WAITS } from './program';
import { cellsOf } from './sheets';

/** Why step k has no answer for sample i, as sentences; undefined where it has one. */
export function faultOf(compiled: Compiled, bench: Bench, k: number, i = 0): Fault | undefined {
  const why = bench.why[k * bench.stride + i]!;
  const step = compiled.program.steps[k]!;
  if (why === SETTLED) return undefined;
  if (why >= WAITS) {
    const cause = compiled.program.steps[why - WAITS]!;
    const called = calledIn(compiled);
    const waitsTitle = called(cause.path);
    const message = withTitles(`${named(step.path)} ${waits(called(step.path))} for ${named(cause.path)}.`, called);
    return { cell: step.cell, path: step.path, state: 'waits', waitsFor: cause.path, waitsTitle, message };
  }
  const told = compiled.tell[k]!(why - 1, (slot) => bench.m[bench.column(slot) + i]!);
  return { cell: step.cell, state: 'fault', ...told };
}

/** Everything that is wrong or waits in one design, in the order of the page. What is behind has no say: nobody knows it yet. */
export function faultsOf(compiled: Compiled, state: State): Fault[] {
  const faults = [...compiled.faults];
  for (let k = 0; k < compiled.program.steps.length; k++) {
    if (state.behind[k] === 1) continue;
    const fault = faultOf(compiled, state, k);
    // The numbers of a choice wait for what is picked in the same place: that is said once.
    if (fault && fault.waitsFor !== fault.path) faults.push(fault);
  }
  const order = new Map(cellsOf(compiled.document).map((cell, k) => [cell.id, k]));
  const placeOf = (fault: Fault): number => order.get(fault.cell) ?? -1;
  return faults.sort((a, b) => placeOf(a) - placeOf(b));
}
