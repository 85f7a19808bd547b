import { describe, expect, it } from 'vitest';
import {
  latinHypercube,
  normalDensity,
  normalQuantile,
  normalShare,
  percentile,
  quantileOf,
  type Spread,
  seededRandom,
  sobolIndices,
  summarize,
} from '../../../engine/numerics/index';

describe('the normal', () => {
  it('has its share and quantile as inverses, tails too', () => {
    for (const p of [1e-12, 1e-6, 0.001, 0.025, 0.2, 0.5, 0.7, 0.975, 0.999999]) {
      const x = normalQuantile(p);
      const share = p < 0.5 ? normalShare(x) / p : (1 - normalShare(x)) / (1 - p);
      expect(share).toBeCloseTo(1, 9);
    }
    expect(normalQuantile(0.5)).toBeCloseTo(0, 15);
    expect([normalQuantile(0), normalQuantile(1)]).toEqual([Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]);
    expect(() => normalQuantile(1.5)).toThrow('share is 1.5; it must lie from 0 to 1');
  });
  it('grows by its density, where the two ways of computing it meet as well', () => {
    for (const x of [-6, -3.0001, -2.9999, -1, 0, 0.4, 2.9999]) {
      const h = 1e-4;
      expect((normalShare(x + h) - normalShare(x - h)) / (2 * h) / normalDensity(x)).toBeCloseTo(1, 6);
    }
  });
});

describe('spreads', () => {
  const spreads: readonly Spread[] = [
    { kind: 'normal', middle: 5, deviation: 2 },
    { kind: 'uniform', low: -1, high: 3 },
    { kind: 'triangular', low: 0, mode: 1, high: 4 },
    { kind: 'triangular', low: 2, mode: 2, high: 2 },
  ];
  it('grow with the share, and keep within their ends', () => {
    for (const spread of spreads) {
      const values = [0.01, 0.2, 0.25, 0.5, 0.9, 0.99].map((u) => quantileOf(spread, u));
      for (let k = 1; k < values.length; k++) expect(values[k]!).toBeGreaterThanOrEqual(values[k - 1]!);
    }
  });
  it('have the mean and deviation of their kind', () => {
    const n = 20_000;
    const of = (spread: Spread) =>
      summarize(Float64Array.from({ length: n }, (_, k) => quantileOf(spread, (k + 0.5) / n)));
    expect(of(spreads[0]!).mean).toBeCloseTo(5, 6);
    expect(of(spreads[0]!).deviation).toBeCloseTo(2, 2);
    expect(of(spreads[1]!).deviation).toBeCloseTo(4 / Math.sqrt(12), 4);
    // (a + m + b)/3 and (a² + m² + b² − ab − am − bm)/18.
    expect(of(spreads[2]!).mean).toBeCloseTo(5 / 3, 4);
    expect(of(spreads[2]!).deviation).toBeCloseTo(Math.sqrt((1 + 16 - 4) / 18), 3);
  });
});

describe('a Latin hypercube', () => {
  it('has one place in every stratum of every direction, and the same again from the same seed', () => {
    const n = 50;
    const [a, again] = [1, 1].map(() => latinHypercube(n, 3, seededRandom(7)));
    expect(a).toEqual(again);
    for (const column of a!) {
      expect([...column].map((u) => Math.floor(u * n)).sort((p, q) => p - q)).toEqual(
        Array.from({ length: n }, (_, k) => k),
      );
    }
    expect([...a![0]!]).not.toEqual([...a![1]!]);
    expect([...latinHypercube(n, 1, seededRandom(8))[0]!]).not.toEqual([...a![0]!]);
  });
  it('refuses what is no number of places or no seed', () => {
    expect(() => latinHypercube(0, 1, Math.random)).toThrow(
      'number of places is 0; it must be a whole number of 1 or more',
    );
    expect(() => seededRandom(0.5)).toThrow('seed is 0.5; it must be a whole number');
  });
});

describe('summaries', () => {
  it('leave out and count what is no number', () => {
    const told = summarize(Float64Array.of(3, Number.NaN, 1, 2, Number.POSITIVE_INFINITY));
    expect(told).toMatchObject({ count: 3, missing: 2, mean: 2, deviation: 1, least: 1, greatest: 3 });
    expect(percentile(told.sorted, 0.5)).toBe(2);
    expect(percentile(told.sorted, 0.25)).toBe(1.5);
    expect(percentile(Float64Array.of(), 0.5)).toBeNaN();
  });
});

describe('Sobol indices', () => {
  it('of a sum are the shares of its variances, leaving out samples without a number', () => {
    const n = 4000;
    const u = latinHypercube(n, 4, seededRandom(3));
    const f = (x: number, y: number) => 3 * x + 4 * y;
    const run = (x: Float64Array, y: Float64Array) => Float64Array.from(x, (value, k) => f(value, y[k]!));
    const [ax, ay, bx, by] = u as [Float64Array, Float64Array, Float64Array, Float64Array];
    const a = run(ax, ay);
    a[5] = Number.NaN;
    const told = sobolIndices(a, run(bx, by), [run(bx, ay), run(ax, by)]);
    expect(told.count).toBe(n - 1);
    for (const [k, share] of [9 / 25, 16 / 25].entries()) {
      expect(Math.abs(told.first[k]! - share)).toBeLessThan(4 * told.firstError[k]!);
      expect(Math.abs(told.total[k]! - share)).toBeLessThan(4 * told.totalError[k]!);
    }
  });
});
