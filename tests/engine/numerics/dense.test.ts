import { describe, expect, it } from 'vitest';
import { solveDense } from '../../../engine/numerics/index';

describe('solveDense', () => {
  it('solves and gives the determinant, with a zero in the first place', () => {
    const a = new Float64Array([0, 2, 1, 1, 1, 0, 3, 0, 1]);
    const b = new Float64Array([7, 3, 6]);
    expect(solveDense(a, b, 3)).toBeCloseTo(-5, 14);
    expect([...b]).toEqual([1, 2, 3].map((x) => expect.closeTo(x, 13)));
  });

  it('gives 0 for a singular matrix and for one with NaN', () => {
    expect(solveDense(new Float64Array([1, 2, 2, 4]), new Float64Array([1, 2]), 2)).toBe(0);
    expect(solveDense(new Float64Array([Number.NaN, 2, 2, 4]), new Float64Array([1, 2]), 2)).toBe(0);
  });

  it('leaves little residual on a badly scaled system', () => {
    const n = 6;
    const kept = Float64Array.from({ length: n * n }, (_, i) => 1 / (Math.floor(i / n) + (i % n) + 1));
    const b = Float64Array.from({ length: n }, (_, i) => i - 2);
    const x = b.slice();
    solveDense(kept.slice(), x, n);
    for (let i = 0; i < n; i++) {
      let sum = -b[i]!;
      for (let j = 0; j < n; j++) sum += kept[i * n + j]! * x[j]!;
      expect(Math.abs(sum)).toBeLessThan(1e-9);
    }
  });
});
