const ROOT_TWO_PI = Math.sqrt(2 * Math.PI);
/** Where the continued fraction takes over from the series. */
const FAR = 3;

/** φ(x) = e^(−x²/2)/√(2π). Definition. */
export const normalDensity = (x: number): number => Math.exp(-0.5 * x * x) / ROOT_TWO_PI;

/**
 * Φ(x), the share of a standard normal below x: ½ + φ(x) Σ x^(2k+1)/(1·3·…·(2k+1)) near 0, the continued fraction φ(x)/(x + 1/(x + 2/(x + …)))
 * for what lies beyond in the tails. Within 1e-15 of the whole. Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 26.2.11 and 26.2.14.
 */
export function normalShare(x: number): number {
  const size = Math.abs(x);
  if (size > FAR) {
    let fraction = size;
    for (let k = 60; k > 0; k--) fraction = size + k / fraction;
    const tail = normalDensity(size) / fraction;
    return x > 0 ? 1 - tail : tail;
  }
  let term = size;
  let sum = size;
  for (let k = 1; term > 1e-17 * sum; k++) {
    term *= (size * size) / (2 * k + 1);
    sum += term;
  }
  const half = normalDensity(size) * sum;
  return x > 0 ? 0.5 + half : 0.5 - half;
}

/**
 * x with Φ(x) = p, 0 < p < 1: Newton's method from a logistic guess. Inverse of `normalShare`; −∞ and ∞ at 0 and 1.
 */
export function normalQuantile(p: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`share is ${p}; it must lie from 0 to 1`);
  if (p === 0 || p === 1) return p === 0 ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
  // The lower half keeps its digits.
  if (p > 0.5) return -normalQuantile(1 - p);
  let x = p < 1e-3 ? -Math.sqrt(-2 * Math.log(p)) + 0.8 : -Math.log((1 - p) / p) / 1.702;
  for (let step = 0; step < 60; step++) {
    const error = normalShare(x) - p;
    const newton = error / normalDensity(x);
    // Halley's step, which does not overshoot in the tail.
    const change = newton / (1 + 0.5 * x * newton);
    x -= change;
    if (Math.abs(change) < 1e-15 * (1 + Math.abs(x))) break;
  }
  return x;
}
