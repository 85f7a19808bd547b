import { describe, expect, it } from 'vitest';
import { rungeKutta, type Slope } from '../../../engine/numerics/index';

const grow: Slope = (_, y, out) => {
  out[0] = y[0]!;
};

function errorOf(steps: number): number {
  const y = Float64Array.of(1);
  rungeKutta(grow, y, 0, 1, steps);
  return Math.abs(y[0]! - Math.E);
}

describe('rungeKutta', () => {
  it('is of fourth order', () => {
    expect(errorOf(10)).toBeLessThan(3e-6);
    expect(errorOf(10) / errorOf(20)).toBeGreaterThan(14);
    expect(errorOf(20) / errorOf(40)).toBeLessThan(18);
  });

  it('is exact for a cubic in x, forward and backward', () => {
    const slope: Slope = (x, _, out) => {
      out[0] = 4 * x ** 3;
    };
    const y = Float64Array.of(1);
    rungeKutta(slope, y, 1, 2, 1);
    expect(y[0]).toBeCloseTo(16, 13);
    rungeKutta(slope, y, 2, 1, 3);
    expect(y[0]).toBeCloseTo(1, 13);
  });

  it('keeps the energy of a swing over many turns', () => {
    const swing: Slope = (_, y, out) => {
      out[0] = y[1]!;
      out[1] = -y[0]!;
    };
    const y = Float64Array.of(1, 0);
    rungeKutta(swing, y, 0, 20 * Math.PI, 2000);
    expect(y[0]).toBeCloseTo(1, 5);
    expect(y[1]).toBeCloseTo(0, 5);
  });

  it('shows every step', () => {
    const seen: [number, number][] = [];
    rungeKutta(grow, Float64Array.of(1), 0, 1, 4, (x, y) => seen.push([x, y[0]!]));
    expect(seen.map(([x]) => x)).toEqual([0, 0.25, 0.5, 0.75, 1]);
    expect(seen[0]![1]).toBe(1);
    expect(seen[2]![1]).toBeCloseTo(Math.exp(0.5), 4);
  });

  it('refuses a number of steps that is none', () => {
    expect(() => rungeKutta(grow, Float64Array.of(1), 0, 1, 0)).toThrow(
      new RangeError('steps is 0; it must be a whole number of 1 or more'),
    );
  });
});
