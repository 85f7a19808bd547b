import { describe, expect, it } from 'vitest';
import { gaussLegendre, integrate } from '../../../engine/numerics/index';

describe('gaussLegendre', () => {
  it.each([1, 2, 3, 5, 8, 16, 33])('is exact to degree 2n − 1 and not at 2n, n = %i', (n) => {
    const { nodes, weights } = gaussLegendre(n);
    const moment = (power: number) => nodes.reduce((sum, x, i) => sum + weights[i]! * x ** power, 0);
    for (let power = 0; power < 2 * n; power++) {
      expect(moment(power)).toBeCloseTo(power % 2 === 0 ? 2 / (power + 1) : 0, 13);
    }
    if (n < 6) expect(Math.abs(moment(2 * n) - 2 / (2 * n + 1))).toBeGreaterThan(1e-6);
  });

  it('has the known nodes of two points, ±1/√3', () => {
    const { nodes, weights } = gaussLegendre(2);
    expect([...nodes].map(Math.abs)).toEqual([1 / Math.sqrt(3), 1 / Math.sqrt(3)].map((x) => expect.closeTo(x, 15)));
    expect([...weights]).toEqual([expect.closeTo(1, 15), expect.closeTo(1, 15)]);
  });

  it('integrates over any interval, backwards with the other sign', () => {
    expect(integrate(Math.sin, 0, Math.PI, 12)).toBeCloseTo(2, 13);
    expect(integrate(Math.sin, Math.PI, 0, 12)).toBeCloseTo(-2, 13);
  });

  it('refuses a number of points that is no whole number', () => {
    expect(() => gaussLegendre(2.5)).toThrow(new RangeError('points is 2.5; it must be a whole number of 1 to 200'));
  });
});
