import { gaussLegendre } from '../../numerics/index';
import { type Air, type Balance, type Constants, type FlightSetup, linesInCalm, type State } from '../flight/index';
import { quickCylinderDrag } from '../quick-cylinder-drag';

const POINTS = 6;

/** The whole rows of a quadrature: change of drag and of press, and of the slope of drag with the rate of turn. */
export interface LinesByWind {
  drag: number;
  dragSlope: number;
  lift: number;
}

/**
 * What a wind changes of the drag of the lines that the model feels at the guide, and how it lifts them there, by moments about the pilot:
 *
 *   ΔF = (1/R_g) ∫ ½ ρ C_d d n k [v_t |v| − (ω r)²] r dr,  v_t = ω r − w_t,  |v| = √(v_t² + w_u²)
 *   ΔF_up = (1/R_g) ∫ ½ ρ C_d d n k w_u |v| r dr
 *   both winds by ((H_h + (H − H_h) s)/H)^p,  s = (r − r_h)/(R_g − r_h)
 *
 * ω rate of turn (rad/s), w_t wind along the path and w_u across the chord, upward, at the model (m/s), H, H_h heights of model and handle (m), p
 * exponent of the wind's profile; C_d by the local Reynolds number of the air across the line where it is not one number. The path turns with the
 * line, so both winds are the same all along it but for the height; what blows along the line is left out. 0 without wind, exactly. The slope of ΔF
 * with ω leaves out how C_d follows.
 * Derivation: as the drag of turning lines (`lineDragAt`), with each element's own airspeed; the integral is split where an element stands
 * still in the air.
 */
export function linesByWind(s: FlightSetup, rate: number, air: Air, profile: LineProfile, out: LinesByWind): void {
  out.drag = 0;
  out.dragSlope = 0;
  out.lift = 0;
  if (air.along === 0 && air.up === 0) return;
  const reach = s.guideRadius - s.handleReach;
  const stands = Math.min(s.guideRadius, Math.max(s.handleReach, air.along / rate));
  const scale = (0.5 * s.density * s.lineDiameter * s.lineCount * s.lineDragFactor) / s.guideRadius;
  const { nodes, weights } = gaussLegendre(POINTS);
  for (let piece = 0; piece < 2; piece++) {
    const from = piece === 0 ? s.handleReach : stands;
    const half = ((piece === 0 ? stands : s.guideRadius) - from) / 2;
    if (half <= 0) continue;
    for (let k = 0; k < POINTS; k++) {
      const r = from + half * (1 + nodes[k]!);
      const share = profile.exponent === 0 ? 1 : windShare(profile, (r - s.handleReach) / reach);
      const own = rate * r;
      const forward = own - air.along * share;
      const up = air.up * share;
      const whole = Math.sqrt(forward * forward + up * up);
      const drag = coefficientAt(s, whole);
      const calm = coefficientAt(s, own);
      const weight = scale * half * weights[k]! * r;
      out.drag += weight * (drag * forward * whole - calm * own * own);
      out.dragSlope += weight * r * (drag * (whole > 0 ? whole + (forward * forward) / whole : 0) - 2 * calm * own);
      out.lift += weight * drag * up * whole;
    }
  }
}

const changed: LinesByWind = { drag: Number.NaN, dragSlope: Number.NaN, lift: Number.NaN };
/** What the lines take and how they press at the guide at the state's speed over the ground in a wind, with slopes, into `b`. */
export function linesInWind(c: Constants, state: State, air: Air, profile: LineProfile, b: Balance): void {
  linesInCalm(c, state, b);
  if (air.still) return;
  linesByWind(c.setup, state.speed / c.radius, air, profile, changed);
  b.lineDrag += changed.drag;
  b.lineDragSlope += changed.dragSlope / c.radius;
  b.linePress -= changed.lift;
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

/** C_d of the air across the line; of none, nothing. */
function coefficientAt(s: FlightSetup, speed: number): number {
  if (!Number.isNaN(s.lineDragCoefficient)) return s.lineDragCoefficient;
  return speed === 0 ? 0 : quickCylinderDrag((speed * s.lineDiameter) / s.kinematicViscosity);
}
