import { computed, type ReadonlySignal } from '@preact/signals';

/**
 * Makes one signal a path of what `read` gives, so that who reads it is drawn again only when that one thing has changed,
 * not whenever the engine has answered.
 */
export function byPath<T>(read: (path: string) => T): (path: string) => T {
  const signals = new Map<string, ReadonlySignal<T>>();
  return (path) => {
    let signal = signals.get(path);
    if (!signal) {
      signal = computed(() => read(path));
      signals.set(path, signal);
    }
    return signal.value;
  };
}

/** A list that stays the same object while its members do. */
export function steadyList<T>(read: () => readonly T[]): ReadonlySignal<readonly T[]> {
  let last: readonly T[] = [];
  return computed(() => {
    const next = read();
    if (next.length !== last.length || next.some((each, k) => each !== last[k])) last = next;
    return last;
  });
}
