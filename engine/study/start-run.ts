import type { Compiled } from '../sheet/compile';
import type { SweepProgress } from '../terms/index';
import { gatheringOf, type Plan, runnerOf } from './kinds/index';
import { type Chunk, startChunks } from './pool/chunks';
import type { Joined, Pool } from './pool/pool';
import type { Gathering } from './run/gathering';
import { CHUNK, type Rows } from './run/runner';

/** How long it computes before it lets messages in, and how long it may stay silent. */
const TURN_MS = 8;
const SILENCE_MS = 40;
/** News of many rows is copied, which may take no more than this share of the time. */
const NEWS_SHARE = 1 / 8;
/** Less than this isn't worth sending away. */
const WORTH_SENDING_MS = 20;
/** A first guess of the time left means little. */
const FIRST_GUESS_MS = 200;
/** So many workers may be lost over one chunk: the next would be lost too. */
const MOST_LOST = 2;

export interface RunPorts {
  /** Lets waiting messages in: a newer edit stops a sweep between two of its chunks. */
  pause(): Promise<void>;
  /** Milliseconds. */
  now(): number;
  readonly pool?: Pool;
}

export interface Running {
  /** The last news has been told. Gives all that it was asked for, nothing where it didn't come to its end. */
  readonly ended: Promise<Gathering | undefined>;
  /** `superseded`: nobody will look at its rows any more, so they aren't copied for the last news. */
  stop(superseded: boolean): void;
}

/**
 * Runs a plan, here and in the pool. Computing begins here; when it turns out to be worth it, samplers are asked, and as soon
 * as one of them is ready, what is left is theirs.
 */
export function startRun(
  compiled: Compiled,
  plan: Plan,
  coarse: boolean,
  progress: (p: SweepProgress) => void,
  { pause, now, pool }: RunPorts,
): Running {
  const end = coarse ? plan.coarse : plan.order.length;
  const chunks = startChunks(end);
  const gathering = gatheringOf(plan);
  const runner = runnerOf(compiled, plan);
  const started = now();
  let told = started;
  let silence = SILENCE_MS;
  let msPerSample = 0;
  let joined: Joined | undefined;
  let stopped = false;
  let bare = false;
  let wake: () => void = () => {};
  let fault = '';

  function take(chunk: Chunk, rows: Rows, ms: number): void {
    gathering.take(chunk.from, rows);
    chunks.settle(chunk);
    // The first chunks are slow, so the later ones count for more.
    const each = ms / rows.samples.length;
    msPerSample = msPerSample === 0 ? each : (msPerSample + each) / 2;
    if (chunks.left() === 0) wake();
    else if (now() - told >= silence) tell('running');
  }

  function tell(state: SweepProgress['state']): void {
    const before = now();
    const left = state === 'running' ? timeLeft(before) : undefined;
    const more = { ...(left === undefined ? {} : { left }), ...(fault && { message: fault }) };
    progress(bare ? gathering.bare(state) : gathering.progress(state, more));
    told = now();
    silence = Math.max(SILENCE_MS, (told - before) / NEWS_SHARE);
  }

  function timeLeft(at: number): number | undefined {
    const spent = at - started;
    const done = end - chunks.left();
    return spent < FIRST_GUESS_MS || done === 0 ? undefined : (spent * chunks.left()) / done;
  }

  const changed = (): Promise<void> =>
    new Promise((resolve) => {
      wake = resolve;
    });

  function computeHere(chunk: Chunk): void {
    const before = now();
    take(chunk, runner.run(plan.order.subarray(chunk.from, chunk.to)), now() - before);
  }

  function ask(): Joined | undefined {
    return pool?.join({
      compiled,
      plan,
      chunks,
      msPerSample: () => msPerSample,
      take,
      lost(chunk) {
        if (chunks.giveBack(chunk) < MOST_LOST) return;
        fault = `${plan.name} stopped: ${MOST_LOST} workers ended or fell silent over the same ${chunk.to - chunk.from} designs. Narrow its limits to find which they are.`;
        wake();
      },
      refused: () => {
        joined?.leave();
        wake();
      },
      changed: () => wake(),
    });
  }

  async function run(): Promise<void> {
    let turn = now();
    while (chunks.left() > 0 && !stopped && fault === '') {
      const others = joined?.state() ?? 'none';
      const chunk = others === 'ready' ? undefined : chunks.next(CHUNK, others === 'starting');
      if (!chunk) {
        await changed();
        continue;
      }
      computeHere(chunk);
      if (!joined && msPerSample * chunks.left() > WORTH_SENDING_MS) joined = ask();
      if (now() - turn < TURN_MS) continue;
      await pause();
      turn = now();
    }
  }

  async function runToEnd(): Promise<Gathering | undefined> {
    try {
      await run();
    } finally {
      joined?.leave();
      runner.finish();
    }
    const whole = fault === '' && !stopped;
    tell(whole ? 'done' : stopped ? 'stopped' : 'fault');
    return whole ? gathering : undefined;
  }

  return {
    ended: runToEnd(),
    stop(superseded) {
      stopped = true;
      bare = superseded;
      joined?.leave();
      wake();
    },
  };
}
