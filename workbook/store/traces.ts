import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { EngineService, TraceAnswer } from '../../engine/index';

export interface Traces {
  /** What runs along something, of the present design; undefined until it is known. */
  of(path: string): ReadonlySignal<TraceAnswer | undefined>;
  /** The same of a variant that charts show; of the design before while a hand moves it, none where it has none. */
  ghost(path: string, variant: string): ReadonlySignal<TraceAnswer['present'] | undefined>;
  /** Something on the screen shows it; returns the way to say that it no longer does. */
  watch(path: string): () => void;
  /** The design is new: everything on the screen is asked for again, and with `all` the rest of the shown sheet too. */
  refresh(revision: number, all: boolean): Promise<void>;
}

/** Of a variant. */
interface Ghost {
  readonly shown: Signal<TraceAnswer['present'] | undefined>;
  asked: number;
}

interface Entry {
  readonly shown: Signal<TraceAnswer | undefined>;
  watchers: number;
  /** Revision it was last asked for. */
  asked: number;
}

/** Asks the engine for what charts draw of it, once for each design. `onSheet`: whether the shown sheet has something of a path. */
export function createTraces(engine: Pick<EngineService, 'trace'>, onSheet: (path: string) => boolean): Traces {
  const entries = new Map<string, Entry>();
  const ghosts = new Map<string, Ghost>();
  let revision = -1;
  // The sheet is at rest: what isn't on the screen is asked for too.
  let whole = false;

  function entryOf(path: string): Entry {
    let entry = entries.get(path);
    if (!entry) {
      entry = { shown: signal(undefined), watchers: 0, asked: -1 };
      entries.set(path, entry);
      if (whole) void ask(path, entry);
    }
    return entry;
  }

  async function ask(path: string, entry: Entry): Promise<void> {
    if (revision < 0 || entry.asked === revision) return;
    entry.asked = revision;
    const answer = await engine.trace(path).catch((error: unknown) => failed(path, revision, error));
    if (answer.revision === revision) entry.shown.value = answer;
  }

  /** Only where the design is at rest. */
  async function askGhost(path: string, variant: string, ghost: Ghost): Promise<void> {
    if (revision < 0 || !whole || ghost.asked === revision) return;
    ghost.asked = revision;
    const answer = await engine.trace(path, variant).catch(() => undefined);
    if (answer?.revision === revision) ghost.shown.value = answer.baseline;
  }

  return {
    ghost(path, variant) {
      const key = JSON.stringify([path, variant]);
      const ghost = ghosts.get(key) ?? { shown: signal(undefined), asked: -1 };
      ghosts.set(key, ghost);
      void askGhost(path, variant, ghost);
      return ghost.shown;
    },
    of: (path) => entryOf(path).shown,
    watch(path) {
      const entry = entryOf(path);
      entry.watchers++;
      void ask(path, entry);
      return () => {
        entry.watchers--;
      };
    },
    async refresh(latest, all) {
      revision = latest;
      whole = all;
      const wanted = [...entries].filter(([path, entry]) => entry.watchers > 0 || (all && onSheet(path)));
      await Promise.all(wanted.map(([path, entry]) => ask(path, entry)));
    },
  };
}

const failed = (path: string, revision: number, error: unknown): TraceAnswer => ({
  ...{ revision, path, title: path, doc: '', columns: [], present: [] },
  message: error instanceof Error ? error.message : String(error),
});
