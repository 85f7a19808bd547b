import { gaussLegendre } from '../../numerics/index';
import type { Constants, FlightSetup } from '../flight/index';
import { lineDragAt } from '../line-drag';
import { quickCylinderDrag } from '../quick-cylinder-drag';

const POINTS = 6;

/**
 * Extra drag of the lines that the model feels at the guide in a wind along the path, by moments about the pilot:
 *
 *   ΔF = (1/R_g) ∫ ½ ρ C_d d n k [(ω r − w)|ω r − w| − (ω r)²] r dr,  w = w_t ((H_h + (H − H_h) s)/H)^p,  s = (r − r_h)/(R_g − r_h)
 *
 * ω rate of turn (rad/s), w_t wind along the path at the model (m/s, with it positive), H, H_h heights of model and handle (m), p
 * exponent of the wind's profile; C_d by the local Reynolds number where it is not one number. The path turns with the line,
 * so w_t is the same all along it but for the height. 0 without wind, exactly.
 * Derivation: as the drag of turning lines (`lineDragAt`), with each element's own airspeed; the integral is split where an element stands
 * still in the air.
 */
export function lineDragByWind(s: FlightSetup, rate: number, along: number, profile: LineProfile): number {
  if (along === 0) return 0;
  const reach = s.guideRadius - s.handleReach;
  const stands = Math.min(s.guideRadius, Math.max(s.handleReach, along / rate));
  const scale = (0.5 * s.density * s.lineDiameter * s.lineCount * s.lineDragFactor) / s.guideRadius;
  const { nodes, weights } = gaussLegendre(POINTS);
  let sum = 0;
  for (let piece = 0; piece < 2; piece++) {
    const [from, to] = piece === 0 ? [s.handleReach, stands] : [stands, s.guideRadius];
    const half = (to - from) / 2;
    if (half <= 0) continue;
    for (let k = 0; k < POINTS; k++) {
      const r = from + half * (1 + nodes[k]!);
      const share = profile.exponent === 0 ? 1 : windShare(profile, (r - s.handleReach) / reach);
      const own = rate * r;
      const air = own - along * share;
      sum += half * weights[k]! * r * (signedDrag(s, air) - signedDrag(s, own));
    }
  }
  return scale * sum;
}

const still = new Float64Array(2);

/** Drag of the lines (N) that the model feels at the guide at V (m/s) over the ground in a wind along the path. */
export function linesInWind(c: Constants, V: number, along: number, profile: LineProfile): number {
  still[0] = V / c.radius;
  lineDragAt(c.line, still, 0);
  return still[0]! + lineDragByWind(c.setup, V / c.radius, along, profile);
}

export interface LineProfile {
  /** Of handle and model above the ground, m. */
  readonly handleHeight: number;
  readonly height: number;
  /** p in W ~ z^p; 0: the same at every height. */
  readonly exponent: number;
}

/** Wind at the share s of the way from handle to model over that at the model. */
function windShare({ handleHeight, height, exponent }: LineProfile, s: number): number {
  const z = handleHeight + (height - handleHeight) * s;
  return (Math.max(0, z) / height) ** exponent;
}

/** C_d v|v|. */
function signedDrag(s: FlightSetup, v: number): number {
  const size = Math.abs(v);
  if (size === 0) return 0;
  const coefficient = Number.isNaN(s.lineDragCoefficient)
    ? quickCylinderDrag((size * s.lineDiameter) / s.kinematicViscosity)
    : s.lineDragCoefficient;
  return coefficient * v * size;
}
