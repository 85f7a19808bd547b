import { describe, expect, it } from 'vitest';
import { correlateShares, latinHypercube, lowerTriangle, seededRandom } from '../../../engine/numerics/index';

describe('the lower triangle', () => {
  it('multiplied by itself gives the matrix back', () => {
    const matrix = [
      [1, 0.6, -0.3],
      [0.6, 1, 0.2],
      [-0.3, 0.2, 1],
    ];
    const lower = lowerTriangle(matrix)!;
    for (const [i, row] of matrix.entries()) {
      for (const [j, value] of row.entries()) {
        const product = lower[i]!.reduce((sum, each, k) => sum + each * (lower[j]![k] ?? 0), 0);
        expect(product).toBeCloseTo(value, 14);
      }
    }
  });
  it('is none where the numbers cannot be correlated like that', () => {
    const two = (r: number) => [
      [1, r],
      [r, 1],
    ];
    expect(lowerTriangle(two(0.99))).toBeDefined();
    expect(lowerTriangle(two(1))).toBeUndefined();
    expect(lowerTriangle(two(-1.2))).toBeUndefined();
  });
});

it('makes shares go together by their normal numbers, each still evenly spread over 0 to 1', () => {
  const n = 20_000;
  const columns = latinHypercube(n, 2, seededRandom(5));
  const [a, b] = correlateShares(columns, lowerTriangle([[1], [0.7, 1]])!) as [Float64Array, Float64Array];
  for (const [k, u] of a.entries()) expect(u).toBeCloseTo(columns[0]![k]!, 6);
  const mean = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0) / n;
  expect(Math.abs(mean(b) - 0.5)).toBeLessThan(0.01);
  expect(Math.abs(mean(b.map((u) => (u - 0.5) ** 2)) - 1 / 12)).toBeLessThan(0.002);
  // Of two even spreads behind which normal numbers stand with r: (6/π) asin(r/2) (K. Pearson 1907, from memory).
  const together = mean(a.map((u, k) => (u - 0.5) * (b[k]! - 0.5))) * 12;
  expect(Math.abs(together - (6 / Math.PI) * Math.asin(0.35))).toBeLessThan(0.02);
});
