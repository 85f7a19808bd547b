import { hear } from '../../physics/index';
import type { RunPorts } from '../start-run';
import { heardFlight } from './flight';
import type { ListeningService } from './told';

export type { ListeningService } from './told';

/** How long it computes before it lets messages in, and how long it may stay silent. */
const TURN_MS = 8;
const SILENCE_MS = 60;

/** One sound at a time: a newer one ends it. */
export function startListening({ pause, now }: Pick<RunPorts, 'pause' | 'now'>): ListeningService {
  let latest = 0;
  return {
    async listen(sound, question, progress) {
      latest += 1;
      const mine = latest;
      const steps = hear(sound, question);
      let turn = now();
      let told = turn;
      for (;;) {
        const step = steps.next();
        if (step.done) return heardFlight(step.value, question);
        if (now() - turn < TURN_MS) continue;
        if (now() - told >= SILENCE_MS) {
          progress(step.value);
          told = now();
        }
        await pause();
        turn = now();
        if (latest !== mine) return undefined;
      }
    },
    async haltListening() {
      latest += 1;
    },
  };
}
