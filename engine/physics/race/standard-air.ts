import { STANDARD_DENSITY, STANDARD_KINEMATIC_VISCOSITY } from '../air';
import { nonNegative, positive } from '../domain';
import type { FlightSetup } from '../flight/index';

/**
 * f = (ρ_0/ρ)^κ: thrust in standard air over thrust in that of the day, at the same airspeed. Densities in kg/m³; κ 1 for an engine that
 * breathes the air (torque and the propeller's load both go with density, so the rpm stay), 0 where the power is held.
 * Derivation: T = C_T ρ n² D⁴ at the same advance ratio.
 */
export const thrustInStandardAir = (density: number, standard: number, exponent: number): number =>
  (positive('standard density', standard) / positive('density', density)) ** nonNegative('exponent', exponent);

/** A set-up in the air of ISO 2533 at sea level: thrust and torque at every airspeed go with density as `exponent` says. */
export function inStandardAir(setup: FlightSetup, exponent: number): FlightSetup {
  const share = thrustInStandardAir(setup.density, STANDARD_DENSITY, exponent);
  const { knotCount, stride } = setup;
  const curves = new Float64Array(3 * knotCount);
  for (let k = 0; k < knotCount; k++) {
    curves[k] = share * setup.curves[setup.thrustAt + k * stride]!;
    curves[knotCount + k] = share * setup.curves[setup.torqueAt + k * stride]!;
    curves[2 * knotCount + k] = setup.curves[setup.shaftSpeedAt + k * stride]!;
  }
  return {
    ...setup,
    density: STANDARD_DENSITY,
    kinematicViscosity: STANDARD_KINEMATIC_VISCOSITY,
    curves,
    thrustAt: 0,
    torqueAt: knotCount,
    shaftSpeedAt: 2 * knotCount,
    stride: 1,
  };
}

/** t_c = t_m t_0/t_d: a timed lap as it would be in standard air and calm; t_d and t_0 the model's laps on the day and in standard air, s. */
export const correctedLapTime = (timed: number, onTheDay: number, standard: number): number =>
  positive('timed lap', timed) * (standard / positive('lap of the day', onTheDay));
