import { nonNegative, positive, within } from '../domain';

/** Direction of the hinge on the circle of thin-aerofoil theory: cos θ = 2 E − 1. */
const hingeOn = (chordShare: number): number =>
  Math.acos(2 * positive('elevator share of the chord', within('elevator share of the chord', chordShare, 0, 1)) - 1);

/**
 * b_1 = −[(π − θ)(cos θ − ½) + sin θ (1 − ½ cos θ)]/E²: hinge moment coefficient of a plain flap of the chord share E by a radian of incidence
 * of its section, on the flap's own area and chord, trailing edge down positive; −π/2 at E = 1. Source: thin-aerofoil theory with a hinged
 * flap (H. Glauert, The Elements of Aerofoil and Airscrew Theory; A.R.C. R. & M. 1095); integrated here from its pressures.
 */
export function hingeByIncidence(chordShare: number): number {
  const theta = hingeOn(chordShare);
  const rest = Math.PI - theta;
  const [cos, sin] = [Math.cos(theta), Math.sin(theta)];
  return -(rest * (cos - 0.5) + sin * (1 - 0.5 * cos)) / (chordShare * chordShare);
}

/**
 * b_2 = −[(π − θ)² (cos θ − ½) + (π − θ) sin θ + ½ sin² θ]/(π E²): the same by a radian of the flap's own deflection, the section's incidence
 * held. Measured moments are smaller: gaps and boundary layers take a fifth and more (from memory). Source: as `hingeByIncidence`.
 */
export function hingeByDeflection(chordShare: number): number {
  const theta = hingeOn(chordShare);
  const rest = Math.PI - theta;
  const [cos, sin] = [Math.cos(theta), Math.sin(theta)];
  return -(rest * rest * (cos - 0.5) + rest * sin + 0.5 * sin * sin) / (Math.PI * chordShare * chordShare);
}

/** What the hinge moment of an elevator hangs on. */
export interface ElevatorAir {
  /** Stabiliser and elevator together, m², their mean chord, m, and the elevator's share of the chord. */
  readonly area: number;
  readonly meanChord: number;
  readonly chordShare: number;
  /** Section slope, 1/rad, and how far elevator acts like turning the whole surface. */
  readonly sectionSlope: number;
  readonly effect: number;
  /** Hinge moment coefficients by incidence and by deflection, 1/rad. */
  readonly byIncidence: number;
  readonly byDeflection: number;
}

/**
 * H = q E² S c̄ C_h,  C_h = b_1 (C_L/a_0 + τ δ) − b_2 δ: moment (N·m) that holds the elevator at δ (rad, trailing edge up positive), positive
 * where it must press the trailing edge up, at the dynamic pressure q (Pa) and the lift coefficient C_L of the whole tail. Its sections stand at
 * the incidence C_L/a_0 + τ δ, which the lift tells with the tail's downwash in it. Source: b_1, b_2 as their functions say;
 * derivation: the lift law of the section, its elevator with it.
 */
export function hingeMoment(e: ElevatorAir, pressure: number, liftCoefficient: number, elevator: number): number {
  const incidence = liftCoefficient / positive('section slope', e.sectionSlope) + e.effect * elevator;
  const coefficient = e.byIncidence * incidence - e.byDeflection * elevator;
  return nonNegative('dynamic pressure', pressure) * e.chordShare * e.chordShare * e.area * e.meanChord * coefficient;
}

/**
 * C_L = C_L0 − a_t τ (δ − δ_0): lift coefficient of a tail whose elevator has just gone from δ_0 to δ (rad, trailing edge up positive) and
 * whose incidence hasn't followed yet, a_t its slope (1/rad). The hinge moment is greatest then. Definition of a_t and τ.
 */
export const tailLiftAfter = (liftCoefficient: number, slope: number, effect: number, change: number): number =>
  liftCoefficient - slope * effect * change;
