import { gaussLegendre } from '../../numerics/index';
import { cylinderDragOfSquare } from '../cylinder-drag-of-square';
import { type Air, type Balance, type Constants, type FlightSetup, linesInCalm, type State } from '../flight/index';

/** Points of the quadrature on either side of where a line stands still in the air, from −1 to 1. */
const { nodes, weights } = gaussLegendre(6);

/** Change of drag and lift at a rate of turn (rad/s), which the caller puts here, and the slopes with it. */
export interface LinesByWind {
  rate: number;
  drag: number;
  dragSlope: number;
  lift: number;
  liftSlope: number;
}

export const newLinesByWind = (): LinesByWind => ({
  rate: Number.NaN,
  drag: Number.NaN,
  dragSlope: Number.NaN,
  lift: Number.NaN,
  liftSlope: Number.NaN,
});

/** Of the lines: C_d where it is one number, and d/ν, s/m. */
const law = new Float64Array(2);
/** C_d v of an element in wind and in calm air (m/s), each with its slope with v² behind it. */
const windy = new Float64Array(2);
const calm = new Float64Array(2);

/**
 * What a wind changes of the drag of the lines that the model feels at the guide, and how it lifts them there, by moments about the pilot:
 *
 *   ΔF = (1/R_g) ∫ ½ ρ C_d d n k [v_t |v| − (ω r)²] r dr,  v_t = ω r − w_t,  |v| = √(v_t² + w_u²)
 *   ΔF_up = (1/R_g) ∫ ½ ρ C_d d n k w_u |v| r dr
 *   both winds by ((H_h + (H − H_h) s)/H)^p,  s = (r − r_h)/(R_g − r_h)
 *
 * ω rate of turn (rad/s), w_t wind along the path and w_u across the chord, upward, at the model (m/s), H, H_h heights of model and handle (m), p
 * exponent of the wind's profile; C_d by the local Reynolds number of the air across the line where it is not one number. The path turns with the
 * line, so both winds are the same all along it but for the height; what blows along the line is left out. 0 without wind, exactly. Slopes with ω
 * as C_d follows.
 * Derivation: as the drag of turning lines (`lineDragAt`), with each element's own airspeed; the integral is split where an element stands
 * still in the air.
 */
export function linesByWind(s: FlightSetup, air: Air, profile: LineProfile, out: LinesByWind): void {
  out.drag = 0;
  out.dragSlope = 0;
  out.lift = 0;
  out.liftSlope = 0;
  if (air.along === 0 && air.up === 0) return;
  const rate = out.rate;
  const near = s.handleReach;
  const reach = s.guideRadius - near;
  const stands = Math.min(s.guideRadius, Math.max(near, air.along / rate));
  const scale = (0.5 * s.density * s.lineDiameter * s.lineCount * s.lineDragFactor) / s.guideRadius;
  const even = profile.exponent === 0;
  law[0] = s.lineDragCoefficient;
  law[1] = s.lineDiameter / s.kinematicViscosity;
  for (let piece = 0; piece < 2; piece++) {
    const from = piece === 0 ? near : stands;
    const half = ((piece === 0 ? stands : s.guideRadius) - from) / 2;
    if (half <= 0) continue;
    for (let k = 0; k < nodes.length; k++) {
      const r = from + half * (1 + nodes[k]!);
      const share = even ? 1 : windShare(profile, (r - near) / reach);
      const own = rate * r;
      const forward = own - air.along * share;
      const up = air.up * share;
      windy[0] = forward * forward + up * up;
      calm[0] = own * own;
      pulledAt(windy);
      pulledAt(calm);
      const weight = scale * half * weights[k]! * r;
      const sloped = 2 * forward * windy[1]!;
      out.drag += weight * (windy[0] * forward - calm[0] * own);
      out.dragSlope += weight * r * (windy[0] + sloped * forward - calm[0] - 2 * own * own * calm[1]!);
      out.lift += weight * windy[0] * up;
      out.liftSlope += weight * r * sloped * up;
    }
  }
}

/** C_d v and its slope with v², of the v² (m²/s²) that stands in `at[0]`. */
function pulledAt(at: Float64Array): void {
  const constant = law[0]!;
  const square = at[0]!;
  if (Number.isNaN(constant)) {
    const perSpeed = law[1]!;
    at[0] = square * perSpeed * perSpeed;
    cylinderDragOfSquare(at, 0);
    at[0]! /= perSpeed;
    at[1]! *= perSpeed;
    return;
  }
  const speed = Math.sqrt(square);
  at[0] = constant * speed;
  at[1] = speed === 0 ? 0 : (0.5 * constant) / speed;
}

const changed = newLinesByWind();

/** What the lines take and how they press at the guide at the state's speed over the ground in a wind, with slopes, into `b`. */
export function linesInWind(c: Constants, state: State, air: Air, profile: LineProfile, b: Balance): void {
  linesInCalm(c, state, b);
  if (air.still) return;
  changed.rate = state.speed / c.radius;
  linesByWind(c.setup, air, profile, changed);
  b.lineDrag += changed.drag;
  b.lineDragSlope += changed.dragSlope / c.radius;
  b.linePress -= changed.lift;
  b.linePressSlope -= changed.liftSlope / c.radius;
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
