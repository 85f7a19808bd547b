import { positive, within } from './domain';

/** Constants of CIPM-2007 for air with a mole fraction 0.0004 of carbon dioxide: kg/mol, J/(mol·K). */
const MOLAR_MASS_DRY = 28.96546e-3;
const MOLAR_MASS_WATER = 18.01528e-3;
const MOLAR_GAS_CONSTANT = 8.314472;

/**
 * p_sv = 1 Pa · exp(A T² + B T + C + D/T): saturation vapour pressure (Pa) over water at T (K).
 * Source: A. Picard, R. S. Davis, M. Gläser, K. Fujii, Revised formula for the density of moist air (CIPM-2007),
 * Metrologia 45 (2008) 149–155, eq. A1.1.
 */
export function saturationPressure(temperature: number): number {
  const t = positive('temperature', temperature);
  return Math.exp(1.2378847e-5 * t * t - 1.9121316e-2 * t + 33.93711047 - 6.3431645e3 / t);
}

/**
 * ρ = p M_a/(Z R T) · [1 − x_v (1 − M_v/M_a)]: density (kg/m³) of moist air.
 *
 * p pressure (Pa), T temperature (K), h relative humidity (0 to 1), x_v = h f p_sv/p mole fraction of water vapour with
 * f = α + β p + γ t² (t in °C), Z compressibility. Stated for 600 to 1100 hPa and 15 to 27 °C (that range from memory);
 * used here from −30 to 50 °C, where the error stays far below what a field thermometer costs.
 * Source: CIPM-2007 as above, eqs. 1, A1.1 to A1.4.
 */
export function moistAirDensity(pressure: number, temperature: number, humidity: number): number {
  const p = within('pressure', pressure, 30000, 120000);
  const T = within('temperature', temperature, 243.15, 323.15);
  const h = within('relative humidity', humidity, 0, 1);
  const t = T - 273.15;
  const enhancement = 1.00062 + 3.14e-8 * p + 5.6e-7 * t * t;
  const xv = (h * enhancement * saturationPressure(T)) / p;
  const mixed =
    1.58123e-6 -
    2.9331e-8 * t +
    1.1043e-10 * t * t +
    (5.707e-6 - 2.051e-8 * t) * xv +
    (1.9898e-4 - 2.376e-6 * t) * xv * xv;
  const Z = 1 - (p / T) * mixed + ((p * p) / (T * T)) * (1.83e-11 - 0.765e-8 * xv * xv);
  return ((p * MOLAR_MASS_DRY) / (Z * MOLAR_GAS_CONSTANT * T)) * (1 - xv * (1 - MOLAR_MASS_WATER / MOLAR_MASS_DRY));
}

/**
 * δ = 1 − h p_sv/(R_v T ρ),  R_v = R/M_v: part of the mass of moist air (kg/m³) that is dry. T temperature (K), h relative humidity (0 to 1). Vapour
 * as an ideal gas without the enhancement of CIPM-2007, which is 0.4 % of a vapour of some 2 %. Derivation: mass of vapour in a volume.
 */
export function dryPart(density: number, temperature: number, humidity: number): number {
  const T = within('temperature', temperature, 243.15, 323.15);
  const vapour = within('relative humidity', humidity, 0, 1) * saturationPressure(T) * MOLAR_MASS_WATER;
  return 1 - vapour / (MOLAR_GAS_CONSTANT * T * positive('density', density));
}
