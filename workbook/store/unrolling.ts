import { signal } from '@preact/signals';

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
