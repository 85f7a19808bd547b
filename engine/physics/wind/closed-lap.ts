import { periodicSlopes, solveDense } from '../../numerics/index';
import { type FlightSetup, type FlightSolution, liftLimitAt, newConstants, prepare } from '../flight/index';
import { newWindLoads, type WindThere } from './balance';
import { extremeOf } from './extremes';
import { type Angles, newSlopes, trimInWind } from './trim';
import { noseOutOf, type Wind, type WindLap } from './wind-lap';

/** A step of the speeds (m/s) that counts as none. */
const CLOSED = 1e-7;
const ROUNDS = 12;
/** Slopes are taken anew while a step is larger than this share of the one before. */
const SLOW = 0.03;
/** For the slope of the force with speed, of the speed. */
const BESIDE = 1e-4;

const c = newConstants();
const loads = newWindLoads();
const beside = newWindLoads();
const there: WindThere = { along: 0, outward: 0 };
const angles: Angles = { sideslip: 0, roll: 0, pitch: 0 };
const turned: Angles = { sideslip: 0, roll: 0, pitch: 0 };
const slopes = newSlopes();
let room = newRoom(0);

/** What is kept of every place of the lap. */
function newRoom(places: number) {
  const row = () => new Float64Array(places);
  return {
    places,
    sideslip: row(),
    roll: row(),
    pitch: row(),
    path: row(),
    slope: row(),
    tension: row(),
    lift: row(),
    step: row(),
    matrix: new Float64Array(places * places),
    d: periodicSlopes(places),
  };
}

/**
 * The lap of `flyWindLap`, solved at all its places at once by the wave through them: fills `lap`. False where that does not settle, or gives a
 * lap that cannot be flown.
 *
 *   Σ_j D_kj E_j = F_t(θ_k, V_k) R cos φ/m_eff,  E = V²/2,  D the slopes of the periodic wave through equal steps
 *
 * Newton's method on E: (D − diag(R cos φ F_t'/(m_eff V))) δE = what is left; F_t' with the model turned anew. The error falls faster than any
 * power of the step where the forces are smooth; by the second to third power where a side force sets in at the edge of cross-flow.
 * Derivation: periodic collocation of the lap's equation of motion.
 */
export function closeLap(
  setup: FlightSetup,
  still: FlightSolution,
  wind: Wind,
  lap: WindLap,
  guessed: boolean,
): boolean {
  lap.laps = 0;
  lap.residual = Number.NaN;
  lap.azimuthOfReason = Number.NaN;
  lap.lapTime = Number.NaN;
  if (!prepare(setup, c)) return false;
  const n = lap.azimuth.length;
  if (room.places !== n) room = newRoom(n);
  const V = lap.speed;
  if (!guessed) V.fill(still.speed);
  room.sideslip.fill(still.sideslip);
  room.roll.fill(still.outboardLow);
  room.pitch.fill(still.pitch);
  slopes.known = false;
  let last = Number.POSITIVE_INFINITY;
  for (let round = 0; round < ROUNDS; round++) {
    lap.laps += 1;
    const anew = round === 0 || last > SLOW;
    if (!roundOf(wind, lap, round === 0, anew)) return false;
    const size = stepOf(V);
    if (!Number.isFinite(size)) return false;
    if (size < CLOSED) return finish(lap);
    last = round === 0 ? Number.POSITIVE_INFINITY : size / before;
    before = size;
    for (let k = 0; k < n; k++) V[k]! += room.step[k]!;
  }
  return false;
}

/** Largest step of the round before, m/s. */
let before = Number.NaN;

/** Turns the model at every place; false where it can't be. */
function roundOf(wind: Wind, lap: WindLap, first: boolean, anew: boolean): boolean {
  const n = room.places;
  for (let k = 0; k < n; k++) {
    const azimuth = (2 * Math.PI * k) / n;
    const V = lap.speed[k]!;
    there.along = -wind.speed * Math.sin(azimuth);
    there.outward = wind.speed * Math.cos(azimuth);
    if (!(V - there.along > 1)) return false;
    // At first from the place before, later from where it stood.
    const from = first && k > 0 ? k - 1 : k;
    angles.sideslip = room.sideslip[from]!;
    angles.roll = room.roll[from]!;
    angles.pitch = room.pitch[from]!;
    if (!trimInWind(c, there, wind.profile, V, angles, slopes, loads)) return false;
    room.sideslip[k] = angles.sideslip;
    room.roll[k] = angles.roll;
    room.pitch[k] = angles.pitch;
    room.path[k] = loads.path;
    room.tension[k] = loads.tensionInward;
    room.lift[k] = loads.liftCoefficient / liftLimitAt(c.setup, loads.airspeed);
    lap.azimuth[k] = azimuth;
    lap.pull[k] = loads.pull;
    lap.noseOut[k] = noseOutOf(angles);
    lap.outboardLow[k] = angles.roll;
    if (!anew) continue;
    turned.sideslip = angles.sideslip;
    turned.roll = angles.roll;
    turned.pitch = angles.pitch;
    if (!trimInWind(c, there, wind.profile, V * (1 + BESIDE), turned, slopes, beside)) return false;
    room.slope[k] = (beside.path - loads.path) / (BESIDE * V);
  }
  return true;
}

/** Newton's step of all speeds, to `room.step`; gives its largest, m/s. */
function stepOf(V: Float64Array): number {
  const { places: n, d, matrix, step, path, slope } = room;
  const perForce = (c.radius * c.cosElevation) / (c.setup.mass + c.linesMass / 3);
  matrix.set(d);
  for (let k = 0; k < n; k++) {
    let wave = 0;
    for (let j = 0; j < n; j++) wave += d[k * n + j]! * V[j]! * V[j]!;
    step[k] = perForce * path[k]! - wave / 2;
    matrix[k * n + k]! -= (perForce * slope[k]!) / V[k]!;
  }
  if (solveDense(matrix, step, n) === 0) return Number.NaN;
  let largest = 0;
  for (let k = 0; k < n; k++) {
    step[k] = step[k]! / V[k]!;
    largest = Math.max(largest, Math.abs(step[k]!));
    if (!(V[k]! + step[k]! > 0)) return Number.NaN;
  }
  return largest;
}

/** What follows from the speeds; false where lines would push or the wing would lift more than it can, between places as well. */
function finish(lap: WindLap): boolean {
  const { places: n, tension, lift, path } = room;
  if (!(extremeOf(tension, -1).value > 0 && extremeOf(lift, 1).value <= 1)) return false;
  const reach = c.radius * c.cosElevation;
  let time = 0;
  let gain = 0;
  for (let k = 0; k < n; k++) {
    time += 1 / lap.speed[k]!;
    gain += path[k]! / lap.speed[k]!;
  }
  const step = (2 * Math.PI) / n;
  // Equal steps of a periodic function: the plain sum is exact to high order.
  lap.lapTime = time * step * reach;
  lap.residual = (gain * step * reach) / (c.setup.mass + c.linesMass / 3);
  lap.status = 'settled';
  return true;
}
