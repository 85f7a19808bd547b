import type { Program, Slot, Step } from './program';

/** Who writes what and who reads it, worked out once for a program. */
export interface Wiring {
  /** Per slot: the step that writes it, −1 for a constant. */
  readonly writer: Int32Array;
  /** Per step: the steps that it reads from whatever happens, each once. */
  readonly needs: readonly Int32Array[];
  /** Per step that picks: the steps that each of its groups comes from. */
  readonly groups: readonly (readonly Int32Array[] | undefined)[];
  /** The steps that have to run when these slots change, in computing order. */
  downstream(slots: Iterable<Slot>): Int32Array;
}

const known = new WeakMap<Program, Wiring>();

export function wiringOf(program: Program): Wiring {
  let wiring = known.get(program);
  if (!wiring) {
    wiring = wire(program);
    known.set(program, wiring);
  }
  return wiring;
}

function wire({ size, steps }: Program): Wiring {
  const writer = new Int32Array(size).fill(-1);
  for (const [k, step] of steps.entries()) for (const slot of step.writes) writer[slot] = k;
  const writersOf = (slots: Iterable<Slot>): Int32Array => {
    const writers = new Set<number>();
    for (const slot of slots) if (writer[slot]! >= 0) writers.add(writer[slot]!);
    return Int32Array.from(writers);
  };
  const needs = steps.map((step) => writersOf(step.picks ? [step.picks.by] : step.reads));
  const groups = steps.map((step) => step.picks?.groups.map(writersOf));
  return { writer, needs, groups, downstream: follower(size, steps) };
}

/** A slider asks for the same slot over and over, so the answer for a single slot is kept. */
function follower(size: number, steps: readonly Step[]): Wiring['downstream'] {
  const single = new Map<Slot, Int32Array>();
  const follow = (slots: readonly Slot[]): Int32Array => {
    const moved = new Uint8Array(size);
    for (const slot of slots) moved[slot] = 1;
    const found: number[] = [];
    for (const [k, step] of steps.entries()) {
      if (!step.reads.some((slot) => moved[slot] === 1)) continue;
      found.push(k);
      for (const slot of step.writes) moved[slot] = 1;
    }
    return Int32Array.from(found);
  };
  return (slots) => {
    const list = [...slots];
    if (list.length !== 1) return follow(list);
    const found = single.get(list[0]!) ?? follow(list);
    single.set(list[0]!, found);
    return found;
  };
}
