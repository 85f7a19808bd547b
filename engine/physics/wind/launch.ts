import { interpolateAt } from '../../numerics/index';
import { nonNegative } from '../domain';
import { type FlightSetup, newConstants, prepare, wingDragShare } from '../flight/index';
import { lineDragAt } from '../line-drag';
import { linesByWind, newLinesByWind } from './lines-in-wind';
import type { Wind } from './wind-lap';

/** `settled`; or the model does not come to its flying speed within the laps looked at. */
export type LaunchStatus = 'settled' | 'does not lift off';

/** From release to lifting off. SI and radians; azimuth from straight downwind, in the direction of flight. */
export interface Launch {
  status: LaunchStatus;
  turned: number;
  time: number;
  /** Along the circle, m. */
  length: number;
  /** Of all lines at the model, N; negative: the model would run inward, the lines are slack. */
  leastPull: number;
  leastAzimuth: number;
  /** Steps in time, and airspeed along the chord at the last one over the flying speed, m/s. */
  iterations: number;
  residual: number;
  readonly azimuth: number[];
  readonly speed: number[];
  readonly pull: number[];
}

export const newLaunch = (): Launch => ({
  status: 'settled',
  turned: Number.NaN,
  time: Number.NaN,
  length: Number.NaN,
  leastPull: Number.NaN,
  leastAzimuth: Number.NaN,
  iterations: 0,
  residual: Number.NaN,
  azimuth: [],
  speed: [],
  pull: [],
});

export interface Run {
  /** Rolling drag over load. */
  readonly rolling: number;
  /** Airspeed along the chord at which it lifts off, m/s. */
  readonly flyingSpeed: number;
  /** Angle of the rudder, offset and body to the path: nose out, rad. */
  readonly noseOut: number;
}

const STEP = 0.01;
const LONGEST = 60;
const c = newConstants();
const read = new Float64Array(2);
const changed = newLinesByWind();

/**
 * The run along the circle on its wheels from release at the azimuth `from` to the flying speed: fills `run`.
 *
 *   m_eff dV/dt = P cos τ − q A_D u/v − Y sin ψ − F_line − μ N,  N = m g (1 − (u/V_fly)²) ≥ 0
 *   T = m V²/R + P sin τ + Y cos ψ + q A_D w_o/v
 *
 * Lift is taken to grow with the square of the airspeed along the chord, u, and to carry the model where that is the flying speed: air from aside
 * or from behind does not lift; the wheels keep the heading (nose out by ψ)
 * and roll freely across the ground, so that nothing but the lines holds the model in. Steps of 0.01 s by the midpoint rule, the last one
 * shortened by a straight line to the flying speed.
 * Derivation: Newton's law along the path and along the lines; the balance in roll and yaw is left to the wheels.
 */
export function runFrom(setup: FlightSetup, wind: Wind, how: Run, from: number, run: Launch): void {
  run.azimuth.length = 0;
  run.speed.length = 0;
  run.pull.length = 0;
  run.status = 'settled';
  run.leastPull = Number.POSITIVE_INFINITY;
  // The handle is level with the model on the ground, or nearly.
  prepare({ ...setup, height: 0 }, c);
  const mass = setup.mass + c.linesMass / 3;
  nonNegative('rolling drag', how.rolling);
  let azimuth = from;
  let V = 0;
  let time = 0;
  for (;;) {
    const now = forces(setup, wind, how, azimuth, V);
    note(run, azimuth, V, now.pull);
    run.residual = now.ahead - how.flyingSpeed;
    if (now.ahead >= how.flyingSpeed) break;
    const half = Math.max(0, V + (now.path / mass) * (STEP / 2));
    const middle = forces(setup, wind, how, azimuth + ((STEP / 2) * V) / c.radius, half);
    if (time > LONGEST || (V === 0 && now.path <= 0)) {
      run.status = 'does not lift off';
      break;
    }
    const next = Math.max(0, V + (middle.path / mass) * STEP);
    const turned = (STEP * half) / c.radius;
    const reached = next + wind.speed * Math.sin(azimuth + turned);
    const share = reached > how.flyingSpeed ? (how.flyingSpeed - now.ahead) / (reached - now.ahead) : 1;
    V += share * (next - V);
    azimuth += share * turned;
    time += share * STEP;
    if (share < 1) {
      const last = forces(setup, wind, how, azimuth, V);
      note(run, azimuth, V, last.pull);
      run.residual = last.ahead - how.flyingSpeed;
      break;
    }
  }
  run.iterations = run.azimuth.length - 1;
  run.turned = azimuth - from;
  run.time = time;
  run.length = run.turned * c.radius;
}

function note(run: Launch, azimuth: number, V: number, pull: number): void {
  run.azimuth.push(azimuth);
  run.speed.push(V);
  run.pull.push(pull);
  if (pull < run.leastPull) {
    run.leastPull = pull;
    run.leastAzimuth = azimuth % (2 * Math.PI);
  }
}

function forces(s: FlightSetup, wind: Wind, how: Run, azimuth: number, V: number) {
  const along = -wind.speed * Math.sin(azimuth);
  const outward = wind.speed * Math.cos(azimuth);
  const u = V - along;
  const v = Math.hypot(u, outward);
  const q = 0.5 * s.density * v * v;
  interpolateAt(s.curves, s.thrustAt, s.stride, s.knotStep, s.knotCount, Math.max(0, u), read, 0);
  const P = read[0]!;
  // Square to the body; a wind from far aside meets its flat side.
  const slip = Math.max(
    -SIDE_LIMIT,
    Math.min(SIDE_LIMIT, how.noseOut + (v > 0 ? Math.atan2(outward, Math.max(u, 1e-9)) : 0)),
  );
  const sine = Math.sin(slip);
  const Y = q * (c.sideSlip * sine * Math.cos(slip) + c.crossForce * sine * Math.abs(sine));
  const load = s.mass * s.gravity * Math.max(0, 1 - (Math.max(0, u) / how.flyingSpeed) ** 2);
  let lines = 0;
  if (V > 0) {
    read[0] = V / c.radius;
    lineDragAt(c.line, read, 0);
    changed.rate = V / c.radius;
    linesByWind(s, { along, out: outward, up: 0, still: false }, wind.profile, changed);
    lines = read[0]! + changed.drag;
  }
  const drag = q * (wingDragShare(c, v) * c.wingDragArea + c.otherDragArea);
  const path =
    P * c.cosSideThrust * Math.cos(how.noseOut) -
    (v > 0 ? (drag * u) / v : 0) -
    Y * Math.sin(how.noseOut) -
    lines -
    how.rolling * load;
  const pull =
    (s.mass * V * V) / c.radius +
    P * Math.sin(s.sideThrust + how.noseOut) +
    Y * Math.cos(how.noseOut) +
    (v > 0 ? (drag * outward) / v : 0);
  return { path, pull, ahead: u };
}

/** Places of release that are looked at. */
export const RELEASES = 24;

const SIDE_LIMIT = Math.PI / 2;

/** The release that keeps the lines tightest, among `places` around the circle. */
export function bestRelease(
  setup: FlightSetup,
  wind: Wind,
  how: Run,
  places: number,
): { readonly azimuth: number; readonly leastPull: number } {
  let best = { azimuth: 0, leastPull: Number.NEGATIVE_INFINITY };
  for (let k = 0; k < places; k++) {
    const azimuth = (2 * Math.PI * k) / places;
    runFrom(setup, wind, how, azimuth, scratch);
    if (scratch.status === 'settled' && scratch.leastPull > best.leastPull) {
      best = { azimuth, leastPull: scratch.leastPull };
    }
  }
  return best;
}

const scratch = newLaunch();
