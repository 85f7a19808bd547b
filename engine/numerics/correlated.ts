import { normalQuantile, normalShare } from './normal';

/**
 * L with L Lᵀ = C: lower triangle of a symmetric matrix, both row by row; nothing where C is not positive definite (numbers that cannot all
 * be correlated like that). Source: A.-L. Cholesky, as G. H. Golub and C. F. Van Loan, Matrix Computations, ch. 4.
 */
export function lowerTriangle(matrix: readonly (readonly number[])[]): number[][] | undefined {
  const lower: number[][] = [];
  for (const [i, row] of matrix.entries()) {
    const made: number[] = [];
    for (let j = 0; j <= i; j++) {
      let sum = row[j]!;
      for (let k = 0; k < j; k++) sum -= made[k]! * (j === i ? made[k]! : lower[j]![k]!);
      if (j < i) made.push(sum / lower[j]![j]!);
      else if (sum > 1e-12) made.push(Math.sqrt(sum));
      else return undefined;
    }
    lower.push(made);
  }
  return lower;
}

/**
 * Independent shares (columns of numbers evenly spread over 0 to 1) made to go together: z = Φ⁻¹(u), z' = L z, u' = Φ(z'). Of normal spreads the
 * correlation is then that of L Lᵀ; of others it is that of the normal numbers behind them (a normal copula), a little less between the
 * numbers themselves. Source: R. L. Iman and W. J. Conover, Communications in Statistics B11 (1982) 311–334, for the way.
 */
export function correlateShares(
  columns: readonly Float64Array[],
  lower: readonly (readonly number[])[],
): Float64Array[] {
  const z = columns.map((column) => column.map(normalQuantile));
  return lower.map((row) =>
    z[0]!.map((_, k) => normalShare(row.reduce((sum, factor, j) => sum + factor * z[j]![k]!, 0))),
  );
}
