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

/** Turns without any message after which nothing is under way. */
const IDLE_TURNS = 50;

export const sound: Manner = (_, work) => work();

/**
 * Samplers in this thread behind everything that lies between two workers: messages are copied and come a turn later. The
 * k-th one to be started behaves as `manners(k)` says. The engine's own clock runs so fast that every sweep is worth sending.
 * `patience`: `whole` gives a silent one up after the time that a worker has; `while-busy` as soon as nothing is under way between
 * them any more, however long a turn takes where others need the processor.
 */
export function crew(
  size: number,
  library: Library,
  manners: (k: number) => Manner = () => sound,
  patience: 'whole' | 'while-busy' = 'whole',
): Crew {
  const answered: number[] = [];
  const asked: ToSampler[] = [];
  let time = 0;
  /** Messages that are on their way. */
  let underWay = 0;
  const send = (arrive: () => void): void => {
    underWay++;
    setImmediate(() => {
      underWay--;
      arrive();
    });
  };
  /** Calls once nothing has been under way for some turns; what it returns calls it off. */
  const whenIdle = (act: () => void): (() => void) => {
    let idle = 0;
    let off = false;
    const look = (): void => {
      if (off) return;
      idle = underWay > 0 ? 0 : idle + 1;
      if (idle > IDLE_TURNS) act();
      else setImmediate(look);
    };
    setImmediate(look);
    return () => {
      off = true;
    };
  };
  const pool: PoolPorts = {
    size,
    spawn(hear, died) {
      const k = answered.push(0) - 1;
      const manner = manners(k);
      let over = false;
      const tell = (answer: FromSampler): void => {
        const sent = structuredClone(answer);
        send(() => {
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
          send(() => {
            if (!over) manner(sent, () => take(sent), died);
          });
        },
        end() {
          over = true;
        },
      };
    },
    later(ms, act) {
      if (patience === 'while-busy') return whenIdle(act);
      const timer = setTimeout(act, ms);
      return () => clearTimeout(timer);
    },
  };
  const pause = async (): Promise<void> => {
    await nextTurn();
  };
  return { ports: { pause, now: () => (time += 10), pool }, answered, asked };
}
