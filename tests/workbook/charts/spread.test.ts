import fc from 'fast-check';
import { expect, test } from 'vitest';
import { spread, type Wish } from '../../../workbook/charts/frame/spread';

const wishes = fc.array(
  fc.record({ at: fc.double({ min: 0, max: 200, noNaN: true }), size: fc.integer({ min: 8, max: 30 }) }),
  { minLength: 1, maxLength: 6 },
);

const inOrder = (list: readonly Wish[]): number[] =>
  list.map((_, k) => k).sort((a, b) => list[a]!.at - list[b]!.at || a - b);

test('labels keep their order and do not overlap, and stay between the ends where they fit (seed 21)', () => {
  fc.assert(
    fc.property(wishes, (list) => {
      const middles = spread(list, 0, 200);
      const order = inOrder(list);
      for (const [n, k] of order.entries()) {
        expect(middles[k]! - list[k]!.size / 2).toBeGreaterThanOrEqual(-1e-9);
        expect(middles[k]! + list[k]!.size / 2).toBeLessThanOrEqual(200 + 1e-9);
        const next = order[n + 1];
        if (next === undefined) continue;
        expect(middles[next]! - middles[k]!).toBeGreaterThanOrEqual((list[k]!.size + list[next]!.size) / 2 - 1e-9);
      }
    }),
    { seed: 21 },
  );
});

test('no small shift of a group of neighbours brings it nearer to its wishes (seed 22)', () => {
  const cost = (list: readonly Wish[], middles: readonly number[]): number =>
    list.reduce((sum, w, k) => sum + (middles[k]! - w.at) ** 2, 0);
  const apart = (list: readonly Wish[], middles: readonly number[]): boolean => {
    const order = inOrder(list);
    return order.every((k, n) => {
      const next = order[n + 1];
      return next === undefined || middles[next]! - middles[k]! >= (list[k]!.size + list[next]!.size) / 2 - 1e-9;
    });
  };
  fc.assert(
    fc.property(wishes, (list) => {
      const middles = spread(list, -1e6, 1e6);
      const order = inOrder(list);
      for (let from = 0; from < order.length; from++) {
        for (let to = from; to < order.length; to++) {
          for (const step of [-0.5, 0.5]) {
            const moved = [...middles];
            for (const k of order.slice(from, to + 1)) moved[k] = moved[k]! + step;
            if (apart(list, moved)) expect(cost(list, moved)).toBeGreaterThanOrEqual(cost(list, middles) - 1e-6);
          }
        }
      }
    }),
    { seed: 22 },
  );
});

test('labels with room stand where they want to', () => {
  expect(
    spread(
      [
        { at: 90, size: 12 },
        { at: 20, size: 12 },
      ],
      0,
      200,
    ),
  ).toEqual([90, 20]);
});
