import type { Live } from '../../sheet/live';
import type { PlannedAxis } from '../run/axis';
import { cone } from '../run/cone';
import { fillTogether } from '../run/fill';
import { planCore } from '../run/plan';
import { CHUNK, startRunner } from '../run/runner';
import type { BestPlan, Limit } from './plan';
import type { TriedDesign } from './told';

/** What flying a design gave: what it is, and what keeps it out. */
export interface Flown extends TriedDesign {
  /** Why it has no answer; '' where it has one. */
  readonly reason: string;
  /** Paths of the limits that it breaks. */
  readonly breaks: readonly string[];
}

/** Designs along the axes of a plan, flown side by side. */
export type Flight = { readonly axes: readonly PlannedAxis[] };

/** As many at a time as share the calls of a step. */
export const TOGETHER = CHUNK;

const pathsOf = ({ path, low, high }: Limit): readonly string[] =>
  [path, low, high].filter((each) => each !== undefined);

/** What is read off each design. */
interface ReadOff {
  /** Paths of what is wanted. */
  readonly goals: readonly string[];
  readonly limits: readonly Limit[];
  readonly wanted: readonly string[];
}

/** Flies the design at other places along the axes, everything else as it is. */
export function flierAlong(
  { compiled, state }: Live,
  { cell, axes: planned }: BestPlan,
  { goals, limits, wanted }: ReadOff,
) {
  const axes = planned.map((axis) => ({ ...axis, values: new Float64Array(TOGETHER) }));
  const paths = [...new Set([...goals, ...limits.flatMap(pathsOf), ...wanted])];
  const column = new Map(paths.map((path, w) => [path, w]));
  const start = { revision: 0, name: cell.name, values: state.m, why: state.why };
  const plan = { kind: 'best_compromises', ...planCore(compiled.program, start, axes, paths), axes, key: '' };
  const runner = startRunner(compiled, plan, fillTogether(plan));
  /** What has to have an answer: a result that the design stops for may be one that it doesn't ask for. */
  const needed = [...goals, ...limits.filter(({ least }) => least === undefined).flatMap(pathsOf)];
  return {
    /** At most TOGETHER of them. */
    at(places: readonly (readonly number[])[]): readonly Flown[] {
      for (const [a, { values }] of axes.entries()) for (const [k, place] of places.entries()) values[k] = place[a]!;
      const rows = runner.run(Uint32Array.from(places, (_, k) => k));
      return places.map((at, k): Flown => {
        const value = (path: string): number => rows.columns[column.get(path)!]![k]!;
        const lacks = needed.some((path) => Number.isNaN(value(path)));
        return {
          at,
          goals: goals.map(value),
          others: wanted.map(value),
          reason: lacks ? rows.sentences[rows.why[k]! - 1]! : '',
          breaks: lacks ? [] : limits.filter((limit) => !keeps(limit, value)).map(({ path }) => path),
        };
      });
    },
    finish: runner.finish,
  };
}

/** Whether a limit takes long to look at: a slow piece stands between the axes and it. */
export function isSlow(limit: Limit, { compiled: { program } }: Live, { axes }: BestPlan): boolean {
  const slots = pathsOf(limit).map((path) => program.slotOf.get(path)!);
  const steps = cone(
    program,
    axes.map(({ slot }) => slot),
    slots,
  );
  return steps.some((step) => program.steps[step]!.slow === true);
}

function keeps({ path, low, high, least }: Limit, value: (path: string) => number): boolean {
  const now = value(path);
  if (low !== undefined && now < value(low)) return false;
  if (high !== undefined && now > value(high)) return false;
  return least === undefined || !(now < least);
}
