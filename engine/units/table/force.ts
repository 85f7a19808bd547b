import {
  FOOT,
  HORSEPOWER,
  HOUR,
  INCH,
  INCH_OF_MERCURY,
  METRIC_HORSEPOWER,
  MILLIMETRE_OF_MERCURY,
  OUNCE_FORCE,
  POUND,
  POUND_FORCE,
  PSI,
  STANDARD_GRAVITY,
} from '../../exact';
import { BENDING_STIFFNESS, dimension, FORCE, MASS_PER_ENERGY, MOMENT, POWER, PRESSURE, VISCOSITY } from '../dimension';
import { type Unit, unit } from '../unit';

const FORCE_PER_LENGTH = dimension(0, 1, -2);
const ENERGY_PER_MASS = dimension(2, 0, -2);
const KILOGRAM_FORCE = STANDARD_GRAVITY;

/** Forces, moments, pressures, stiffnesses, energy and power. A moment and an energy have one dimension. */
export const forceUnits: readonly Unit[] = [
  unit('mN', 'millinewton', FORCE, 1e-3, 'metric'),
  unit('N', 'newton', FORCE, 1, 'metric'),
  unit('kN', 'kilonewton', FORCE, 1000, 'metric'),
  unit('gf', 'gram-force', FORCE, KILOGRAM_FORCE / 1000, 'metric'),
  unit('kgf', 'kilogram-force', FORCE, KILOGRAM_FORCE, 'metric'),
  unit('ozf', 'ounce-force', FORCE, OUNCE_FORCE, 'inch_pound'),
  unit('lbf', 'pound-force', FORCE, POUND_FORCE, 'inch_pound'),

  unit('N/m', 'newton per metre', FORCE_PER_LENGTH, 1, 'metric'),
  unit('N/mm', 'newton per millimetre', FORCE_PER_LENGTH, 1000, 'metric'),
  unit('lbf/in', 'pound-force per inch', FORCE_PER_LENGTH, POUND_FORCE / INCH, 'inch_pound'),
  unit('lbf/ft', 'pound-force per foot', FORCE_PER_LENGTH, POUND_FORCE / FOOT, 'inch_pound'),

  unit('mN·m', 'millinewton metre', MOMENT, 1e-3, 'metric'),
  unit('N·mm', 'newton millimetre', MOMENT, 1e-3, 'metric'),
  unit('N·cm', 'newton centimetre', MOMENT, 1e-2, 'metric'),
  unit('N·m', 'newton metre', MOMENT, 1, 'metric'),
  unit('gf·cm', 'gram-force centimetre', MOMENT, KILOGRAM_FORCE * 1e-5, 'metric'),
  unit('kgf·cm', 'kilogram-force centimetre', MOMENT, KILOGRAM_FORCE * 1e-2, 'metric'),
  unit('ozf·in', 'ounce-force inch', MOMENT, OUNCE_FORCE * INCH, 'inch_pound'),
  unit('lbf·in', 'pound-force inch', MOMENT, POUND_FORCE * INCH, 'inch_pound'),
  unit('lbf·ft', 'pound-force foot', MOMENT, POUND_FORCE * FOOT, 'inch_pound', ['ft·lbf']),
  unit('J', 'joule', MOMENT, 1, 'metric'),
  unit('kJ', 'kilojoule', MOMENT, 1e3, 'metric'),
  unit('MJ', 'megajoule', MOMENT, 1e6, 'metric'),
  unit('W·h', 'watt hour', MOMENT, HOUR, 'both'),
  unit('N·m/rad', 'newton metre per radian', MOMENT, 1, 'metric'),

  unit('Pa', 'pascal', PRESSURE, 1, 'metric'),
  unit('hPa', 'hectopascal', PRESSURE, 100, 'metric', ['mbar']),
  unit('kPa', 'kilopascal', PRESSURE, 1000, 'metric'),
  unit('bar', 'bar', PRESSURE, 1e5, 'metric'),
  unit('MPa', 'megapascal', PRESSURE, 1e6, 'metric', ['N/mm²']),
  unit('GPa', 'gigapascal', PRESSURE, 1e9, 'metric'),
  unit('N/m²', 'newton per square metre', PRESSURE, 1, 'metric'),
  unit('mmHg', 'millimetre of mercury', PRESSURE, MILLIMETRE_OF_MERCURY, 'metric'),
  unit('inHg', 'inch of mercury', PRESSURE, INCH_OF_MERCURY, 'inch_pound'),
  unit('psi', 'pound-force per square inch', PRESSURE, PSI, 'inch_pound', ['lbf/in²']),
  unit('ksi', 'thousand pounds-force per square inch', PRESSURE, 1000 * PSI, 'inch_pound'),
  unit('lbf/ft²', 'pound-force per square foot', PRESSURE, POUND_FORCE / FOOT ** 2, 'inch_pound'),

  unit('N·mm²', 'newton square millimetre', BENDING_STIFFNESS, 1e-6, 'metric'),
  unit('N·m²', 'newton square metre', BENDING_STIFFNESS, 1, 'metric'),
  unit('lbf·in²', 'pound-force square inch', BENDING_STIFFNESS, POUND_FORCE * INCH ** 2, 'inch_pound'),

  unit('µPa·s', 'micropascal second', VISCOSITY, 1e-6, 'metric', ['uPa·s']),
  unit('mPa·s', 'millipascal second', VISCOSITY, 1e-3, 'metric', ['cP']),
  unit('Pa·s', 'pascal second', VISCOSITY, 1, 'metric'),
  unit('lb/(ft·s)', 'pound per foot second', VISCOSITY, POUND / FOOT, 'inch_pound'),

  unit('mW', 'milliwatt', POWER, 1e-3, 'both'),
  unit('W', 'watt', POWER, 1, 'both'),
  unit('kW', 'kilowatt', POWER, 1000, 'metric'),
  unit('hp', 'horsepower of 550 ft·lbf/s', POWER, HORSEPOWER, 'inch_pound'),
  unit('PS', 'metric horsepower of 75 kgf·m/s', POWER, METRIC_HORSEPOWER, 'metric'),

  unit('kJ/kg', 'kilojoule per kilogram', ENERGY_PER_MASS, 1e3, 'metric'),
  unit('MJ/kg', 'megajoule per kilogram', ENERGY_PER_MASS, 1e6, 'metric'),
  unit('g/kWh', 'gram per kilowatt hour', MASS_PER_ENERGY, 1e-3 / (1000 * HOUR), 'metric', ['g/(kW·h)']),
  unit('lb/(hp·h)', 'pound per horsepower hour', MASS_PER_ENERGY, POUND / (HORSEPOWER * HOUR), 'inch_pound'),
];
