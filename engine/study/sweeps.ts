import type { SweepProgress, SweepRequest } from '../protocol';
import type { SweepCell } from '../sheet/document';
import type { Live } from '../sheet/live';
import { axesOf } from './axes';
import { planSweep, type SweepPlan } from './plan';
import { CHUNK, startRunner } from './run';
import { faultyProgress, startGathering } from './sweep';

/** How long it computes before it lets messages in, and how long it may stay silent. */
const TURN_MS = 8;
const SILENCE_MS = 40;

/** What the place where the engine runs has to lend it. */
export interface SweepPorts {
  /** Lets waiting messages in: a newer edit stops a sweep between two of its chunks. */
  pause(): Promise<void>;
  /** Milliseconds. */
  now(): number;
}

/** The sweeps of one engine: at most one run of each at a time. */
export interface Sweeps {
  run(live: Live, revision: number, request: SweepRequest, progress: (p: SweepProgress) => void): Promise<void>;
  stop(sweep: string): void;
  stopAll(): void;
}

export function startSweeps({ pause, now }: SweepPorts): Sweeps {
  /** The latest run of each sweep; one that isn't here any more stops. */
  const latest = new Map<string, object>();

  async function runPlan(plan: SweepPlan, live: Live, coarse: boolean, progress: (p: SweepProgress) => void) {
    const run = {};
    latest.set(plan.sweep, run);
    const runner = startRunner(live.compiled, plan);
    const gathering = startGathering(plan);
    const end = coarse ? plan.coarse : plan.order.length;
    let told = now();
    let turn = told;
    for (let from = 0; from < end; from += CHUNK) {
      gathering.take(runner.run(from, Math.min(from + CHUNK, end)));
      if (now() - turn < TURN_MS) continue;
      if (now() - told >= SILENCE_MS) {
        progress(gathering.progress('running'));
        told = now();
      }
      await pause();
      if (latest.get(plan.sweep) !== run) {
        runner.finish();
        progress(gathering.progress('stopped'));
        return;
      }
      turn = now();
    }
    runner.finish();
    latest.delete(plan.sweep);
    progress(gathering.progress('done'));
  }

  return {
    async run(live, revision, { sweep, coarse }, progress) {
      latest.delete(sweep);
      const planned = planFor(live, revision, sweep);
      if (typeof planned === 'string') progress(faultyProgress(revision, sweep, planned));
      else await runPlan(planned, live, coarse ?? false, progress);
    },
    stop: (sweep) => {
      latest.delete(sweep);
    },
    stopAll: () => latest.clear(),
  };
}

/** The plan of a sweep cell, or the sentence that says why it can't run. */
export function planFor({ compiled, state }: Live, revision: number, sweep: string): SweepPlan | string {
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
  if (!axes.ok) return axes.message;
  const { wanted } = cell;
  return planSweep(program, { revision, sweep, values: state.m, why: state.why, axes: axes.axes, wanted });
}
