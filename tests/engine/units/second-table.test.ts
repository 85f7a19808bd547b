import quantity from 'js-quantities';
import { describe, expect, test } from 'vitest';
import { toSI } from '../../../engine/units/index';

/*
 * The same factors by a general-purpose library with a table of its own. That table prints some factors to six digits
 * only, so that nothing finer than this can be asked.
 */
const LIBRARY_DIGITS = 5e-7;

const pairs: readonly (readonly [name: string, theirs: string, theirSI: string])[] = [
  ['mm', 'mm', 'm'],
  ['cm', 'cm', 'm'],
  ['km', 'km', 'm'],
  ['thou', 'mil', 'm'],
  ['in', 'in', 'm'],
  ['ft', 'ft', 'm'],
  ['yd', 'yd', 'm'],
  ['mi', 'mi', 'm'],
  ['mm²', 'mm2', 'm2'],
  ['cm²', 'cm2', 'm2'],
  ['dm²', 'dm2', 'm2'],
  ['in²', 'in2', 'm2'],
  ['ft²', 'ft2', 'm2'],
  ['cm³', 'cm3', 'm3'],
  ['in³', 'in3', 'm3'],
  ['mL', 'ml', 'm3'],
  ['L', 'l', 'm3'],
  ['fl oz', 'floz', 'm3'],
  ['gal', 'gal', 'm3'],
  ['g', 'g', 'kg'],
  ['oz', 'oz', 'kg'],
  ['lb', 'lb', 'kg'],
  ['slug', 'slug', 'kg'],
  ['g/m²', 'g/m2', 'kg/m2'],
  ['oz/yd²', 'oz/yd2', 'kg/m2'],
  ['g/cm³', 'g/cm3', 'kg/m3'],
  ['lb/ft³', 'lb/ft3', 'kg/m3'],
  ['g/m', 'g/m', 'kg/m'],
  ['lbf', 'lbf', 'N'],
  ['lbf·ft', 'lbf*ft', 'N*m'],
  ['lbf·in', 'lbf*in', 'N*m'],
  ['hPa', 'hPa', 'Pa'],
  ['kPa', 'kPa', 'Pa'],
  ['MPa', 'MPa', 'Pa'],
  ['GPa', 'GPa', 'Pa'],
  ['bar', 'bar', 'Pa'],
  ['psi', 'psi', 'Pa'],
  ['mmHg', 'mmHg', 'Pa'],
  ['inHg', 'inHg', 'Pa'],
  ['µPa·s', 'uPa*s', 'Pa*s'],
  ['kW', 'kW', 'W'],
  ['hp', 'hp', 'W'],
  ['W·h', 'Wh', 'J'],
  ['km/h', 'kph', 'm/s'],
  ['mph', 'mph', 'm/s'],
  ['kn', 'kt', 'm/s'],
  ['ft/s', 'fps', 'm/s'],
  ['rpm', 'rpm', 'rad/s'],
  ['°', 'deg', 'rad'],
  ['%', '%', '1'],
  ['min', 'min', 's'],
  ['h', 'h', 's'],
  ['mAh', 'mAh', 'C'],
  ['Ah', 'Ah', 'C'],
  ['mΩ', 'mohm', 'ohm'],
];

describe('factors agree with another table', () => {
  test.each(pairs)('%s', (name, theirs, theirSI) => {
    const expected = quantity(1, theirs).to(theirSI).scalar;
    expect(Math.abs(toSI(1, name) / expected - 1)).toBeLessThan(LIBRARY_DIGITS);
  });

  test.each([
    ['°C', 'tempC'],
    ['°F', 'tempF'],
  ])('%s at −40, 15 and 68', (name, theirs) => {
    for (const t of [-40, 15, 68]) expect(toSI(t, name)).toBeCloseTo(quantity(t, theirs).to('tempK').scalar, 9);
  });
});
