import { STANDARD_GRAVITY } from '../exact';
import { positive, within } from './domain';

/** Defining constants of ISO 2533:1975 (the same in the US Standard Atmosphere 1976 below 32 km). */
export const SEA_LEVEL_TEMPERATURE = 288.15;
export const SEA_LEVEL_PRESSURE = 101325;
export const LAPSE_RATE = 0.0065;
/** J/(kg·K) (from memory; R* = 8314.32 J/(kmol·K) over M0 = 28.9644 kg/kmol gives the same to seven digits). */
export const GAS_CONSTANT_OF_DRY_AIR = 287.05287;
/** m, nominal radius of the earth in the geopotential height (from memory). */
export const EARTH_RADIUS = 6356766;

/**
 * H = r z/(r + z): geopotential height H (m) of the elevation z (m) above sea level; r nominal radius of the earth.
 * Source: ISO 2533:1975.
 */
export function geopotentialHeight(elevation: number): number {
  return (EARTH_RADIUS * elevation) / (EARTH_RADIUS + elevation);
}

/**
 * T = T0 − L H: standard temperature (K) at the geopotential height H (m), −1000 to 11 000 m.
 * Source: ISO 2533:1975, troposphere.
 */
export function standardTemperature(height: number): number {
  return SEA_LEVEL_TEMPERATURE - LAPSE_RATE * within('geopotential height', height, -1000, 11000);
}

/**
 * p = p0 (T/T0)^(g0/(R L)): standard pressure (Pa) at the geopotential height H (m), −1000 to 11 000 m.
 * Source: ISO 2533:1975, troposphere.
 */
export function standardPressure(height: number): number {
  const ratio = standardTemperature(height) / SEA_LEVEL_TEMPERATURE;
  return SEA_LEVEL_PRESSURE * ratio ** (STANDARD_GRAVITY / (GAS_CONSTANT_OF_DRY_AIR * LAPSE_RATE));
}

/**
 * ρ = p/(R T): density (kg/m³) of dry air as an ideal gas, p (Pa), T (K). The standard atmosphere's own law; for air with
 * moisture use `moistAirDensity`. Source: ISO 2533:1975.
 */
export function dryAirDensity(pressure: number, temperature: number): number {
  return positive('pressure', pressure) / (GAS_CONSTANT_OF_DRY_AIR * positive('temperature', temperature));
}

/** β, kg/(m·s·K^½), and S, K, of Sutherland's law for air. */
export const SUTHERLAND_FACTOR = 1.458e-6;
export const SUTHERLAND_TEMPERATURE = 110.4;

/**
 * μ = β T^1.5/(T + S): dynamic viscosity (Pa·s) of air at T (K); about 100 to 1900 K.
 * Source: Sutherland's law as in US Standard Atmosphere 1976, eq. 51.
 */
export function viscosityOfAir(temperature: number): number {
  const t = within('temperature', temperature, 100, 1900);
  return (SUTHERLAND_FACTOR * t * Math.sqrt(t)) / (t + SUTHERLAND_TEMPERATURE);
}

/**
 * √(γ p/ρ), γ = 1.4: speed of sound (m/s) in air of pressure p (Pa) and density ρ (kg/m³). Source: ISO 2533:1975.
 */
export function soundSpeed(pressure: number, density: number): number {
  return Math.sqrt((1.4 * positive('pressure', pressure)) / positive('density', density));
}

/** Density (kg/m³) and kinematic viscosity (m²/s) of standard air at sea level. Source: ISO 2533:1975, by the laws above. */
export const STANDARD_DENSITY = dryAirDensity(SEA_LEVEL_PRESSURE, SEA_LEVEL_TEMPERATURE);
export const STANDARD_KINEMATIC_VISCOSITY = viscosityOfAir(SEA_LEVEL_TEMPERATURE) / STANDARD_DENSITY;
