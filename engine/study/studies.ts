import type { SweepCell } from '../sheet/document';
import type { Live } from '../sheet/live';
import type { SweepProgress } from '../terms/index';
import { findStudy } from './kinds/find';
import { type Plan, studyKinds } from './kinds/index';
import { type PoolPorts, startPool } from './pool/pool';
import { type Dependence, dependenceOf, sameDependence } from './run/depends';
import { faultyProgress, type Gathered, type Gathering } from './run/gathering';
import { settledPlan } from './run/settled-plan';
import { type Running, type RunPorts, startRun } from './start-run';
import { planForBaseline } from './sweep/plan';
import type { SweepRequest } from './told';

/** What the place where the engine runs has to lend it. */
export interface StudyPorts extends Omit<RunPorts, 'pool'> {
  /** Missing: everything is computed where the engine runs. */
  readonly pool?: PoolPorts;
}

/** What a study may be asked of: the design as it stands and, where there is one, its baseline. */
interface Designs {
  readonly live: Live;
  readonly baseline: Live | undefined;
}

/** The studies of one engine: at most one run of each at a time. */
export interface Studies {
  run(designs: Designs, revision: number, request: SweepRequest, progress: (p: SweepProgress) => void): Promise<void>;
  stop(sweep: string): void;
  stopAll(): void;
  /** All rows of a study of this revision that has been computed to its end; undefined where there are none. */
  rows(sweep: string, revision: number): Gathered | undefined;
}

/** A study that has been computed to its end. */
interface Done {
  /** Undefined: it depends on more than can be compared. */
  readonly dependence: Dependence | undefined;
  readonly gathering: Gathering;
  /** Of the last design that it answered for. */
  revision: number;
}

export function startStudies({ pool, ...ports }: StudyPorts): Studies {
  const runPorts: RunPorts = { ...ports, ...(pool && pool.size > 0 ? { pool: startPool(pool) } : {}) };
  /** The latest run of each request, and what the latest whole one gave. */
  const latest = new Map<string, Running>();
  const whole = new Map<string, Done>();
  const stop = (key: string, superseded = true): void => {
    latest.get(key)?.stop(superseded);
    latest.delete(key);
  };

  /** What is there already for this plan, as if it had been computed anew: an edit may have nothing to do with it. */
  function known(key: string, plan: Plan, dependence: Dependence | undefined): Gathering | undefined {
    const done = whole.get(key);
    if (!done?.dependence || !dependence || !sameDependence(done.dependence, dependence)) return undefined;
    done.revision = plan.revision;
    return done.gathering;
  }

  return {
    async run({ live, baseline }, revision, { sweep, coarse, baseline: along, variant = '' }, progress) {
      const key = along ? `${sweep} ${along.join(' ')} ${variant}` : sweep;
      stop(key);
      const planned = along
        ? besidePlan({ live, baseline }, revision, sweep, along, variant)
        : settledPlan(live, revision, sweep);
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

/** For the baseline, or for a variant that takes its place. */
function besidePlan(
  { live, baseline }: Designs,
  revision: number,
  name: string,
  along: readonly string[],
  variant: string,
): Plan | string {
  if (variant !== '' && !baseline) return `There is no variant called “${variant}” on the charts.`;
  const cell = findStudy<SweepCell>(live, studyKinds.trial_series, name);
  return typeof cell === 'string' ? cell : planForBaseline(cell, live, baseline, revision, along);
}
