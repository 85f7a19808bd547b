import { nonNegative, positive } from './domain';

/**
 * V_0 = 1.15 n p: airspeed at which a propeller of pitch p (m) at n turns a second stops pulling, m/s (common practice,
 * no source).
 */
export const PITCH_SPEED_FACTOR = 1.15;

/** V_0 of a propeller of pitch p (m) at the shaft speed Ω (rad/s): 1.15 p Ω/2π, m/s. Common practice, no source. */
export function zeroThrustSpeed(shaftSpeed: number, pitch: number): number {
  return (PITCH_SPEED_FACTOR * positive('shaft speed', shaftSpeed) * positive('pitch', pitch)) / (2 * Math.PI);
}

/**
 * P = P_0 (1 − V/V_0): thrust (N) at the airspeed V (m/s) by a straight line from the static thrust P_0 (N) to the
 * speed V_0 (m/s) at which it vanishes; negative beyond. A straight line is what two measurements give. Derivation:
 * through the two points.
 */
export function thrustLaw(staticThrust: number, vanishing: number, airspeed: number): number {
  return nonNegative('static thrust', staticThrust) * (1 - airspeed / positive('speed of zero thrust', vanishing));
}

/**
 * Share of the shaft power that an ideal propeller of the diameter would need for the static thrust; a guess without a
 * source, since blades of coarse pitch are stalled at rest.
 */
export const STATIC_MERIT = 0.5;

/**
 * Q = P_0^1.5/(√(2 ρ A) M Ω): torque (N·m) that goes with a static thrust P_0 (N) of a propeller of diameter D (m), A =
 * π D²/4, in air of density ρ (kg/m³) at the shaft speed Ω (rad/s), merit M. Ideal power from momentum theory (H.
 * Glauert, The Elements of Aerofoil and Airscrew Theory); the merit is a guess.
 */
export function staticTorque(staticThrust: number, diameter: number, density: number, shaftSpeed: number): number {
  const ideal =
    nonNegative('static thrust', staticThrust) ** 1.5 /
    Math.sqrt(2 * positive('air density', density) * discArea(diameter));
  return ideal / (STATIC_MERIT * positive('shaft speed', shaftSpeed));
}

/**
 * Static thrust over that of a screw without slip, P_0 p = 2π Q. Mean of twelve model propellers with pitches of 0.44 to 0.75 diameters, 1.01 to 1.57
 * (UIUC Propeller Database, volume 1).
 */
export const STATIC_SCREW = 1.26;

/** P_0 = 1.26 · 2π Q/p: thrust at rest (N) that goes with the torque Q (N·m) of a propeller of pitch p (m). Source: measured, as above. */
export const stillThrust = (torque: number, pitch: number): number =>
  (STATIC_SCREW * 2 * Math.PI * nonNegative('torque', torque)) / positive('pitch', pitch);

/** A = π D²/4, m². */
export const discArea = (diameter: number): number =>
  (Math.PI / 4) * positive('propeller diameter', diameter) * diameter;

/** Mass of a model propeller over the cube of its diameter, kg/m³: 20 g at 9 in (a guess without a source). */
export const PROPELLER_MASS_FACTOR = 1.7;
/** Inertia of a tapering bar over mass × diameter²; an even one has 1/12. */
export const PROPELLER_SHAPE = 0.055;

/**
 * I = 0.055 m D², m = 1.7 kg/m³ D³: moment of inertia of a propeller about its shaft, kg·m². A guess without a source;
 * a weighed propeller is better.
 */
export function propellerInertia(diameter: number): number {
  return PROPELLER_SHAPE * PROPELLER_MASS_FACTOR * positive('propeller diameter', diameter) ** 5;
}
