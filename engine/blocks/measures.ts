import {
  AREA,
  DENSITY,
  FORCE,
  KINEMATIC_VISCOSITY,
  LENGTH,
  MASS,
  MOMENT,
  ONE,
  PRESSURE,
  SPEED,
  TEMPERATURE,
  TIME,
  VISCOSITY,
  VOLUME,
  type Ways,
} from '../units/index';

/** How the numbers of a model are shown: dimension with its unit in the metric and in the trade's set. Spread into fields and results. */
export const MILLIMETRES = { dimension: LENGTH, unit: 'mm', tradeUnit: 'in' } as const;
export const METRES = { dimension: LENGTH, unit: 'm', tradeUnit: 'ft' } as const;
/** Wing and tail areas. */
export const SURFACE = { dimension: AREA, unit: 'dm²', tradeUnit: 'in²' } as const;
/** Drag areas. */
export const SMALL_AREA = { dimension: AREA, unit: 'cm²', tradeUnit: 'in²' } as const;
export const GRAMS = { dimension: MASS, unit: 'g', tradeUnit: 'oz' } as const;
export const NEWTONS = { dimension: FORCE, unit: 'N', tradeUnit: 'lbf' } as const;
export const TORQUE = { dimension: MOMENT, unit: 'N·m', tradeUnit: 'lbf·in' } as const;
/** Stresses and strengths. */
export const PRESSURES = { dimension: PRESSURE, unit: 'MPa', tradeUnit: 'psi' } as const;
export const AIRSPEED = { dimension: SPEED, unit: 'm/s', tradeUnit: 'mph' } as const;
export const ANGLE = { dimension: ONE, unit: '°' } as const;
/** Fuel. */
export const FLUID = { dimension: VOLUME, unit: 'mL', tradeUnit: 'fl oz' } as const;
export const SECONDS = { dimension: TIME, unit: 's' } as const;
export const PER_RADIAN = { dimension: ONE, unit: '1/rad' } as const;
export const PLAIN = { dimension: ONE, unit: '' } as const;
export const SHARE = { dimension: ONE, unit: '%' } as const;
export const WARMTH = { dimension: TEMPERATURE, unit: '°C', tradeUnit: '°F' } as const;
export const AIR_PRESSURE = { dimension: PRESSURE, unit: 'hPa', tradeUnit: 'inHg' } as const;
export const AIR_DENSITY = { dimension: DENSITY, unit: 'kg/m³', tradeUnit: 'lb/ft³' } as const;
export const AIR_VISCOSITY = { dimension: VISCOSITY, unit: 'µPa·s' } as const;
export const AIR_KINEMATIC_VISCOSITY = { dimension: KINEMATIC_VISCOSITY, unit: 'mm²/s' } as const;

const DEGREE = Math.PI / 180;
/** Radians of an angle in degrees, for defaults and ranges. */
export const degrees = (value: number): number => value * DEGREE;

/** What was typed, or the estimate where nothing was (NaN). */
export const typedOr = (typed: number, estimate: number): number => (Number.isNaN(typed) ? estimate : typed);

/** Which way a number above zero goes, and one below: of a trailing edge, a line or a lift; across the span. */
export const UP_DOWN: Ways = ['up', 'down'];
export const OUTBOARD: Ways = ['outboard', 'inboard'];
