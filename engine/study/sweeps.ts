import type { LeversCell, SpreadCell, SweepCell } from '../sheet/document';
import type { Live } from '../sheet/live';
import type { SweepProgress } from '../terms/index';
import { axesOf, type PlannedAxis, typedSlot } from './axes';
import { type Dependence, dependenceOf, sameDependence } from './depends';
import { planLevers } from './levers';
import { planSweep, type SweepPlan } from './plan';
import { type PoolPorts, startPool } from './pool/pool';
import { type Running, type RunPorts, startRun } from './run-plan';
import { planSpread } from './spread';
import { inputsOf } from './spread-inputs';
import { faultyProgress, type Gathered, type Gathering } from './sweep';
import type { SweepRequest } from './told';

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
  /** All rows of a sweep of this revision that has been computed to its end; undefined where there are none. */
  rows(sweep: string, revision: number): Gathered | undefined;
}

/** A sweep that has been computed to its end. */
interface Done {
  /** Undefined: it depends on more than can be compared. */
  readonly dependence: Dependence | undefined;
  readonly gathering: Gathering;
  /** Of the last design that it answered for. */
  revision: number;
}

export function startSweeps({ pool, ...ports }: SweepPorts): Sweeps {
  const runPorts: RunPorts = { ...ports, ...(pool && pool.size > 0 ? { pool: startPool(pool) } : {}) };
  /** The latest run of each request, and what the latest whole one gave. */
  const latest = new Map<string, Running>();
  const whole = new Map<string, Done>();
  const stop = (key: string, superseded = true): void => {
    latest.get(key)?.stop(superseded);
    latest.delete(key);
  };

  /** What is there already for this plan, as if it had been computed anew: an edit may have nothing to do with it. */
  function known(key: string, plan: SweepPlan, dependence: Dependence | undefined): Gathering | undefined {
    const done = whole.get(key);
    if (!done?.dependence || !dependence || !sameDependence(done.dependence, dependence)) return undefined;
    done.revision = plan.revision;
    return done.gathering;
  }

  return {
    async run({ live, baseline }, revision, { sweep, coarse, baseline: along }, progress) {
      const key = along ? `${sweep} ${along.join(' ')}` : sweep;
      stop(key);
      const planned = along ? planForBaseline(live, baseline, revision, sweep, along) : planFor(live, revision, sweep);
      if (typeof planned === 'string') {
        whole.delete(key);
        progress(faultyProgress(revision, sweep, planned));
        return;
      }
      const { compiled } = along ? baseline! : live;
      const dependence = dependenceOf(compiled.program, planned, compiled.document.units);
      const before = known(key, planned, dependence);
      if (before) {
        progress({ ...before.progress('done'), revision });
        return;
      }
      // Its rows answer for no design any more, and the new ones want their room.
      if (!coarse) whole.delete(key);
      const running = startRun(compiled, planned, coarse ?? false, progress, runPorts);
      latest.set(key, running);
      try {
        const gathering = await running.ended;
        if (gathering && !coarse) whole.set(key, { dependence, gathering, revision });
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
    rows(sweep, revision) {
      const done = whole.get(sweep);
      return done?.revision === revision ? done.gathering.rows : undefined;
    },
  };
}

/** The plan of a sweep cell, or the sentence that says why it can't run. */
export function planFor(live: Live, revision: number, sweep: string): SweepPlan | string {
  if (spreadIn(live, sweep)) return planForSpread(live, revision, sweep);
  if (live.compiled.document.cells.some((each) => each.kind === 'levers' && each.name === sweep)) {
    const levers = leversIn(live, sweep);
    return typeof levers === 'string' ? levers : planLevers(levers, live, revision);
  }
  const found = findSweep(live, sweep);
  if (typeof found === 'string') return found;
  const { compiled, state } = live;
  const { axes, wanted } = found;
  return planSweep(compiled.program, { revision, sweep, values: state.m, why: state.why, axes, wanted });
}

/** The plan of a spread cell, or the sentence that says why it can't run. */
export function planForSpread(
  live: Live,
  revision: number,
  spread: string,
  asked: Partial<Pick<SpreadCell, 'samples' | 'seed'>> = {},
): SweepPlan | string {
  const found = spreadIn(live, spread);
  const cell = found && { ...found, ...asked };
  if (!cell) {
    const known = live.compiled.document.cells.filter((each) => each.kind === 'spread').map((each) => each.name);
    return `There is no spread called "${spread}". ${known.length === 0 ? 'This sheet has none.' : `The spreads are ${known.join(', ')}.`}`;
  }
  const fault = live.compiled.faults.find((each) => each.cell === cell.id);
  if (fault) return fault.message;
  const inputs = inputsOf(cell, live);
  if (typeof inputs === 'string') return inputs;
  const { wanted, samples, seed } = cell;
  return planSpread(live, { revision, spread, inputs, wanted, samples, seed });
}

const spreadIn = ({ compiled }: Live, name: string): SpreadCell | undefined =>
  compiled.document.cells.find((each): each is SpreadCell => each.kind === 'spread' && each.name === name);

/** The levers of this name, or the sentence that says why they can't be tried. */
export function leversIn({ compiled }: Live, name: string): LeversCell | string {
  const all = compiled.document.cells.filter((each): each is LeversCell => each.kind === 'levers');
  const cell = all.find((each) => each.name === name);
  if (!cell) {
    const known = all.map((each) => each.name);
    return `There are no levers called "${name}". ${known.length === 0 ? 'This sheet has none.' : `The levers are ${known.join(', ')}.`}`;
  }
  return compiled.faults.find((each) => each.cell === cell.id)?.message ?? cell;
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
