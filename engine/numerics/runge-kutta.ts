/** Fills `out` with dy/dx at x; must leave y as it is. */
export type Slope = (x: number, y: Float64Array, out: Float64Array) => void;

/**
 * Carries y from x = `from` to x = `to` along dy/dx = f(x, y) in `steps` equal steps; y is overwritten.
 *
 *   y ← y + h (k₁ + 2 k₂ + 2 k₃ + k₄)/6,  k₁ = f(x, y), k₂ = f(x + h/2, y + h k₁/2), k₃ = f(x + h/2, y + h k₂/2),
 *   k₄ = f(x + h, y + h k₃)
 *
 * The classic method of fourth order: half the step takes the error to a sixteenth where f is smooth. Steps are equal, so that the
 * end is a smooth function of the start, as a Newton search around it needs. `visit` sees x and y at the start and after each step.
 * Source: W. Kutta, Zeitschrift für Mathematik und Physik 46 (1901) 435-453 (from memory).
 */
export function rungeKutta(
  slope: Slope,
  y: Float64Array,
  from: number,
  to: number,
  steps: number,
  visit?: (x: number, y: Float64Array) => void,
): void {
  if (!Number.isInteger(steps) || steps < 1) {
    throw new RangeError(`steps is ${steps}; it must be a whole number of 1 or more`);
  }
  const n = y.length;
  const h = (to - from) / steps;
  const [k, between, sum] = [new Float64Array(n), new Float64Array(n), new Float64Array(n)];
  visit?.(from, y);
  for (let step = 0; step < steps; step++) {
    const x = from + step * h;
    sum.set(y);
    for (let stage = 0; stage < 4; stage++) {
      const share = SHARES[stage]!;
      for (let i = 0; i < n; i++) between[i] = stage === 0 ? y[i]! : y[i]! + h * share * k[i]!;
      slope(x + h * share, between, k);
      for (let i = 0; i < n; i++) sum[i]! += h * WEIGHTS[stage]! * k[i]!;
    }
    y.set(sum);
    visit?.(x + h, y);
  }
}

const SHARES = [0, 0.5, 0.5, 1] as const;
const WEIGHTS = [1 / 6, 1 / 3, 1 / 3, 1 / 6] as const;
