import type { Program, Slot } from '../../sheet/program';

/**
 * The steps that a sweep has to run: downstream of its axes and upstream of its wanted slots, in computing order.
 * A step whose only writes are axis slots is left out: the axis takes the place of its formula.
 */
export function cone(program: Program, axes: readonly Slot[], wanted: readonly Slot[]): Int32Array {
  const swept = new Set(axes);
  const moves = downstream(program, swept);
  const needed = new Uint8Array(program.size);
  for (const slot of wanted) needed[slot] = 1;
  const chosen: number[] = [];
  for (let k = program.steps.length - 1; k >= 0; k--) {
    if (!moves[k]) continue;
    const step = program.steps[k]!;
    if (!step.writes.some((slot) => needed[slot] === 1 && !swept.has(slot))) continue;
    for (const slot of step.reads) needed[slot] = 1;
    chosen.push(k);
  }
  return Int32Array.from(chosen.reverse());
}

function downstream(program: Program, swept: ReadonlySet<Slot>): Uint8Array {
  const dirty = new Uint8Array(program.size);
  for (const slot of swept) dirty[slot] = 1;
  const moves = new Uint8Array(program.steps.length);
  for (const [k, step] of program.steps.entries()) {
    if (!step.reads.some((slot) => dirty[slot] === 1)) continue;
    if (step.writes.every((slot) => swept.has(slot))) continue;
    moves[k] = 1;
    for (const slot of step.writes) dirty[slot] = 1;
  }
  return moves;
}
