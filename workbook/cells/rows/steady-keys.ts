import { useRef } from 'preact/hooks';

/** A key for each row of a list that stays when the row gets another name, so that what has the focus in it keeps it. */
export function useSteadyKeys(names: readonly string[]): (name: string) => string {
  const last = useRef(names);
  const keys = useRef(new Map<string, string>());
  if (last.current !== names) {
    keys.current = keysAfter(keys.current, last.current, names);
    last.current = names;
  }
  return (name) => keys.current.get(name) ?? name;
}

/** One name that is another at the same place of a list that is else the same was changed: its key goes on under the new one. */
export function keysAfter(
  keys: ReadonlyMap<string, string>,
  before: readonly string[],
  now: readonly string[],
): Map<string, string> {
  const kept = new Map([...keys].filter(([name]) => now.includes(name)));
  const places = before.length === now.length ? now.flatMap((name, k) => (name === before[k] ? [] : [k])) : [];
  const [at, ...others] = places;
  if (at === undefined || others.length > 0) return kept;
  const key = keys.get(before[at]!) ?? before[at]!;
  // Another row may have the old name of this one by now.
  if (!now.includes(key)) kept.set(now[at]!, key);
  return kept;
}
