import { DEGREE, FLUID_OUNCE, FOOT, GALLON, HOUR, INCH, MILE, MINUTE, NAUTICAL_MILE, TURN, YARD } from '../../exact';
import { ACCELERATION, AREA, dimension, LENGTH, ONE, RATE, SPEED, TIME, VOLUME, VOLUME_FLOW } from '../dimension';
import { type Unit, unit } from '../unit';

const LITRE = 1e-3;

/** Plain numbers and angles, lengths, areas, volumes, times and the rates made of them. */
export const geometryUnits: readonly Unit[] = [
  unit('', 'plain number', ONE, 1, 'both'),
  unit('%', 'per cent', ONE, 0.01, 'both'),
  unit('rad', 'radian', ONE, 1, 'both'),
  unit('°', 'degree', ONE, DEGREE, 'both', ['deg']),
  unit('1/rad', 'per radian', ONE, 1, 'both'),
  unit('1/°', 'per degree', ONE, 1 / DEGREE, 'both', ['1/deg']),

  unit('µm', 'micrometre', LENGTH, 1e-6, 'metric', ['um']),
  unit('mm', 'millimetre', LENGTH, 1e-3, 'metric'),
  unit('cm', 'centimetre', LENGTH, 1e-2, 'metric'),
  unit('m', 'metre', LENGTH, 1, 'metric'),
  unit('km', 'kilometre', LENGTH, 1000, 'metric'),
  unit('thou', 'thousandth of an inch', LENGTH, INCH / 1000, 'inch_pound'),
  unit('in', 'inch', LENGTH, INCH, 'inch_pound'),
  unit('ft', 'foot', LENGTH, FOOT, 'inch_pound'),
  unit('yd', 'yard', LENGTH, YARD, 'inch_pound'),
  unit('mi', 'mile', LENGTH, MILE, 'inch_pound'),
  unit('1/m', 'per metre', dimension(-1), 1, 'metric'),
  unit('1/ft', 'per foot', dimension(-1), 1 / FOOT, 'inch_pound'),

  unit('mm²', 'square millimetre', AREA, 1e-6, 'metric'),
  unit('cm²', 'square centimetre', AREA, 1e-4, 'metric'),
  unit('dm²', 'square decimetre', AREA, 1e-2, 'metric'),
  unit('m²', 'square metre', AREA, 1, 'metric'),
  unit('in²', 'square inch', AREA, INCH ** 2, 'inch_pound'),
  unit('ft²', 'square foot', AREA, FOOT ** 2, 'inch_pound'),
  unit('yd²', 'square yard', AREA, YARD ** 2, 'inch_pound'),

  unit('mm³', 'cubic millimetre', VOLUME, 1e-9, 'metric'),
  unit('cm³', 'cubic centimetre', VOLUME, 1e-6, 'metric', ['cc', 'ccm']),
  unit('dm³', 'cubic decimetre', VOLUME, 1e-3, 'metric'),
  unit('m³', 'cubic metre', VOLUME, 1, 'metric'),
  unit('mL', 'millilitre', VOLUME, LITRE / 1000, 'metric', ['ml']),
  unit('L', 'litre', VOLUME, LITRE, 'metric', ['l']),
  unit('in³', 'cubic inch', VOLUME, INCH ** 3, 'inch_pound'),
  unit('ft³', 'cubic foot', VOLUME, FOOT ** 3, 'inch_pound'),
  unit('fl oz', 'US fluid ounce', VOLUME, FLUID_OUNCE, 'inch_pound', ['floz', 'fl_oz']),
  unit('gal', 'US gallon', VOLUME, GALLON, 'inch_pound'),

  unit('mm⁴', 'millimetre to the fourth', dimension(4), 1e-12, 'metric'),
  unit('cm⁴', 'centimetre to the fourth', dimension(4), 1e-8, 'metric'),
  unit('m⁴', 'metre to the fourth', dimension(4), 1, 'metric'),
  unit('in⁴', 'inch to the fourth', dimension(4), INCH ** 4, 'inch_pound'),

  unit('ms', 'millisecond', TIME, 1e-3, 'both'),
  unit('s', 'second', TIME, 1, 'both'),
  unit('min', 'minute', TIME, MINUTE, 'both'),
  unit('h', 'hour', TIME, HOUR, 'both'),

  unit('1/s', 'per second', RATE, 1, 'both'),
  unit('rad/s', 'radian per second', RATE, 1, 'both'),
  unit('°/s', 'degree per second', RATE, DEGREE, 'both', ['deg/s']),
  unit('rpm', 'turn per minute', RATE, TURN / MINUTE, 'both'),
  unit('rev/s', 'turn per second', RATE, TURN, 'both'),
  unit('rad/s²', 'radian per second squared', dimension(0, 0, -2), 1, 'both'),

  unit('mm/s', 'millimetre per second', SPEED, 1e-3, 'metric'),
  unit('cm/s', 'centimetre per second', SPEED, 1e-2, 'metric'),
  unit('m/s', 'metre per second', SPEED, 1, 'metric'),
  unit('km/h', 'kilometre per hour', SPEED, 1000 / HOUR, 'metric', ['kph']),
  unit('mph', 'mile per hour', SPEED, MILE / HOUR, 'inch_pound', ['mi/h']),
  unit('kn', 'knot', SPEED, NAUTICAL_MILE / HOUR, 'both'),
  unit('ft/s', 'foot per second', SPEED, FOOT, 'inch_pound'),
  unit('ft/min', 'foot per minute', SPEED, FOOT / MINUTE, 'inch_pound'),
  unit('in/s', 'inch per second', SPEED, INCH, 'inch_pound'),

  unit('m/s²', 'metre per second squared', ACCELERATION, 1, 'metric'),
  unit('ft/s²', 'foot per second squared', ACCELERATION, FOOT, 'inch_pound'),

  unit('m³/s', 'cubic metre per second', VOLUME_FLOW, 1, 'metric'),
  unit('mL/s', 'millilitre per second', VOLUME_FLOW, LITRE / 1000, 'metric', ['ml/s', 'cm³/s', 'cc/s']),
  unit('mL/min', 'millilitre per minute', VOLUME_FLOW, LITRE / 1000 / MINUTE, 'metric', [
    'ml/min',
    'cm³/min',
    'cc/min',
  ]),
  unit('L/min', 'litre per minute', VOLUME_FLOW, LITRE / MINUTE, 'metric', ['l/min']),
  unit('fl oz/min', 'US fluid ounce per minute', VOLUME_FLOW, FLUID_OUNCE / MINUTE, 'inch_pound', [
    'floz/min',
    'fl_oz/min',
  ]),

  unit('m²/s', 'square metre per second', dimension(2, 0, -1), 1, 'metric'),
  unit('mm²/s', 'square millimetre per second', dimension(2, 0, -1), 1e-6, 'metric', ['cSt']),
  unit('ft²/s', 'square foot per second', dimension(2, 0, -1), FOOT ** 2, 'inch_pound'),
];
