import { deleteDB } from 'idb';
import { vi } from 'vitest';
import { serialise } from '../../../../engine/index';
import { createDesignStore, createHolding, createKeeper, databaseOpener } from '../../../../workbook/store/keep/index';
import { smallSheet } from '../small-sheet';

/** The text of a sheet with such a title. */
export const sheetText = (title: string): string => serialise({ ...smallSheet, title });

interface Waiting {
  readonly id: string;
  readonly grant: (lock: Lock) => void;
}

/** Locks as the browser has them, for pages that live in one process. */
export function fakeLocks() {
  const held = new Map<string, { readonly steal: (error: Error) => void }>();
  let waiting: Waiting[] = [];

  function grant(
    id: string,
    use: LockGrantedCallback<unknown>,
    resolve: (value: unknown) => void,
    reject: (e: Error) => void,
  ) {
    held.set(id, { steal: reject });
    const mine = held.get(id);
    void Promise.resolve(use({ name: id, mode: 'exclusive' })).then((value) => {
      resolve(value);
      if (held.get(id) !== mine) return;
      held.delete(id);
      const next = waiting.find((each) => each.id === id);
      waiting = waiting.filter((each) => each !== next);
      next?.grant({ name: id, mode: 'exclusive' });
    });
  }

  const request = (id: string, options: LockOptions, use: LockGrantedCallback<unknown>): Promise<unknown> =>
    new Promise((resolve, reject) => {
      const holder = held.get(id);
      if (!holder || options.steal) {
        holder?.steal(new DOMException('stolen', 'AbortError'));
        grant(id, use, resolve, reject);
      } else if (options.ifAvailable) resolve(use(null));
      else {
        const entry: Waiting = { id, grant: () => grant(id, use, resolve, reject) };
        waiting.push(entry);
        options.signal?.addEventListener('abort', () => {
          if (!waiting.includes(entry)) return;
          waiting = waiting.filter((each) => each !== entry);
          reject(new DOMException('waited too long', 'TimeoutError'));
        });
      }
    });
  return { request } as unknown as LockManager;
}

/** What every page hears but the one that says it. */
export function fakeChannel() {
  const hearers: { readonly page: object; hear(event: MessageEvent): void }[] = [];
  return (): Pick<BroadcastChannel, 'postMessage' | 'addEventListener'> => {
    const page = {};
    return {
      addEventListener: (_: string, hear: unknown) => hearers.push({ page, hear: hear as (e: MessageEvent) => void }),
      postMessage(data: unknown) {
        for (const hearer of hearers) {
          if (hearer.page !== page) queueMicrotask(() => hearer.hear({ data } as MessageEvent));
        }
      },
    };
  };
}

let browsers = 0;

/** A browser of its own in which pages can be opened; its clock stands until it is set. */
export function newBrowser(options: { readonly locks?: boolean } = {}) {
  const name = `browser ${browsers++}`;
  const locks = options.locks === false ? undefined : fakeLocks();
  const channel = fakeChannel();
  const browser = { at: Date.UTC(2026, 10, 25, 12), name, forget: () => deleteDB(name), page };
  let ids = 0;

  function page(also: { store?: ReturnType<typeof createDesignStore>; deaf?: boolean } = {}) {
    const tell = vi.fn<(sentence: string) => void>();
    const show = vi.fn<(text: string, unkept: boolean) => void>();
    let tab: string | undefined;
    const store = also.store ?? createDesignStore(databaseOpener(name));
    const keeper = createKeeper({
      store,
      holding: (told) =>
        createHolding({
          ...told,
          waits: { reload: 15, answer: 60 },
          locks,
          channel: also.deaf ? undefined : channel(),
        }),
      tab: {
        read: () => tab,
        write: (id) => {
          tab = id;
        },
      },
      newId: () => `design ${ids++}`,
      now: () => browser.at,
      tell,
      show,
    });
    return { keeper, store, tell, show };
  }
  return browser;
}
