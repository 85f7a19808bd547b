import { batch, computed, type ReadonlySignal, signal } from '@preact/signals';
import { type Document, serialise } from '../../../engine/index';
import type { Design } from './database';
import type { DesignStore, Written } from './design-store';
import type { Holding } from './holding';
import { refusalOf } from './refusal';
import { type TakenIn, takingIn } from './taking-in';

/** How the open design stands in the browser's store. */
type Keeping =
  | { readonly kind: 'kept' }
  /** Another page works on it, so nothing is changed here. `unkept`: what stands here isn't what the store has. */
  | { readonly kind: 'elsewhere'; readonly unkept: boolean }
  | { readonly kind: 'refused'; readonly sentence: string };

/** `untouched`: it is the demo, as it comes. */
export type FileState = 'untouched' | 'none' | 'same' | 'older';

/** A design took the place of another. */
export interface Opens {
  readonly from: string;
  readonly to: string;
}

/** What the sheet says to whoever keeps it. */
export interface SheetKeep {
  /** The design as a whole. `says`: what was changed; missing where only its arrangement was. */
  write(text: string, says?: string): void;
  /** Another design takes the place of the open one: one that is kept here, or a new one. */
  begin?(design?: Design): Opens;
  /** The kept design that is just like a text, so that opening a file again makes no second one. */
  find?(text: string): Promise<Design | undefined>;
  /** The open design is that one, as it is after opening was taken back or done again. */
  turn?(id: string): void;
  /** The text is in a file of the person's own. */
  filed?(text: string): void;
  mayChange?(): boolean;
  /** Keeps designs of a file with several beside those that are kept, none in the place of another; what became of each. */
  takeIn?(designs: readonly Document[]): Promise<readonly TakenIn[]>;
}

export interface Keeper extends Required<SheetKeep> {
  readonly store: DesignStore;
  readonly keeping: ReadonlySignal<Keeping>;
  /** Id of the open design. */
  readonly open: ReadonlySignal<string>;
  /** How the text that is kept stands to the person's own file. */
  readonly file: ReadonlySignal<FileState>;
  /** All that was handed over is stored. */
  readonly atRest: ReadonlySignal<boolean>;
  /** The design that was open last, in this tab or else in this browser; undefined at the first visit. */
  start(): Promise<string | undefined>;
  /** The text of a design that wasn't kept before, with which the page starts. */
  startWith(text: string): void;
  /** Works on the open design here; the other page, if there is one, looks from then on. */
  takeOver(): Promise<void>;
  /** Resolves when everything handed over so far is stored, or is known not to be. */
  stored(): Promise<void>;
  /** What is written next begins a version of its own. */
  apart(): void;
  /** Writes again what could not be written. */
  retry(): void;
}

export interface KeeperPorts {
  readonly store: DesignStore;
  holding(told: { onAsked(id: string): Promise<void>; onLost(id: string): void; onStored(id: string): void }): Holding;
  /** Remembers the open design of this tab. */
  readonly tab: { read(): string | undefined; write(id: string): void };
  newId(): string;
  /** Milliseconds since 1970. */
  now(): number;
  /** Something went wrong with the store; a sentence. */
  tell(sentence: string): void;
  /** The store has another text of the open design, which is to be shown. `unkept`: what was shown till now is not in the store. */
  show(text: string, unkept: boolean): void;
}

interface Pending {
  readonly text: string;
  readonly says: readonly string[];
}

interface Kept {
  readonly id: string;
  revision: number;
  /** As handed over last. */
  text?: string;
  filed?: string;
  /** As it was before the first edit; written with that. */
  start?: string;
  /** What is written next begins a version of its own. */
  apart: boolean;
  pending?: Pending;
  elsewhere?: { readonly unkept: boolean };
}

const LOST =
  'The browser has emptied its store: other designs and versions that were kept here are gone. What is open is kept anew. Save it to a file.';

export function createKeeper(ports: KeeperPorts): Keeper {
  const { store } = ports;
  const designs = new Map<string, Kept>();
  let now = opened(ports.newId());
  const open = signal(now.id);
  const keeping = signal<Keeping>({ kind: 'kept' });
  const texts = signal<Pick<Kept, 'text' | 'filed' | 'start'>>({});
  let refusal: string | undefined;
  const atRest = signal(true);
  let writing = Promise.resolve();
  let running = false;

  function opened(id: string): Kept {
    const kept = designs.get(id) ?? { id, revision: 0, apart: true };
    designs.set(id, kept);
    return kept;
  }

  /** What the store has of a design. */
  function take({ id, revision, text, filed }: Design): Kept {
    return Object.assign(opened(id), { revision, text, filed });
  }

  function show(): void {
    batch(() => {
      open.value = now.id;
      texts.value = { text: now.text, filed: now.filed, start: now.start };
      if (now.elsewhere) keeping.value = { kind: 'elsewhere', ...now.elsewhere };
      else keeping.value = refusal === undefined ? { kind: 'kept' } : { kind: 'refused', sentence: refusal };
    });
  }

  function lose(kept: Kept, unkept: boolean): void {
    kept.elsewhere = { unkept: unkept || kept.pending !== undefined };
    kept.pending = undefined;
    show();
  }

  const holding = ports.holding({
    onAsked: () => flush(),
    onLost(id) {
      const kept = designs.get(id);
      if (kept) lose(kept, false);
    },
    onStored(id) {
      if (id === now.id && now.elsewhere && !now.elsewhere.unkept) void follow();
    },
  });

  /** Shows what the store has of the open design. */
  async function follow(unkept = false): Promise<void> {
    const kept = now;
    const stored = await attempt(() => store.read(kept.id));
    if (!stored) return;
    const differs = stored.text !== kept.text;
    take(stored);
    if (kept !== now) return;
    if (differs) ports.show(stored.text, unkept);
    show();
  }

  async function attempt<T>(work: () => Promise<T>): Promise<T | undefined> {
    try {
      return await work();
    } catch (error) {
      refuse(error);
      return undefined;
    }
  }

  function refuse(error: unknown): void {
    const sentence = refusalOf(error);
    if (sentence !== refusal) ports.tell(sentence);
    refusal = sentence;
    show();
  }

  const waiting = (): Kept | undefined => [...designs.values()].find((kept) => kept.pending);

  async function writeAll(): Promise<void> {
    running = true;
    atRest.value = waiting() === undefined;
    for (let kept = waiting(); kept?.pending; kept = waiting()) {
      if (!(await writeOne(kept, kept.pending))) break;
    }
    atRest.value = waiting() === undefined;
    running = false;
  }

  async function writeOne(kept: Kept, { text, says }: Pending): Promise<boolean> {
    const { id, revision, filed, start, apart } = kept;
    kept.pending = undefined;
    try {
      settle(kept, await store.write({ id, revision, text, says, filed, start, apart, at: ports.now() }));
      return true;
    } catch (error) {
      // Nothing is lost: it is written with what comes next.
      const later = designs.get(id)?.pending;
      kept.pending = { text: later?.text ?? text, says: [...says, ...(later?.says ?? [])] };
      refuse(error);
      return false;
    }
  }

  function settle(kept: Kept, written: Written): void {
    if (written === 'foreign') {
      lose(kept, true);
      return;
    }
    if (written === 'lost') ports.tell(LOST);
    kept.revision++;
    kept.start = undefined;
    kept.apart = false;
    refusal = undefined;
    holding.stored(kept.id);
    show();
  }

  function flush(): Promise<void> {
    if (!running) writing = writeAll();
    return writing;
  }

  async function hold(kept: Kept): Promise<void> {
    ports.tab.write(kept.id);
    const has = await holding.hold(kept.id);
    if (!has) {
      lose(kept, false);
      // The list that it was opened from may be older than what the other page has written.
      await follow();
    } else if (kept.elsewhere) {
      // The page that had it is gone.
      const { unkept } = kept.elsewhere;
      kept.elsewhere = undefined;
      await follow(unkept);
    }
  }

  function turn(id: string): void {
    const before = now;
    now = opened(id);
    show();
    if (before === now) return;
    void flush().then(() => before !== now && holding.release(before.id));
    void hold(now);
  }

  return {
    store,
    keeping,
    atRest,
    open,
    file: computed(() => {
      const { text, filed, start } = texts.value;
      if (start !== undefined && start === text) return 'untouched';
      if (filed === undefined) return 'none';
      return filed === text ? 'same' : 'older';
    }),
    async start() {
      const tab = ports.tab.read();
      const all = (await attempt(() => store.designs())) ?? [];
      const kept = all.filter((design) => design.deleted === undefined);
      const last = kept.find(({ id }) => id === tab) ?? kept.toSorted((a, b) => b.opened - a.opened)[0];
      void attempt(() => store.clear(ports.now()));
      if (!last) return undefined;
      designs.delete(now.id);
      now = take(last);
      now.apart = false;
      await hold(now);
      show();
      void attempt(() => store.markOpened(last.id, ports.now()));
      return now.text;
    },
    startWith(text) {
      // What could not be read stays as it is.
      if (now.revision > 0) now = opened(ports.newId());
      now.text = text;
      now.start = text;
      void hold(now);
      show();
    },
    write(text, says) {
      if (now.elsewhere) {
        // The other page took over while a hand was moving the design here.
        if (says !== undefined && text !== now.text) lose(now, true);
        return;
      }
      // How it is arranged is no change of what the file says of the design.
      if (says === undefined && now.filed === now.text) now.filed = text;
      if (text === now.text) return;
      now.text = text;
      now.pending = { text, says: [...(now.pending?.says ?? []), ...(says === undefined ? [] : [says])] };
      show();
      void flush();
    },
    begin(design) {
      const from = now.id;
      if (design) take(design);
      turn(design?.id ?? ports.newId());
      if (design) void attempt(() => store.markOpened(design.id, ports.now()));
      return { from, to: now.id };
    },
    async find(text) {
      const all = (await attempt(() => store.designs())) ?? [];
      return all.find((design) => design.deleted === undefined && design.text === text);
    },
    async takeIn(designs) {
      await flush();
      const all = await attempt(() => store.designs());
      const taken: TakenIn[] = [];
      for (const each of all ? takingIn(all, designs) : []) {
        if (each.as !== 'here') {
          const text = serialise(each.document);
          const filed = each.as === 'new' ? text : undefined;
          const write = { id: ports.newId(), revision: 0, text, says: ['as it was opened'], filed, at: ports.now() };
          if (!(await attempt(() => store.write({ ...write, apart: true })))) break;
        }
        taken.push(each);
      }
      return taken;
    },
    turn,
    filed(text) {
      now.filed = text;
      show();
      const { id } = now;
      void attempt(() => store.markFiled(id, text));
    },
    mayChange: () => now.elsewhere === undefined,
    async takeOver() {
      const kept = now;
      await holding.take(kept.id);
      const unkept = kept.elsewhere?.unkept;
      kept.elsewhere = undefined;
      kept.apart = true;
      await follow(unkept);
      show();
      ports.tab.write(kept.id);
    },
    async stored() {
      await flush();
    },
    apart() {
      now.apart = true;
    },
    retry: () => void flush(),
  };
}
