import type { Program, Slot } from '../../sheet/program';
import type { PlannedAxis } from './axis';
import { cone } from './cone';

/** Samples as plain data: whoever holds the same program can run any of them and gets the same numbers. */
export interface PlanOf<K extends string> {
  /** Which kind of study fills its samples. */
  readonly kind: K;
  /** Of the program whose slots are meant. */
  readonly shape: string;
  readonly revision: number;
  /** What the study is called. */
  readonly name: string;
  /** Every slot of the design that it starts from, and per step why it has no answer there. */
  readonly base: Float64Array;
  readonly why: Uint16Array;
  readonly axes: readonly PlannedAxis[];
  readonly wanted: readonly { readonly path: string; readonly slot: Slot }[];
  /** What its samples follow from beside its axes. */
  readonly key: string;
  /** Steps to run for each sample, in computing order. */
  readonly each: Int32Array;
  /** Samples in the order of computing, the coarse ones first. */
  readonly order: Uint32Array;
  readonly coarse: number;
}

/** A plan without its order: whoever runs it is told which samples are wanted. */
export type Orderless<P extends PlanOf<string> = PlanOf<string>> = Omit<P, 'order' | 'coarse'>;

/** The design that a plan starts from. */
export interface Start {
  readonly revision: number;
  readonly name: string;
  readonly values: Float64Array;
  readonly why: Uint16Array;
}

/** What every kind of plan has: the wanted slots, and the steps between the axes and them. */
export function planCore(
  program: Program,
  { revision, name, values, why }: Start,
  axes: readonly PlannedAxis[],
  paths: readonly string[],
) {
  const wanted = paths.map((path) => ({ path, slot: program.slotOf.get(path)! }));
  return {
    ...{ shape: program.shape, revision, name, wanted },
    base: values.slice(0, program.size),
    why: why.slice(0, program.steps.length),
    each: cone(
      program,
      axes.map(({ slot }) => slot),
      wanted.map(({ slot }) => slot),
    ),
  };
}
