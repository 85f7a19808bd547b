import { nonNegative, positive } from './domain';

/** A point or a force in layout axes: x aft, y outboard, z up. */
export type Vector = readonly [x: number, y: number, z: number];

const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const norm = (a: Vector): number => Math.sqrt(dot(a, a));
const between = (a: Vector, b: Vector, share: number): Vector => [
  a[0] + share * (b[0] - a[0]),
  a[1] + share * (b[1] - a[1]),
  a[2] + share * (b[2] - a[2]),
];

export interface GearLeg {
  /** From where the wire is held to the axle, at least two places (m); places that coincide count once. */
  readonly points: readonly Vector[];
  /** Of the wire, m. */
  readonly diameter: number;
  /** Young's and shear modulus, Pa. */
  readonly young: number;
  readonly shear: number;
  /**
   * Length of wire between the straps, from one leg to the other (m), free to bend between them; 0 where each leg is held for itself.
   */
  readonly between: number;
}

export interface LegAnswer {
  /** Movement of the axle along a force of 1 N, m/N. */
  readonly compliance: number;
  /** Greatest stress (von Mises) by a force of 1 N, Pa/N. */
  readonly stress: number;
  /** Distance along the wire from where it is held to where that stress is, m. */
  readonly at: number;
}

/** Moment about the wire at `place` by the unit force at the axle, split into bending and torsion (N·m per N). */
function moments(place: Vector, axle: Vector, force: Vector, along: Vector): { bending: number; torsion: number } {
  const whole = cross(minus(axle, place), force);
  const torsion = dot(whole, along);
  return { bending: Math.sqrt(Math.max(0, dot(whole, whole) - torsion * torsion)), torsion };
}

/**
 * How a gear leg of round wire gives under a force at its axle, by the unit-load method:
 *
 *   C = ∫ M_b²/(E I) ds + ∫ M_t²/(G J) ds + M_x² w/(2 E I),   I = π d⁴/64,  J = π d⁴/32
 *   σ = √(σ_b² + 3 τ²),   σ_b = 32 M_b/(π d³),  τ = 16 M_t/(π d³)
 *
 * M_b, M_t bending and torsion by the unit force along the wire, exact for straight pieces since moments run straight along each;
 * w wire between the straps, bent round by the moment M_x of both legs about the fore-and-aft axis (both wheels loaded alike).
 * Small deflections; curvature at the bends, the wire's own stretch and shear are left out.
 * Source: unit-load method (Castigliano), as R. C. Hibbeler, Mechanics of Materials, ch. 14; I, J and stresses of round wire,
 * W. C. Young, Roark's Formulas for Stress and Strain (from memory); cross-piece derived from plane bending.
 */
export function gearLeg(leg: GearLeg, force: Vector): LegAnswer {
  const d = positive('wire diameter', leg.diameter);
  const w = nonNegative('wire between the straps', leg.between);
  const size = positive('force', norm(force));
  const unit: Vector = [force[0] / size, force[1] / size, force[2] / size];
  const axle = leg.points.at(-1);
  if (axle === undefined || leg.points.length < 2) {
    throw new RangeError(`a gear leg has ${leg.points.length} places; it must have at least 2`);
  }
  const bend = (leg.young * Math.PI * d ** 4) / 64;
  const twist = (leg.shear * Math.PI * d ** 4) / 32;
  const section = (Math.PI * d ** 3) / 32;
  let compliance = 0;
  let stress = 0;
  let at = 0;
  let run = 0;
  for (let k = 1; k < leg.points.length; k++) {
    const [from, to] = [leg.points[k - 1]!, leg.points[k]!];
    const length = norm(minus(to, from));
    if (length === 0) continue;
    const along = minus(to, from).map((part) => part / length) as unknown as Vector;
    // Squares of straight-line moments are parabolas: Simpson's rule is exact.
    const [a, m, b] = [0, 0.5, 1].map((share) => moments(between(from, to, share), axle, unit, along)) as [
      ReturnType<typeof moments>,
      ReturnType<typeof moments>,
      ReturnType<typeof moments>,
    ];
    compliance += ((a.bending ** 2 + 4 * m.bending ** 2 + b.bending ** 2) * length) / (6 * bend);
    compliance += (a.torsion ** 2 * length) / twist;
    for (const [end, place] of [
      [a, run],
      [b, run + length],
    ] as const) {
      const here = Math.sqrt((end.bending / section) ** 2 + 3 * (end.torsion / (2 * section)) ** 2);
      if (here > stress) [stress, at] = [here, place];
    }
    run += length;
  }
  const foreAndAft = cross(minus(axle, leg.points[0]!), unit)[0];
  return { compliance: compliance + (foreAndAft ** 2 * w) / (2 * bend), stress, at };
}

/** Bending moment, torsion (N·m) and stress (Pa) along a leg by a force (N) at its axle: at both ends of each straight piece. */
export function alongLeg(
  leg: GearLeg,
  force: Vector,
): { readonly distance: number[]; readonly bending: number[]; readonly torsion: number[]; readonly stress: number[] } {
  const axle = leg.points.at(-1)!;
  const section = (Math.PI * leg.diameter ** 3) / 32;
  const line = { distance: [] as number[], bending: [] as number[], torsion: [] as number[], stress: [] as number[] };
  let run = 0;
  for (let k = 1; k < leg.points.length; k++) {
    const [from, to] = [leg.points[k - 1]!, leg.points[k]!];
    const length = norm(minus(to, from));
    if (length === 0) continue;
    const along = minus(to, from).map((part) => part / length) as unknown as Vector;
    for (const [place, where] of [
      [from, run],
      [to, run + length],
    ] as const) {
      const { bending, torsion } = moments(place, axle, force, along);
      line.distance.push(where);
      line.bending.push(bending);
      line.torsion.push(torsion);
      line.stress.push(Math.sqrt((bending / section) ** 2 + 3 * (torsion / (2 * section)) ** 2));
    }
    run += length;
  }
  return line;
}

/**
 * U = ½ C (S/σ_1)²: what a leg takes before it stays bent, J: C compliance (m/N), S stress at which the wire yields (Pa), σ_1
 * stress per newton (Pa/N). Derivation: work of a force that grows from nothing.
 */
export function energyToYield(leg: LegAnswer, yieldStress: number): number {
  return 0.5 * leg.compliance * (yieldStress / positive('stress by 1 N', leg.stress)) ** 2;
}

/**
 * v = √(2 n U/m): sink speed (m/s) at which n legs that take U (J) each stop a model of the mass m (kg) just without yielding; the
 * lift carries the weight meanwhile. Derivation: energy.
 */
export function sinkSpeedToYield(energy: number, legs: number, mass: number): number {
  return Math.sqrt((2 * nonNegative('number of legs', legs) * nonNegative('energy', energy)) / positive('mass', mass));
}
