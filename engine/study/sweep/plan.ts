import type { SweepCell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { allNamed, named, quoted } from '../../sheet/named';
import type { Program } from '../../sheet/program';
import { type PlannedAxis, typedSlot } from '../run/axis';
import { type PlanOf, planCore, type Start } from '../run/plan';
import { titled } from '../run/titled';
import { axesOf } from './axes';
import { lattice } from './lattice';

export type SweepPlan = PlanOf<'trial_series'>;

interface PlanInput extends Start {
  readonly axes: readonly PlannedAxis[];
  readonly wanted: readonly string[];
}

/** Every value of every axis with every value of the others. */
function planGrid(program: Program, { axes, wanted, ...start }: PlanInput): SweepPlan {
  const { order, coarse } = lattice(
    axes.map((axis) => axis.values.length),
    axes.map((axis) => axis.choice),
  );
  return { kind: 'trial_series', ...planCore(program, start, axes, wanted), axes, key: '', order, coarse };
}

export function planSweep(cell: SweepCell, live: Live, revision: number): SweepPlan | string {
  const axes = axesIn(cell, live);
  if (typeof axes === 'string') return axes;
  const { state, compiled } = live;
  const { name, wanted } = cell;
  return planGrid(compiled.program, { revision, name, values: state.m, why: state.why, axes, wanted });
}

/** The same of the baseline along some of the axes, over the values that the present sweep has there. */
export function planForBaseline(
  cell: SweepCell,
  live: Live,
  baseline: Live | undefined,
  revision: number,
  along: readonly string[],
): SweepPlan | string {
  if (!baseline) return 'There is no baseline to run it for.';
  const found = axesIn(cell, live);
  if (typeof found === 'string') return found;
  const strange = along.find((path) => found.every((axis) => axis.path !== path));
  const { name, wanted } = cell;
  if (strange !== undefined) {
    return titled(
      `${named(name)} does not run along ${quoted(strange)}. It runs along ${allNamed(found.map((axis) => axis.path))}.`,
      live,
    );
  }
  const { compiled, state } = baseline;
  const axes = found
    .filter((axis) => along.includes(axis.path))
    .map((axis) => ({ ...axis, slot: typedSlot(axis.path, compiled.program) }));
  return planGrid(compiled.program, { revision, name, values: state.m, why: state.why, axes, wanted });
}

/** The values along its axes for the design as it stands. */
function axesIn(cell: SweepCell, live: Live): readonly PlannedAxis[] | string {
  const { compiled, state } = live;
  const optionsOf = new Map(compiled.names.map((name) => [name.path, name.options]));
  const axes = axesOf(cell, compiled.program, state.m, (path) => optionsOf.get(path));
  return axes.ok ? axes.axes : titled(axes.message, live);
}
