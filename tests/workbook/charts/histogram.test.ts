import { expect, test } from 'vitest';
import { binned } from '../../../workbook/charts/histogram/bins';

test('every answered sample lies in one bin, between round numbers', () => {
  const values = Array.from({ length: 100 }, (_, k) => 20 + 0.0997 * k);
  const bins = binned([...values, Number.NaN], 30);
  expect(bins.reduce((sum, { count }) => sum + count, 0)).toBe(100);
  expect(bins[0]).toEqual({ from: 20, to: 21, count: 11 });
  for (const { from, to, count } of bins) {
    const last = to === bins.at(-1)!.to;
    expect(values.filter((v) => v >= from && (v < to || last)).length).toBe(count);
  }
});

test('a value on an edge belongs to the bin above it, the greatest to the last', () => {
  expect(binned([0, 1, 2, 3, 4, 5], 5).map(({ count }) => count)).toEqual([1, 1, 1, 1, 2]);
});

test('samples that are all the same have one bin, and none have none', () => {
  expect(binned([5, 5, 5], 10).map(({ count }) => count)).toEqual([3]);
  expect(binned([0, 0], 10).map(({ count }) => count)).toEqual([2]);
  expect(binned([Number.NaN], 10)).toEqual([]);
});
