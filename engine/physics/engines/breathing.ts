import { nonNegative, positive } from '../domain';

/**
 * Power (and torque at the same shaft speed) goes with the charge to this power. Derivation: a two-stroke draws in the same volume each turn and
 * burns fuel with the oxygen in it. Band 1.0 to 1.2, since friction stays what it is (recalled, no source).
 */
export const CHARGE_EXPONENT = 1;

/**
 * The same of a motor on its pack, whose rpm rise where the air is thin; one that is held at its rpm has 1. Derivation: torque falls in a straight
 * line with the shaft speed, K (Ω_i − Ω) = c ρ Ω², so with the share s = 1 − Ω/Ω_i by which the load holds it back
 *
 *   d ln Ω/d ln ρ = −s/(1 + s),   d ln W/d ln ρ = 1 − 3s/(1 + s)
 *
 * 0.5 is s = 0.2, as motors are propped (common practice, no source); 0.73 to 0.31 for s of 0.1 to 0.3.
 */
export const PACK_EXPONENT = 0.5;

/**
 * w = [(ρ/ρ_k) (δ/δ_k)]^κ: power of an engine in the air of today over that in the air (k) in which it was known; exactly 1 in the same air. For an
 * engine that breathes it is the share of its torque at every shaft speed. ρ density (kg/m³), δ dry part of its mass: moisture brings no oxygen.
 * Derivation: dry air in the charge.
 */
export function chargeShare(
  density: number,
  known: number,
  dryPart: number,
  knownDryPart: number,
  exponent: number,
): number {
  const dense = positive('air density', density) / positive('air density known', known);
  const dry = positive('dry part', dryPart) / positive('dry part known', knownDryPart);
  return (dense * dry) ** nonNegative('exponent', exponent);
}

/**
 * n/n_k = (w ρ_k/ρ)^⅓: shaft speed over the one known, where the power has become w times as much, at the same advance ratio. Exactly 1 where
 * power goes with density. Derivation: W = C_P ρ n³ D⁵ of a given propeller.
 */
export const shaftShare = (powerShare: number, density: number, known: number): number =>
  Math.cbrt(
    nonNegative('share of power', powerShare) /
      (positive('air density', density) / positive('air density known', known)),
  );

/**
 * P/P_k = (ρ/ρ_k) (n/n_k)²: thrust, and torque, of a given propeller over those known, at the same advance ratio. Source: C_T and C_P are functions of
 * it alone (H. Glauert, The Elements of Aerofoil and Airscrew Theory); that they change with Reynolds number is left out.
 */
export const propellerShare = (shaft: number, density: number, known: number): number =>
  (positive('air density', density) / positive('air density known', known)) * nonNegative('share of rpm', shaft) ** 2;
