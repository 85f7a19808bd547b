import { expect, test } from 'vitest';
import { holdRange } from '../../../workbook/charts/frame/hold-range';

test('without a range before, the range is what is asked for', () => {
  expect(holdRange([1, 7], [2, 6], undefined)).toEqual([1, 7]);
});

test('the range before is kept while it holds everything needed and is not too large', () => {
  expect(holdRange([1, 7], [2, 6], [0, 6])).toEqual([0, 6]);
  expect(holdRange([1, 7], [2, 6], [2, 6])).toEqual([2, 6]);
  expect(holdRange([1, 7], [2, 6], [0, 9])).toEqual([1, 7]);
});

test('at the side where something has come out there is room ahead', () => {
  expect(holdRange([2, 7], [3, 6.5], [1, 6])).toEqual([2, 7.4]);
  expect(holdRange([1, 6], [1.5, 5], [2, 7])).toEqual([0.6, 6]);
});
