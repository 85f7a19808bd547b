import { positive } from '../domain';

/** What is known of a kind of fuel; SI. */
export interface FuelFacts {
  /** Mass burned for a unit of shaft work, kg/J. */
  readonly consumption: number;
  /** The true consumption lies within this factor both ways. */
  readonly spread: number;
  /** kg/m³. */
  readonly density: number;
}

const PER_KILOWATT_HOUR = 1 / 3.6e6;

/**
 * Fuels of model two-strokes. Glow: 3 kg/kWh within a factor of two: efficiency of 3 to 9 % measured on seven small engines
 * (S. Menon and C. P. Cadou, University of Maryland) is 2.0 to 6.0 kg/kWh of methanol; 1.2 to 3.0 common practice (from
 * memory). Diesel: 0.8 kg/kWh, a guess without a source: no measurement was found. Densities from memory, mixed with oil.
 */
export const FUELS: Readonly<Record<'glow' | 'diesel', FuelFacts>> = {
  glow: { consumption: 3 * PER_KILOWATT_HOUR, spread: 2, density: 860 },
  diesel: { consumption: 0.8 * PER_KILOWATT_HOUR, spread: 2, density: 820 },
};

/** Volume of fuel a second (m³/s) at the shaft power W: b W/ρ, b consumption (kg/J), ρ density (kg/m³). By definition. */
export const fuelFlow = (power: number, consumption: number, density: number): number =>
  (consumption * Math.max(0, power)) / positive('fuel density', density);
