import { describe, expect, it } from 'vitest';
import { periodicSlopes, periodicWave, solvePeriodic } from '../../../engine/numerics/index';

const at = (n: number, k: number) => (2 * Math.PI * k) / n;
const row = (n: number, f: (x: number) => number) => Float64Array.from({ length: n }, (_, k) => f(at(n, k)));

describe('the wave through equal steps of a period', () => {
  it('gives the slopes of a wave exactly, at an even and an odd number of steps', () => {
    for (const n of [12, 13]) {
      const slopes = new Float64Array(n);
      const wave = periodicWave(n);
      periodicSlopes(
        wave,
        row(n, (x) => 3 + Math.sin(5 * x) - 2 * Math.cos(x)),
        slopes,
      );
      for (let j = 0; j < n; j++) {
        expect(slopes[j]).toBeCloseTo(5 * Math.cos(5 * at(n, j)) + 2 * Math.sin(at(n, j)), 11);
        expect(wave.sine[j]).toBe(Math.sin(at(n, j)));
      }
    }
  });
  it('solves dy/dx − g y = r exactly for one g, and for a g that goes round as soon as there are places for both', () => {
    for (const n of [12, 13]) {
      const r = row(n, (x) => 4 * Math.cos(4 * x) + 0.3 * Math.sin(4 * x) + 0.6);
      solvePeriodic(
        periodicWave(n),
        row(n, () => -0.3),
        r,
      );
      for (let j = 0; j < n; j++) expect(r[j]).toBeCloseTo(Math.sin(4 * at(n, j)) + 2, 12);
    }
    for (const n of [32, 33]) {
      const g = row(n, (x) => -0.4 + 0.25 * Math.cos(x) - 0.1 * Math.sin(2 * x));
      const y = (x: number) => 2 + Math.cos(x) - 0.5 * Math.sin(3 * x);
      const r = row(n, (x) => -Math.sin(x) - 1.5 * Math.cos(3 * x));
      for (let k = 0; k < n; k++) r[k]! -= g[k]! * y(at(n, k));
      solvePeriodic(periodicWave(n), g, r);
      for (let j = 0; j < n; j++) expect(r[j]).toBeCloseTo(y(at(n, j)), 11);
    }
  });
  it('leaves the alternating wave, which has no slope at an even number of steps, to g', () => {
    const r = Float64Array.from({ length: 12 }, (_, k) => (k % 2 === 0 ? 1 : -1));
    const g = row(12, () => -0.5);
    solvePeriodic(periodicWave(12), g, r);
    for (let k = 0; k < 12; k++) expect(r[k]).toBeCloseTo(k % 2 === 0 ? 2 : -2, 12);
  });
  it('has no solution where the mean of g is 0', () => {
    const r = row(8, () => 1);
    solvePeriodic(
      periodicWave(8),
      row(8, (x) => 0 * x),
      r,
    );
    expect(Number.isFinite(r[0]!)).toBe(false);
  });
});
