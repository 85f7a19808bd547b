import { nonNegative } from './domain';

/**
 * The mass of one part from what a ruler and a material table give. SI throughout. Area and volume may be negative:
 * a cut-out is a part of its own that takes mass away.
 */

/** m = S t ρ: flat sheet of area S (m²), thickness t (m), density ρ (kg/m³). Derivation: definition of density. */
export function sheetMass(area: number, thickness: number, density: number): number {
  return area * nonNegative('thickness', thickness) * nonNegative('density', density);
}

/** m = S w: surface of area S (m²) cut from a stack of areal mass w (kg/m²). Derivation: definition of areal mass. */
export function stackMass(area: number, arealMass: number): number {
  return area * nonNegative('areal mass', arealMass);
}

/** m = ¼ π d² l ρ: round rod, dowel or wire of length l (m), diameter d (m), density ρ (kg/m³). Derivation: area of the circle. */
export function rodMass(length: number, diameter: number, density: number): number {
  const d = nonNegative('diameter', diameter);
  return 0.25 * Math.PI * d * d * nonNegative('length', length) * nonNegative('density', density);
}

/** m = l μ: length l (m) of wire, line or tube of mass per length μ (kg/m). Derivation: definition of mass per length. */
export function runMass(length: number, linearMass: number): number {
  return nonNegative('length', length) * nonNegative('mass per length', linearMass);
}

/** m = v ρ: solid of volume v (m³), density ρ (kg/m³). Derivation: definition of density. */
export function solidMass(volume: number, density: number): number {
  return volume * nonNegative('density', density);
}

/** m = S w: dope, paint, film or tissue on area S (m²), both faces and all coats counted, areal mass w (kg/m²). */
export function finishMass(area: number, arealMass: number): number {
  return nonNegative('finished area', area) * nonNegative('areal mass of the finish', arealMass);
}

/** Numbers of one part row: mass, x, y, z, own inertia about its three axes, two standard deviations, what tells its mass. */
export const PART_STRIDE = 10;
/** Where among them the standard deviations of the mass and of each station stand. */
export const AT_MASS_SPREAD = 7;
export const AT_STATION_SPREAD = 8;
export const AT_TOLD_BY = 9;
/** What tells how far a mass is off: the estimate, which is off as all that is cut from the same; the scale; or a tolerance of its own. */
export const TOLD_BY = { estimate: 0, scale: 1, tolerance: 2 } as const;

/**
 * Standard deviations where none is typed (common practice, no source): a mass from material × size is good to a tenth,
 * a postal scale to half a gram, a station measured with a ruler to 2 mm.
 */
export const ESTIMATE_SPREAD = 0.1;
export const SCALE_SPREAD = 0.0005;
export const STATION_SPREAD = 0.002;

export interface PartRow {
  /** kg, from one of the shapes above and its finish. */
  readonly estimate: number;
  /** kg, from the scale; NaN: not weighed yet. A weighed mass replaces the estimate. */
  readonly weighed: number;
  /** Station of its centre of gravity, m: x aft, y outboard, z up. */
  readonly x: number;
  readonly y: number;
  readonly z: number;
  /** Length along each axis, m, for its own inertia as a box of even density; NaN or 0: thin in that direction. */
  readonly sizeX: number;
  readonly sizeY: number;
  readonly sizeZ: number;
  /** Standard deviation of the mass, kg; NaN: by the defaults above. */
  readonly massTolerance: number;
  /** Standard deviation of each station, m; NaN: by the default above. */
  readonly stationTolerance: number;
}

/** A part that is filled anew for every design. */
export type PartRoom = { -readonly [K in keyof PartRow]: PartRow[K] };

export const newPart = (): PartRoom => ({
  estimate: Number.NaN,
  weighed: Number.NaN,
  x: Number.NaN,
  y: Number.NaN,
  z: Number.NaN,
  sizeX: Number.NaN,
  sizeY: Number.NaN,
  sizeZ: Number.NaN,
  massTolerance: Number.NaN,
  stationTolerance: Number.NaN,
});

/**
 * Writes one part at `out[at + k · stride]`, k = 0 … 9: mass, x, y, z (kg, m), own inertia about the x, y and z axes
 * through its centre (kg·m²), standard deviation of mass (kg) and of station (m), which of TOLD_BY tells its mass.
 *
 * Own inertia of a box: I_xx = m (b² + c²)/12 with b, c the lengths along the two other axes (derivation: integral of the
 * squared distance over an even box). It scales with the weighed mass.
 */
export function writePart(part: PartRow, out: Float64Array, at: number, stride: number): void {
  const isWeighed = !Number.isNaN(part.weighed);
  const mass = isWeighed ? part.weighed : part.estimate;
  const a = part.sizeX;
  const b = part.sizeY;
  const c = part.sizeZ;
  const a2 = Number.isNaN(a) ? 0 : a * a;
  const b2 = Number.isNaN(b) ? 0 : b * b;
  const c2 = Number.isNaN(c) ? 0 : c * c;
  out[at] = mass;
  out[at + stride] = part.x;
  out[at + 2 * stride] = part.y;
  out[at + 3 * stride] = part.z;
  out[at + 4 * stride] = (mass * (b2 + c2)) / 12;
  out[at + 5 * stride] = (mass * (a2 + c2)) / 12;
  out[at + 6 * stride] = (mass * (a2 + b2)) / 12;
  out[at + AT_MASS_SPREAD * stride] = Number.isNaN(part.massTolerance)
    ? isWeighed
      ? SCALE_SPREAD
      : ESTIMATE_SPREAD * Math.abs(mass)
    : part.massTolerance;
  out[at + AT_STATION_SPREAD * stride] = Number.isNaN(part.stationTolerance) ? STATION_SPREAD : part.stationTolerance;
  out[at + AT_TOLD_BY * stride] = isWeighed
    ? TOLD_BY.scale
    : Number.isNaN(part.massTolerance)
      ? TOLD_BY.estimate
      : TOLD_BY.tolerance;
}
