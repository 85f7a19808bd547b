import type { Live } from '../sheet/live';
import type { RunPorts } from './start-run';

/** How long it computes before it lets messages in. */
const TURN_MS = 8;

/** An answer that is found step by step; `stopped` where the design was edited meanwhile. */
interface Stepped {
  readonly state: 'settled' | 'fault' | 'stopped';
  readonly revision: number;
}

/** What finds answers, and the one that says that nothing was found. */
export interface Stepping<A extends Stepped> {
  steps(live: Live, name: string): Generator<void, Omit<A, 'revision'>, void>;
  none(name: string): Omit<A, 'revision'>;
}

/** At most one run of each at a time. */
export interface BySteps<A extends Stepped> {
  /** `current`: the revision that the engine is at by now. */
  run(live: Live, revision: number, name: string, current: () => number): Promise<A>;
}

/** Answers that are found by one step after another where the engine runs: fits, and what mends. */
export function startSteps<A extends Stepped>(
  { pause, now }: Pick<RunPorts, 'pause' | 'now'>,
  { steps: begin, none }: Stepping<A>,
): BySteps<A> {
  const latest = new Map<string, symbol>();
  return {
    async run(live, revision, name, current) {
      const mine = Symbol(name);
      latest.set(name, mine);
      const steps = begin(live, name);
      let turn = now();
      for (;;) {
        const step = steps.next();
        if (step.done) return { ...step.value, revision } as A;
        if (now() - turn < TURN_MS) continue;
        await pause();
        turn = now();
        if (current() === revision && latest.get(name) === mine) continue;
        // Lets go of the bench that it computes on.
        steps.return(none(name));
        return { ...none(name), state: 'stopped', revision } as A;
      }
    },
  };
}
