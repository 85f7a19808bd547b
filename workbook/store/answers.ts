import { type ReadonlySignal, type Signal, signal } from '@preact/signals';

/** What the engine finds step by step for pieces that are on the screen. */
export interface Answers<A> {
  /** The last answer for a piece; undefined until there is one. */
  of(name: string): ReadonlySignal<A | undefined>;
  /** Whether a newer answer is being computed. */
  working(name: string): ReadonlySignal<boolean>;
  /** Something on the screen shows it; returns the way to say that it no longer does. */
  watch(name: string): () => void;
  /** Asks for one again, though the design is the same. */
  again(name: string): void;
  /** The design is new and at rest: what is on the screen is asked for again. */
  refresh(revision: number): Promise<void>;
}

interface Entry<A> {
  readonly shown: Signal<A | undefined>;
  readonly working: Signal<boolean>;
  watchers: number;
  /** Revision it was last asked for. */
  asked: number;
}

/** Asks once for each design. `failed`: the answer where the asking itself came to nothing. */
export function createAnswers<A extends { readonly state: 'settled' | 'fault' | 'stopped' | 'halted' }>(
  askFor: (name: string) => Promise<A>,
  failed: (name: string, revision: number, message: string) => A,
): Answers<A> {
  const entries = new Map<string, Entry<A>>();
  let revision = -1;

  function entryOf(name: string): Entry<A> {
    const known = entries.get(name);
    if (known) return known;
    const entry: Entry<A> = { shown: signal(undefined), working: signal(true), watchers: 0, asked: -1 };
    entries.set(name, entry);
    return entry;
  }

  async function ask(name: string, entry: Entry<A>): Promise<void> {
    const wanted = revision;
    if (wanted < 0 || entry.asked === wanted) return;
    entry.asked = wanted;
    entry.working.value = true;
    const answer = await askFor(name).catch((error: unknown) =>
      failed(name, wanted, error instanceof Error ? error.message : String(error)),
    );
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
    again(name) {
      const entry = entryOf(name);
      entry.asked = -1;
      void ask(name, entry);
    },
    async refresh(latest) {
      revision = latest;
      const wanted = [...entries].filter(([, entry]) => entry.watchers > 0);
      await Promise.all(wanted.map(([name, entry]) => ask(name, entry)));
    },
  };
}
