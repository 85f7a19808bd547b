import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { EngineService, MendsAnswer } from '../../engine/index';

export interface Mends {
  /** The last answer for a list of what mends; undefined until there is one. */
  of(name: string): ReadonlySignal<MendsAnswer | undefined>;
  /** Whether a newer answer is being computed. */
  working(name: string): ReadonlySignal<boolean>;
  /** Something on the screen shows it; returns the way to say that it no longer does. */
  watch(name: string): () => void;
  /** The design is new and at rest: what is on the screen is asked for again. */
  refresh(revision: number): Promise<void>;
}

interface Entry {
  readonly shown: Signal<MendsAnswer | undefined>;
  readonly working: Signal<boolean>;
  watchers: number;
  /** Revision it was last asked for. */
  asked: number;
}

/** Asks the engine for what mends, once for each design. */
export function createMends(engine: Pick<EngineService, 'mends'>): Mends {
  const entries = new Map<string, Entry>();
  let revision = -1;

  function entryOf(name: string): Entry {
    const known = entries.get(name);
    if (known) return known;
    const entry = { shown: signal(undefined), working: signal(true), watchers: 0, asked: -1 };
    entries.set(name, entry);
    return entry;
  }

  async function ask(name: string, entry: Entry): Promise<void> {
    const wanted = revision;
    if (wanted < 0 || entry.asked === wanted) return;
    entry.asked = wanted;
    entry.working.value = true;
    const answer = await engine.mends(name).catch((error: unknown) => failed(name, wanted, error));
    // An edit that the page has not heard of yet stopped it: it is asked for again with that one.
    if (entry.asked !== wanted || answer.state === 'stopped') return;
    entry.shown.value = answer;
    entry.working.value = false;
  }

  return {
    of: (name) => entryOf(name).shown,
    working: (name) => entryOf(name).working,
    watch(name) {
      const entry = entryOf(name);
      entry.watchers++;
      void ask(name, entry);
      return () => {
        entry.watchers--;
      };
    },
    async refresh(latest) {
      revision = latest;
      const wanted = [...entries].filter(([, entry]) => entry.watchers > 0);
      await Promise.all(wanted.map(([name, entry]) => ask(name, entry)));
    },
  };
}

const failed = (mends: string, revision: number, error: unknown): MendsAnswer => ({
  ...{ revision, mends, state: 'fault', message: error instanceof Error ? error.message : String(error) },
  ...{ now: Number.NaN, wanted: Number.NaN, met: false, found: [] },
});
