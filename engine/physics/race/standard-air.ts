import { nonNegative, positive } from '../domain';

/**
 * f = (ρ_0/ρ)^κ: thrust in standard air over thrust in that of the day, at the same airspeed. Densities in kg/m³; κ 1 for an engine that
 * breathes the air (torque and the propeller's load both go with density, so the rpm stay), 0 where the power is held.
 * Derivation: T = C_T ρ n² D⁴ at the same advance ratio.
 */
export const thrustInStandardAir = (density: number, standard: number, exponent: number): number =>
  (positive('standard density', standard) / positive('density', density)) ** nonNegative('exponent', exponent);

/** t_c = t_m t_0/t_d: a timed lap as it would be in standard air and calm; t_d and t_0 the model's laps on the day and in standard air, s. */
export const correctedLapTime = (timed: number, onTheDay: number, standard: number): number =>
  positive('timed lap', timed) * (standard / positive('lap of the day', onTheDay));
