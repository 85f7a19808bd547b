import { describe, expect, it } from 'vitest';
import { findRoot } from '../../../engine/numerics/index';

describe('findRoot', () => {
  it('finds a simple zero to the last bits in few steps', () => {
    const root = findRoot((x) => Math.cos(x) - x, 0, 1);
    expect(root.status).toBe('settled');
    expect(root.value).toBeCloseTo(0.7390851332151607, 14);
    expect(Math.abs(root.residual)).toBeLessThan(3e-16);
    expect(root.iterations).toBeLessThan(12);
  });

  it('takes either order of the ends and an end that is the zero', () => {
    expect(findRoot((x) => x - 1, 3, 0).value).toBeCloseTo(1, 15);
    expect(findRoot((x) => x - 1, 1, 5)).toEqual({ value: 1, status: 'settled', iterations: 0, residual: 0 });
    expect(findRoot((x) => x - 5, 1, 5)).toEqual({ value: 5, status: 'settled', iterations: 0, residual: 0 });
  });

  it('ends within the tolerance asked for', () => {
    const root = findRoot((x) => x * x - 2, 0, 2, { tolerance: 1e-3 });
    expect(Math.abs(root.value - Math.SQRT2)).toBeLessThan(1e-3);
    expect(root.iterations).toBeLessThan(findRoot((x) => x * x - 2, 0, 2).iterations);
  });

  it('finds the place of a jump and of a steep flat zero', () => {
    expect(findRoot((x) => (x < 0.3 ? -1 : 1), 0, 1).value).toBeCloseTo(0.3, 14);
    expect(Math.abs(findRoot((x) => x ** 9, -1, 4).value)).toBeLessThan(1e-2);
  });

  it('says what went wrong', () => {
    expect(findRoot((x) => x * x + 1, -1, 2)).toEqual({
      value: -1,
      status: 'no sign change',
      iterations: 0,
      residual: 2,
    });
    expect(findRoot((x) => x - 0.123456789, 0, 1, { steps: 1 }).status).toBe('too many steps');
    expect(findRoot(() => Number.NaN, 0, 1).status).toBe('not a number');
    expect(findRoot((x) => (x === 0 ? -1 : x === 1 ? 1 : Number.NaN), 0, 1).status).toBe('not a number');
    expect(() => findRoot((x) => x, Number.NEGATIVE_INFINITY, 1)).toThrow(
      new RangeError('the bracket is -Infinity to 1; both ends must be finite'),
    );
  });
});
