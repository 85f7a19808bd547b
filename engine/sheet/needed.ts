import type { Program } from './program';
import { wiringOf } from './wiring';

/** Per step: 1 for these steps and for all that they are computed from. */
export function neededFor(program: Program, shown: Iterable<number>): Uint8Array {
  const { steps } = program;
  const { writer } = wiringOf(program);
  const needed = new Uint8Array(steps.length);
  for (const k of shown) needed[k] = 1;
  for (let k = steps.length - 1; k >= 0; k--) {
    if (needed[k] === 0) continue;
    for (const slot of steps[k]!.reads) if (writer[slot]! >= 0) needed[writer[slot]!] = 1;
  }
  return needed;
}
