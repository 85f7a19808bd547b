import type { Database, Design, Version } from './database';
import { titleIn } from './database';
import { type Edits, gathered, joined, thinned } from './versions';

interface Write extends Edits {
  readonly id: string;
  /** The revision that the writer knows; 0 for a design that isn't kept yet. */
  readonly revision: number;
  readonly filed: string | undefined;
  /** The design as it was before the first edit, for a design that isn't kept yet. */
  readonly start?: string;
}

/**
 * `stored`; `lost`: stored, but what had been kept before is gone; `foreign`: another page has written since, and nothing
 * was stored.
 */
export type Written = 'stored' | 'lost' | 'foreign';

/** Days that a deleted design can be brought back. */
export const DAYS_TO_BRING_BACK = 30;
const DAY = 24 * 3_600_000;

/** Designs and their versions in the browser's store. Every method rejects where the store fails. */
export interface DesignStore {
  designs(): Promise<readonly Design[]>;
  read(id: string): Promise<Design | undefined>;
  write(write: Write): Promise<Written>;
  markOpened(id: string, at: number): Promise<void>;
  markFiled(id: string, text: string): Promise<void>;
  /** At a time, or undefined to bring it back. */
  markDeleted(id: string, at: number | undefined): Promise<void>;
  /** For good, with all its versions. */
  remove(id: string): Promise<void>;
  /** For good: the designs that were deleted long ago. */
  clear(now: number): Promise<void>;
  /** Newest first. */
  versions(design: string): Promise<readonly Version[]>;
  nameVersion(id: number, name: string | undefined): Promise<void>;
  deleteVersion(id: number): Promise<void>;
  restoreVersion(version: Version): Promise<void>;
}

export function createDesignStore(open: () => Promise<Database>): DesignStore {
  async function alter(id: string, change: (design: Design) => Design): Promise<void> {
    const transaction = (await open()).transaction('designs', 'readwrite');
    const design = await transaction.store.get(id);
    if (design) await transaction.store.put(change(design));
    await transaction.done;
  }

  async function remove(id: string): Promise<void> {
    const transaction = (await open()).transaction(['designs', 'versions'], 'readwrite');
    const versions = transaction.objectStore('versions');
    await transaction.objectStore('designs').delete(id);
    for (const version of await versions.index('design').getAllKeys(id)) await versions.delete(version);
    await transaction.done;
  }

  return {
    async designs() {
      return await (await open()).getAll('designs');
    },
    async read(id) {
      return await (await open()).get('designs', id);
    },
    write: async (write) => await writeTo(await open(), write),
    markOpened: (id, opened) => alter(id, (design) => ({ ...design, opened })),
    markFiled: (id, filed) => alter(id, (design) => ({ ...design, filed })),
    markDeleted: (id, deleted) => alter(id, (design) => ({ ...design, deleted })),
    remove,
    async clear(now) {
      for (const { id, deleted } of await (await open()).getAll('designs')) {
        if (deleted !== undefined && now - deleted >= DAYS_TO_BRING_BACK * DAY) await remove(id);
      }
    },
    async versions(design) {
      return (await (await open()).getAllFromIndex('versions', 'design', design)).reverse();
    },
    async nameVersion(id, name) {
      const transaction = (await open()).transaction('versions', 'readwrite');
      const version = await transaction.store.get(id);
      if (version) await transaction.store.put({ ...version, name });
      await transaction.done;
    },
    async deleteVersion(id) {
      await (await open()).delete('versions', id);
    },
    async restoreVersion(version) {
      await (await open()).put('versions', version);
    },
  };
}

/** The design and its version in one transaction, so that no other page can come between the look and the write. */
async function writeTo(database: Database, write: Write): Promise<Written> {
  const { id, text, at, filed } = write;
  const transaction = database.transaction(['designs', 'versions'], 'readwrite');
  const designs = transaction.objectStore('designs');
  const stored = await designs.get(id);
  if (stored && stored.revision !== write.revision) {
    await transaction.done;
    return 'foreign';
  }
  const opened = stored?.opened ?? at;
  const title = titleIn(text);
  // What is worked on is not deleted, whatever another page has said of it meanwhile.
  const { deleted: _, ...before } = stored ?? {};
  await designs.put({ ...before, id, title, text, revision: write.revision + 1, changed: at, opened, filed });
  if (write.says.length > 0) await addVersion(transaction.objectStore('versions'), write);
  await transaction.done;
  return stored || write.revision === 0 ? 'stored' : 'lost';
}

type Versions = ReturnType<typeof versionsOf>;
const versionsOf = (database: Database) =>
  database.transaction(['designs', 'versions'], 'readwrite').objectStore('versions');

async function addVersion(versions: Versions, write: Write): Promise<void> {
  const { id: design, at, says, text } = write;
  const newest = await versions.index('design').openCursor(design, 'prev');
  const grown = joined(newest?.value, write);
  if (grown) {
    await versions.put(grown);
    return;
  }
  // The store gives the id.
  const add = (version: Omit<Version, 'id'>) => versions.add(version as Version);
  if (write.start !== undefined && write.start !== text) {
    await add({ design, began: at, at, says: ['as it was opened'], edits: 0, text: write.start });
  }
  await add({ design, began: at, at, says: gathered([], says), edits: says.length, text });
  for (const old of thinned(await versions.index('design').getAll(design), at)) await versions.delete(old);
}
