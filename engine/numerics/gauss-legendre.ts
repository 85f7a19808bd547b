/** Nodes and weights on −1 … 1; the weights add up to 2. */
export interface Quadrature {
  readonly nodes: Float64Array;
  readonly weights: Float64Array;
}

const known = new Map<number, Quadrature>();

/**
 * Nodes and weights of Gauss–Legendre quadrature with n points: exact for polynomials of degree 2n − 1.
 *
 *   P_n(x_i) = 0,  w_i = 2/((1 − x_i²) P_n'(x_i)²)
 *
 * The nodes by Newton from cos(π (i − ¼)/(n + ½)). n is a whole number of 1 to 200; tables are kept.
 * Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 25.4.29 and 22.16.6 (from memory).
 */
export function gaussLegendre(n: number): Quadrature {
  const kept = known.get(n);
  if (kept) return kept;
  if (!Number.isInteger(n) || n < 1 || n > 200)
    throw new RangeError(`points is ${n}; it must be a whole number of 1 to 200`);
  const nodes = new Float64Array(n);
  const weights = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let x = -Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 0;
    for (let step = 0; step < 20; step++) {
      const [value, derivative] = legendre(n, x);
      slope = derivative;
      const change = value / derivative;
      x -= change;
      if (Math.abs(change) < 1e-16) break;
    }
    slope = legendre(n, x)[1];
    nodes[i] = x;
    weights[i] = 2 / ((1 - x * x) * slope * slope);
  }
  const table = { nodes, weights };
  known.set(n, table);
  return table;
}

/** P_n(x) and P_n'(x) by the three-term recurrence. */
function legendre(n: number, x: number): readonly [number, number] {
  let before = 1;
  let value = x;
  for (let k = 2; k <= n; k++) {
    const next = ((2 * k - 1) * x * value - (k - 1) * before) / k;
    before = value;
    value = next;
  }
  return [value, (n * (x * value - before)) / (x * x - 1)];
}

/**
 * ∫ f dx from a to b with n points.
 * @tested the physics sums at the nodes by itself; tests hold those sums to this one.
 */
export function integrate(f: (x: number) => number, a: number, b: number, n: number): number {
  const { nodes, weights } = gaussLegendre(n);
  const half = (b - a) / 2;
  const middle = (a + b) / 2;
  let sum = 0;
  for (let i = 0; i < n; i++) sum += weights[i]! * f(middle + half * nodes[i]!);
  return half * sum;
}
