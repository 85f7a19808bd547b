import type { Live } from '../sheet/live';
import { faultyFit, fitSteps } from './fit/fit';
import type { FitAnswer } from './fit/told';
import type { RunPorts } from './start-run';

/** How long it computes before it lets messages in. */
const TURN_MS = 8;

/** The fits of one engine: at most one run of each at a time. */
export interface Fits {
  /** `current`: the revision that the engine is at by now. */
  run(live: Live, revision: number, name: string, current: () => number): Promise<FitAnswer>;
}

export function startFits({ pause, now }: Pick<RunPorts, 'pause' | 'now'>): Fits {
  const latest = new Map<string, symbol>();
  return {
    async run(live, revision, name, current) {
      const mine = Symbol(name);
      latest.set(name, mine);
      const steps = fitSteps(live, name);
      let turn = now();
      for (;;) {
        const step = steps.next();
        if (step.done) return { ...step.value, revision };
        if (now() - turn < TURN_MS) continue;
        await pause();
        turn = now();
        if (current() === revision && latest.get(name) === mine) continue;
        // Lets go of the bench that it computes on.
        steps.return(faultyFit(name, ''));
        return { ...faultyFit(name, ''), state: 'stopped', revision };
      }
    },
  };
}
