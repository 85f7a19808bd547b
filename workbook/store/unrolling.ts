import { computed, signal } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';

/**
 * How much of the first sheet stands there while the page opens, what stands beside it and then its pieces: one more a task, so
 * that none keeps the page from answering. Infinity once all do, and from then on.
 */
export const unrolled = signal(0);

/** Lets one more of so many stand, and the next one after whatever waits. */
export function unroll(all: number): void {
  if (unrolled.peek() >= all) {
    unrolled.value = Number.POSITIVE_INFINITY;
    return;
  }
  unrolled.value++;
  setTimeout(() => unroll(all));
}

const waiting = signal<readonly (() => void)[]>([]);

/** Pieces or their pictures are still to come. */
export const opening = computed(() => unrolled.value < Number.POSITIVE_INFINITY || waiting.value.length > 0);

/**
 * Whether a picture may be drawn, once there is something to draw: on a page that is opening they come one a task, afterwards
 * all at once.
 */
export function useTurn(ready: boolean): boolean {
  const [mine, setMine] = useState(() => unrolled.peek() === 0 || unrolled.peek() === Number.POSITIVE_INFINITY);
  useEffect(() => {
    if (ready && !mine) return inTurn(() => setMine(true));
    return undefined;
  }, [ready, mine]);
  return mine;
}

/** Runs in a task of its own, after what has waited longer. Returns how to leave it. */
function inTurn(run: () => void): () => void {
  if (waiting.peek().length === 0) setTimeout(next);
  waiting.value = [...waiting.peek(), run];
  return () => {
    waiting.value = waiting.peek().filter((other) => other !== run);
  };
}

function next(): void {
  const [first, ...others] = waiting.peek();
  first?.();
  waiting.value = others;
  if (others.length > 0) setTimeout(next);
}
