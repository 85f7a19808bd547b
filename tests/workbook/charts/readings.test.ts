import { expect, test } from 'vitest';
import { nearestReading, nextReading, type ReadSeries, said } from '../../../workbook/charts/frame/readings';

/** Two lines that fall apart to the right, the second without its first point. */
const all: readonly ReadSeries[] = [
  {
    name: 'balsa',
    points: [
      { at: { x: 0, y: 10 }, lines: ['Engine station −180 mm', 'CG 38 mm'] },
      { at: { x: 10, y: 12 }, lines: ['Engine station −170 mm', 'CG 40 mm'] },
      { at: { x: 20, y: 14 }, lines: ['Engine station −160 mm', 'CG 42 mm'] },
    ],
  },
  {
    name: '',
    points: [
      { at: { x: 10, y: 30 }, lines: ['Engine station −170 mm', 'CG 50 mm'] },
      { at: { x: 20, y: 40 }, lines: ['Engine station −160 mm', 'CG 55 mm'] },
    ],
  },
];

test('right and left go along a line and stop at its ends', () => {
  expect(nextReading(all, { series: 0, point: 1 }, 'ArrowRight')).toEqual({ series: 0, point: 2 });
  expect(nextReading(all, { series: 0, point: 2 }, 'ArrowRight')).toEqual({ series: 0, point: 2 });
  expect(nextReading(all, { series: 0, point: 0 }, 'ArrowLeft')).toEqual({ series: 0, point: 0 });
  expect(nextReading(all, { series: 0, point: 1 }, 'Home')).toEqual({ series: 0, point: 0 });
  expect(nextReading(all, { series: 1, point: 0 }, 'End')).toEqual({ series: 1, point: 1 });
});

test('up and down go to the next line on the screen, to what lies nearest across', () => {
  expect(nextReading(all, { series: 0, point: 2 }, 'ArrowDown')).toEqual({ series: 1, point: 1 });
  expect(nextReading(all, { series: 0, point: 0 }, 'ArrowDown')).toEqual({ series: 1, point: 0 });
  expect(nextReading(all, { series: 1, point: 0 }, 'ArrowUp')).toEqual({ series: 0, point: 1 });
  expect(nextReading(all, { series: 0, point: 1 }, 'ArrowUp')).toEqual({ series: 0, point: 1 });
});

test('of lines that lie on each other each can be reached', () => {
  const twins = [all[0]!, all[0]!, all[0]!];
  expect(nextReading(twins, { series: 0, point: 1 }, 'ArrowDown')).toEqual({ series: 1, point: 1 });
  expect(nextReading(twins, { series: 1, point: 1 }, 'ArrowDown')).toEqual({ series: 2, point: 1 });
  expect(nextReading(twins, { series: 2, point: 1 }, 'ArrowUp')).toEqual({ series: 1, point: 1 });
});

test('other keys do nothing', () => expect(nextReading(all, { series: 0, point: 0 }, 'a')).toBeUndefined());

test('the pointer reads what is nearest, and it is said with the name of its line', () => {
  expect(nearestReading(all, { x: 12, y: 28 })).toEqual({ series: 1, point: 0 });
  expect(nearestReading([], { x: 12, y: 28 })).toBeUndefined();
  expect(said(all, { series: 0, point: 1 })).toBe('balsa, Engine station −170 mm, CG 40 mm');
  expect(said(all, { series: 1, point: 0 })).toBe('Engine station −170 mm, CG 50 mm');
  expect(said(all, undefined)).toBe('');
});

test('what stands by itself, as bars do, is gone through by any arrow', () => {
  const bars: readonly ReadSeries[] = [10, 30, 50].map((y) => ({
    name: `${y}`,
    points: [{ at: { x: 100 - y, y }, lines: [`${y} N`] }],
  }));
  const middle = { series: 1, point: 0 };
  for (const key of ['ArrowRight', 'ArrowDown'])
    expect(nextReading(bars, middle, key)).toEqual({ series: 2, point: 0 });
  for (const key of ['ArrowLeft', 'ArrowUp']) expect(nextReading(bars, middle, key)).toEqual({ series: 0, point: 0 });
  expect(nextReading(bars, middle, 'Home')).toEqual({ series: 0, point: 0 });
  expect(nextReading(bars, middle, 'End')).toEqual({ series: 2, point: 0 });
  expect(nextReading(bars, { series: 2, point: 0 }, 'ArrowRight')).toEqual({ series: 2, point: 0 });
});
