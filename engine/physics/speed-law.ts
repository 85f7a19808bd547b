/**
 * (V/V_0)^n by a quotient, for laws that a solver reads at every step:
 *
 *   (1 + ½ (1 + n) x)/(1 + ½ (1 − n) x),  x = V/V_0 − 1
 *
 * Smooth and bounded for V ≥ 0 and −1 < n < 1. With |n| ≤ 0.4 it is within 1 % of the power from half to twice V_0 and within 7 % from
 * a quarter to four times; (1 − n)/(1 + n) at rest, where no air force acts. V (m/s), V_0 > 0. Derivation: Padé's form [1/1] of the power about V_0.
 */
export function nearPower(speed: number, reference: number, exponent: number): number {
  const x = speed / reference - 1;
  return (1 + 0.5 * (1 + exponent) * x) / (1 + 0.5 * (1 - exponent) * x);
}
