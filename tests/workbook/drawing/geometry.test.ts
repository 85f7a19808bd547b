import { expect, test } from 'vitest';
import { lengthInside, overlaps, segmentsOf } from '../../../workbook/drawing/geometry';

const box = { left: 0, right: 10, top: 0, bottom: 10 };

test.each([
  ['through the middle', { x0: -5, y0: 5, x1: 15, y1: 5 }, 10],
  ['upright', { x0: 3, y0: -2, x1: 3, y1: 4 }, 4],
  ['corner to corner', { x0: 0, y0: 0, x1: 10, y1: 10 }, Math.hypot(10, 10)],
  ['inside', { x0: 2, y0: 2, x1: 5, y1: 6 }, 5],
  ['past it', { x0: 11, y0: 0, x1: 20, y1: 9 }, 0],
  ['past a corner', { x0: -4, y0: 4, x1: 4, y1: -5 }, 0],
])('a segment %s has its length inside the box', (_, segment, length) => {
  expect(lengthInside(segment, box)).toBeCloseTo(length, 9);
});

test('boxes that only touch do not overlap', () => {
  expect(overlaps(box, { left: 10, right: 12, top: 0, bottom: 4 })).toBe(false);
  expect(overlaps(box, { left: 9.9, right: 12, top: 0, bottom: 4 })).toBe(true);
});

test('a closed outline has a side more than an open one', () => {
  const corners = [
    { x: 0, y: 0 },
    { x: 1, y: 0 },
    { x: 1, y: 1 },
  ];
  expect(segmentsOf(corners, false)).toHaveLength(2);
  expect(segmentsOf(corners, true)).toHaveLength(3);
});
