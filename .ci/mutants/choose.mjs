// Which mutants are tried: for every function and constant one, in an order that a seed gives, then a second, and so on.
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** @typedef {import('./places.mjs').Mutant} Mutant */

/**
 * @param {readonly Mutant[]} mutants
 * @param {number} seed
 * @param {number} count
 * @returns {Mutant[]} sorted by file and line
 */
export function chooseMutants(mutants, seed, count) {
  const generator = xoroshiro128plus(seed);
  /** @template T @param {readonly T[]} list @returns {T[]} */
  const shuffled = (list) => {
    const out = [...list];
    for (let k = out.length - 1; k > 0; k--) {
      const other = uniformInt(generator, 0, k);
      [out[k], out[other]] = [/** @type {T} */ (out[other]), /** @type {T} */ (out[k])];
    }
    return out;
  };
  /** @type {Map<string, Mutant[]>} */
  const byOwner = new Map();
  for (const mutant of mutants) {
    const owner = `${mutant.file} ${mutant.owner}`;
    byOwner.set(owner, [...(byOwner.get(owner) ?? []), mutant]);
  }
  const piles = shuffled([...byOwner.values()]).map(shuffled);
  /** @type {Mutant[]} */
  const chosen = [];
  for (let round = 0; chosen.length < count && piles.some((pile) => round < pile.length); round++) {
    for (const pile of piles)
      if (pile[round] && chosen.length < count) chosen.push(/** @type {Mutant} */ (pile[round]));
  }
  const order = new Map(mutants.map((mutant, k) => [mutant, k]));
  return chosen.sort((a, b) => (order.get(a) ?? 0) - (order.get(b) ?? 0));
}
