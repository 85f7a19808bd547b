import type { Program, Slot } from '../../sheet/program';

/** Every slot that the number in a slot follows from, itself among them. */
export function restsOn({ steps }: Program, slot: Slot): ReadonlySet<Slot> {
  const needed = new Set([slot]);
  for (const step of steps.toReversed()) {
    if (step.writes.some((each) => needed.has(each))) for (const each of step.reads) needed.add(each);
  }
  return needed;
}

/** Every slot whose number follows from the one in a slot, itself among them. */
export function followsFrom({ steps }: Program, slot: Slot): ReadonlySet<Slot> {
  const moved = new Set([slot]);
  for (const step of steps) {
    if (step.reads.some((each) => moved.has(each))) for (const each of step.writes) moved.add(each);
  }
  return moved;
}
