import { nonNegative, positive } from './domain';

/** t = 2π cos φ/(V/R): time of a lap (s) at the speed V (m/s) on the radius R (m), lines raised by φ (rad). Derivation: circumference over speed. */
export const lapTimeAt = (speed: number, radius: number, elevation: number): number =>
  (2 * Math.PI * Math.cos(elevation)) / (positive('speed', speed) / positive('radius', radius));

/** ω = 2π/t: rate of turning (rad/s) of a lap that takes t (s). Derivation: definition. */
export const lapRate = (lapTime: number): number => (2 * Math.PI) / positive('lap time', lapTime);

/** F/T: how many times a pull T (N) a load F (N) is; negative where lines would push. Derivation: definition. */
export const marginOver = (load: number, pull: number): number => load / pull;

/** J = V/(n D): advance ratio of a propeller of diameter D (m) at n turns a second and the airspeed V (m/s). Derivation: definition. */
export const advanceRatio = (airspeed: number, turns: number, diameter: number): number =>
  airspeed / (turns * positive('propeller diameter', diameter));

/** C_T = P/(ρ n² D⁴): thrust coefficient of a thrust P (N) in air of density ρ (kg/m³). Derivation: definition. */
export const thrustCoefficient = (thrust: number, density: number, turns: number, diameter: number): number =>
  thrust / (positive('air density', density) * turns * turns * diameter ** 4);

/**
 * M = √((π n D)² + V²)/c: Mach number of the blade tips, c speed of sound (m/s). Derivation: the tip runs along a screw line; the speed that the
 * propeller itself adds is left out.
 */
export function tipMach(airspeed: number, turns: number, diameter: number, sound: number): number {
  const tip = Math.PI * turns * diameter;
  return Math.sqrt(tip * tip + airspeed * airspeed) / positive('speed of sound', sound);
}

/** V/(n p) = 2π V/(Ω p): speed over what a screw of pitch p (m) would make at the shaft speed Ω (rad/s). Derivation: definition. */
export const shareOfPitchSpeed = (speed: number, shaftSpeed: number, pitch: number): number =>
  (2 * Math.PI * speed) / (shaftSpeed * positive('pitch', pitch));

/** n_1 = V_t/V_1: laps of a filling, from fuel (m³) where some is burned, else from charge (C). Infinite where nothing is used. Derivation: definition. */
export const lapsPerFilling = (tank: number, fuelPerLap: number, pack: number, chargePerLap: number): number =>
  nonNegative('fuel a lap', fuelPerLap) > 0 ? tank / fuelPerLap : pack / chargePerLap;
