import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { interpolateAt } from '../../../engine/numerics/index';

interface Table {
  readonly values: Float64Array;
  readonly at: number;
  readonly stride: number;
  readonly step: number;
  readonly count: number;
}
const table = (numbers: readonly number[], step: number, stride = 1, at = 0): Table => {
  const values = new Float64Array(at + numbers.length * stride).fill(Number.NaN);
  numbers.forEach((y, k) => {
    values[at + k * stride] = y;
  });
  return { values, at, stride, step, count: numbers.length };
};
const out = new Float64Array(2);
const read = (t: Table, x: number): readonly [number, number] => {
  interpolateAt(t.values, t.at, t.stride, t.step, t.count, x, out, 0);
  return [out[0]!, out[1]!];
};

describe('a cubic through a table', () => {
  it('passes through the data and reads only its own column', () => {
    const t = table([3, 1, 4, 1, 5], 2, 7, 3);
    for (const [k, y] of [3, 1, 4, 1, 5].entries()) expect(read(t, 2 * k)[0]).toBe(y);
  });

  it('keeps a straight line to the last bits, beyond the ends too', () => {
    const t = table(
      Array.from({ length: 21 }, (_, k) => 8 - 0.17 * 5 * k),
      5,
    );
    for (const x of [-7, 0, 2.2, 24.66, 47.1, 99.9, 100, 130]) {
      expect(Math.abs(read(t, x)[0] - (8 - 0.17 * x))).toBeLessThan(1e-13);
      expect(Math.abs(read(t, x)[1] + 0.17)).toBeLessThan(2e-15);
    }
    expect(read(table([1, 2, 3, 4], 1), 1.375)).toEqual([2.375, 1]);
  });

  it('stays within neighbouring values (law on random tables)', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -50, max: 50, noNaN: true }), { minLength: 3, maxLength: 9 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (numbers, share) => {
          const x = share * (numbers.length - 1);
          const k = Math.min(Math.floor(x), numbers.length - 2);
          const [y] = read(table(numbers, 1), x);
          const low = Math.min(numbers[k]!, numbers[k + 1]!);
          const high = Math.max(numbers[k]!, numbers[k + 1]!);
          expect(y).toBeGreaterThanOrEqual(low - 1e-12);
          expect(y).toBeLessThanOrEqual(high + 1e-12);
        },
      ),
      { seed: 20, numRuns: 500 },
    );
  });

  it('has the derivative of its own value, without a step at the knots', () => {
    const t = table([0, 1, 1.5, 1.7, 1.2, 1.2, 3], 0.5);
    for (let x = -0.3; x < 3.4; x += 0.0173) {
      const measured = (read(t, x + 1e-6)[0] - read(t, x - 1e-6)[0]) / 2e-6;
      expect(read(t, x)[1]).toBeCloseTo(measured, 4);
    }
    for (let k = 1; k < 6; k++) expect(read(t, k * 0.5 - 1e-9)[1]).toBeCloseTo(read(t, k * 0.5 + 1e-9)[1], 6);
  });

  it('follows a smooth curve to second order', () => {
    const curve = (x: number) => 6 / (1 + x / 30);
    const worst = (step: number) => {
      const t = table(
        Array.from({ length: 100 / step + 1 }, (_, k) => curve(k * step)),
        step,
      );
      let most = 0;
      for (let x = 10; x < 90; x += 0.37) most = Math.max(most, Math.abs(read(t, x)[0] - curve(x)));
      return most;
    };
    expect(worst(5)).toBeLessThan(5e-4);
    expect(worst(2.5)).toBeLessThan(worst(5) / 3.5);
  });
});
