import { finite, positive } from '../domain';

/** A line that hangs at rest between two ends. SI. */
export interface Catenary {
  /** H/w, m. */
  readonly parameter: number;
  /** Length along the line, m. */
  readonly length: number;
  /** Greatest distance straight down from the line between its ends, m. */
  readonly sag: number;
  /** Rise over run at the near and the far end. */
  readonly nearSlope: number;
  readonly farSlope: number;
  /** At the near and the far end, N. */
  readonly nearTension: number;
  readonly farTension: number;
}

/**
 * The exact catenary between ends a level distance l apart, the far one higher by h, with the level pull H (N) and the weight per
 * length w (N/m).
 *
 *   z = c cosh(x/c),  c = H/w,  s = √(h² + 4 c² sinh²(l/2c))
 *   slope at the ends sinh(u ∓ l/2c),  u = asinh(h/(2 c sinh(l/2c))),  tension H cosh of the same
 *   sag where the slope is h/l
 *
 * l > 0, w > 0, H > 0. A line without stretch or stiffness.
 * Source: F. P. Beer et al., Vector Mechanics for Engineers: Statics, section 7.10; ends of unequal height by derivation.
 */
export function catenary(span: number, rise: number, levelPull: number, weight: number): Catenary {
  const c = positive('level pull', levelPull) / positive('weight per length', weight);
  const half = positive('span', span) / (2 * c);
  const middle = Math.asinh(finite('rise', rise) / (2 * c * Math.sinh(half)));
  const [near, far] = [middle - half, middle + half];
  // cosh a − cosh b as a product keeps its digits where the line is nearly straight.
  const over = (a: number, b: number): number => 2 * c * Math.sinh((a + b) / 2) * Math.sinh((a - b) / 2);
  const lowest = Math.asinh(rise / span);
  const run = c * (lowest - near);
  return {
    parameter: c,
    length: Math.hypot(rise, 2 * c * Math.sinh(half)),
    sag: (rise / span) * run - over(lowest, near),
    nearSlope: Math.sinh(near),
    farSlope: Math.sinh(far),
    nearTension: levelPull * Math.cosh(near),
    farTension: levelPull * Math.cosh(far),
  };
}
