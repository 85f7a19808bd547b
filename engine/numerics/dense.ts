/**
 * Solves A x = b for a small dense A by elimination with row exchange (partial pivoting).
 *
 * `a`: n × n, row by row; `b`: n. Both are overwritten; b becomes x. Returns the determinant of A; 0 (and a meaningless
 * b) where A is singular.
 * Source: G. H. Golub and C. F. Van Loan, Matrix Computations, algorithm 3.4.1 (from memory).
 */
export function solveDense(a: Float64Array, b: Float64Array, n: number): number {
  let determinant = 1;
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let row = k + 1; row < n; row++) {
      if (Math.abs(a[row * n + k]!) > Math.abs(a[pivot * n + k]!)) pivot = row;
    }
    const head = a[pivot * n + k]!;
    if (head === 0 || Number.isNaN(head)) return 0;
    if (pivot !== k) {
      for (let column = k; column < n; column++) exchange(a, k * n + column, pivot * n + column);
      exchange(b, k, pivot);
      determinant = -determinant;
    }
    determinant *= head;
    for (let row = k + 1; row < n; row++) {
      const factor = a[row * n + k]! / head;
      if (factor === 0) continue;
      for (let column = k + 1; column < n; column++) a[row * n + column]! -= factor * a[k * n + column]!;
      b[row]! -= factor * b[k]!;
    }
  }
  for (let row = n - 1; row >= 0; row--) {
    let sum = b[row]!;
    for (let column = row + 1; column < n; column++) sum -= a[row * n + column]! * b[column]!;
    b[row] = sum / a[row * n + row]!;
  }
  return determinant;
}

function exchange(a: Float64Array, i: number, j: number): void {
  const kept = a[i]!;
  a[i] = a[j]!;
  a[j] = kept;
}
