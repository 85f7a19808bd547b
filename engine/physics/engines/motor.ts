import { positive } from '../domain';

/** Electric motor by its three constants, with its pack; SI. */
export interface Motor {
  /** K_v, rad/(s·V). */
  readonly speedPerVolt: number;
  /** R, Ω: of motor and controller. */
  readonly resistance: number;
  /** I_0, A. */
  readonly idleCurrent: number;
  /** Of the pack without load, V. */
  readonly voltage: number;
  /** Of the pack, Ω. */
  readonly packResistance: number;
}

/**
 * Q = (I − I_0)/K_v, I = (U − Ω/K_v)/(R + R_p): torque (N·m) of a motor on its pack at full throttle and the shaft speed Ω
 * (rad/s); negative beyond idling. Source: the three-constant model of a permanent-magnet motor, A. E. Fitzgerald, C.
 * Kingsley and S. D. Umans, Electric Machinery, ch. 7 (from memory).
 */
export function motorTorque(motor: Motor, shaftSpeed: number): number {
  const kv = positive('speed per volt', motor.speedPerVolt);
  const current = (motor.voltage - shaftSpeed / kv) / positive('resistance', motor.resistance + motor.packResistance);
  return (current - motor.idleCurrent) / kv;
}

/** I = Q K_v + I_0: current through the motor (A) at a torque (N·m). Source: as above. */
export const motorCurrent = (motor: Motor, torque: number): number => torque * motor.speedPerVolt + motor.idleCurrent;

/**
 * Share of the pack's voltage that a controller must pass on to hold the shaft speed at a torque, 1 at full throttle; above
 * 1 it can't.
 *
 *   d (U − d I R_p) = I R + Ω/K_v,  the smaller root of d
 *
 * The pack gives the current d I (a controller without loss). NaN: not at any throttle. Derivation: energy.
 */
export function throttleFor(motor: Motor, shaftSpeed: number, torque: number): number {
  const current = motorCurrent(motor, torque);
  const needed = current * motor.resistance + shaftSpeed / motor.speedPerVolt;
  const sag = current * motor.packResistance;
  if (Math.abs(sag) < 1e-12) return needed / motor.voltage;
  const inner = motor.voltage * motor.voltage - 4 * sag * needed;
  return inner < 0 ? Number.NaN : (motor.voltage - Math.sqrt(inner)) / (2 * sag);
}
