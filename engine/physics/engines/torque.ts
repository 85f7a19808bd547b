import { positive } from '../domain';

/** Torque of an engine against its shaft speed, in air of one density. */
export type TorqueCurve = (shaftSpeed: number) => number;

/** Two points of a two-stroke; N·m, W and rad/s. */
export interface TwoStrokePoints {
  readonly peakTorque: number;
  readonly torqueSpeed: number;
  readonly peakPower: number;
  readonly powerSpeed: number;
}

/** Torque that is left at rest over the peak torque, for the part below it, where few propellers work: a guess. */
export const TORQUE_SHARE_AT_REST = 0.7;

/**
 * Torque of a two-stroke by its two peaks.
 *
 *   Q(Ω_Q) = Q_m, Q' = 0;  Q(Ω_P) = W_m/Ω_P, Q' = −Q/Ω   (power has its peak there)
 *
 * Between them the cubic that has these values and slopes; above Ω_P straight on, so that torque vanishes at 2 Ω_P; below
 * Ω_Q a parabola that leaves 0.7 Q_m at rest. Needs Ω_P > Ω_Q and W_m/Ω_P ≤ Q_m. Derivation: the definition of both peaks;
 * the parabola is a guess.
 */
export function twoStrokeTorque(points: TwoStrokePoints): TorqueCurve {
  const { peakTorque, torqueSpeed, peakPower, powerSpeed } = points;
  const top = positive('peak torque', peakTorque);
  const end = positive('peak power', peakPower) / positive('speed of peak power', powerSpeed);
  const span = powerSpeed - positive('speed of peak torque', torqueSpeed);
  if (!(span > 0)) throw new RangeError(`speed of peak power is ${powerSpeed}; it must be above ${torqueSpeed}`);
  if (!(end <= top)) throw new RangeError(`torque at peak power is ${end}; it must not be above the peak, ${top}`);
  const slope = -end / powerSpeed;
  return (speed) => {
    if (speed >= powerSpeed) return end + slope * (speed - powerSpeed);
    if (speed <= torqueSpeed) return top * (1 - (1 - TORQUE_SHARE_AT_REST) * (1 - speed / torqueSpeed) ** 2);
    const t = (speed - torqueSpeed) / span;
    const rest = 1 - t;
    return top * (1 + 2 * t) * rest * rest + end * t * t * (3 - 2 * t) - slope * span * t * t * rest;
  };
}

/** Torque known at one or two shaft speeds; N·m and rad/s. */
export interface TorqueReading {
  readonly shaftSpeed: number;
  readonly torque: number;
}

/**
 * Torque near tachometer readings, Ω shaft speed (rad/s).
 *
 *   one:  Q = Q_1 (2 − Ω/Ω_1)   (power has its peak there: an engine is propped near it)
 *   two:  Q = Q_1 + (Q_2 − Q_1)(Ω − Ω_1)/(Ω_2 − Ω_1)
 *
 * Holds near the readings. Derivation: tangent of constant power; straight line.
 */
export function tachometerTorque(first: TorqueReading, second?: TorqueReading): TorqueCurve {
  const at = positive('shaft speed', first.shaftSpeed);
  const slope = second ? (second.torque - first.torque) / (second.shaftSpeed - first.shaftSpeed) : -first.torque / at;
  return (speed) => first.torque + slope * (speed - at);
}
