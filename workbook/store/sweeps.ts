import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { EngineService, SweepProgress, SweepRequest } from '../../engine/index';
import { newerProgress } from './newer-progress';

type SweepEngine = {
  sweep(request: SweepRequest, progress: (p: SweepProgress) => void): Promise<void>;
  stop: EngineService['stop'];
};

export interface Sweeps {
  progress(sweep: string): ReadonlySignal<SweepProgress | undefined>;
  /** The latest design for which the progress holds: rows that come out the same again are no other progress. */
  madeFor(sweep: string): ReadonlySignal<number>;
  /** The same sweep of the baseline along some of its axes, or of a variant; undefined without a baseline. It is computed only while no finger is down. */
  ghost(sweep: string, along: readonly string[], variant?: string): ReadonlySignal<SweepProgress | undefined>;
  /** Something on the screen shows this sweep; returns the way to say that it no longer does. */
  watch(sweep: string): () => void;
  /**
   * The design is new. While a finger is down only the coarse lattice of what is on the screen runs; else all of that, and
   * then the sweeps of the rest of the shown sheet, so that they are there when it is scrolled, and those of the baseline.
   * Those of other sheets wait until something on the screen shows them.
   */
  refresh(revision: number, coarse: boolean, baseline?: boolean): Promise<void>;
  /** Ends a sweep that is running, on a person's wish: what there is of it stays, until it is asked for again. */
  stop(sweep: string): void;
  /** Runs a sweep for the present design: one that was stopped. */
  again(sweep: string): void;
  /** Sweeps that are running. */
  readonly running: ReadonlySignal<number>;
}

interface Entry {
  readonly request: SweepRequest;
  readonly shown: Signal<SweepProgress | undefined>;
  readonly madeFor: Signal<number>;
  watchers: number;
  /** Revision it was last asked for in full. */
  asked: number;
  /** A person has ended its present run. */
  ended: boolean;
}

/** Runs the sweeps that the page shows, for the present revision only. `onSheet`: whether the shown sheet has something of a sweep. */
export function createSweeps(engine: SweepEngine, onSheet: (sweep: string) => boolean): Sweeps {
  const entries = new Map<string, Entry>();
  const running = signal(0);
  let revision = -1;
  let coarseNow = false;
  let compared = false;

  function entryOf(request: SweepRequest): Entry {
    const key = [request.sweep, ...(request.baseline ?? []), request.variant ?? ''].join(' ');
    let entry = entries.get(key);
    if (!entry) {
      entry = { request, shown: signal(undefined), madeFor: signal(-1), watchers: 0, asked: -1, ended: false };
      entries.set(key, entry);
    }
    return entry;
  }

  async function ask(entry: Entry, coarse: boolean): Promise<void> {
    const { sweep } = entry.request;
    const wanted = revision;
    if (!coarse) entry.asked = wanted;
    entry.ended = false;
    running.value = running.peek() + 1;
    try {
      await engine.sweep({ ...entry.request, coarse }, (progress) => {
        if (progress.revision !== revision) return;
        // What a newer request stopped is of no interest; what a person stopped is.
        if (progress.state === 'stopped' && !entry.ended) return;
        entry.shown.value = newerProgress(entry.shown.peek(), progress);
        entry.madeFor.value = progress.revision;
      });
    } catch (error) {
      const message = error instanceof Error ? error.message : String(error);
      if (wanted !== revision) return;
      entry.shown.value = failed(sweep, wanted, message);
      entry.madeFor.value = wanted;
    } finally {
      running.value = running.peek() - 1;
    }
  }

  async function askForBaseline(entry: Entry): Promise<void> {
    if (!compared && entry.request.variant === undefined) entry.shown.value = undefined;
    else if (!coarseNow && entry.asked !== revision) await ask(entry, false);
  }

  return {
    running,
    progress: (sweep) => entryOf({ sweep }).shown,
    madeFor: (sweep) => entryOf({ sweep }).madeFor,
    ghost(sweep, along, variant) {
      const entry = entryOf({ sweep, baseline: along, ...(variant === undefined ? {} : { variant }) });
      // Asked for while something is drawn, which must not change what is being drawn.
      if (revision >= 0) queueMicrotask(() => void askForBaseline(entry));
      return entry.shown;
    },
    watch(sweep) {
      const entry = entryOf({ sweep });
      entry.watchers++;
      if (revision >= 0 && entry.asked !== revision) void ask(entry, coarseNow);
      return () => {
        entry.watchers--;
      };
    },
    stop(sweep) {
      entryOf({ sweep }).ended = true;
      void engine.stop(sweep);
    },
    again: (sweep) => void ask(entryOf({ sweep }), coarseNow),
    async refresh(latest, coarse, baseline = false) {
      revision = latest;
      coarseNow = coarse;
      compared = baseline;
      const watched = [...entries.values()].filter((entry) => entry.watchers > 0);
      await Promise.all(watched.map((entry) => ask(entry, coarse)));
      if (coarse) return;
      for (const entry of entries.values()) {
        if (revision !== latest) return;
        if (entry.watchers === 0 && !onSheet(entry.request.sweep)) continue;
        if (entry.request.baseline) await askForBaseline(entry);
        else if (entry.asked !== latest) await ask(entry, false);
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
