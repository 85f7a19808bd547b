import { solveDense } from '../../numerics/index';
import type { Constants } from '../flight/index';
import { newWindLoads, type WindLoads, type WindThere, windBalance } from './balance';
import type { LineProfile } from './lines-in-wind';

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
const STEP = 1e-6;
const WIDEST = 1;
const beside = newWindLoads();
const a = new Float64Array(9);
const b = new Float64Array(3);

/**
 * Turns the model until yaw, roll and wing balance at the speed V in the wind there; angles are changed in place, loads are those at the end.
 * Newton's method with slopes by differences, taken anew where the old ones bring it on too slowly. False where it does not settle.
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
  let last = Number.POSITIVE_INFINITY;
  for (let step = 0; step < STEPS; step++) {
    windBalance(c, wind, profile, V, x.sideslip, x.roll, x.pitch, out);
    const left = Math.max(Math.abs(out.yaw), Math.abs(out.roll), Math.abs(out.wing)) / c.weight;
    if (left < BALANCED) return true;
    if (!Number.isFinite(left)) return false;
    if (!slopes.known || left > 0.2 * last) takeSlopes(c, wind, profile, V, x, out, slopes);
    last = left;
    a.set(slopes.at);
    b[0] = -out.yaw;
    b[1] = -out.roll;
    b[2] = -out.wing;
    if (solveDense(a, b, 3) === 0) return false;
    x.sideslip = within(x.sideslip + within(b[0]!, 0.3), WIDEST);
    x.roll = within(x.roll + within(b[1]!, 0.3), WIDEST);
    x.pitch = within(x.pitch + within(b[2]!, 0.3), WIDEST);
  }
  return false;
}

function takeSlopes(
  c: Constants,
  wind: WindThere,
  profile: LineProfile,
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
    windBalance(c, wind, profile, V, beta, delta, theta, beside);
    slopes.at[k] = (beside.yaw - here.yaw) / STEP;
    slopes.at[3 + k] = (beside.roll - here.roll) / STEP;
    slopes.at[6 + k] = (beside.wing - here.wing) / STEP;
  }
  slopes.known = true;
}

const within = (value: number, limit: number): number => Math.min(limit, Math.max(-limit, value));
