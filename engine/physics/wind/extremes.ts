/** The least or greatest of values at equal steps around a lap. */
export interface Extreme {
  readonly value: number;
  /** rad, from 0 to 2π. */
  readonly azimuth: number;
}

/**
 * Least (sign −1) or greatest (+1) of a periodic function at equal steps: the parabola through the extreme value and its neighbours.
 * Derivation: interpolation of second degree.
 */
export function extremeOf(values: Float64Array, sign: 1 | -1): Extreme {
  const n = values.length;
  let k = 0;
  for (let i = 1; i < n; i++) if (sign * values[i]! > sign * values[k]!) k = i;
  const [a, b, c] = [values[(k + n - 1) % n]!, values[k]!, values[(k + 1) % n]!];
  const bend = a - 2 * b + c;
  const shift = bend === 0 ? 0 : (a - c) / (2 * bend);
  const azimuth = ((((k + shift) / n) % 1) + 1) % 1;
  return { value: b - ((a - c) * shift) / 4, azimuth: azimuth * 2 * Math.PI };
}
