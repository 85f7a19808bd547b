import { describe, expect, test } from 'vitest';
import { freeName, isOwnName, nameFromTitle } from '../../../../engine/index';
import { readCoats, withCoat, writeCoats } from '../../../../workbook/cells/parts/coats';
import { longestBar } from '../../../../workbook/cells/parts/moment-bar';
import { placeTexts } from '../../../../workbook/cells/parts/place';
import { shapeWords } from '../../../../workbook/cells/parts/shapes';

describe('names from titles', () => {
  test('have letters, digits and underscores only, and begin with a letter', () => {
    expect(nameFromTitle('Engine, 4.1 cm³')).toBe('engine_4_1_cm');
    expect(nameFromTitle('  2 wheels ')).toBe('wheels');
    expect(nameFromTitle('Élévateur')).toBe('elevateur');
    expect(nameFromTitle('25')).toBe('');
    expect(nameFromTitle('x'.repeat(80))).toHaveLength(40);
  });
  test('are counted up until one is free', () => {
    expect(freeName('fin', new Set(['fin', 'fin_2']))).toBe('fin_3');
    expect(freeName('fin_2', new Set(['fin_2']))).toBe('fin_3');
    expect(freeName('sqrt', new Set())).toBe('sqrt_2');
  });
  test('are known again, counted or not', () => {
    expect(isOwnName('engine_screws', 'Engine screws')).toBe(true);
    expect(isOwnName('engine_screws_2', 'Engine screws')).toBe(true);
    expect(isOwnName('screws', 'Engine screws')).toBe(false);
  });
});

describe('coats', () => {
  test('are read from a sum and written again as they were', () => {
    const text = '2 × dope_clear.areal_mass + film_light.areal_mass + 62 g/m²';
    expect(readCoats(text)).toEqual([
      { finish: 'dope_clear', count: 2 },
      { finish: 'film_light', count: 1 },
      { text: '62 g/m²' },
    ]);
    expect(writeCoats(readCoats(text))).toBe(text);
    expect(readCoats('3*silk.areal_mass')).toEqual([{ finish: 'silk', count: 3 }]);
    expect(readCoats(' ')).toEqual([]);
    expect(readCoats('2 × (5 g/m² + 1 g/m²)')).toEqual([{ text: '2 × (5 g/m² + 1 g/m²)' }]);
  });
  test('of one finish are counted together', () => {
    const one = withCoat([{ text: '62 g/m²' }], 'sealer');
    expect(writeCoats(one)).toBe('62 g/m² + sealer.areal_mass');
    expect(writeCoats(withCoat(withCoat(one, 'sealer'), 'silk'))).toBe(
      '62 g/m² + 2 × sealer.areal_mass + silk.areal_mass',
    );
  });
});

describe('a press on the drawing', () => {
  test('gives whole millimetres in the axes of its view', () => {
    expect(placeTexts('parts.fin', { x: 0.4684, y: -0.0447 }, 0.002, 'metric')).toEqual([
      ['parts.fin.x', '468 mm'],
      ['parts.fin.y', '-45 mm'],
    ]);
  });
  test('in an inch-pound design gives twentieths of an inch', () => {
    expect(placeTexts('parts.fin', { x: 0.4684, y: -0.0447 }, 0.002, 'inch_pound')).toEqual([
      ['parts.fin.x', '18.45 in'],
      ['parts.fin.y', '-1.75 in'],
    ]);
  });
  test('near the centreline or the reference line means the line', () => {
    expect(placeTexts('parts.fin', { x: 0.004, z: -0.0055 }, 0.002, 'metric')).toEqual([
      ['parts.fin.x', '4 mm'],
      ['parts.fin.z', '0 mm'],
    ]);
    expect(placeTexts('parts.fin', { x: 0.1, z: 0.0065 }, 0.002, 'metric')[1]).toEqual(['parts.fin.z', '7 mm']);
  });
});

test('a shape says what it is made of', () => {
  const tank = { name: 'a', title: 'A', fields: { material: 'music_wire', diameter: '2 mm' } };
  expect(shapeWords({ ...tank, shape: 'rod' })).toBe('rod or wire, music wire, 2 mm');
  expect(shapeWords({ ...tank, shape: 'point' })).toBe('weight');
  expect(shapeWords({ ...tank, shape: 'solid', fuel: true })).toBe('fuel, music wire');
  const screws = { name: 'b', title: 'B', fields: { mass: 'screw_m3x16.mass', count: '4' } };
  expect(shapeWords({ ...screws, shape: 'point' })).toBe('weight, 4 of them');
  const ribs = { name: 'c', title: 'C', fields: { count: '12', material: 'balsa_medium', thickness: '2 mm' } };
  expect(shapeWords({ ...ribs, shape: 'ribs' })).toBe('ribs, 12 of them, balsa medium, 2 mm');
});

test('bars are drawn against the longest, in tenths', () => {
  expect(longestBar([-0.537, 0.341, Number.NaN])).toBe(0.6);
  expect(longestBar([])).toBe(0.1);
});
