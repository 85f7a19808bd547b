import { positive, within } from '../domain';

/** Chord and angle along a blade, the same for all. Stations r/R rise from the hub to 1. */
export interface Propeller {
  readonly blades: number;
  /** D, m. */
  readonly diameter: number;
  readonly radiusShare: ArrayLike<number>;
  /** c/R. */
  readonly chordShare: ArrayLike<number>;
  /** β to the plane of rotation, of the flat underside, rad. */
  readonly angle: ArrayLike<number>;
}

/** Of a blade of given outline: stations, chord over tip radius, and local pitch over the marked one. */
export interface BladeShape {
  readonly radiusShare: readonly number[];
  readonly chordShare: readonly number[];
  readonly pitchShare: readonly number[];
}

/**
 * β = atan(p/(2π r)): angle (rad) to the plane of rotation of a section at the radius r (m) that advances by the pitch p
 * (m) in one turn. Derivation: the helix.
 */
export function bladeAngle(pitch: number, radius: number): number {
  return Math.atan(pitch / (2 * Math.PI * positive('radius', radius)));
}

/**
 * A propeller of marked size: chord c = (c/R) R and angle β = atan(p_r/(2π r)), p_r the marked pitch p (m) times the shape's
 * share. Diameter D (m). Derivation: geometry.
 */
export function shapedPropeller(shape: BladeShape, blades: number, diameter: number, pitch: number): Propeller {
  const radius = positive('propeller diameter', diameter) / 2;
  return {
    blades: within('number of blades', blades, 1, 8),
    diameter,
    radiusShare: shape.radiusShare,
    chordShare: shape.chordShare,
    angle: shape.radiusShare.map((share, k) => bladeAngle(pitch * shape.pitchShare[k]!, share * radius)),
  };
}

/** Straight between the stations of a table; its ends are held. */
export function alongBlade(at: ArrayLike<number>, values: ArrayLike<number>, x: number): number {
  const last = at.length - 1;
  if (x <= at[0]!) return values[0]!;
  for (let k = 1; k <= last; k++) {
    if (x <= at[k]!) {
      const share = (x - at[k - 1]!) / (at[k]! - at[k - 1]!);
      return values[k - 1]! + share * (values[k]! - values[k - 1]!);
    }
  }
  return values[last]!;
}
