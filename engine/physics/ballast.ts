import { STANDARD_GRAVITY } from '../exact';
import { positive } from './domain';

/** `take away`: the answer is negative, the weight must come off there. `no arm`: nothing placed there can move the CG to the wanted place. */
export type BallastStatus = 'settled' | 'take away' | 'no arm';

export interface Ballast {
  /** kg or m, as the function says; NaN where status is 'no arm'. */
  readonly value: number;
  readonly status: BallastStatus;
}

/** Arms shorter than this (m) are no arm: a millimetre of ruler error would be the whole answer. */
const LEAST_ARM = 0.001;

/**
 * m_b = M (s_w − s_cg)/(s_b − s_w): mass (kg) to add at the station s_b (m) so that the CG of a model of mass M (kg) moves
 * from s_cg to s_w (m). Serves tail and nose weight (stations along x) and tip weight (along y). Negative: take that much away there.
 * Derivation: moments about the wanted CG.
 */
export function ballastAt(mass: number, cg: number, wanted: number, station: number): Ballast {
  const arm = station - wanted;
  if (!(Math.abs(arm) >= LEAST_ARM)) return { value: Number.NaN, status: 'no arm' };
  const value = (positive('mass', mass) * (wanted - cg)) / arm;
  return { value, status: value < 0 ? 'take away' : 'settled' };
}

/**
 * Δs = M (s_w − s_cg)/m_p: how far (m, aft positive) to move a piece of mass m_p (kg) that is part of a model of mass M (kg) so
 * that the CG moves from s_cg to s_w. Derivation: moments; the total mass stays.
 */
export function shiftOf(mass: number, cg: number, wanted: number, pieceMass: number): Ballast {
  if (!(pieceMass > 0)) return { value: Number.NaN, status: 'no arm' };
  return { value: (positive('mass', mass) * (wanted - cg)) / pieceMass, status: 'settled' };
}

/**
 * Δs = m_p (s_p − s_cg)/(M + m_p): how far (m, aft positive) the CG of a model of mass M (kg) moves from s_cg (m) when a piece of
 * mass m_p (kg) is added at the station s_p (m). NaN when nothing is left to have a CG. Derivation: moments about the old CG.
 */
export function cgShiftByAdding(mass: number, cg: number, pieceMass: number, station: number): number {
  const together = mass + pieceMass;
  return together > 0 ? (pieceMass * (station - cg)) / together : Number.NaN;
}

/** Share of the mean chord behind its leading edge at which the CG of a first design lies (common practice, no source). */
export const FIRST_CG_SHARE = 0.2;

/** x_0 = x_c̄ + 0.2 c̄: where the CG should lie to begin with, m, of the leading edge and length of the mean chord, m. */
export const firstCg = (chordEdge: number, meanChord: number): number => chordEdge + FIRST_CG_SHARE * meanChord;

/**
 * L = M g + ½ W_l: lift (N) of level flight of a model of mass M (kg) that carries half of the weight W_l (N) of its lines, under standard
 * gravity. Derivation: balance upright with the lines level; the handle carries the other half.
 */
export const liftWithLines = (mass: number, lineWeight: number): number =>
  positive('mass', mass) * STANDARD_GRAVITY + lineWeight / 2;

/**
 * y_cg = y_L + ½ W_l a/L: station (m outboard) at which the CG balances half of the lines' weight W_l (N) that hangs at the guide, a (m) the
 * distance from guide to CG, L (N) the lift, y_L its station. The builder's rule that tip weight carries half the weight of the
 * lines; leaves out propeller torque, guide height and the lines' centrifugal load.
 *
 * a = y_cg − y_g itself holds y_cg, so y_cg = (y_L − k y_g)/(1 − k) with k = ½ W_l/L.
 * Derivation: moments of lift, weight and line load in roll about the CG, outboard wing level.
 */
export function levelWingsCg(liftStation: number, guideY: number, lineWeight: number, lift: number): number {
  const k = (0.5 * lineWeight) / positive('lift', lift);
  return (liftStation - k * guideY) / (1 - k);
}
