import { useEffect, useState } from 'preact/hooks';

/** What draws something, fetched when it is first to be drawn; undefined until it's here. `of`: what it draws. */
export function useFetched<T>(here: () => T | undefined, fetch: () => Promise<void>, of?: unknown): T | undefined {
  const [, setArrived] = useState(0);
  const now = here();
  useEffect(() => {
    // What was missing may have come since, for somebody else: nobody but this draws it anew then.
    if (now === undefined) void fetch().then(() => setArrived((n) => n + 1));
  }, [of]);
  return now;
}
