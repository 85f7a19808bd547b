import { forces, liftLimitAt, trimStep } from '../flight/index';
import { linesInWind } from './lines-in-wind';
import type { WindRoom } from './room';
import type { Wind } from './wind-lap';

/** Imbalance (of the weight, or the weight × 1 m) that counts as balanced. */
const BALANCED = 1e-10;
const STEPS = 24;
/** Largest change of an angle in one step, and largest angle, rad. */
const ANGLE_STEP = 0.3;
const WIDEST = 1;

/**
 * The wind at an azimuth, from straight downwind of the pilot in the direction of flight: w_t = −W sin θ_a along the path; the level wind outward,
 * W cos θ_a, meets a chord at the elevation φ with cos φ along it and −sin φ across it.
 */
export function windAt({ air, c }: WindRoom, wind: Wind, azimuth: number): void {
  const outward = wind.speed * Math.cos(azimuth);
  air.along = -wind.speed * Math.sin(azimuth);
  air.out = outward * c.cosElevation;
  air.up = -outward * c.sinElevation;
  air.still = wind.speed === 0;
}

/**
 * Turns the model until yaw, roll and wing balance at its speed in the wind there (Newton's method); the state's angles are changed in place, `b` is
 * evaluated at the end, and `at.slope` is how the force along the path goes with the speed. False where it does not settle.
 */
export function trimInWind({ c, b, at, air, state }: WindRoom, wind: Wind): boolean {
  linesInWind(c, state, air, wind.profile, b);
  if (!Number.isFinite(b.drag)) {
    b.drag = 0;
    b.dragSlopes.fill(0);
  }
  const r = b.residual;
  for (let step = 0; step < STEPS; step++) {
    forces(c, state, air, b);
    const left = Math.max(Math.abs(r[1]!), Math.abs(r[2]!), Math.abs(r[3]!)) / c.weight;
    trimStep(b, at);
    if (left < BALANCED) return true;
    if (!Number.isFinite(left) || !Number.isFinite(at.sideslip)) return false;
    state.sideslip = within(state.sideslip + within(at.sideslip, ANGLE_STEP), WIDEST);
    state.roll = within(state.roll + within(at.roll, ANGLE_STEP), WIDEST);
    state.pitch = within(state.pitch + within(at.pitch, ANGLE_STEP), WIDEST);
  }
  return false;
}

const within = (value: number, limit: number): number => Math.min(limit, Math.max(-limit, value));

/** Pull of all lines at the guide, N. */
export function pullThere({ b }: WindRoom): number {
  const { tensionInward: along, tensionBackward: back, linePress: down } = b;
  return Math.sqrt(along * along + back * back + down * down);
}

/** Lift coefficient of the wing over the greatest one, both by the air across the span: what blows along it does not lift. */
export function liftShare({ c, b }: WindRoom): number {
  const { density, wingArea } = c.setup;
  return (2 * b.wingLift) / (density * b.across * b.across * wingArea) / liftLimitAt(c.setup, b.across);
}
