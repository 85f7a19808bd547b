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

/** What rolls a model in level flight, and where weight can be put against it; SI, outboard positive. */
export interface Rolled {
  /** Station of the CG now. */
  readonly cg: number;
  readonly liftStation: number;
  readonly guideY: number;
  /** How hard the lines press down on the guide, N. */
  readonly press: number;
  /** Of the propeller, raising the outboard wing, N·m. */
  readonly torque: number;
  readonly lift: number;
  /** Where tip weight goes. */
  readonly station: number;
}

/**
 * y_0 = [N y_t + y_L e (y_t − y_cg)]/[N + e (y_t − y_cg)],  N = F (y_L − y_g) + Q,  e = L − F
 *
 * Station (m outboard) to which tip weight brings the CG so that the wings are level once it is in: y_cg the CG now, y_t where
 * the weight goes, y_L station of the lift, y_g of the guide, on which the lines press with F (N), Q torque of the propeller (N·m),
 * L lift now (N). What the model lifts beside the lines, e, grows with its mass, (1 + m_w/m) = (y_t − y_cg)/(y_t − y_0).
 * Derivation: moments in roll about the CG, e (1 + m_w/m) (y_0 − y_L) = N. Leaves out that speed, torque and press change a
 * little with the weight.
 */
export function levelWingsCg({ cg, liftStation, guideY, press, torque, lift, station }: Rolled): number {
  const rolling = press * (liftStation - guideY) + torque;
  const held = (positive('lift', lift) - press) * (station - cg);
  return (rolling * station + liftStation * held) / (rolling + held);
}
