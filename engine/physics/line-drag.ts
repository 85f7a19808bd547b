import { nonNegative, positive, within } from './domain';
import { meanCylinderDrag } from './mean-cylinder-drag';

/** Lines that turn about the pilot, straight from the handle to the guide. */
export interface TurningLines {
  /** n, of equal lines. */
  readonly count: number;
  /** d, m. */
  readonly diameter: number;
  /** r_h, from the pilot's axis to the grip, m. */
  readonly handleReach: number;
  /** R_g, from the pilot's axis to the guide, m. */
  readonly guideRadius: number;
  /** C_d on diameter × length; NaN: of a smooth cylinder by the local Reynolds number. */
  readonly dragCoefficient: number;
  /** What vibration and the like multiply C_d by. */
  readonly dragFactor: number;
  /** Kinematic viscosity of air, m²/s. */
  readonly kinematicViscosity: number;
  /** ρ, kg/m³. */
  readonly density: number;
}

/** What `prepareLineDrag` keeps of the lines, so that the drag at one more speed costs little. */
export interface LineDragLaw {
  /** ½ ρ d n k R_g³, kg·m. */
  scale: number;
  /** ∫ C_d η³ dη where C_d is one number; NaN: by the local Reynolds number. */
  constant: number;
  /** ln of Re at the guide over ω, and ln and fourth power of r_h/R_g. */
  logReynoldsPerRate: number;
  logNear: number;
  nearFourth: number;
}

export const newLineDragLaw = (): LineDragLaw => ({
  scale: 0,
  constant: Number.NaN,
  logReynoldsPerRate: 0,
  logNear: 0,
  nearFourth: 0,
});

/** Fills `law` from the lines; allocates nothing. */
export function prepareLineDrag(lines: TurningLines, law: LineDragLaw): void {
  const radius = positive('guide radius', lines.guideRadius);
  const near = within('handle reach', lines.handleReach, 0, radius) / radius;
  const diameter = nonNegative('line diameter', lines.diameter);
  law.scale =
    0.5 *
    positive('air density', lines.density) *
    diameter *
    nonNegative('number of lines', lines.count) *
    nonNegative('line drag factor', lines.dragFactor) *
    radius *
    radius *
    radius;
  law.nearFourth = near * near * near * near;
  if (!Number.isNaN(lines.dragCoefficient)) {
    law.constant = (nonNegative('line drag coefficient', lines.dragCoefficient) * (1 - law.nearFourth)) / 4;
    return;
  }
  law.constant = Number.NaN;
  law.logNear = Math.log(near);
  law.logReynoldsPerRate = Math.log(
    (radius * positive('line diameter', diameter)) / positive('viscosity', lines.kinematicViscosity),
  );
}

const mean = new Float64Array(4);

/**
 * Drag of the lines that the model feels at the guide, by moments about the pilot, and its slope with the rate of turn.
 *
 *   F = (1/R_g) ∫_{r_h}^{R_g} ½ ρ C_d(Re) d n k (ω r)² r dr,  Re = ω r d/ν
 *     = ½ ρ d n k ω² R_g³ ∫ C_d η³ dη,  η = r/R_g
 *     ∫ C_d η³ dη = C_d (1 − η_h⁴)/4, or g(Re_g) − η_h⁴ g(η_h Re_g) by the local Reynolds number, g as in
 *       `meanCylinderDrag`
 *
 * ω > 0 (rad/s) stands in out[o] and gives way to F (N); dF/dω (N·s) to out[o + 1]; along the chord. A number handed over by itself would be put
 * on the heap at every call. The handle takes the rest of the lines' drag. Valid for a straight line and flow across it.
 * Derivation: moments about the pilot's axis; the line ends at the guide, not at the CG.
 */
export function lineDragAt(law: LineDragLaw, out: Float64Array, o: number): void {
  const rate = out[o]!;
  let share = law.constant;
  let slope = 0;
  if (Number.isNaN(share)) {
    const logRe = law.logReynoldsPerRate + Math.log(rate);
    meanCylinderDrag(logRe, mean, 0);
    meanCylinderDrag(logRe + law.logNear, mean, 2);
    share = mean[0]! - law.nearFourth * mean[2]!;
    slope = mean[1]! - law.nearFourth * mean[3]!;
  }
  out[o] = law.scale * rate * rate * share;
  out[o + 1] = law.scale * rate * (2 * share + slope);
}

const scratch = new Float64Array(2);
const law = newLineDragLaw();

/** F of `lineDragAt` for a set of lines at the rate of turn ω (rad/s), N. */
export function lineDrag(lines: TurningLines, rate: number): number {
  prepareLineDrag(lines, law);
  scratch[0] = positive('rate of turn', rate);
  lineDragAt(law, scratch, 0);
  return scratch[0]!;
}
