import type { Live } from '../sheet/live';
import type { RunPorts } from './start-run';

/** How long it computes before it lets messages in, and how long it may stay silent. */
const TURN_MS = 8;
const SILENCE_MS = 60;

/** An answer that is found step by step; `stopped` where the design was edited meanwhile. */
interface Stepped {
  readonly state: 'settled' | 'fault' | 'stopped' | 'halted';
  readonly revision: number;
}
type Bare<A extends Stepped> = Omit<A, 'revision'>;

/** What finds answers, and the one that says that nothing was found. N is the news that it gives on its way. */
export interface Stepping<A extends Stepped, N = void> {
  steps(live: Live, name: string): Generator<N, Bare<A>, void>;
  none(name: string): Bare<A>;
  /** What was found until then, where somebody ends it. */
  soFar?(news: N): Bare<A>;
}

/** At most one run of each at a time. */
export interface BySteps<A extends Stepped, N = void> {
  /** `current`: the revision that the engine is at by now. */
  run(live: Live, revision: number, name: string, current: () => number, tell?: (news: N) => void): Promise<A>;
  /** Ends a run with what it has found so far. */
  halt(name: string): void;
}

/** Answers that are found by one step after another where the engine runs: fits, what mends, best compromises. */
export function startSteps<A extends Stepped, N = void>(
  { pause, now }: Pick<RunPorts, 'pause' | 'now'>,
  { steps: begin, none, soFar }: Stepping<A, N>,
): BySteps<A, N> {
  const latest = new Map<string, { halted: boolean }>();
  return {
    async run(live, revision, name, current, tell) {
      const mine = { halted: false };
      latest.set(name, mine);
      const steps = begin(live, name);
      let turn = now();
      let told = turn;
      for (;;) {
        const step = steps.next();
        if (step.done) return { ...step.value, revision } as A;
        if (now() - turn < TURN_MS) continue;
        if (tell && now() - told >= SILENCE_MS) {
          tell(step.value);
          told = now();
        }
        await pause();
        turn = now();
        const superseded = current() !== revision || latest.get(name) !== mine;
        if (!superseded && !mine.halted) continue;
        const answer = superseded || !soFar ? { ...none(name), state: 'stopped' } : soFar(step.value);
        // Lets go of the bench that it computes on.
        steps.return(none(name));
        return { ...answer, revision } as A;
      }
    },
    halt(name) {
      const running = latest.get(name);
      if (running) running.halted = true;
    },
  };
}
