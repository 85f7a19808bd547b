import type { Document, SweepCell } from '../../engine/sheet/document';
import { openText } from '../../engine/sheet/file';
import { openLive } from '../../engine/sheet/live';
import { cellsOf } from '../../engine/sheet/sheets';
import { library } from '../../engine/study/index';
import { planFor, runnerOf } from '../../engine/study/kinds/index';
import demo from '../designs/quern.tetherwright.json?raw';
import { onOneSheet } from '../engine/sheet/one-sheet';

/** Engine station, line length and tip weight move the whole of parts, balance and flight. */
const SWEEP: SweepCell = {
  kind: 'trial_series',
  id: 'speed',
  name: 'speed',
  title: '',
  axes: [
    { of: 'engine_station', low: '', high: '', count: 16 },
    { of: 'line_length', low: '', high: '', count: 20 },
  ],
  wanted: ['balance.cg_x', 'flight.speed', 'flight.pull', 'flight.nose_out', 'flight.drag'],
};
/** What is made before it counts, so that the code has been compiled to its last form. */
const WARM = 40;
const ROUNDS = 15;

/**
 * Bytes of heap that a design leaves behind in a sweep with the whole flight: the least of three medians over some runs of the same designs.
 * A run in which the heap was swept does not move a median, nor one in which code is compiled once more the least of them.
 */
export function measureAllocation(): number {
  const opened = openText(demo);
  if (!opened.ok) throw new Error(opened.message);
  const sheets = onOneSheet([...cellsOf(opened.document), SWEEP]);
  const document: Document = { ...opened.document, sheets };
  const live = openLive(document, library);
  const plan = planFor(live, 0, SWEEP.name);
  if (typeof plan === 'string') throw new Error(plan);
  const runner = runnerOf(live.compiled, plan);
  for (let k = 0; k < WARM; k++) runner.run(plan.order);
  const median = (): number => {
    const taken: number[] = [];
    for (let k = 0; k < ROUNDS; k++) {
      const before = process.memoryUsage().heapUsed;
      runner.run(plan.order);
      taken.push((process.memoryUsage().heapUsed - before) / plan.order.length);
    }
    return taken.sort((a, b) => a - b)[ROUNDS >> 1]!;
  };
  const least = Math.min(median(), median(), median());
  runner.finish();
  return least;
}
