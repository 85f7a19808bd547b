import type { SweepProgress, SweepRequest } from '../protocol';
import type { SweepCell } from '../sheet/document';
import type { Live } from '../sheet/live';
import { axesOf, type PlannedAxis, typedSlot } from './axes';
import { planSweep, type SweepPlan } from './plan';
import { type PoolPorts, startPool } from './pool/pool';
import { type Running, type RunPorts, startRun } from './run-plan';
import { faultyProgress } from './sweep';

/** What the place where the engine runs has to lend it. */
export interface SweepPorts extends Omit<RunPorts, 'pool'> {
  /** Missing: everything is computed where the engine runs. */
  readonly pool?: PoolPorts;
}

/** What a sweep may be asked of: the design as it stands and, where there is one, its baseline. */
export interface Designs {
  readonly live: Live;
  readonly baseline: Live | undefined;
}

/** The sweeps of one engine: at most one run of each at a time. */
export interface Sweeps {
  run(designs: Designs, revision: number, request: SweepRequest, progress: (p: SweepProgress) => void): Promise<void>;
  stop(sweep: string): void;
  stopAll(): void;
}

export function startSweeps({ pool, ...ports }: SweepPorts): Sweeps {
  const runPorts: RunPorts = { ...ports, ...(pool && pool.size > 0 ? { pool: startPool(pool) } : {}) };
  /** The latest run of each request. */
  const latest = new Map<string, Running>();
  const stop = (key: string, superseded = true): void => {
    latest.get(key)?.stop(superseded);
    latest.delete(key);
  };

  return {
    async run({ live, baseline }, revision, { sweep, coarse, baseline: along }, progress) {
      const key = along ? `${sweep} ${along.join(' ')}` : sweep;
      stop(key);
      const design = along ? baseline : live;
      const planned = along ? planForBaseline(live, baseline, revision, sweep, along) : planFor(live, revision, sweep);
      if (typeof planned === 'string') {
        progress(faultyProgress(revision, sweep, planned));
        return;
      }
      const running = startRun(design!.compiled, planned, coarse ?? false, progress, runPorts);
      latest.set(key, running);
      try {
        await running.ended;
      } finally {
        if (latest.get(key) === running) latest.delete(key);
      }
    },
    stop(sweep) {
      for (const key of [...latest.keys()]) if (key === sweep || key.startsWith(`${sweep} `)) stop(key, false);
    },
    stopAll() {
      for (const key of [...latest.keys()]) stop(key);
    },
  };
}

/** The plan of a sweep cell, or the sentence that says why it can't run. */
export function planFor(live: Live, revision: number, sweep: string): SweepPlan | string {
  const found = findSweep(live, sweep);
  if (typeof found === 'string') return found;
  const { compiled, state } = live;
  const { axes, wanted } = found;
  return planSweep(compiled.program, { revision, sweep, values: state.m, why: state.why, axes, wanted });
}

/** The same of the baseline along some of the axes, over the values that the present sweep has there. */
function planForBaseline(
  live: Live,
  baseline: Live | undefined,
  revision: number,
  sweep: string,
  along: readonly string[],
): SweepPlan | string {
  if (!baseline) return 'There is no baseline to run it for.';
  const found = findSweep(live, sweep);
  if (typeof found === 'string') return found;
  const strange = along.find((path) => found.axes.every((axis) => axis.path !== path));
  if (strange !== undefined) {
    const known = found.axes.map((axis) => axis.path).join(', ');
    return `${sweep} does not run along ${strange}. It runs along ${known}.`;
  }
  const { compiled, state } = baseline;
  const axes = found.axes
    .filter((axis) => along.includes(axis.path))
    .map((axis) => ({ ...axis, slot: typedSlot(axis.path, compiled.program) }));
  const { wanted } = found;
  return planSweep(compiled.program, { revision, sweep, values: state.m, why: state.why, axes, wanted });
}

interface FoundSweep {
  readonly axes: readonly PlannedAxis[];
  readonly wanted: readonly string[];
}

/** A sweep of the design with the values along its axes, or the sentence that says why it can't run. */
function findSweep({ compiled, state }: Live, sweep: string): FoundSweep | string {
  const { document, program, names, faults } = compiled;
  const cell = document.cells.find((each): each is SweepCell => each.kind === 'sweep' && each.name === sweep);
  if (!cell) {
    const known = document.cells.filter((each) => each.kind === 'sweep').map((each) => each.name);
    return `There is no sweep called "${sweep}". ${known.length === 0 ? 'This sheet has none.' : `The sweeps are ${known.join(', ')}.`}`;
  }
  const fault = faults.find((each) => each.cell === cell.id);
  if (fault) return fault.message;
  const optionsOf = new Map(names.map((name) => [name.path, name.options]));
  const axes = axesOf(cell, program, state.m, (path) => optionsOf.get(path));
  return axes.ok ? { axes: axes.axes, wanted: cell.wanted } : axes.message;
}
