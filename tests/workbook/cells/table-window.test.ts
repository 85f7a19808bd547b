import { describe, expect, test } from 'vitest';
import { FINGER_ROW, ROW, rowsAt, scrollTo } from '../../../workbook/cells/table/window';

const HEIGHT = 400;

describe('the rows that are drawn', () => {
  test('are all of a short table', () => expect(rowsAt(0, HEIGHT, 7)).toEqual({ from: 0, to: 7, above: 0, below: 0 }));

  test('of none are none', () => expect(rowsAt(0, HEIGHT, 0)).toEqual({ from: 0, to: 0, above: 0, below: 0 }));

  test.each([100_000, 1_000_000])('of %i stand where they are looked at, at every place of the scroll', (rows) => {
    const whole = rowsAt(0, HEIGHT, rows);
    const all = whole.above + whole.below + (whole.to - whole.from) * ROW;
    for (let share = 0; share <= 1; share += 1 / 64) {
      const scrolled = share * (all - HEIGHT);
      const { from, to, above, below } = rowsAt(scrolled, HEIGHT, rows);
      expect(to - from).toBeLessThan(70);
      expect(above + below + (to - from) * ROW).toBeCloseTo(all, 3);
      expect(above).toBeLessThanOrEqual(scrolled);
      expect(above + (to - from) * ROW).toBeGreaterThanOrEqual(Math.min(scrolled + HEIGHT, all) - 1e-6);
      expect(from / rows).toBeCloseTo(share, 2);
    }
  });

  test('reach the last row', () => {
    for (const rows of [40, 100_000, 1_000_000]) expect(rowsAt(1e9, HEIGHT, rows).to).toBe(rows);
  });

  test.each([
    [100_000, ROW],
    [1_000_000, ROW],
    [100_000, FINGER_ROW],
    [1_000_000, FINGER_ROW],
  ])('a row of %i, each %i px high, is seen when it is gone to', (rows, high) => {
    for (const row of [0, 1, 777, rows >> 1, rows - 1]) {
      const scrolled = scrollTo(row, HEIGHT, rows, high);
      const { from, to, above } = rowsAt(scrolled, HEIGHT, rows, high);
      expect(from).toBeLessThanOrEqual(row);
      expect(to).toBeGreaterThan(row);
      const top = above + (row - from) * high;
      expect(top).toBeGreaterThanOrEqual(scrolled - high);
      expect(top).toBeLessThanOrEqual(scrolled + HEIGHT);
    }
  });
});
