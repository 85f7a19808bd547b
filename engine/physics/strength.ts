import { nonNegative, positive, within } from './domain';

/**
 * F = k n S/s: load on the whole system (N) at which the most loaded of n like strands breaks, S breaking load of one (N), k what its
 * ends leave of it, s share of the load that one carries times n (1: all alike). Derivation: equilibrium.
 */
export function strandsHold(one: number, count: number, endShare: number, unevenness = 1): number {
  return (
    (within('share that the ends leave', endShare, 0, 1) *
      positive('number of strands', count) *
      nonNegative('breaking load', one)) /
    positive('unevenness', unevenness)
  );
}

/** One arm of a bellcrank at its pivot. */
export interface Arm {
  /** Thickness across the pull, m. */
  readonly thickness: number;
  /** Width along the pull, at the pivot, and the hole in the middle of it, m. */
  readonly width: number;
  readonly hole: number;
  /** From the pivot to the leadout, m. */
  readonly length: number;
}

/**
 * F = 2 S W/l,  W = t (w³ − d³)/(6 w): pull of both lines together (N) at which an arm of a bellcrank fails in bending beside its pivot;
 * each line pulls at the end of its arm of the length l with half of it, S bending strength (Pa), t, w thickness and width,
 * d hole. Source: bending of a beam, as J. M. Gere, Mechanics of Materials, ch. 5; section by subtraction.
 */
export function bellcrankHolds(arm: Arm, strength: number): number {
  const { thickness, width, hole, length } = arm;
  if (hole >= width) return 0;
  const modulus = (positive('thickness', thickness) * (width ** 3 - hole ** 3)) / (6 * positive('width', width));
  return (2 * nonNegative('strength', strength) * modulus) / positive('arm length', length);
}

/**
 * F = n S/√((32 e/(π d³))² + 3 (4/(π d²))²): load (N) at which a bolt yields in bending and shear together (von Mises), e from the
 * load to where the bolt is held (m), d its diameter there (m), S yield strength (Pa), n 1 held on one side, 2 on both.
 * Source: cantilever of round section, as J. M. Gere, Mechanics of Materials; mean shear.
 */
export function pivotHolds(diameter: number, arm: number, yieldStrength: number, sides: number): number {
  const d = positive('pivot diameter', diameter);
  const bending = (32 * nonNegative('pivot arm', arm)) / (Math.PI * d ** 3);
  const shear = 4 / (Math.PI * d * d);
  return (sides * nonNegative('yield strength', yieldStrength)) / Math.hypot(bending, Math.sqrt(3) * shear);
}

/** F = S d t: load (N) at which a bolt of diameter d crushes wood of thickness t (m) and bearing strength S (Pa). Mean pressure. */
export function bearingHolds(diameter: number, thickness: number, strength: number): number {
  return nonNegative('strength', strength) * positive('bolt diameter', diameter) * nonNegative('thickness', thickness);
}

/** F = S A: load (N) that a glued area A (m²) of shear strength S (Pa) holds. Mean shear. */
export function glueHolds(area: number, strength: number): number {
  return nonNegative('strength', strength) * nonNegative('area', area);
}

/** Kinds of thread: the share of its pitch that the stress area loses from the diameter differs. */
export const THREADS = ['metric', 'inch'] as const;
export type Thread = (typeof THREADS)[number];
export const LOST_OF_PITCH: Readonly<Record<Thread, number>> = { metric: 0.9382, inch: 0.9743 };

/**
 * A_s = π/4 (d − c p)²: stress area (m²) of a thread of diameter d and pitch p (m), c = 0.9382 for ISO metric threads, 0.9743 for inch threads,
 * where p = 1/n with n threads to the inch. Source: ISO 898-1; ANSI B1.1, as J. E. Shigley, tables 8-1 and 8-2.
 */
export function threadStressArea(diameter: number, pitch: number, thread: Thread): number {
  const root = positive('thread diameter', diameter) - LOST_OF_PITCH[thread] * nonNegative('thread pitch', pitch);
  return (Math.PI / 4) * root * root;
}

/**
 * F = T/(K d): preload (N) of a screw of diameter d (m) tightened with T (N·m); K torque coefficient, 0.2 for plain screws.
 * Source: J. E. Shigley, Mechanical Engineering Design, ch. 8; T. H. Wentzell, Machine Design, ch. 6.
 */
export function preload(torque: number, coefficient: number, diameter: number): number {
  return (
    nonNegative('torque', torque) / (positive('torque coefficient', coefficient) * positive('screw diameter', diameter))
  );
}

/** Tensile strength of nylon 6/6, Pa. Source: public engineering table. */
export const NYLON_STRENGTH = 82e6;
/** Yield strength of steel screws of class 5.8, Pa. Source: ISO 898-1. */
export const STEEL_BOLT_YIELD = 420e6;
/** Paper birch along the grain, Pa. Source: USDA FPL, Wood Handbook, table 5-3b. */
const BIRCH_ALONG = 39.2e6;
/** Bearing strength of birch plywood, Pa: 0.6 of the wood along its grain, a guess without a source for the plies that lie along. */
export const BIRCH_PLY_BEARING = 0.6 * BIRCH_ALONG;
/** Shear strength of balsa along the grain, Pa. Source: USDA FPL, Wood Handbook, table 5-5a (from memory). */
export const BALSA_SHEAR = 2.1e6;
/** Crushing strength of sugar maple across the grain, Pa. Source: USDA FPL, Wood Handbook, table 5-3a (from memory). */
export const MAPLE_ACROSS = 10.1e6;
