import { positive } from './domain';

/**
 * C_d = 11 Re^−¾ + 0.9 (1 − e^(−1000/Re)) + 1.2 (1 − e^(−(Re/4500)^0.7)): drag coefficient of a smooth round cylinder
 * across the flow, on diameter × length, Re by diameter; a fit to Wieselsberger's measurements for Re < 2·10⁵ (within 5
 * % of them from Re 17 to 2·10⁵, higher below).
 * Source: N.-S. Cheng, Calculation of drag coefficient for arrays of emergent circular cylinders with pseudofluid
 * model, J. Hydraul. Eng. 139 (2013) 602-611.
 */
export function cylinderDragCoefficient(reynolds: number): number {
  const re = positive('Reynolds number', reynolds);
  return (
    CREEPING * re ** CREEPING_POWER +
    WAKE * -Math.expm1(-WAKE_REYNOLDS / re) +
    ROUGH * -Math.expm1(-((re / ROUGH_REYNOLDS) ** ROUGH_POWER))
  );
}

/** The constants of the fit, shared with the integral along a line. */
export const CREEPING = 11;
export const CREEPING_POWER = -0.75;
export const WAKE = 0.9;
export const WAKE_REYNOLDS = 1000;
export const ROUGH = 1.2;
export const ROUGH_REYNOLDS = 4500;
export const ROUGH_POWER = 0.7;
