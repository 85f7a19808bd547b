import { nonNegative, positive } from '../domain';

/**
 * η_i = 2/(1 + √(1 + 8 C_T/(π J²))): efficiency of an ideal disc that gives the thrust coefficient C_T ≥ 0 at the advance
 * ratio J; no propeller does better. Source: H. Glauert, The Elements of Aerofoil and Airscrew Theory.
 */
export function idealEfficiency(thrustCoefficient: number, advanceRatio: number): number {
  const J = positive('advance ratio', advanceRatio);
  return 2 / (1 + Math.sqrt(1 + (8 * nonNegative('thrust coefficient', thrustCoefficient)) / (Math.PI * J * J)));
}

/**
 * C_P = C_T (J/2 + √(J²/4 + 2 C_T/π)): least power coefficient that gives the thrust coefficient C_T ≥ 0 at the advance ratio
 * J ≥ 0; the form of the same bound that holds at rest too. Source: as above.
 */
export function leastPower(thrustCoefficient: number, advanceRatio: number): number {
  const C = nonNegative('thrust coefficient', thrustCoefficient);
  const J = nonNegative('advance ratio', advanceRatio);
  return C * (J / 2 + Math.sqrt((J * J) / 4 + (2 * C) / Math.PI));
}
