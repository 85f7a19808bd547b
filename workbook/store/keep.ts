import { type IDBPDatabase, openDB } from 'idb';

/** Where the open design is kept between visits. */
export interface Keep {
  read(): Promise<string | undefined>;
  write(text: string): void;
  /** Resolves when everything handed over so far is stored. */
  stored(): Promise<void>;
}

const DATABASE = 'tetherwright';
const STORE = 'sheets';
const OPEN_SHEET = 'open';

/** In the browser's own store, on this machine only. `onFault` is told when nothing can be kept. */
export function openKeep(onFault: (sentence: string) => void): Keep {
  const database = openDB(DATABASE, 1, {
    upgrade(fresh) {
      fresh.createObjectStore(STORE);
    },
  });
  return keepIn(database, () =>
    onFault('This browser keeps nothing between visits here. Save the design to a file before you leave.'),
  );
}

/** One write at a time; of the texts that come meanwhile only the last is written. `onFault` is told once. */
export function keepIn(database: Promise<IDBPDatabase>, onFault: () => void): Keep {
  let told = false;
  const tell = (): void => {
    if (!told) onFault();
    told = true;
  };
  let waiting: string | undefined;
  let writing: Promise<void> | undefined;

  async function writeAll(): Promise<void> {
    try {
      while (waiting !== undefined) {
        const text = waiting;
        waiting = undefined;
        await (await database).put(STORE, text, OPEN_SHEET);
      }
    } catch {
      tell();
    } finally {
      writing = undefined;
    }
  }

  return {
    async read() {
      try {
        const text: unknown = await (await database).get(STORE, OPEN_SHEET);
        return typeof text === 'string' ? text : undefined;
      } catch {
        tell();
        return undefined;
      }
    },
    write(text) {
      waiting = text;
      writing ??= writeAll();
    },
    async stored() {
      await writing;
    },
  };
}
