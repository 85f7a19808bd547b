import type { Program, Slot } from '../../sheet/program';

/** What differs from sample to sample, ready to run. */
export interface PlannedAxis {
  readonly path: string;
  readonly slot: Slot;
  /** SI, or indices of options. */
  readonly values: Float64Array;
  readonly choice: boolean;
  /** What its numbers follow from, where that is shorter than `values`. */
  readonly restsOn?: readonly number[];
}

/** Where what is typed at a path goes: a field may share its name with the result that repeats it. */
export const typedSlot = (path: string, program: Program): Slot =>
  program.constants.get(path) ??
  program.steps.find((step) => step.kind === 'formula' && step.path === path)?.writes[0] ??
  program.slotOf.get(path)!;
