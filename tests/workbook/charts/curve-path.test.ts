import { expect, test } from 'vitest';
import { curvePath, stepPath } from '../../../workbook/charts/frame/curve-path';

const at = (...ys: number[]) => ys.map((y, k) => ({ x: 10 * k, y }));

test('a path runs through its points and breaks where there is none', () => {
  expect(curvePath(at(1, 2.006, 3))).toBe('M0,1L10,2.01L20,3');
  expect(curvePath(at(1, 2, Number.NaN, 4, 5))).toBe('M0,1L10,2M30,4L40,5');
});

test('a point between two gaps is a dot', () => {
  expect(curvePath(at(Number.NaN, 2, Number.NaN, 4))).toBe('M10,2ZM30,4Z');
});

test('no points, no path', () => {
  expect(curvePath([])).toBe('');
});

test('what goes by steps is level around its points and upright half way between them', () => {
  const points = [
    { x: 0, y: 10 },
    { x: 10, y: 10 },
    { x: 20, y: 4 },
  ];
  expect(stepPath(points)).toBe('M0,10L5,10L5,10L15,10L15,4L20,4');
});
