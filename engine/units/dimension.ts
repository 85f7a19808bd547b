/**
 * The dimension of a quantity: exponents of the SI base quantities length, mass, time, temperature and current.
 * Angle and all ratios have dimension one.
 */
export interface Dimension {
  readonly length: number;
  readonly mass: number;
  readonly time: number;
  readonly temperature: number;
  readonly current: number;
}

export function dimension(length = 0, mass = 0, time = 0, temperature = 0, current = 0): Dimension {
  return { length, mass, time, temperature, current };
}

export const ONE = dimension();
export const LENGTH = dimension(1);
export const AREA = dimension(2);
export const VOLUME = dimension(3);
export const MASS = dimension(0, 1);
export const TIME = dimension(0, 0, 1);
export const TEMPERATURE = dimension(0, 0, 0, 1);
export const CURRENT = dimension(0, 0, 0, 0, 1);
export const SPEED = dimension(1, 0, -1);
export const ACCELERATION = dimension(1, 0, -2);
/** Rotational speed and frequency; rpm is 2π/60 s⁻¹. */
export const RATE = dimension(0, 0, -1);
export const FORCE = dimension(1, 1, -2);
export const MOMENT = dimension(2, 1, -2);
export const PRESSURE = dimension(-1, 1, -2);
export const POWER = dimension(2, 1, -3);
export const DENSITY = dimension(-3, 1);
export const AREAL_MASS = dimension(-2, 1);
export const LINEAR_MASS = dimension(-1, 1);
export const INERTIA = dimension(2, 1);
export const VISCOSITY = dimension(-1, 1, -1);
export const KINEMATIC_VISCOSITY = dimension(2, 0, -1);
export const VOLUME_FLOW = dimension(3, 0, -1);
export const CHARGE = dimension(0, 0, 1, 0, 1);
export const VOLTAGE = dimension(2, 1, -3, 0, -1);
export const RESISTANCE = dimension(2, 1, -3, 0, -2);
/** Rotational speed per voltage; its inverse is a torque per current. */
export const SPEED_PER_VOLTAGE = dimension(-2, -1, 2, 0, 1);
/** Specific consumption of fuel. */
export const MASS_PER_ENERGY = dimension(-2, 0, 2);
/** Bending stiffness EI. */
export const BENDING_STIFFNESS = dimension(3, 1, -2);

export function sameDimension(a: Dimension, b: Dimension): boolean {
  return (
    a.length === b.length &&
    a.mass === b.mass &&
    a.time === b.time &&
    a.temperature === b.temperature &&
    a.current === b.current
  );
}

export function timesDimension(a: Dimension, b: Dimension): Dimension {
  return dimension(
    a.length + b.length,
    a.mass + b.mass,
    a.time + b.time,
    a.temperature + b.temperature,
    a.current + b.current,
  );
}

export function powerDimension(a: Dimension, exponent: number): Dimension {
  const raise = (base: number): number => (base === 0 ? 0 : base * exponent);
  return dimension(raise(a.length), raise(a.mass), raise(a.time), raise(a.temperature), raise(a.current));
}

export function overDimension(a: Dimension, b: Dimension): Dimension {
  return timesDimension(a, powerDimension(b, -1));
}
