import { expect, test } from 'vitest';
import type { Zone } from '../../../workbook/charts/frame/limits';
import { yRange } from '../../../workbook/charts/frame/y-range';

const zone = (side: Zone['side'], limit: number): Zone => ({
  ...{ side, limit, limitSI: limit, reason: 'why' },
  of: { path: 'cg', title: 'CG', unit: '', suffix: '' },
});
const fifth = (): number => 0.2;

test('every number is in the picture with room around it', () => {
  const { range } = yRange([3, Number.NaN, 7, 5], [], fifth)!;
  expect(range[0]).toBeCloseTo(2.8, 12);
  expect(range[1]).toBeCloseTo(7.2, 12);
});

test('one number alone still has a range', () => {
  const { range } = yRange([25], [], fifth)!;
  expect(range[0]).toBeLessThan(25);
  expect(range[1]).toBeGreaterThan(25);
  expect(yRange([0], [], fifth)!.range).toEqual([-0.05, 0.05]);
});

test('no number, no range', () => {
  expect(yRange([Number.NaN], [zone('below', 3)], fifth)).toBeUndefined();
});

test('limits that are near are shown with the room that their words need', () => {
  const { range, shown, outside } = yRange([40, 50], [zone('below', 38), zone('above', 55)], fifth)!;
  const height = range[1] - range[0];
  expect((38 - range[0]) / height).toBeCloseTo(0.2, 9);
  expect((range[1] - 55) / height).toBeCloseTo(0.2, 9);
  expect(shown).toHaveLength(2);
  expect(outside).toHaveLength(0);
});

test('numbers beyond a limit stay in the picture', () => {
  const { range } = yRange([20, 60], [zone('below', 38), zone('above', 55)], fifth)!;
  expect(range[0]).toBeLessThan(20);
  expect(range[1]).toBeGreaterThan(60);
});

test('a limit so far off that it would flatten the lines stays out', () => {
  const { range, shown, outside } = yRange([24, 26], [zone('below', 8), zone('above', 27)], fifth)!;
  expect(shown.map((z) => z.limit)).toEqual([27]);
  expect(outside.map((z) => z.limit)).toEqual([8]);
  expect(range[0]).toBeGreaterThan(20);
});
