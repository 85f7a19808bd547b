import { type FlightSetup, type FlightSolution, liftLimitAt, prepare } from '../flight/index';
import { extremeOf } from './extremes';
import { type Near, settleLap } from './newton-lap';
import { refine } from './refine';
import { newRows, type Rows, type WindRoom } from './room';
import { CLOSED, noseOutOf, type Wind, type WindLap } from './wind-lap';

const FINE: Near = { step: CLOSED, imbalance: 1e-7, further: false };
/** Of the coarse lap, which is off by more for its few places. */
const ROUGH: Near = { step: 1e-2, imbalance: 2e-2, further: true };

/** Shares of the wind on the way to one in which no lap was found at once, or one with slack lines. */
const APPROACH = [0.5, 0.75, 0.9, 1];

/**
 * The lap of `flyWindLap`, solved at all its places at once by the wave through them (`settleLap`): fills `lap`. A lap at few places starts the
 * one at many, and `from` the lap in another wind; where that leads to none, it is come to from weaker winds. False where that does not settle, or gives a lap that cannot be flown.
 *
 *   Σ_j D_kj E_j = F_t(θ_k, V_k) R cos φ/m_eff,  E = V²/2,  D the slopes of the periodic wave through equal steps
 *
 * The error falls faster than any power of the step where the forces are smooth.
 * Derivation: periodic collocation of the lap's equation of motion.
 */
export function closeLap(
  setup: FlightSetup,
  still: FlightSolution,
  wind: Wind,
  room: WindRoom,
  lap: WindLap,
  from: WindLap | undefined,
): boolean {
  const n = lap.azimuth.length;
  if (room.rows.places !== n) room.rows = newRows(n);
  const rows = room.rows;
  const known = from !== undefined && from.status === 'settled' && from.speed.length === n && from.wind > 0;
  if (known) startFrom(rows, still, from, wind.speed / from.wind);
  lap.laps = 0;
  lap.wind = Number.NaN;
  lap.residual = Number.NaN;
  lap.azimuthOfReason = Number.NaN;
  lap.lapTime = Number.NaN;
  if (!prepare(setup, room.c)) return false;
  if (!known) startCold(room, still, wind, lap);
  if (settle(room, wind, lap) && stands(rows)) return finish(room, wind, lap);
  return approach(room, still, wind, lap) && stands(rows) && finish(room, wind, lap);
}

function settle(room: WindRoom, wind: Wind, lap: WindLap): boolean {
  const rounds = settleLap(room, wind, room.rows, FINE);
  lap.laps += Math.abs(rounds);
  return rounds > 0;
}

/** Lines tight, between places as well, and yaw and roll stable: on light lines a place may balance in another way too, which none could fly. */
function stands(rows: Rows): boolean {
  for (let k = 0; k < rows.places; k++) if (!(rows.determinant[k]! > 0)) return false;
  return extremeOf(rows.tension, -1).value > 0;
}

/** From calm air: by a lap at few places where there are enough for one, else steady flight at every place. */
function startCold(room: WindRoom, still: FlightSolution, wind: Wind, lap: WindLap): void {
  const coarse = room.coarse;
  if (wind.speed > 0 && room.rows.places >= 2 * coarse.places) {
    startStill(coarse, still);
    const rounds = settleLap(room, wind, coarse, ROUGH);
    lap.laps += Math.abs(rounds);
    if (rounds > 0) {
      refine(coarse, room.rows);
      return;
    }
  }
  startStill(room.rows, still);
}

/** Up to the wind in steps, each from the one before. */
function approach(room: WindRoom, still: FlightSolution, wind: Wind, lap: WindLap): boolean {
  let share = 0;
  startStill(room.rows, still);
  for (const next of APPROACH) {
    if (share > 0) goOn(room.rows, still, next / share);
    share = next;
    if (!settle(room, { speed: wind.speed * share, profile: wind.profile }, lap)) return false;
  }
  return true;
}

/** Steady flight at every place. */
function startStill(rows: Rows, still: FlightSolution): void {
  rows.speed.fill(still.speed);
  rows.sideslip.fill(still.sideslip);
  rows.roll.fill(still.outboardLow);
  rows.pitch.fill(still.pitch);
  rows.drag.fill(still.drag);
  rows.dragSlopes.fill(0);
}

/** The lap `from` at every place, as it will be in another wind. */
function startFrom(rows: Rows, still: FlightSolution, from: WindLap, ratio: number): void {
  rows.speed.set(from.speed);
  rows.sideslip.set(from.sideslip);
  rows.roll.set(from.outboardLow);
  rows.pitch.set(from.pitch);
  rows.drag.set(from.drag);
  rows.dragSlopes.fill(0);
  goOn(rows, still, ratio);
}

/** To a wind so many times as strong: what it does leaves calm air nearly in proportion to it. */
function goOn(rows: Rows, still: FlightSolution, ratio: number): void {
  for (let k = 0; k < rows.places; k++) {
    rows.speed[k] = still.speed + (rows.speed[k]! - still.speed) * ratio;
    rows.sideslip[k] = still.sideslip + (rows.sideslip[k]! - still.sideslip) * ratio;
    rows.roll[k] = still.outboardLow + (rows.roll[k]! - still.outboardLow) * ratio;
    rows.pitch[k] = still.pitch + (rows.pitch[k]! - still.pitch) * ratio;
    rows.drag[k] = still.drag + (rows.drag[k]! - still.drag) * ratio;
  }
}

/** What follows from the places; false where the wing would lift more than it can, between places as well. */
function finish(room: WindRoom, wind: Wind, lap: WindLap): boolean {
  const c = room.c;
  const rows = room.rows;
  const n = rows.places;
  const half = 0.5 * c.setup.density * c.setup.wingArea;
  for (let k = 0; k < n; k++) {
    const across = rows.across[k]!;
    rows.share[k] = rows.wingLift[k]! / (half * across * across) / liftLimitAt(c.setup, across);
  }
  if (!(extremeOf(rows.share, 1).value <= 1)) return false;
  const reach = c.radius * c.cosElevation;
  let time = 0;
  let gain = 0;
  for (let k = 0; k < n; k++) {
    room.state.sideslip = rows.sideslip[k]!;
    room.state.roll = rows.roll[k]!;
    room.state.pitch = rows.pitch[k]!;
    lap.azimuth[k] = (2 * Math.PI * k) / n;
    lap.noseOut[k] = noseOutOf(room.state);
    time += 1 / rows.speed[k]!;
    gain += rows.path[k]! / rows.speed[k]!;
  }
  lap.speed.set(rows.speed);
  lap.pull.set(rows.pull);
  lap.sideslip.set(rows.sideslip);
  lap.outboardLow.set(rows.roll);
  lap.pitch.set(rows.pitch);
  lap.drag.set(rows.drag);
  const step = (2 * Math.PI) / n;
  // Equal steps of a periodic function: the plain sum is exact to high order.
  lap.lapTime = time * step * reach;
  lap.residual = (gain * step * reach) / (c.setup.mass + c.linesMass / 3);
  lap.wind = wind.speed;
  lap.status = 'settled';
  return true;
}
