/** Numbers evenly spread over 0 ≤ x < 1, one after another. */
export type Random = () => number;

/**
 * n places of a Latin hypercube in d directions: along each direction every one of n equal strata holds exactly one place, at random within it
 * and in random order. Columns, one a direction, 0 < u < 1.
 * Source: M. D. McKay, R. J. Beckman, W. J. Conover, Technometrics 21 (1979) 239–245; order by R. A. Fisher and F. Yates.
 */
export function latinHypercube(n: number, d: number, random: Random): Float64Array[] {
  if (!Number.isInteger(n) || n < 1)
    throw new RangeError(`number of places is ${n}; it must be a whole number of 1 or more`);
  return Array.from({ length: d }, () => {
    const column = new Float64Array(n);
    // Never quite 0: the tails of a normal have no end.
    for (let k = 0; k < n; k++) column[k] = Math.max((k + random()) / n, Number.MIN_VALUE);
    for (let k = n - 1; k > 0; k--) {
      const other = Math.floor(random() * (k + 1));
      const kept = column[k]!;
      column[k] = column[other]!;
      column[other] = kept;
    }
    return column;
  });
}
