import { type FlightSetup, type FlightSolution, prepare } from '../flight/index';
import type { WindRoom } from './room';
import { liftShare, pullThere, trimInWind, windAt } from './trim';
import { CLOSED, noseOutOf, type Wind, type WindLap, type WindLapStatus } from './wind-lap';

/**
 * Lines that pulled less than so many weights just before the balance was lost have gone slack: it was they that held the model, and the pull falls
 * by a weight in a step where they do.
 */
const LOOSE = 1.5;
const MOST_LAPS = 12;

/**
 * The lap of `flyWindLap` flown lap after lap until one comes back to its own speed: fills `lap`. It says where a lap gives way first.
 *
 * Runge–Kutta of fourth order at equal steps; the speed at the start that the lap comes back to by the secant rule, from the steady flight
 * `still`.
 */
export function marchLap(setup: FlightSetup, still: FlightSolution, wind: Wind, room: WindRoom, lap: WindLap): void {
  const { c } = room;
  lap.laps = 0;
  lap.lapTime = Number.NaN;
  lap.wind = Number.NaN;
  lap.residual = Number.NaN;
  lap.azimuthOfReason = Number.NaN;
  if (!prepare(setup, c)) {
    lap.status = 'no balance';
    return;
  }
  const lapOfStill = (2 * Math.PI * c.radius * c.cosElevation) / still.speed;
  const dying = Math.expm1((still.slope * lapOfStill) / (setup.mass + c.linesMass / 3));
  let start = still.speed;
  let missed = flyOnce(room, still, wind, start, lap);
  let before = Number.NaN;
  let missedBefore = Number.NaN;
  while (lap.status === 'settled' && !(Math.abs(missed) < CLOSED)) {
    if (lap.laps >= MOST_LAPS) {
      lap.status = 'not periodic';
      return;
    }
    const slope = (missed - missedBefore) / (start - before);
    // The first step takes the slope of a small change that dies away over the lap in calm air.
    const change = Number.isFinite(slope) && slope !== 0 ? slope : dying;
    const next = start - missed / change;
    [before, missedBefore] = [start, missed];
    start = next > 0 ? next : start / 2;
    missed = flyOnce(room, still, wind, start, lap);
  }
  lap.residual = missed;
}

/** Flies one lap from the speed `start`; gives how much faster it ends than it began. */
function flyOnce(room: WindRoom, still: FlightSolution, wind: Wind, start: number, lap: WindLap): number {
  lap.laps += 1;
  lap.status = 'settled';
  const { c, b, state } = room;
  state.sideslip = still.sideslip;
  state.roll = still.outboardLow;
  state.pitch = still.pitch;
  b.drag = 0;
  b.dragSlopes.fill(0);
  const places = lap.azimuth.length;
  const step = (2 * Math.PI) / places;
  const last = { tension: still.pullRadial };
  let V = start;
  let time = 0;
  for (let k = 0; k < places; k++) {
    const from = k * step;
    const k1 = slope(room, wind, from, V, lap, last);
    if (lap.status !== 'settled') return Number.NaN;
    lap.azimuth[k] = from;
    lap.speed[k] = V;
    lap.pull[k] = pullThere(room);
    lap.noseOut[k] = noseOutOf(state);
    lap.outboardLow[k] = state.roll;
    time += step / V;
    const k2 = slope(room, wind, from + step / 2, V + (step / 2) * k1, lap, last);
    const k3 = slope(room, wind, from + step / 2, V + (step / 2) * k2, lap, last);
    const k4 = slope(room, wind, from + step, V + step * k3, lap, last);
    if (lap.status !== 'settled') return Number.NaN;
    V += (step / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
  }
  // Equal steps of a periodic function: the plain sum is exact to high order.
  lap.lapTime = time * c.radius * c.cosElevation;
  return V - start;
}

/** Along the chord where the model last balanced, N. */
interface Last {
  tension: number;
}

/** dV/dθ_a at a place; sets the lap's status where there is none. */
function slope(room: WindRoom, wind: Wind, azimuth: number, V: number, lap: WindLap, last: Last): number {
  if (lap.status !== 'settled') return Number.NaN;
  const { c, b, state } = room;
  windAt(room, wind, azimuth);
  state.speed = V;
  const why = reasonAt(room, wind, last);
  if (why !== 'settled') {
    lap.status = why;
    lap.azimuthOfReason = azimuth % (2 * Math.PI);
    return Number.NaN;
  }
  const mass = c.setup.mass + c.linesMass / 3;
  return (b.residual[0]! * c.radius * c.cosElevation) / (mass * V);
}

function reasonAt(room: WindRoom, wind: Wind, last: Last): WindLapStatus {
  const { c, b, air, state } = room;
  if (!(state.speed - air.along > 1)) return 'overtaken';
  if (!trimInWind(room, wind)) return last.tension > LOOSE * c.weight ? 'no balance' : 'slack';
  if (!(b.tensionInward > 0)) return 'slack';
  last.tension = b.tensionInward;
  return liftShare(room) > 1 ? 'stalled' : 'settled';
}
