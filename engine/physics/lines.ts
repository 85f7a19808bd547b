import { nonNegative, positive } from './domain';

/** m = n μ l: mass (kg) of n lines of length l (m) and mass per length μ (kg/m). */
export function linesMass(count: number, linearMass: number, length: number): number {
  return (
    nonNegative('number of lines', count) *
    nonNegative('mass per length', linearMass) *
    nonNegative('line length', length)
  );
}

/**
 * F_down = ½ m g cos φ (1 + r_h/R_g) + ⅓ m (V²/R) tan φ: how hard the lines press the guide down, across the chord (N).
 *
 * The first term is the guide's part of their weight, by moments about the pilot; the second their own centrifugal
 * load, whose part across the chord grows along the line as r (small r_h taken as 0 in it). m mass of all lines (kg), g
 * (m/s²), φ elevation (rad), r_h, R_g handle reach and guide radius (m), V (m/s), R (m). At φ = 60° the second term is
 * most of it. Derivation: moments about the pilot of a straight line.
 */
export function linesPressDown(
  mass: number,
  gravity: number,
  elevation: number,
  handleReach: number,
  guideRadius: number,
  speed: number,
  radius: number,
): number {
  const share = 0.5 * (1 + handleReach / positive('guide radius', guideRadius));
  const weight = mass * gravity * Math.cos(elevation);
  return share * weight + (mass * speed * speed * Math.tan(elevation)) / (3 * positive('radius', radius));
}

/**
 * T_h = T + ½ n μ ω² (R_g² − r_h²) − W sin φ: pull at the handle (N), of all lines. T pull at the model (N), n μ mass
 * per length of all lines (kg/m), ω = V/R (rad/s), r_h, R_g (m), W weight of the lines (N), φ elevation (rad). Straight
 * line. Derivation: balance along the line.
 */
export function pullAtHandle(
  pull: number,
  linearMass: number,
  rate: number,
  handleReach: number,
  guideRadius: number,
  weight: number,
  elevation: number,
): number {
  const own = 0.5 * linearMass * rate * rate * (guideRadius * guideRadius - handleReach * handleReach);
  return pull + own - weight * Math.sin(elevation);
}

/** Δl = T l/(E A): stretch (m) of one line of length l (m) and stiffness EA (N) under the pull T (N). Hooke's law. */
export function lineStretch(pull: number, length: number, stiffness: number): number {
  return (pull * nonNegative('line length', length)) / positive('line stiffness', stiffness);
}

/**
 * atan(Δl/b): handle angle (rad) that a difference Δl (m) in stretch of the two lines costs, their ends b (m) apart on
 * the handle. Geometry.
 */
export function stretchAngle(difference: number, spacing: number): number {
  return Math.atan2(difference, positive('handle spacing', spacing));
}
