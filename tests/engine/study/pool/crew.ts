import { setImmediate as nextTurn } from 'node:timers/promises';
import type { Library } from '../../../../engine/sheet/specs';
import type { FromSampler, ToSampler } from '../../../../engine/study/pool/messages';
import type { PoolPorts } from '../../../../engine/study/pool/pool';
import { startSampler } from '../../../../engine/study/pool/sampler';
import type { StudyPorts } from '../../../../engine/study/studies';

/** What one sampler does with a message. `work` answers as a sound one does. */
export type Manner = (message: ToSampler, work: () => void, die: () => void) => void;

export interface Crew {
  readonly ports: StudyPorts;
  /** Chunks that each sampler answered, in the order in which they were started. */
  readonly answered: number[];
  /** Messages handed out. */
  readonly asked: ToSampler[];
}

export const sound: Manner = (_, work) => work();

/**
 * Samplers in this thread behind everything that lies between two workers: messages are copied and come a turn later. The
 * k-th one to be started behaves as `manners(k)` says.
 * `haste`: how much sooner than others it's given up. The engine's own clock runs so fast that every sweep is worth sending.
 */
export function crew(size: number, library: Library, manners: (k: number) => Manner = () => sound, haste = 1): Crew {
  const answered: number[] = [];
  const asked: ToSampler[] = [];
  let time = 0;
  const pool: PoolPorts = {
    size,
    spawn(hear, died) {
      const k = answered.push(0) - 1;
      const manner = manners(k);
      let over = false;
      const tell = (answer: FromSampler): void => {
        const sent = structuredClone(answer);
        setImmediate(() => {
          if (over) return;
          if (sent.tell === 'rows') answered[k]!++;
          hear(sent);
        });
      };
      const take = startSampler(library, { post: tell, now: () => performance.now() });
      return {
        post(message) {
          asked.push(message);
          const sent = structuredClone(message);
          setImmediate(() => {
            if (!over) manner(sent, () => take(sent), died);
          });
        },
        end() {
          over = true;
        },
      };
    },
    later(ms, act) {
      const timer = setTimeout(act, ms / haste);
      return () => clearTimeout(timer);
    },
  };
  const pause = async (): Promise<void> => {
    await nextTurn();
  };
  return { ports: { pause, now: () => (time += 10), pool }, answered, asked };
}
