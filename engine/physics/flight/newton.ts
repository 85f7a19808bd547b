import { CALM } from './air-there';
import type { Constants } from './constants';
import { fullStep, type Step, trimStep } from './elimination';
import { forces } from './forces';
import { linesInCalm } from './lines-in-calm';
import type { Balance } from './loads';
import type { State } from './state';

/** Angles beyond which the laws of lift and side force mean nothing; no state outside counts. */
export const ANGLE_LIMIT = 0.8;
/** Out of balance by less than this share of the weight (moments: of weight × 1 m) counts as balanced. */
export const BALANCED = 1e-11;
/** Steps of the full Newton iteration before the slower ways are tried; good starts need four to six. */
const FULL_STEPS = 14;
const TRIM_STEPS = 16;
/** Largest change of an angle in one step, and of V as a share of it. */
const ANGLE_STEP = 0.4;
const SPEED_STEP = 0.4;
/** On the way an angle may pass the limit a little. */
const WIDEST = 1.1;

/** Largest residual over the weight. */
export function imbalance(c: Constants, b: Balance): number {
  const r = b.residual;
  const most = Math.max(Math.abs(r[0]!), Math.abs(r[1]!), Math.abs(r[2]!), Math.abs(r[3]!));
  return most / c.weight;
}

/** All four residuals count as nothing. */
function balanced(c: Constants, b: Balance): boolean {
  const r = b.residual;
  const least = BALANCED * c.weight;
  return Math.abs(r[0]!) < least && Math.abs(r[1]!) < least && Math.abs(r[2]!) < least && Math.abs(r[3]!) < least;
}

/** True where the state lies inside the range of the laws. */
export const inRange = (s: State): boolean =>
  Math.abs(s.sideslip) <= ANGLE_LIMIT && Math.abs(s.roll) <= ANGLE_LIMIT && Math.abs(s.pitch) <= ANGLE_LIMIT;

/**
 * Newton's method on all four balances from the state `s`, which is changed. Returns the number of steps, negative
 * where it did not converge. `b` is evaluated at the final state, `at` holds slope and determinants there.
 */
export function fullNewton(c: Constants, s: State, b: Balance, at: Step): number {
  for (let n = 1; n <= FULL_STEPS; n++) {
    linesInCalm(c, s, b);
    forces(c, s, CALM, b);
    fullStep(b, at);
    if (balanced(c, b)) return n;
    const change = at.speed;
    if (!Number.isFinite(change) || !Number.isFinite(at.roll)) return -n;
    s.speed += clamp(change, SPEED_STEP * s.speed);
    s.sideslip += clamp(at.sideslip, ANGLE_STEP);
    s.roll += clamp(at.roll, ANGLE_STEP);
    s.pitch += clamp(at.pitch, ANGLE_STEP);
    if (!inRange(s)) return -n;
  }
  return -FULL_STEPS;
}

/**
 * Newton's method on yaw, roll and lift at the speed of `s`, whose angles are changed. True where they balance inside
 * the range of the laws. `b` is evaluated there; `at.slope` is the slope of the path balance with speed.
 */
export function trim(c: Constants, s: State, b: Balance, at: Step): boolean {
  let last = Number.POSITIVE_INFINITY;
  linesInCalm(c, s, b);
  for (let n = 0; n < TRIM_STEPS; n++) {
    forces(c, s, CALM, b);
    const r = b.residual;
    const out = Math.max(Math.abs(r[1]!), Math.abs(r[2]!), Math.abs(r[3]!)) / c.weight;
    trimStep(b, at);
    if (out < BALANCED || (out < 1e3 * BALANCED && out >= last)) return inRange(s);
    last = out;
    if (!Number.isFinite(at.sideslip) || !Number.isFinite(at.roll) || !Number.isFinite(at.pitch)) return false;
    s.sideslip = clamp(s.sideslip + clamp(at.sideslip, ANGLE_STEP), WIDEST);
    s.roll = clamp(s.roll + clamp(at.roll, ANGLE_STEP), WIDEST);
    s.pitch = clamp(s.pitch + clamp(at.pitch, ANGLE_STEP), WIDEST);
  }
  return false;
}

/**
 * β and δ from which `trimAfresh` starts, one after another, the usual one first. Light models with much thrust can
 * balance in two ways at one speed, once pushing on the lines; the way with tight lines has the nose out and the
 * outboard wing low, or the reverse.
 */
const STARTS: readonly (readonly [number, number])[] = [
  [0, 0],
  [0, 0.3],
  [0.2, 0.6],
  [-0.2, -0.4],
  [-0.4, 0.5],
  [0.4, -0.5],
];

/**
 * Starts the angles of `s` from guesses and trims, with the wing's angle of attack for the weight: nose along the path
 * and level; where that doesn't lead to tight lines and `thorough` is asked for, from other angles. True with the lines
 * tight and yaw and roll stable.
 */
export function trimAfresh(c: Constants, s: State, b: Balance, at: Step, thorough: boolean): boolean {
  const most = thorough ? STARTS.length : 1;
  for (let n = 0; n < most; n++) {
    s.sideslip = STARTS[n]![0];
    s.roll = STARTS[n]![1];
    guessPitch(c, s);
    if (trim(c, s, b, at) && standsTight(b, at)) return true;
  }
  return false;
}

/** Lines tight, yaw and roll stable. */
export const standsTight = (b: Balance, at: Step): boolean => b.tensionInward > 0 && at.determinant > 0;

/** Puts θ = L/(q S a) − i_w + α_0 with the lift that level wings need at its speed, held to what the laws allow, into the state. */
export function guessPitch(c: Constants, s: State): void {
  const square = s.speed * s.speed;
  const turning = ((c.setup.mass * c.tanElevation) / c.radius + c.pressTurning) * square;
  const lift = c.weight * c.cosElevation + c.pressStill + turning;
  s.pitch = clamp(
    lift / (0.5 * c.setup.density * square * c.wingStrength) - c.setup.wingIncidence + c.setup.zeroLiftAngle,
    ANGLE_LIMIT,
  );
}

const clamp = (x: number, limit: number): number => Math.min(limit, Math.max(-limit, x));
