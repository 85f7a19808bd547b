import { FOOT, INCH, MINUTE, OUNCE, POUND, SLUG, YARD } from '../../exact';
import { AREAL_MASS, DENSITY, dimension, INERTIA, LINEAR_MASS, MASS } from '../dimension';
import { type Unit, unit } from '../unit';

const GRAM = 1e-3;
const MASS_MOMENT = dimension(1, 1);
const MASS_FLOW = dimension(0, 1, -1);

/** Masses, and masses spread over a length, an area, a volume, an arm or a time. */
export const massUnits: readonly Unit[] = [
  unit('mg', 'milligram', MASS, 1e-6, 'metric'),
  unit('g', 'gram', MASS, GRAM, 'metric'),
  unit('kg', 'kilogram', MASS, 1, 'metric'),
  unit('oz', 'ounce', MASS, OUNCE, 'inch_pound'),
  unit('lb', 'pound', MASS, POUND, 'inch_pound'),
  unit('slug', 'slug', MASS, SLUG, 'inch_pound'),

  unit('mg/m', 'milligram per metre', LINEAR_MASS, 1e-6, 'metric'),
  unit('g/m', 'gram per metre', LINEAR_MASS, GRAM, 'metric'),
  unit('kg/m', 'kilogram per metre', LINEAR_MASS, 1, 'metric'),
  unit('oz/ft', 'ounce per foot', LINEAR_MASS, OUNCE / FOOT, 'inch_pound'),
  unit('lb/ft', 'pound per foot', LINEAR_MASS, POUND / FOOT, 'inch_pound'),

  unit('g/m²', 'gram per square metre', AREAL_MASS, GRAM, 'metric'),
  unit('g/dm²', 'gram per square decimetre', AREAL_MASS, GRAM / 1e-2, 'metric'),
  unit('g/cm²', 'gram per square centimetre', AREAL_MASS, GRAM / 1e-4, 'metric'),
  unit('kg/m²', 'kilogram per square metre', AREAL_MASS, 1, 'metric'),
  unit('oz/yd²', 'ounce per square yard', AREAL_MASS, OUNCE / YARD ** 2, 'inch_pound'),
  unit('oz/ft²', 'ounce per square foot', AREAL_MASS, OUNCE / FOOT ** 2, 'inch_pound'),
  unit('oz/in²', 'ounce per square inch', AREAL_MASS, OUNCE / INCH ** 2, 'inch_pound'),
  unit('lb/ft²', 'pound per square foot', AREAL_MASS, POUND / FOOT ** 2, 'inch_pound'),

  unit('g/cm³', 'gram per cubic centimetre', DENSITY, GRAM / 1e-6, 'metric', ['g/mL', 'g/ml', 'kg/L']),
  unit('kg/m³', 'kilogram per cubic metre', DENSITY, 1, 'metric', ['g/L']),
  unit('lb/ft³', 'pound per cubic foot', DENSITY, POUND / FOOT ** 3, 'inch_pound'),
  unit('lb/in³', 'pound per cubic inch', DENSITY, POUND / INCH ** 3, 'inch_pound'),
  unit('oz/in³', 'ounce per cubic inch', DENSITY, OUNCE / INCH ** 3, 'inch_pound'),
  unit('slug/ft³', 'slug per cubic foot', DENSITY, SLUG / FOOT ** 3, 'inch_pound'),

  unit('g·mm', 'gram millimetre', MASS_MOMENT, GRAM * 1e-3, 'metric'),
  unit('g·cm', 'gram centimetre', MASS_MOMENT, GRAM * 1e-2, 'metric'),
  unit('g·m', 'gram metre', MASS_MOMENT, GRAM, 'metric'),
  unit('kg·m', 'kilogram metre', MASS_MOMENT, 1, 'metric'),
  unit('oz·in', 'ounce inch', MASS_MOMENT, OUNCE * INCH, 'inch_pound'),

  unit('g·cm²', 'gram square centimetre', INERTIA, GRAM * 1e-4, 'metric'),
  unit('kg·cm²', 'kilogram square centimetre', INERTIA, 1e-4, 'metric'),
  unit('g·m²', 'gram square metre', INERTIA, GRAM, 'metric'),
  unit('kg·m²', 'kilogram square metre', INERTIA, 1, 'metric'),
  unit('oz·in²', 'ounce square inch', INERTIA, OUNCE * INCH ** 2, 'inch_pound'),
  unit('lb·in²', 'pound square inch', INERTIA, POUND * INCH ** 2, 'inch_pound'),
  unit('lb·ft²', 'pound square foot', INERTIA, POUND * FOOT ** 2, 'inch_pound'),

  unit('g/s', 'gram per second', MASS_FLOW, GRAM, 'metric'),
  unit('g/min', 'gram per minute', MASS_FLOW, GRAM / MINUTE, 'metric'),
  unit('kg/s', 'kilogram per second', MASS_FLOW, 1, 'metric'),
  unit('oz/min', 'ounce per minute', MASS_FLOW, OUNCE / MINUTE, 'inch_pound'),
];
