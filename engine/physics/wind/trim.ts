import { solveDense } from '../../numerics/index';
import type { Constants } from '../flight/index';
import { newWindLoads, type WindLoads, type WindThere, windBalance } from './balance';
import { type LineProfile, linesInWind } from './lines-in-wind';

/** Angles at a place of the lap: β, δ, θ, rad. */
export interface Angles {
  sideslip: number;
  roll: number;
  pitch: number;
}

/** Slopes of yaw, roll and wing with the angles, kept from place to place while they serve. */
export interface Slopes {
  readonly at: Float64Array;
  known: boolean;
}

export const newSlopes = (): Slopes => ({ at: new Float64Array(9), known: false });

/** Imbalance (of the weight, or the weight × 1 m) that counts as balanced. */
const BALANCED = 1e-10;
const STEPS = 24;
const TOO_SLOW = 0.4;
const STEP = 1e-6;
const WIDEST = 1;
const beside = newWindLoads();
const a = new Float64Array(9);
const b = new Float64Array(3);
/** Imbalances before the last step, turned about in sign, and the step. */
const was = new Float64Array(3);
const move = new Float64Array(3);

/**
 * Turns the model until yaw, roll and wing balance at the speed V in the wind there; angles are changed in place, loads are those at the end.
 * Broyden's method: slopes by differences at first and where it comes on too slowly, then mended by every step, from place to place as well.
 * False where it does not settle.
 */
export function trimInWind(
  c: Constants,
  wind: WindThere,
  profile: LineProfile,
  V: number,
  x: Angles,
  slopes: Slopes,
  out: WindLoads,
): boolean {
  const lines = linesInWind(c, V, wind.along, profile);
  let last = Number.POSITIVE_INFINITY;
  for (let step = 0; step < STEPS; step++) {
    windBalance(c, wind, lines, V, x.sideslip, x.roll, x.pitch, out);
    const left = Math.max(Math.abs(out.yaw), Math.abs(out.roll), Math.abs(out.wing)) / c.weight;
    if (left < BALANCED) return true;
    if (!Number.isFinite(left)) return false;
    if (step > 0) mend(slopes.at, out);
    if (!slopes.known || left > TOO_SLOW * last) takeSlopes(c, wind, lines, V, x, out, slopes);
    last = left;
    a.set(slopes.at);
    b[0] = was[0] = -out.yaw;
    b[1] = was[1] = -out.roll;
    b[2] = was[2] = -out.wing;
    if (solveDense(a, b, 3) === 0) return false;
    move[0] = x.sideslip;
    move[1] = x.roll;
    move[2] = x.pitch;
    x.sideslip = within(x.sideslip + within(b[0]!, 0.3), WIDEST);
    x.roll = within(x.roll + within(b[1]!, 0.3), WIDEST);
    x.pitch = within(x.pitch + within(b[2]!, 0.3), WIDEST);
    move[0] = x.sideslip - move[0]!;
    move[1] = x.roll - move[1]!;
    move[2] = x.pitch - move[2]!;
  }
  return false;
}

/** A += (Δr − A s) sᵀ/s²: the least change of the slopes that explains the last step s. Source: C. G. Broyden, Math. Comp. 19 (1965) 577-593 (from memory). */
function mend(at: Float64Array, out: WindLoads): void {
  const [s0, s1, s2] = [move[0]!, move[1]!, move[2]!];
  const size = s0 * s0 + s1 * s1 + s2 * s2;
  if (size === 0) return;
  for (let row = 0; row < 3; row++) {
    const now = row === 0 ? out.yaw : row === 1 ? out.roll : out.wing;
    const o = 3 * row;
    const missed = (now + was[row]! - at[o]! * s0 - at[o + 1]! * s1 - at[o + 2]! * s2) / size;
    at[o]! += missed * s0;
    at[o + 1]! += missed * s1;
    at[o + 2]! += missed * s2;
  }
}

function takeSlopes(
  c: Constants,
  wind: WindThere,
  lines: number,
  V: number,
  x: Angles,
  here: WindLoads,
  slopes: Slopes,
): void {
  for (let k = 0; k < 3; k++) {
    const [beta, delta, theta] = [
      x.sideslip + (k === 0 ? STEP : 0),
      x.roll + (k === 1 ? STEP : 0),
      x.pitch + (k === 2 ? STEP : 0),
    ];
    windBalance(c, wind, lines, V, beta, delta, theta, beside);
    slopes.at[k] = (beside.yaw - here.yaw) / STEP;
    slopes.at[3 + k] = (beside.roll - here.roll) / STEP;
    slopes.at[6 + k] = (beside.wing - here.wing) / STEP;
  }
  slopes.known = true;
}

const within = (value: number, limit: number): number => Math.min(limit, Math.max(-limit, value));
