import { DENSITY, PRESSURE } from '../units/index';

/** What a material gives. */
export const MATERIAL_NUMBERS = [
  { name: 'density', title: 'density', symbol: 'ρ', dimension: DENSITY, unit: 'kg/m³', tradeUnit: 'lb/ft³' },
  { name: 'modulus', title: 'Young’s modulus', symbol: 'E', dimension: PRESSURE, unit: 'GPa' },
] as const;
