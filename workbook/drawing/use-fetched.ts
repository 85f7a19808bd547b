import { useEffect, useState } from 'preact/hooks';
import { printing } from '../store/printing';
import { useTurn } from '../store/unrolling';

/**
 * What draws something, fetched when it is first to be drawn; undefined until it's here, and on a page that is opening until its
 * turn has come. `of`: what it draws.
 */
export function useFetched<T>(here: () => T | undefined, fetch: () => Promise<void>, of?: unknown): T | undefined {
  const [, setArrived] = useState(0);
  const now = here();
  useEffect(() => {
    // What was missing may have come since, for somebody else: nobody but this draws it anew then.
    if (now === undefined) void fetch().then(() => setArrived((n) => n + 1));
  }, [of]);
  const mine = useTurn(now !== undefined);
  return mine || printing.value ? now : undefined;
}
