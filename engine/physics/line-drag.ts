import { gaussLegendre, integrate } from '../numerics/index';
import {
  CREEPING,
  CREEPING_POWER,
  cylinderDragCoefficient,
  ROUGH,
  ROUGH_POWER,
  ROUGH_REYNOLDS,
  WAKE,
  WAKE_REYNOLDS,
} from './cylinder-drag';
import { nonNegative, positive, within } from './domain';

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

const POINTS = 8;
const { nodes, weights } = gaussLegendre(POINTS);

/** What `prepareLineDrag` keeps of the lines, so that the drag at one more speed costs little. */
export interface LineDragLaw {
  /** ½ ρ d n k R_g³, kg·m. */
  scale: number;
  /** Re at the guide over ω, s. */
  reynoldsPerRate: number;
  /** ∫ C_d η³ dη where C_d is one number; NaN: by the local Reynolds number. */
  constant: number;
  /** 11 ∫ η^(3 − ¾) dη. */
  creeping: number;
  /** At each point of the quadrature: weight × η³, 1/η and η^0.7. */
  readonly share: Float64Array;
  readonly inverse: Float64Array;
  readonly rough: Float64Array;
}

export function newLineDragLaw(): LineDragLaw {
  return {
    scale: 0,
    reynoldsPerRate: 0,
    constant: Number.NaN,
    creeping: 0,
    share: new Float64Array(POINTS),
    inverse: new Float64Array(POINTS),
    rough: new Float64Array(POINTS),
  };
}

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
  if (!Number.isNaN(lines.dragCoefficient)) {
    law.constant = (nonNegative('line drag coefficient', lines.dragCoefficient) * (1 - near * near * near * near)) / 4;
    return;
  }
  law.constant = Number.NaN;
  law.reynoldsPerRate =
    (radius * positive('line diameter', diameter)) / positive('viscosity', lines.kinematicViscosity);
  const power = 4 + CREEPING_POWER;
  law.creeping = (CREEPING * (1 - near ** power)) / power;
  const half = (1 - near) / 2;
  for (let i = 0; i < POINTS; i++) {
    const eta = near + half * (1 + nodes[i]!);
    law.share[i] = half * weights[i]! * eta * eta * eta;
    law.inverse[i] = 1 / eta;
    law.rough[i] = eta ** ROUGH_POWER;
  }
}

/**
 * Drag of the lines that the model feels at the guide, by moments about the pilot, and its slope with the rate of turn.
 *
 *   F = (1/R_g) ∫_{r_h}^{R_g} ½ ρ C_d(Re) d n k (ω r)² r dr,  Re = ω r d/ν
 *     = ½ ρ d n k ω² R_g³ ∫ C_d η³ dη,  η = r/R_g
 *
 * F (N) to out[o], dF/dω (N·s) to out[o + 1], by Gauss-Legendre quadrature (the first term of C_d in closed form); ω > 0 (rad/s),
 * along the chord. The same lines' whole drag is `wholeLineDrag`; the handle takes the rest.
 * Valid for a straight line and flow across it. Derivation: moments about the pilot's axis; C_d by Cheng's fit.
 */
export function lineDragAt(law: LineDragLaw, rate: number, out: Float64Array, o: number): void {
  let sum = law.constant;
  let slope = 0;
  if (Number.isNaN(sum)) {
    const re = law.reynoldsPerRate * rate;
    sum = law.creeping * re ** CREEPING_POWER;
    slope = CREEPING_POWER * sum;
    const wake = WAKE_REYNOLDS / re;
    const rough = (re / ROUGH_REYNOLDS) ** ROUGH_POWER;
    for (let i = 0; i < POINTS; i++) {
      const u = wake * law.inverse[i]!;
      const z = rough * law.rough[i]!;
      const shed = Math.exp(-u);
      const grown = Math.exp(-z);
      sum += law.share[i]! * (WAKE * (1 - shed) + ROUGH * (1 - grown));
      slope += law.share[i]! * (ROUGH * ROUGH_POWER * z * grown - WAKE * u * shed);
    }
  }
  const force = law.scale * rate * rate;
  out[o] = force * sum;
  out[o + 1] = law.scale * rate * (2 * sum + slope);
}

const scratch = new Float64Array(2);
const law = newLineDragLaw();

/** F of `lineDragAt` for a set of lines at the rate of turn ω (rad/s), N. */
export function lineDrag(lines: TurningLines, rate: number): number {
  prepareLineDrag(lines, law);
  lineDragAt(law, positive('rate of turn', rate), scratch, 0);
  return scratch[0]!;
}

/**
 * D = ∫_{r_h}^{R_g} ½ ρ C_d(Re) d n k (ω r)² dr: whole drag of the lines (N) at the rate of turn ω (rad/s). With r_h = 0 and one C_d it is ⅓ of
 * the drag at the guide's full speed; the model feels ¼ and the handle 1/12. Derivation: direct integration.
 */
export function wholeLineDrag(lines: TurningLines, rate: number): number {
  const { count, diameter, dragCoefficient, dragFactor, density, kinematicViscosity } = lines;
  const element = (r: number): number => {
    const speed = rate * r;
    const coefficient = Number.isNaN(dragCoefficient)
      ? cylinderDragCoefficient((speed * diameter) / kinematicViscosity)
      : dragCoefficient;
    return 0.5 * density * coefficient * diameter * count * dragFactor * speed * speed;
  };
  return integrate(element, lines.handleReach, lines.guideRadius, 24);
}
