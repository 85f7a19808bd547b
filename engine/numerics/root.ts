/** What a root search found. It neither throws nor returns a bare NaN: read `status` first. */
export interface Root {
  /** Best argument found. */
  readonly value: number;
  /** `settled`; `no sign change` between the ends; `too many steps`; `not a number` met inside the bracket. */
  readonly status: 'settled' | 'no sign change' | 'too many steps' | 'not a number';
  readonly iterations: number;
  /** f(value). */
  readonly residual: number;
}

export interface RootOptions {
  /** Width of the bracket at which the search ends; default 0: to the last bit. */
  readonly tolerance?: number;
  readonly steps?: number;
}

/**
 * A zero of f between a and b, which must give opposite signs.
 *
 * Keeps a bracket [a, b] with the older end c; where the three values lie on a curve that has an inverse there (ξ = (a
 * − b)/(c − b), Φ = (f_a − f_b)/(f_c − f_b), Φ² < ξ and (1 − Φ)² < 1 − ξ) it takes inverse quadratic interpolation,
 * else it halves. Source: T. R. Chandrupatla, A new hybrid quadratic/bisection algorithm for finding the zero of a
 * nonlinear function without using derivatives, Advances in Engineering Software 28 (1997) 145-149 (from memory).
 */
export function findRoot(f: (x: number) => number, a: number, b: number, options: RootOptions = {}): Root {
  const { tolerance = 0, steps = 200 } = options;
  if (!Number.isFinite(a) || !Number.isFinite(b)) {
    throw new RangeError(`the bracket is ${a} to ${b}; both ends must be finite`);
  }
  let fa = f(a);
  let fb = f(b);
  if (Number.isNaN(fa) || Number.isNaN(fb))
    return { value: Number.NaN, status: 'not a number', iterations: 0, residual: Number.NaN };
  if (fa === 0) return { value: a, status: 'settled', iterations: 0, residual: fa };
  if (fb === 0) return { value: b, status: 'settled', iterations: 0, residual: fb };
  if (Math.sign(fa) === Math.sign(fb)) {
    const nearer = Math.abs(fa) < Math.abs(fb);
    return { value: nearer ? a : b, status: 'no sign change', iterations: 0, residual: nearer ? fa : fb };
  }
  let c = a;
  let fc = fa;
  let share = 0.5;
  for (let iterations = 1; iterations <= steps; iterations++) {
    const x = a + share * (b - a);
    const fx = f(x);
    if (Number.isNaN(fx)) return { value: x, status: 'not a number', iterations, residual: fx };
    if (Math.sign(fx) === Math.sign(fa)) {
      c = a;
      fc = fa;
    } else {
      c = b;
      fc = fb;
      b = a;
      fb = fa;
    }
    a = x;
    fa = fx;
    const best = Math.abs(fa) < Math.abs(fb) ? a : b;
    const residual = best === a ? fa : fb;
    const rounding = 2 * Number.EPSILON * Math.abs(best) + Number.MIN_VALUE;
    const least = (rounding + tolerance / 2) / Math.abs(b - a);
    if (residual === 0 || least >= 0.5) return { value: best, status: 'settled', iterations, residual };
    const xi = (a - b) / (c - b);
    const phi = (fa - fb) / (fc - fb);
    const curved = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
    share = curved
      ? (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb))
      : 0.5;
    share = Math.min(1 - least, Math.max(least, share));
  }
  const nearer = Math.abs(fa) < Math.abs(fb);
  return { value: nearer ? a : b, status: 'too many steps', iterations: steps, residual: nearer ? fa : fb };
}
