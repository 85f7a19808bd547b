import { inTab } from './in-tab';
import { createDesignStore, createHolding, createKeeper, databaseOpener, type Keeper } from './keep/index';

const TAB = 'tetherwright design';

/** Keeps designs in this browser. `tell` hears a sentence when the store fails, `show` of what another tab has left. */
export function openKeeper(tell: (sentence: string) => void, show: (text: string, unkept: boolean) => void): Keeper {
  return createKeeper({
    store: createDesignStore(databaseOpener()),
    holding: (told) =>
      createHolding({
        ...told,
        locks: navigator.locks,
        channel: 'BroadcastChannel' in globalThis ? new BroadcastChannel(TAB) : undefined,
      }),
    tab: {
      read: () => inTab((storage) => storage.getItem(TAB)) ?? undefined,
      write: (id) => void inTab((storage) => storage.setItem(TAB, id)),
    },
    // Only secure pages have a better one.
    newId: () => globalThis.crypto.randomUUID?.() ?? `${Date.now()}-${Math.random()}`,
    now: Date.now,
    tell,
    show,
  });
}
