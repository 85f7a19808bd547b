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

/** The name that was most likely meant: close in its letters, written alike but for case, or the last part of a dotted name. */
export function nearestName(wanted: string, names: readonly string[]): string | undefined {
  const word = wanted.toLowerCase();
  // Of one or two letters nothing is left when one is wrong.
  const allowed = word.length < 3 ? 0 : Math.max(1, Math.floor(word.length / 3));
  let best: string | undefined;
  let least = allowed + 1;
  for (const name of names) {
    const known = name.toLowerCase();
    let distance = letterDistance(word, known);
    if (known.endsWith(`.${word}`)) distance = Math.min(distance, 1);
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
  const word = wanted.slice(owner.length);
  return family.reduce((a, b) =>
    letterDistance(word, b.slice(owner.length)) < letterDistance(word, a.slice(owner.length)) ? b : a,
  );
}
