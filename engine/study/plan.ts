import type { Program, Slot } from '../sheet/program';
import type { LeversTold } from '../terms/index';
import type { PlannedAxis } from './axes';
import { cone } from './cone';
import { lattice } from './lattice';
import type { Mixed } from './mixed';

/** A sweep as plain data: whoever holds the same program can run any samples of it and gets the same numbers. */
export interface SweepPlan {
  /** Of the program whose slots are meant. */
  readonly shape: string;
  readonly revision: number;
  readonly sweep: string;
  /** Every slot of the design that the sweep starts from, and per step why it has no answer there. */
  readonly base: Float64Array;
  readonly why: Uint16Array;
  readonly axes: readonly PlannedAxis[];
  readonly wanted: readonly { readonly path: string; readonly slot: Slot }[];
  /** A spread: each sample takes its own value of every axis, instead of every value of one with every value of the others. */
  readonly mixed?: Mixed;
  /** Levers: sample k takes value k of every axis; what it changes, and what the results are without a change. */
  readonly levers?: LeversTold;
  /** The axes go together: sample k takes value k of every axis. */
  readonly together?: boolean;
  /** Steps to run for each sample, in computing order. */
  readonly each: Int32Array;
  /** Samples in the order of computing, the coarse lattice first. */
  readonly order: Uint32Array;
  readonly coarse: number;
}

export interface PlanInput {
  readonly revision: number;
  readonly sweep: string;
  readonly values: Float64Array;
  readonly why: Uint16Array;
  readonly axes: readonly PlannedAxis[];
  readonly wanted: readonly string[];
}

export function planSweep(program: Program, input: PlanInput): SweepPlan {
  const { revision, sweep, values, why, axes } = input;
  const wanted = input.wanted.map((path) => ({ path, slot: program.slotOf.get(path)! }));
  const { order, coarse } = lattice(
    axes.map((axis) => axis.values.length),
    axes.map((axis) => axis.choice),
  );
  return {
    shape: program.shape,
    revision,
    sweep,
    base: values.slice(),
    why: why.slice(),
    axes,
    wanted,
    each: cone(
      program,
      axes.map((axis) => axis.slot),
      wanted.map(({ slot }) => slot),
    ),
    order,
    coarse,
  };
}
