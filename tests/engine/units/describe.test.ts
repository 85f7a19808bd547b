import { describe, expect, test } from 'vitest';
import {
  type Dimension,
  describeDimension,
  dimension,
  everydayUnit,
  FORCE,
  LENGTH,
  MASS,
  ONE,
  RATE,
  sameDimension,
  spellDimension,
  TEMPERATURE,
  unitNamed,
  units,
} from '../../../engine/units/index';

describe('describeDimension', () => {
  test.each<[Dimension, string]>([
    [ONE, 'a plain number'],
    [LENGTH, 'a length'],
    [FORCE, 'a force'],
    [MASS, 'a mass'],
    [RATE, 'a rate'],
    [TEMPERATURE, 'a temperature'],
    [dimension(2, 1, -3, 0, -1), 'a voltage'],
    [dimension(2, 1, -3, 1), 'a quantity in m²·kg·K/s³'],
    [dimension(-2, -1), 'a quantity in 1/(m²·kg)'],
    [dimension(0.5, 0, -10), 'a quantity in m^0.5/s¹⁰'],
  ])('%o is %s', (d, text) => {
    expect(describeDimension(d)).toBe(text);
  });
});

test('in an inch-pound design the everyday unit of a kind is of that set, where the kind has one there', () => {
  for (const { dimension: d } of units) {
    const unit = unitNamed(everydayUnit(d, 'inch_pound'));
    if (unit === undefined) continue;
    expect(sameDimension(unit.dimension, d), unit.name).toBe(true);
    const inches = units.some((other) => sameDimension(other.dimension, d) && other.system === 'inch_pound');
    if (inches && unit.name !== 'W') expect(unit.system, unit.name).not.toBe('metric');
  }
});

test('a plain number has no unit to spell', () => {
  expect(spellDimension(ONE)).toBe('');
});

test('the everyday unit of every dimension in the table has that dimension', () => {
  for (const { dimension: d } of units) {
    const unit = unitNamed(everydayUnit(d));
    // Dimensions without a usual unit are spelled in base units, which need not be a row of the table.
    if (unit !== undefined) expect(sameDimension(unit.dimension, d), everydayUnit(d)).toBe(true);
  }
  expect(everydayUnit(LENGTH)).toBe('mm');
  expect(everydayUnit(MASS)).toBe('g');
  expect(everydayUnit(FORCE)).toBe('N');
});
