import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { EngineService, SweepProgress, SweepRequest } from '../../engine/index';
import { newerProgress } from './newer-progress';

type SweepEngine = {
  sweep(request: SweepRequest, progress: (p: SweepProgress) => void): Promise<void>;
  stop: EngineService['stop'];
};

export interface Sweeps {
  progress(sweep: string): ReadonlySignal<SweepProgress | undefined>;
  /** Something on the screen shows this sweep; returns the way to say that it no longer does. */
  watch(sweep: string): () => void;
  /**
   * The design is new. While a finger is down only the coarse lattice of what is on the screen runs; else all of that, and
   * then the sweeps of the rest of the sheet, so that they are there when it is scrolled or printed.
   */
  refresh(revision: number, coarse: boolean): Promise<void>;
  /** Sweeps that are running. */
  readonly running: ReadonlySignal<number>;
}

interface Entry {
  readonly shown: Signal<SweepProgress | undefined>;
  watchers: number;
  /** Revision it was last asked for in full. */
  asked: number;
}

/** Runs the sweeps that the page shows, for the present revision only. */
export function createSweeps(engine: SweepEngine): Sweeps {
  const entries = new Map<string, Entry>();
  const running = signal(0);
  let revision = -1;
  let coarseNow = false;

  function entryOf(sweep: string): Entry {
    let entry = entries.get(sweep);
    if (!entry) {
      entry = { shown: signal(undefined), watchers: 0, asked: -1 };
      entries.set(sweep, entry);
    }
    return entry;
  }

  async function ask(sweep: string, entry: Entry, coarse: boolean): Promise<void> {
    const wanted = revision;
    if (!coarse) entry.asked = wanted;
    running.value++;
    try {
      await engine.sweep({ sweep, coarse }, (progress) => {
        if (progress.revision !== revision || progress.state === 'stopped') return;
        entry.shown.value = newerProgress(entry.shown.peek(), progress);
      });
    } catch (error) {
      const message = error instanceof Error ? error.message : String(error);
      if (wanted === revision) entry.shown.value = failed(sweep, wanted, message);
    } finally {
      running.value--;
    }
  }

  return {
    running,
    progress: (sweep) => entryOf(sweep).shown,
    watch(sweep) {
      const entry = entryOf(sweep);
      entry.watchers++;
      if (revision >= 0 && entry.asked !== revision) void ask(sweep, entry, coarseNow);
      return () => {
        entry.watchers--;
      };
    },
    async refresh(latest, coarse) {
      revision = latest;
      coarseNow = coarse;
      const watched = [...entries].filter(([, entry]) => entry.watchers > 0);
      await Promise.all(watched.map(([sweep, entry]) => ask(sweep, entry, coarse)));
      if (coarse) return;
      for (const [sweep, entry] of entries) {
        if (revision === latest && entry.asked !== latest) await ask(sweep, entry, false);
      }
    },
  };
}

function failed(sweep: string, revision: number, message: string): SweepProgress {
  return {
    revision,
    sweep,
    axes: [],
    wanted: [],
    columns: [],
    why: new Uint16Array(0),
    sentences: [],
    done: 0,
    total: 0,
    state: 'fault',
    message,
  };
}
