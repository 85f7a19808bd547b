import { describe, expect, test } from 'vitest';
import { sharedChange } from '../../../engine/numerics/index';
import { randomFrom } from '../sheet/random';

const random = randomFrom(11);
const valuesOf = (count: number, of: (mask: number) => number): number[] =>
  Array.from({ length: 1 << count }, (_, mask) => of(mask));
const has = (mask: number, k: number): number => (mask >> k) & 1;

/** By its definition: every order, one after the other. */
function byOrders(values: readonly number[]): number[] {
  const count = Math.log2(values.length);
  const shares = Array(count).fill(0);
  let orders = 0;
  const go = (mask: number, added: readonly [number, number][]): void => {
    if (mask === values.length - 1) {
      orders++;
      for (const [k, by] of added) shares[k] += by;
    }
    for (let k = 0; k < count; k++) {
      if (has(mask, k) === 0) go(mask | (1 << k), [...added, [k, values[mask | (1 << k)]! - values[mask]!]]);
    }
  };
  go(0, []);
  return shares.map((sum) => sum / orders);
}

describe('what each change adds', () => {
  test('is what the definition says, and adds up to the whole, for 0 to 5 changes', () => {
    for (let count = 0; count <= 5; count++) {
      const values = valuesOf(count, () => random.next());
      const shares = [...sharedChange(values)];
      const expected = byOrders(values);
      for (const [k, share] of shares.entries()) expect(share).toBeCloseTo(expected[k]!, 12);
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(values.at(-1)! - values[0]!, 12);
    }
  });
  test('is its own part of a sum, nothing where it does nothing, and half each of what two do only together', () => {
    const parts = sharedChange(valuesOf(3, (mask) => 3 * has(mask, 0) - 8 * has(mask, 2)));
    for (const [k, part] of [3, 0, -8].entries()) expect(parts[k]).toBeCloseTo(part, 12);
    expect([...sharedChange(valuesOf(2, (mask) => 10 * has(mask, 0) * has(mask, 1)))]).toEqual([5, 5]);
  });
  test('is not known where a design on the way has no answer', () => {
    expect([...sharedChange([0, Number.NaN, 1, 2])]).toEqual([Number.NaN, Number.NaN]);
  });
  test('is asked of all sets of changes', () => {
    expect(() => sharedChange([1, 2, 3])).toThrow(
      new RangeError('3 values; there must be 2ⁿ of them with n from 0 to 20'),
    );
  });
});
