import { describe, expect, it } from 'vitest';
import {
  bearingHolds,
  bellcrankHolds,
  glueHolds,
  pivotHolds,
  preload,
  strandsHold,
} from '../../../engine/physics/index';

describe('what the parts of the system hold', () => {
  it('strands share a load, and the most loaded one decides', () => {
    expect(strandsHold(100, 2, 1)).toBe(200);
    expect(strandsHold(100, 2, 0.85)).toBe(170);
    expect(strandsHold(100, 2, 1, 2)).toBe(100);
    expect(() => strandsHold(100, 2, 1.2)).toThrow('share that the ends leave is 1.2; it must lie from 0 to 1');
  });
  it('a bellcrank without a hole is a beam, and its hole weakens it', () => {
    const arm = { thickness: 0.003, width: 0.016, hole: 0, length: 0.038 };
    expect(bellcrankHolds(arm, 80e6)).toBeCloseTo((2 * 80e6 * 0.003 * 0.016 ** 2) / 6 / 0.038, 9);
    expect(bellcrankHolds({ ...arm, hole: 0.004 }, 80e6)).toBeLessThan(bellcrankHolds(arm, 80e6));
    expect(bellcrankHolds({ ...arm, hole: 0.016 }, 80e6)).toBe(0);
  });
  it('a pivot at no arm fails in shear alone, a long one in bending, one held on both sides at twice the load', () => {
    const area = (Math.PI * 0.003 ** 2) / 4;
    expect(pivotHolds(0.003, 0, 420e6, 1)).toBeCloseTo((420e6 * area) / Math.sqrt(3), 8);
    const long = pivotHolds(0.003, 1, 420e6, 1);
    expect(long / ((420e6 * Math.PI * 0.003 ** 3) / 32)).toBeCloseTo(1, 5);
    expect(pivotHolds(0.003, 0.004, 420e6, 2)).toBeCloseTo(2 * pivotHolds(0.003, 0.004, 420e6, 1), 9);
  });
  it('wood holds pressure and shear by area', () => {
    expect(bearingHolds(0.003, 0.004, 20e6)).toBeCloseTo(240, 9);
    expect(glueHolds(0.001, 2e6)).toBe(2000);
  });
  it('a tightening torque is a preload times a fifth of the diameter', () => {
    expect(preload(0.3, 0.2, 0.003) * 0.2 * 0.003).toBeCloseTo(0.3, 14);
  });
});
