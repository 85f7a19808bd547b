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
    [LENGTH, 'a length (m)'],
    [FORCE, 'a force (N)'],
    [MASS, 'a mass (kg)'],
    [RATE, 'a rate (1/s)'],
    [TEMPERATURE, 'a temperature (K)'],
    [dimension(2, 1, -3, 0, -1), 'a voltage (V)'],
    [dimension(2, 1, -3, 1), 'a quantity in m²·kg·K/s³'],
    [dimension(-2, -1), 'a quantity in 1/(m²·kg)'],
    [dimension(0.5, 0, -10), 'a quantity in m^0.5/s¹⁰'],
  ])('%o is %s', (d, text) => {
    expect(describeDimension(d)).toBe(text);
  });
});

test('the unit in a description is the coherent one of that dimension', () => {
  const described = new Set(units.map(({ dimension: d }) => describeDimension(d)));
  const named = [...described].filter((text) => text.startsWith('a') && text.endsWith(')') && !text.includes(' in '));
  expect(named.length).toBeGreaterThan(25);
  for (const { dimension: d } of units) {
    const spelled = /^an? [a-z ]+ \((.+)\)$/.exec(describeDimension(d))?.[1];
    if (spelled !== undefined) expect(unitNamed(spelled), spelled).toMatchObject({ dimension: d, factor: 1 });
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
