export type TabMemory = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** Does something with what the browser remembers of this tab. Some browsers refuse even that: then nothing is done. */
export function inTab<T>(use: (memory: TabMemory) => T): T | undefined {
  try {
    return use(sessionStorage);
  } catch {
    return undefined;
  }
}
