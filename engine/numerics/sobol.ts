/** Shares of the variance of one result that the inputs account for, one an input. */
export interface SobolIndices {
  /** By itself. */
  readonly first: Float64Array;
  /** Together with all others. */
  readonly total: Float64Array;
  /** Standard errors of both, from the scatter of their terms. */
  readonly firstError: Float64Array;
  readonly totalError: Float64Array;
  readonly mean: number;
  readonly variance: number;
  /** Samples that every column has a number for. */
  readonly count: number;
}

/**
 * First-order and total indices from the results of A, of B, and of A with one column of B at a time:
 *
 *   S_i = (1/N) Σ f(B) [f(A_B^i) − f(A)]/V,  S_Ti = (1/2N) Σ [f(A) − f(A_B^i)]²/V
 *
 * V variance of f over A and B together. Samples in which any run has no number are left out.
 * Source: A. Saltelli et al., Computer Physics Communications 181 (2010) 259–270, table 2 (b) and (f) (Jansen); f less its mean in the first, which changes
 * no expectation and quietens it.
 */
export function sobolIndices(a: Float64Array, b: Float64Array, mixed: readonly Float64Array[]): SobolIndices {
  const rows: number[] = [];
  for (let k = 0; k < a.length; k++) {
    if (Number.isFinite(a[k]!) && Number.isFinite(b[k]!) && mixed.every((column) => Number.isFinite(column[k]!)))
      rows.push(k);
  }
  const count = rows.length;
  let mean = 0;
  for (const k of rows) mean += a[k]! + b[k]!;
  mean /= 2 * count;
  let variance = 0;
  for (const k of rows) variance += (a[k]! - mean) ** 2 + (b[k]! - mean) ** 2;
  variance /= 2 * count - 1;
  const inputs = mixed.length;
  const first = new Float64Array(inputs);
  const total = new Float64Array(inputs);
  const firstError = new Float64Array(inputs);
  const totalError = new Float64Array(inputs);
  for (const [i, column] of mixed.entries()) {
    const own = scatter(rows, (k) => ((b[k]! - mean) * (column[k]! - a[k]!)) / variance);
    const all = scatter(rows, (k) => (a[k]! - column[k]!) ** 2 / (2 * variance));
    [first[i], firstError[i]] = own;
    [total[i], totalError[i]] = all;
  }
  return { first, total, firstError, totalError, mean, variance, count };
}

/** Mean of a term over the samples, and its standard error. */
function scatter(rows: readonly number[], term: (k: number) => number): [mean: number, error: number] {
  let sum = 0;
  let squares = 0;
  for (const k of rows) {
    const value = term(k);
    sum += value;
    squares += value * value;
  }
  const n = rows.length;
  const mean = sum / n;
  return [mean, Math.sqrt(Math.max(0, squares / n - mean * mean) / n)];
}
