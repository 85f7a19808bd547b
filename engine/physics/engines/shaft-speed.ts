import { findRoot, type Root } from '../../numerics/index';
import { type PropellerTable, tableTorque } from '../propeller/index';
import type { TorqueCurve } from './torque';

/** Width of the bracket at which the search ends, rad/s. */
const OPTIONS = { tolerance: 1e-3 };
/** Share of the pitch at which even a windmilling propeller brakes a shaft that turns faster. */
const WINDMILL_SHARE = 0.2;

/**
 * Shaft speed Ω (rad/s) at which engine and propeller agree at an airspeed V (m/s): Q_engine(Ω) = Q_propeller(Ω, V).
 *
 * Sought between `slowest`, below which the engine doesn't run, and `fastest` or the speed at which the air itself would
 * turn the propeller, whichever is greater. `no sign change`: the propeller asks for more than the engine has even at
 * `slowest`. Derivation: balance of torques.
 */
export function shaftSpeedAt(
  torque: TorqueCurve,
  table: PropellerTable,
  density: number,
  airspeed: number,
  pitch: number,
  slowest: number,
  fastest: number,
): Root {
  const spare = (speed: number): number => torque(speed) - tableTorque(table, density, airspeed, speed);
  const driven = (2 * Math.PI * airspeed) / (WINDMILL_SHARE * pitch);
  return findRoot(spare, slowest, Math.max(fastest, driven), OPTIONS);
}
