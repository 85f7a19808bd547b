import type { Rows } from './room';

const known = new Map<number, Float64Array>();

/**
 * Starts a lap at many places by the waves through one at few.
 *
 *   y(x) = Σ_k y_k (1 + 2 Σ_{h<n/2} cos h (x − x_k) [+ cos ½ n (x − x_k) at even n])/n
 *
 * Derivation: the trigonometric polynomial through equal steps.
 */
export function refine(few: Rows, many: Rows): void {
  const shares = sharesOf(few.places, many.places);
  spread(few.speed, many.speed, shares);
  spread(few.sideslip, many.sideslip, shares);
  spread(few.roll, many.roll, shares);
  spread(few.pitch, many.pitch, shares);
  spread(few.drag, many.drag, shares);
  spread(few.dragSlopes, many.dragSlopes, shares, 4);
}

/** Of `each` numbers a place. */
function spread(from: Float64Array, to: Float64Array, shares: Float64Array, each = 1): void {
  const n = from.length / each;
  for (let j = 0; j < to.length; j++) {
    const row = n * Math.floor(j / each);
    const place = j % each;
    let sum = 0;
    for (let k = 0; k < n; k++) sum += shares[row + k]! * from[k * each + place]!;
    to[j] = sum;
  }
}

/** How each of n places counts at each of m; kept, and never written to. */
function sharesOf(n: number, m: number): Float64Array {
  const kept = known.get(m);
  if (kept?.length === n * m) return kept;
  const shares = new Float64Array(n * m);
  for (let j = 0; j < m; j++) {
    for (let k = 0; k < n; k++) {
      const away = 2 * Math.PI * (j / m - k / n);
      let sum = n % 2 === 0 ? 1 + Math.cos((n / 2) * away) : 1;
      for (let h = 1; 2 * h < n; h++) sum += 2 * Math.cos(h * away);
      shares[j * n + k] = sum / n;
    }
  }
  known.set(m, shares);
  return shares;
}
