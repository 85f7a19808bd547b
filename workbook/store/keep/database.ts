import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB } from 'idb';

/** A design of this machine, as it stands now. Times in milliseconds since 1970. */
export interface Design {
  readonly id: string;
  readonly title: string;
  /** As it stands in a file. */
  readonly text: string;
  /** Counts the writes, so that a page sees that another one has written. */
  readonly revision: number;
  readonly changed: number;
  readonly opened: number;
  /** The text that was last saved to a file of the person's own. */
  readonly filed?: string;
  /** When it was deleted; it can be brought back for a while. */
  readonly deleted?: number;
}

/** A design as it stood at some time. */
export interface Version {
  readonly id: number;
  readonly design: string;
  readonly began: number;
  /** When it was last changed. */
  readonly at: number;
  /** What was changed, latest last, each thing once. */
  readonly says: readonly string[];
  readonly edits: number;
  readonly text: string;
  /** Given by a person, who wants to keep it. */
  readonly name?: string;
}

interface Shelves extends DBSchema {
  designs: { key: string; value: Design };
  versions: { key: number; value: Version; indexes: { design: string } };
  /** Of the first edition, which kept one sheet alone. */
  sheets: { key: string; value: string };
}

export type Database = IDBPDatabase<Shelves>;

const NAME = 'tetherwright';
const EDITION = 2;

/**
 * The browser's own store, on this machine only. Where it can't be had, or was closed by the browser, each call tries anew.
 */
export function databaseOpener(name = NAME): () => Promise<Database> {
  let database: Promise<Database> | undefined;
  return () => {
    database ??= open(name, () => {
      database = undefined;
    });
    return database;
  };
}

async function open(name: string, onClosed: () => void): Promise<Database> {
  try {
    const database = await new Promise<Database>((resolve, reject) => {
      const opening = openDB<Shelves>(name, EDITION, {
        upgrade,
        blocked: () => reject(new DOMException('An older edition of the page keeps the store open.', 'BlockedError')),
        blocking(_before, _after, event) {
          (event.target as IDBDatabase).close();
          onClosed();
        },
        terminated: onClosed,
      });
      opening.then(resolve, reject);
    });
    return database;
  } catch (error) {
    onClosed();
    throw error;
  }
}

async function upgrade(
  fresh: Database,
  before: number,
  _after: number | null,
  transaction: IDBPTransaction<Shelves, ('designs' | 'versions' | 'sheets')[], 'versionchange'>,
): Promise<void> {
  fresh.createObjectStore('designs', { keyPath: 'id' });
  fresh.createObjectStore('versions', { keyPath: 'id', autoIncrement: true }).createIndex('design', 'design');
  if (before === 0) return;
  const text = await transaction.objectStore('sheets').get('open');
  if (text !== undefined) {
    const now = Date.now();
    const design = { id: 'first', title: titleIn(text), text, revision: 1, changed: now, opened: now };
    await transaction.objectStore('designs').add(design);
  }
  fresh.deleteObjectStore('sheets');
}

/** The title in the text of a file; '' where none can be read. */
export function titleIn(text: string): string {
  try {
    const title: unknown = JSON.parse(text).title;
    return typeof title === 'string' ? title : '';
  } catch {
    return '';
  }
}
