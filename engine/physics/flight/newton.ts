import { balance } from './balance';
import type { Constants } from './constants';
import { fullStep, newStep, type Step, trimStep } from './elimination';
import type { Balance } from './loads';

/** Where a solve stands: V (m/s), β, δ, θ (rad). */
export interface State {
  speed: number;
  sideslip: number;
  roll: number;
  pitch: number;
}

export const newState = (): State => ({ speed: 0, sideslip: 0, roll: 0, pitch: 0 });

/** Angles beyond which the laws of lift and side force mean nothing; no state outside counts. */
export const ANGLE_LIMIT = 1.2;
/** Out of balance by less than this share of the weight (moments: of weight × 1 m) counts as balanced. */
export const BALANCED = 1e-11;
/** Steps of the full Newton iteration before the slower ways are tried; good starts need four to six. */
const FULL_STEPS = 14;
const TRIM_STEPS = 40;
/** Largest change of an angle in one step, and of V as a share of it. */
const ANGLE_STEP = 0.4;
const SPEED_STEP = 0.4;
/** On the way an angle may pass the limit a little. */
const WIDEST = 1.4;

/** Largest residual over the weight. */
export function imbalance(c: Constants, b: Balance): number {
  const r = b.residual;
  const most = Math.max(Math.abs(r[0]!), Math.abs(r[1]!), Math.abs(r[2]!), Math.abs(r[3]!));
  return most / c.weight;
}

const step = newStep();

/** True where the state lies inside the range of the laws. */
export const inRange = (s: State): boolean =>
  Math.abs(s.sideslip) <= ANGLE_LIMIT && Math.abs(s.roll) <= ANGLE_LIMIT && Math.abs(s.pitch) <= ANGLE_LIMIT;

/**
 * Newton's method on all four balances from the state `s`, which is changed. Returns the number of steps, negative where it did not converge. `b` is
 * evaluated at the final state, `at` holds slope and determinants there.
 */
export function fullNewton(c: Constants, s: State, b: Balance, at: Step): number {
  for (let n = 1; n <= FULL_STEPS; n++) {
    balance(c, s.speed, s.sideslip, s.roll, s.pitch, b);
    fullStep(b, at);
    if (imbalance(c, b) < BALANCED) return n;
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
 * Newton's method on yaw, roll and lift at the speed of `s`, whose angles are changed. True where they balance inside the range of the laws. `b` is evaluated there;
 * `at.slope` is the slope of the path balance with speed.
 */
export function trim(c: Constants, s: State, b: Balance, at: Step): boolean {
  let last = Number.POSITIVE_INFINITY;
  for (let n = 0; n < TRIM_STEPS; n++) {
    balance(c, s.speed, s.sideslip, s.roll, s.pitch, b);
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

/** Starts the angles of `s` from level flight at its speed and trims. */
export function trimAfresh(c: Constants, s: State, b: Balance): boolean {
  s.sideslip = 0;
  s.roll = 0;
  s.pitch = 0;
  return trim(c, s, b, step);
}

const clamp = (x: number, limit: number): number => (x > limit ? limit : x < -limit ? -limit : x);
