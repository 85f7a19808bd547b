import { prepare } from './constants';
import { fullNewton, guessPitch, imbalance, inRange, standsTight } from './newton';
import type { FlightRoom } from './room';
import { march, scan } from './search';
import { type FlightSetup, liftLimitAt } from './setup';
import { type FlightMethod, type FlightSolution, type FlightStatus, newSolution, readSolution } from './solution';
import { guessSpeed, mostSpare } from './start';

const blank = newSolution();
const best = { spare: Number.NaN, speed: Number.NaN };

/** A settled solution is out of balance by less than this share of the weight. */
export const SETTLED_WITHIN = 1e-9;

/**
 * Steady level circular flight of a set-up: fills `out`; allocates nothing on the usual way.
 *
 * First a speed in closed form and Newton's method on all balances, accepted when it converged with tight lines on the
 * fast side of the power curve; else Newton along the curve of balanced yaw, roll and lift, downward from the speed
 * where thrust vanishes; else a scan along that curve. Only the scan says that there is no steady flight, and why. The
 * balances are those of `balance`.
 */
export function solveFlight(setup: FlightSetup, room: FlightRoom, out: FlightSolution): void {
  const { c, state, b, at, looked } = room;
  if (!prepare(setup, c)) {
    give('out of reach', 'newton', 0, out);
    return;
  }
  let used = 0;
  if (guessSpeed(c, state)) {
    state.sideslip = 0;
    state.roll = 0;
    guessPitch(c, state);
    const steps = fullNewton(c, state, b, at);
    used = Math.abs(steps);
    if (steps > 0 && standing(room)) {
      settle(room, 'newton', used, out);
      return;
    }
  }
  const marched = march(c, state, b, at);
  if (marched > 0 && polish(room)) {
    settle(room, 'march', used + marched, out);
    return;
  }
  scan(c, state, b, at, looked);
  used += looked.places;
  if (looked.found && polish(room)) {
    settle(room, 'scan', used, out);
    return;
  }
  // Thrust first: where it does not reach the least drag at any speed, no tighter line would help.
  mostSpare(c, best);
  const weak = best.spare < 0;
  give(looked.slack && !weak ? 'lines slack' : 'too little thrust', 'scan', used, out);
  const met = !looked.slack && !Number.isNaN(looked.shortfall);
  out.shortfall = weak && !met ? -best.spare : looked.shortfall;
  out.shortfallSpeed = weak && !met ? best.speed : looked.shortfallSpeed;
  out.slackSpeed = looked.slackSpeed;
}

/** Lines tight, yaw and roll stable, and more speed means less spare thrust. */
const standing = ({ b, at, state }: FlightRoom): boolean => standsTight(b, at) && at.slope < 0 && inRange(state);

/** Balances all four to the last bits from a state that is nearly there. */
function polish(room: FlightRoom): boolean {
  const { c, state, b, at } = room;
  const speed = state.speed;
  const steps = fullNewton(c, state, b, at);
  return (
    (steps > 0 || imbalance(c, b) < SETTLED_WITHIN) && standing(room) && Math.abs(state.speed - speed) < 0.01 * speed
  );
}

function settle({ c, state, b, at }: FlightRoom, method: FlightMethod, iterations: number, out: FlightSolution): void {
  readSolution(c, state, b, out);
  out.status = out.liftCoefficient > liftLimitAt(c.setup, out.speed) ? 'beyond lift limit' : 'settled';
  out.method = method;
  out.iterations = iterations;
  out.residual = imbalance(c, b);
  out.slope = at.slope;
  out.determinant = at.determinant;
  out.shortfall = Number.NaN;
  out.shortfallSpeed = Number.NaN;
  out.slackSpeed = Number.NaN;
}

function give(status: FlightStatus, method: FlightMethod, iterations: number, out: FlightSolution): void {
  Object.assign(out, blank, { status, method, iterations });
}
