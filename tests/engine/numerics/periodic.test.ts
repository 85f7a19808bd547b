import { expect, it } from 'vitest';
import { periodicSlopes } from '../../../engine/numerics/index';

it('gives the slopes of a wave exactly, at an even and an odd number of steps', () => {
  for (const n of [12, 13]) {
    const d = periodicSlopes(n);
    const at = (k: number) => (2 * Math.PI * k) / n;
    for (let j = 0; j < n; j++) {
      let slope = 0;
      for (let k = 0; k < n; k++) slope += d[j * n + k]! * (3 + Math.sin(5 * at(k)) - 2 * Math.cos(at(k)));
      expect(slope).toBeCloseTo(5 * Math.cos(5 * at(j)) + 2 * Math.sin(at(j)), 11);
    }
  }
});
