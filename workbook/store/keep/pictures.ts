import { openDB } from 'idb';

const NAME = 'tetherwright pictures';
const SHELF = 'pictures';

/** Pictures that are too large for the file of their design, in the browser's own store on this machine. */
const shelf = () =>
  openDB<{ pictures: { key: string; value: string } }>(NAME, 1, {
    upgrade(fresh) {
      fresh.createObjectStore(SHELF);
    },
  });

export async function keepPicture(key: string, image: string): Promise<void> {
  const database = await shelf();
  try {
    await database.put(SHELF, image, key);
  } finally {
    database.close();
  }
}

/** Undefined on another machine, and where the browser has emptied its store. */
export async function keptPicture(key: string): Promise<string | undefined> {
  const database = await shelf();
  try {
    return await database.get(SHELF, key);
  } finally {
    database.close();
  }
}
