/**
 * What each of n changes adds to a number, averaged over every order in which they can be made (Shapley value):
 *
 *   φₖ = Σ over S without k of |S|! (n − |S| − 1)! ÷ n! × (v(S ∪ k) − v(S))
 *
 * `values[mask]` is v of the set whose members are the bits of `mask`: 2ⁿ numbers, the first without any change, the last
 * with all. The shares add up to the last less the first; a change that never matters has 0; two that always do the same
 * have the same. A value that is NaN makes the shares NaN.
 * Source: L. S. Shapley, A value for n-person games, Contributions to the Theory of Games II (1953), pp. 307–317; from memory.
 */
export function sharedChange(values: ArrayLike<number>): Float64Array {
  const count = Math.log2(values.length);
  if (!Number.isInteger(count) || count > MOST_CHANGES) {
    throw new RangeError(`${values.length} values; there must be 2ⁿ of them with n from 0 to ${MOST_CHANGES}`);
  }
  const weights = weightsOf(count);
  const shares = new Float64Array(count);
  for (let k = 0; k < count; k++) {
    const bit = 1 << k;
    for (let mask = 0; mask < values.length; mask++) {
      if ((mask & bit) !== 0) continue;
      shares[k]! += weights[members(mask)]! * (values[mask | bit]! - values[mask]!);
    }
  }
  return shares;
}

/** 2ⁿ values of more would not be held in reason. */
const MOST_CHANGES = 20;

/** |S|! (n − |S| − 1)! ÷ n! for every size of S: one over n times the number of such sets. */
function weightsOf(count: number): number[] {
  const weights: number[] = [];
  let sets = 1;
  for (let size = 0; size < count; size++) {
    weights.push(1 / (count * sets));
    sets = (sets * (count - 1 - size)) / (size + 1);
  }
  return weights;
}

function members(mask: number): number {
  let count = 0;
  for (let rest = mask; rest !== 0; rest &= rest - 1) count++;
  return count;
}
