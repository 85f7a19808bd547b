import { type FlightSetup, type FlightSolution, prepare } from '../flight/index';
import type { WindRoom } from './room';
import { pullThere, trimInWind, windAt } from './trim';
import type { Wind } from './wind-lap';

/** `settled`; or the lines slack, no balance in yaw and roll, or no end within the laps looked at. */
export type GlideStatus = 'settled' | 'slack' | 'no balance' | 'too long';

/** From shutting off to touching down. SI and radians; azimuth from straight downwind, in the direction of flight. */
export interface Glide {
  status: GlideStatus;
  /** Angle flown, and where it ends. */
  turned: number;
  time: number;
  /** Over the ground, m/s. */
  landingSpeed: number;
  leastPull: number;
  leastAzimuth: number;
  /** Places of the way, for a picture. */
  readonly azimuth: number[];
  readonly speed: number[];
  readonly pull: number[];
}

export const newGlide = (): Glide => ({
  status: 'settled',
  turned: Number.NaN,
  time: Number.NaN,
  landingSpeed: Number.NaN,
  leastPull: Number.NaN,
  leastAzimuth: Number.NaN,
  azimuth: [],
  speed: [],
  pull: [],
});

const STEP = Math.PI / 24;
const MOST_LAPS = 20;

/**
 * Level glide from the azimuth `from` and the ground speed `start` (m/s) until the airspeed has come down to `landing` (m/s): fills `glide`.
 *
 *   dV/dθ_a = F_t R cos φ/(m_eff V), F_t as in a lap in wind with the engine off
 *
 * Runge–Kutta of fourth order in steps of 7.5°, the last one shortened to the landing speed. `setup` is one with its engine off. The height
 * is held: what the descent adds is left out, so that the real glide is a little longer.
 */
export function flyGlide(
  setup: FlightSetup,
  still: FlightSolution,
  wind: Wind,
  from: number,
  start: number,
  landing: number,
  room: WindRoom,
  glide: Glide,
): void {
  const { c, b, state } = room;
  glide.azimuth.length = 0;
  glide.speed.length = 0;
  glide.pull.length = 0;
  glide.status = 'settled';
  glide.leastPull = Number.POSITIVE_INFINITY;
  if (!prepare(setup, c)) {
    glide.status = 'no balance';
    return;
  }
  state.sideslip = still.sideslip;
  state.roll = still.outboardLow;
  state.pitch = still.pitch;
  b.drag = 0;
  b.dragSlopes.fill(0);
  const reach = c.radius * c.cosElevation;
  let azimuth = from;
  let V = start;
  let time = 0;
  while (glide.status === 'settled') {
    const k1 = slope(room, wind, azimuth, V, glide);
    if (glide.status !== 'settled') break;
    note(room, glide, azimuth, V);
    if (b.airspeed <= landing) break;
    if (azimuth - from > 2 * Math.PI * MOST_LAPS) {
      glide.status = 'too long';
      break;
    }
    const air = b.airspeed;
    const k2 = slope(room, wind, azimuth + STEP / 2, V + (STEP / 2) * k1, glide);
    const k3 = slope(room, wind, azimuth + STEP / 2, V + (STEP / 2) * k2, glide);
    const k4 = slope(room, wind, azimuth + STEP, V + STEP * k3, glide);
    if (glide.status !== 'settled') break;
    const change = (STEP / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
    const next = airspeedAt(wind, azimuth + STEP, V + change);
    // Down to the landing speed within this step: stop there.
    const share = next <= landing ? (air - landing) / (air - next) : 1;
    time += (share * STEP * reach) / (V + (share * change) / 2);
    azimuth += share * STEP;
    V += share * change;
    if (share < 1) {
      slope(room, wind, azimuth, V, glide);
      if (glide.status === 'settled') note(room, glide, azimuth, V);
      break;
    }
  }
  glide.turned = azimuth - from;
  glide.time = time;
  glide.landingSpeed = V;
}

function note(room: WindRoom, glide: Glide, azimuth: number, V: number): void {
  const pull = pullThere(room);
  glide.azimuth.push(azimuth);
  glide.speed.push(V);
  glide.pull.push(pull);
  if (pull < glide.leastPull) {
    glide.leastPull = pull;
    glide.leastAzimuth = azimuth % (2 * Math.PI);
  }
}

function airspeedAt(wind: Wind, azimuth: number, V: number): number {
  return Math.hypot(V + wind.speed * Math.sin(azimuth), wind.speed * Math.cos(azimuth));
}

function slope(room: WindRoom, wind: Wind, azimuth: number, V: number, glide: Glide): number {
  if (glide.status !== 'settled') return Number.NaN;
  const { c, b, air, state } = room;
  windAt(room, wind, azimuth);
  if (!(V > 0.5 && V - air.along > 0.5)) {
    glide.status = 'no balance';
    return Number.NaN;
  }
  state.speed = V;
  if (!trimInWind(room, wind) || !(b.tensionInward > 0)) {
    glide.status = 'slack';
    return Number.NaN;
  }
  return (b.residual[0]! * c.radius * c.cosElevation) / ((c.setup.mass + c.linesMass / 3) * V);
}
