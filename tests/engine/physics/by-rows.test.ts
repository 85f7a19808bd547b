import { describe, expect, it } from 'vitest';
import { byRows } from '../../../engine/physics/by-rows';

describe('a law corrected by rows', () => {
  const square = (x: number): number => x * x;
  const corrected = byRows(square, [
    [4, 8],
    [1, 2],
    [2, 4],
  ]);
  it('is each row at it', () => {
    for (const [x, y] of [
      [1, 2],
      [2, 4],
      [4, 8],
    ] as const) {
      expect(corrected(x)).toBeCloseTo(y, 12);
    }
  });
  it('runs as a power between rows, and as the law beyond them', () => {
    // The rows are 2 x here, which is a power, so all between lies on it.
    expect(corrected(3)).toBeCloseTo(6, 12);
    expect(corrected(0.5)).toBeCloseTo(2 * square(0.5), 12);
    expect(corrected(10)).toBeCloseTo(0.5 * square(10), 12);
  });
  it('needs a row', () => {
    expect(() => byRows(square, [])).toThrow(new RangeError('rows is empty; a law without rows needs no correction'));
  });
});
