import { expect, test } from 'vitest';
import { decimalsOf, fractionOf, slideText, stepOf } from '../../../workbook/controls/slide';

test('where a value lies on its slide, never outside', () => {
  expect(fractionOf(-150, -170, -130)).toBe(0.5);
  expect(fractionOf(-200, -170, -130)).toBe(0);
  expect(fractionOf(0, -170, -130)).toBe(1);
});

test.each([
  [-170, -130, 0.02],
  [0, 60, 0.05],
  [15, 21.5, 0.005],
  [0, 1, 0.001],
  [0, 10, 0.01],
  [0, 5000, 5],
  [3, 3, 1],
])('step of a slide from %d to %d is %d', (low, high, step) => {
  expect(stepOf(low, high)).toBeCloseTo(step, 12);
});

test.each([
  [1, 0],
  [0.5, 1],
  [0.05, 2],
  [0.002, 3],
  [25, 0],
])('a step of %d needs %d decimals', (step, digits) => expect(decimalsOf(step)).toBe(digits));

test('the slide types the number that its step allows, with the unit of the variable', () => {
  expect(slideText(-150.00000000000003, 0.5, 'mm')).toBe('-150.0 mm');
  expect(slideText(18.300000000000001, 0.05, 'm')).toBe('18.30 m');
  expect(slideText(3, 1, '')).toBe('3');
  expect(slideText(-0.0001, 0.5, 'mm')).toBe('0.0 mm');
});
