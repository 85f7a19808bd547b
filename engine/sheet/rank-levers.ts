import type { SweepProgress } from '../terms/index';

/** A change this small beside the result itself is what is left over of solving, and counts as none. */
const NOTHING = 1e-7;

/** How far a change moves a result, SI; 0 for what solving leaves over; NaN where either has no answer. */
export function leverEffect({ columns, levers }: SweepProgress, wanted: number, change: number): number {
  const present = levers!.present[wanted]!;
  const effect = columns[wanted]![change]! - present;
  return Math.abs(effect) <= NOTHING * Math.abs(present) ? 0 : effect;
}

/** By how much a result moves for each unit that another one moves, SI; NaN where the other doesn't. */
export function leverRatio(progress: SweepProgress, wanted: number, per: number, change: number): number {
  const cost = leverEffect(progress, per, change);
  return cost === 0 ? Number.NaN : leverEffect(progress, wanted, change) / cost;
}

/** Places of the changes, that with the greatest effect first; those without an answer come last, in the order of the rows. */
export function rankLevers(progress: SweepProgress, wanted: number, per?: number): number[] {
  const size = progress.levers!.changes.map((_, k) =>
    Math.abs(per === undefined ? leverEffect(progress, wanted, k) : leverRatio(progress, wanted, per, k)),
  );
  const last = (value: number): number => (Number.isNaN(value) ? -1 : value);
  return [...size.keys()].sort((a, b) => last(size[b]!) - last(size[a]!));
}
