import { solveDense } from '../../numerics/index';
import { type FlightSetup, type FlightSolution, prepare } from '../flight/index';
import { extremeOf } from './extremes';
import { newRows, type WindRoom } from './room';
import { liftShare, pullThere, trimInWind, windAt } from './trim';
import { CLOSED, noseOutOf, type Wind, type WindLap } from './wind-lap';

const ROUNDS = 12;

/**
 * The lap of `flyWindLap`, solved at all its places at once by the wave through them: fills `lap`. False where that does not settle, or gives a
 * lap that cannot be flown.
 *
 *   Σ_j D_kj E_j = F_t(θ_k, V_k) R cos φ/m_eff,  E = V²/2,  D the slopes of the periodic wave through equal steps
 *
 * Newton's method on E: (D − diag(R cos φ F_t'/(m_eff V))) δE = what is left; F_t' along the curve of balanced yaw, roll and lift. The error falls
 * faster than any power of the step where the forces are smooth.
 * Derivation: periodic collocation of the lap's equation of motion.
 */
export function closeLap(
  setup: FlightSetup,
  still: FlightSolution,
  wind: Wind,
  room: WindRoom,
  lap: WindLap,
  guessed: boolean,
): boolean {
  lap.laps = 0;
  lap.residual = Number.NaN;
  lap.azimuthOfReason = Number.NaN;
  lap.lapTime = Number.NaN;
  if (!prepare(setup, room.c)) return false;
  const n = lap.azimuth.length;
  if (room.rows.places !== n) room.rows = newRows(n);
  const { rows } = room;
  const V = lap.speed;
  if (!guessed) V.fill(still.speed);
  rows.sideslip.fill(still.sideslip);
  rows.roll.fill(still.outboardLow);
  rows.pitch.fill(still.pitch);
  room.b.drag = 0;
  room.b.lift = 0;
  for (let round = 0; round < ROUNDS; round++) {
    lap.laps += 1;
    if (!roundOf(room, wind, lap, round === 0)) return false;
    const size = stepOf(room, V);
    if (!Number.isFinite(size)) return false;
    if (size < CLOSED) return finish(room, lap);
    for (let k = 0; k < n; k++) V[k]! += rows.step[k]!;
  }
  return false;
}

/** Turns the model at every place; false where it can't be. */
function roundOf(room: WindRoom, wind: Wind, lap: WindLap, first: boolean): boolean {
  const { rows, state, air, b, at } = room;
  const n = rows.places;
  for (let k = 0; k < n; k++) {
    const azimuth = (2 * Math.PI * k) / n;
    windAt(room, wind, azimuth);
    // At first from the place before, later from where it stood.
    const from = first && k > 0 ? k - 1 : k;
    state.speed = lap.speed[k]!;
    state.sideslip = rows.sideslip[from]!;
    state.roll = rows.roll[from]!;
    state.pitch = rows.pitch[from]!;
    if (!(state.speed - air.along > 1)) return false;
    if (!trimInWind(room, wind)) return false;
    rows.sideslip[k] = state.sideslip;
    rows.roll[k] = state.roll;
    rows.pitch[k] = state.pitch;
    rows.path[k] = b.residual[0]!;
    rows.slope[k] = at.slope;
    rows.tension[k] = b.tensionInward;
    rows.lift[k] = liftShare(room);
    lap.azimuth[k] = azimuth;
    lap.pull[k] = pullThere(room);
    lap.noseOut[k] = noseOutOf(state);
    lap.outboardLow[k] = state.roll;
  }
  return true;
}

/** Newton's step of all speeds, to `rows.step`; gives its largest, m/s. */
function stepOf({ c, rows }: WindRoom, V: Float64Array): number {
  const { places: n, d, matrix, step, path, slope } = rows;
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
function finish({ c, rows }: WindRoom, lap: WindLap): boolean {
  const { places: n, tension, lift, path } = rows;
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
