import {
  type Constants,
  type FlightSetup,
  type FlightSolution,
  liftLimitAt,
  newConstants,
  prepare,
} from '../flight/index';
import { newWindLoads, type WindThere } from './balance';
import { type Angles, newSlopes, trimInWind } from './trim';
import { noseOutOf, type Wind, type WindLap, type WindLapStatus } from './wind-lap';

/** A lap that misses its own start by less (m/s) is closed. */
const CLOSED = 1e-7;
/** Lines that pulled less than this share of the weight just before the balance was lost have gone slack: it was they that held the model. */
const LOOSE = 0.5;
const MOST_LAPS = 12;
const c = newConstants();
const loads = newWindLoads();
const there: WindThere = { along: 0, outward: 0 };
const angles: Angles = { sideslip: 0, roll: 0, pitch: 0 };
const slopes = newSlopes();
/** Along the chord where the model last balanced, N. */
let lastTension = 0;

/**
 * The lap of `flyWindLap` flown lap after lap until one comes back to its own speed: fills `lap`. It says where a lap gives way first.
 *
 * Runge–Kutta of fourth order at equal steps; the speed at the start that the lap comes back to by the secant rule, from the steady flight
 * `still`.
 */
export function marchLap(setup: FlightSetup, still: FlightSolution, wind: Wind, lap: WindLap): void {
  lap.laps = 0;
  lap.lapTime = Number.NaN;
  lap.residual = Number.NaN;
  lap.azimuthOfReason = Number.NaN;
  if (!prepare(setup, c)) {
    lap.status = 'no balance';
    return;
  }
  const lapOfStill = (2 * Math.PI * c.radius * c.cosElevation) / still.speed;
  const dying = Math.expm1((still.slope * lapOfStill) / (setup.mass + c.linesMass / 3));
  let start = still.speed;
  let missed = flyOnce(c, still, wind, start, lap);
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
    missed = flyOnce(c, still, wind, start, lap);
  }
  lap.residual = missed;
}

/** Flies one lap from the speed `start`; gives how much faster it ends than it began. */
function flyOnce(c: Constants, still: FlightSolution, wind: Wind, start: number, lap: WindLap): number {
  lap.laps += 1;
  lap.status = 'settled';
  angles.sideslip = still.sideslip;
  angles.roll = still.outboardLow;
  angles.pitch = still.pitch;
  slopes.known = false;
  const places = lap.azimuth.length;
  const step = (2 * Math.PI) / places;
  lastTension = still.pullRadial;
  let V = start;
  let time = 0;
  for (let k = 0; k < places; k++) {
    const from = k * step;
    const k1 = slope(c, wind, from, V, lap);
    if (lap.status !== 'settled') return Number.NaN;
    lap.azimuth[k] = from;
    lap.speed[k] = V;
    lap.pull[k] = loads.pull;
    lap.noseOut[k] = noseOutOf(angles);
    lap.outboardLow[k] = angles.roll;
    time += step / V;
    const k2 = slope(c, wind, from + step / 2, V + (step / 2) * k1, lap);
    const k3 = slope(c, wind, from + step / 2, V + (step / 2) * k2, lap);
    const k4 = slope(c, wind, from + step, V + step * k3, lap);
    if (lap.status !== 'settled') return Number.NaN;
    V += (step / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
  }
  // Equal steps of a periodic function: the plain sum is exact to high order.
  lap.lapTime = time * c.radius * c.cosElevation;
  return V - start;
}

/** dV/dθ_a at a place; sets the lap's status where there is none. */
function slope(c: Constants, wind: Wind, azimuth: number, V: number, lap: WindLap): number {
  if (lap.status !== 'settled') return Number.NaN;
  there.along = -wind.speed * Math.sin(azimuth);
  there.outward = wind.speed * Math.cos(azimuth);
  const why = reasonAt(c, wind, V);
  if (why !== 'settled') {
    lap.status = why;
    lap.azimuthOfReason = azimuth % (2 * Math.PI);
    return Number.NaN;
  }
  const mass = c.setup.mass + c.linesMass / 3;
  return (loads.path * c.radius * c.cosElevation) / (mass * V);
}

function reasonAt(c: Constants, wind: Wind, V: number): WindLapStatus {
  if (!(V - there.along > 1)) return 'overtaken';
  if (!trimInWind(c, there, wind.profile, V, angles, slopes, loads)) {
    return lastTension > LOOSE * c.weight ? 'no balance' : 'slack';
  }
  if (!(loads.tensionInward > 0)) return 'slack';
  lastTension = loads.tensionInward;
  return loads.liftCoefficient > liftLimitAt(c.setup, loads.airspeed) ? 'stalled' : 'settled';
}
