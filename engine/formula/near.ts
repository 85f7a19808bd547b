/** Number of letters to change, add, leave out or swap with a neighbour to come from one word to another. */
function letterDistance(a: string, b: string): number {
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = above[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      let least = Math.min(change, above[j]! + 1, row[j - 1]! + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) least = Math.min(least, before[j - 2]! + 1);
      row.push(least);
    }
    before = above;
    above = row;
  }
  return above[b.length]!;
}

/** Letters of the longest word that is looked for: no name has more, with those that it stands within. */
const LONGEST = 200;
/** Words that are known of one list at a time. */
const MOST = 5000;

const found = new WeakMap<readonly string[], Map<string, string | undefined>>();

/**
 * The name that was most likely meant: close in its letters, written alike but for case, or the last part of a dotted name.
 * A word is looked for in one list once, however often it is asked for.
 */
export function nearestName(wanted: string, names: readonly string[]): string | undefined {
  if (wanted.length > LONGEST) return undefined;
  let known = found.get(names);
  if (!known) {
    known = new Map();
    found.set(names, known);
  }
  if (known.has(wanted)) return known.get(wanted);
  if (known.size >= MOST) known.clear();
  const near = lookFor(wanted, names);
  known.set(wanted, near);
  return near;
}

function lookFor(wanted: string, names: readonly string[]): string | undefined {
  const word = wanted.toLowerCase();
  // Of one or two letters nothing is left when one is wrong.
  const allowed = word.length < 3 ? 0 : Math.max(1, Math.floor(word.length / 3));
  let best: string | undefined;
  let least = allowed + 1;
  for (const name of names) {
    const known = name.toLowerCase();
    const ends = known.endsWith(`.${word}`);
    // Each letter that one has more is one to add.
    if (!ends && Math.abs(known.length - word.length) >= least) continue;
    const distance = ends ? Math.min(letterDistance(word, known), 1) : letterDistance(word, known);
    if (distance < least) {
      least = distance;
      best = name;
    }
  }
  return best;
}

const ownerOf = (name: string): string => name.slice(0, name.lastIndexOf('.') + 1);

/**
 * Among names that would fit by dimension, the one to offer in place of `wanted`: of the same block, the most alike in its
 * letters; else one that is nearly the same word.
 */
export function nearestFitting(wanted: string, names: readonly string[]): string | undefined {
  const owner = ownerOf(wanted);
  const family = owner === '' ? [] : names.filter((name) => name !== wanted && ownerOf(name) === owner);
  if (family.length === 0)
    return nearestName(
      wanted,
      names.filter((name) => name !== wanted),
    );
  if (wanted.length > LONGEST) return undefined;
  const word = wanted.slice(owner.length);
  return family.reduce((a, b) =>
    letterDistance(word, b.slice(owner.length)) < letterDistance(word, a.slice(owner.length)) ? b : a,
  );
}
