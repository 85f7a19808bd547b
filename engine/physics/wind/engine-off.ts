import { positive } from '../domain';
import type { FlightSetup } from '../flight/index';

/**
 * A set-up with its engine stopped: no torque, no spin, and in place of thrust the drag −½ ρ V² A_p of the stopped propeller of drag area A_p
 * (m²) at every knot. A record of its own; the given one stays.
 */
export function withEngineOff(setup: FlightSetup, propellerDragArea: number): FlightSetup {
  const n = setup.knotCount;
  const curves = new Float64Array(3 * n);
  for (let k = 0; k < n; k++) {
    const speed = k * setup.knotStep;
    curves[k] = -0.5 * setup.density * speed * speed * propellerDragArea;
  }
  return { ...setup, curves, thrustAt: 0, torqueAt: n, shaftSpeedAt: 2 * n, stride: 1, rotorInertia: 0 };
}

/**
 * V_s = [2 m g V_r^p/(ρ S C_L,max)]^(1/(2 + p)): airspeed (m/s) at which level lift takes the greatest coefficient of the wing, which goes with
 * the airspeed as (V/V_r)^p. Definition.
 */
export function stallSpeed(setup: FlightSetup): number {
  const { mass, gravity, density, wingArea, liftLimit, sectionSpeed, liftPower } = setup;
  const square = (2 * mass * gravity) / (density * wingArea * positive('greatest lift coefficient', liftLimit));
  return (square * sectionSpeed ** liftPower) ** (1 / (2 + liftPower));
}

/** Drag area of a stopped two-bladed propeller over its disc: blades of a mean chord of a tenth of the diameter, square to the air. A guess without a source. */
export const BLADE_SHARE = 0.1;
/** Drag coefficient of a plate square to the air (S. F. Hoerner, from memory). */
export const SQUARE_PLATE_DRAG = 1.2;
/** Airspeed at touchdown over the stall speed: common practice, no source. */
export const LANDING_OVER_STALL = 1.3;

/** A_p = C D (c D): drag area (m²) of a stopped propeller of diameter D (m), c = 0.1, C = 1.2 square to the air (Hoerner, from memory). */
export function stoppedPropellerDragArea(diameter: number): number {
  return SQUARE_PLATE_DRAG * BLADE_SHARE * diameter * diameter;
}

/**
 * s = m/(2 k) ln(1 + k V²/F): way (m) in which a mass m (kg) at V (m/s) is stopped by the drag k V² (kg/m) and a force F (N) that
 * stays; V² m/(2 F) for k → 0. Derivation: m V dV/ds = −k V² − F.
 */
export function rollOut(speed: number, mass: number, k: number, force: number): number {
  const ratio = (k * speed * speed) / positive('rolling force', force);
  return (mass * speed * speed * log1pOver(ratio)) / (2 * force);
}

/** ln(1 + x)/x, 1 at 0. */
const log1pOver = (x: number): number => (x === 0 ? 1 : Math.log1p(x) / x);
