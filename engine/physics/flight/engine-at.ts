import { findKnot, newKnot, readKnot } from '../../numerics/index';
import type { FlightSetup } from './setup';

/** Where in the row that `engineAt` fills thrust, torque and shaft speed stand, each with its slope behind it. */
export const THRUST = 0;
export const TORQUE = 2;
export const SHAFT_SPEED = 4;

const knot = newKnot();

/** Thrust (N), torque (N·m) and shaft speed (rad/s) at the airspeed out[0] (m/s) with their slopes, to out[0] … out[5]. Allocates nothing. */
export function engineAt(s: FlightSetup, out: Float64Array): void {
  findKnot(s.knotStep, s.knotCount, out[0]!, knot);
  readKnot(s.curves, s.thrustAt, s.stride, knot, out, THRUST);
  readKnot(s.curves, s.torqueAt, s.stride, knot, out, TORQUE);
  readKnot(s.curves, s.shaftSpeedAt, s.stride, knot, out, SHAFT_SPEED);
}
