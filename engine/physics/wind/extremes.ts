/** The least or greatest of values at equal steps around a lap. */
export interface Extreme {
  readonly value: number;
  /** rad, from 0 to 2π. */
  readonly azimuth: number;
}

/** Points of the polynomial. */
const AROUND = 7;
const HALF = 3;
const STEPS = 6;
const coefficients = new Float64Array(AROUND);

/**
 * Least (sign −1) or greatest (+1) of a periodic function at equal steps: of the polynomial of sixth degree through the extreme value and
 * three neighbours on either side, by Newton's method from the parabola through the next ones. Derivation: interpolation by divided differences.
 */
export function extremeOf(values: Float64Array, sign: 1 | -1): Extreme {
  const n = values.length;
  let k = 0;
  for (let i = 1; i < n; i++) if (sign * values[i]! > sign * values[k]!) k = i;
  const [a, b, c] = [values[(k + n - 1) % n]!, values[k]!, values[(k + 1) % n]!];
  const bend = a - 2 * b + c;
  const vertex = bend === 0 ? 0 : (a - c) / (2 * bend);
  const refined = n > AROUND ? refine(values, k, vertex) : undefined;
  const [shift, value] = refined ?? [vertex, b - ((a - c) * vertex) / 4];
  const azimuth = ((((k + shift) / n) % 1) + 1) % 1;
  return { value, azimuth: azimuth * 2 * Math.PI };
}

/** Place (in steps from k) and value of the extreme; none where Newton leaves the step on either side. */
function refine(values: Float64Array, k: number, from: number): readonly [number, number] | undefined {
  const n = values.length;
  for (let i = 0; i < AROUND; i++) coefficients[i] = values[(k + i - HALF + n) % n]!;
  for (let order = 1; order < AROUND; order++) {
    for (let i = AROUND - 1; i >= order; i--) coefficients[i] = (coefficients[i]! - coefficients[i - 1]!) / order;
  }
  let x = from;
  for (let step = 0; ; step++) {
    // Value, slope and second slope by Horner's rule on the nodes −3 … 3.
    let [value, slope, second] = [0, 0, 0];
    for (let i = AROUND - 1; i >= 0; i--) {
      const away = x - (i - HALF);
      second = second * away + 2 * slope;
      slope = slope * away + value;
      value = value * away + coefficients[i]!;
    }
    const change = second === 0 ? 0 : slope / second;
    if (Math.abs(change) < 1e-10 || step === STEPS) return Math.abs(x) <= 1 ? [x, value] : undefined;
    x -= change;
    if (!(Math.abs(x) <= 1)) return undefined;
  }
}
