import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { beats, spreadOver, startFront } from '../../../engine/numerics/index';
import { cases } from '../../cases';

interface Point {
  readonly costs: readonly number[];
  readonly id: number;
}
const points = (respects: number) =>
  fc
    .array(fc.array(fc.integer({ min: -20, max: 20 }), { minLength: respects, maxLength: respects }), { maxLength: 60 })
    .map((all) => all.map((costs, id): Point => ({ costs, id })));
const anyPoints = fc.constantFrom(2, 3).chain((respects) => fc.tuple(fc.constant(respects), points(respects)));

function frontOf(all: readonly Point[], respects: number): readonly Point[] {
  const front = startFront<Point>(respects);
  for (const point of all) front.add(point);
  return front.points();
}
const ids = (front: readonly Point[]): readonly number[] => front.map(({ id }) => id).sort((a, b) => a - b);
const runs = { numRuns: cases(500) };
/** Rises everywhere, and takes no two whole numbers of the range together. */
const bent = (x: number): number => Math.sinh(x / 5) + x ** 3;

describe('a front', () => {
  test('holds every point that no other beats, and no other', () => {
    fc.assert(
      fc.property(anyPoints, ([respects, all]) => {
        const front = new Set(ids(frontOf(all, respects)));
        for (const { costs, id } of all) {
          const twin = all.find((other) => other.costs.every((cost, k) => cost === costs[k]))!;
          const stands = twin.id === id && !all.some((other) => beats(other.costs, costs));
          expect(front.has(id)).toBe(stands);
        }
      }),
      runs,
    );
  });

  test('and its spread are the same for respects in another order, and for measures that rise with them', () => {
    fc.assert(
      fc.property(anyPoints, fc.integer({ min: 1, max: 12 }), ([respects, all], most) => {
        const shownOf = (of: readonly Point[]): readonly number[] => ids(spreadOver(frontOf(of, respects), most));
        const shown = shownOf(all);
        expect(shownOf(all.map((point) => ({ ...point, costs: point.costs.map(bent) })))).toEqual(shown);
        if (most < respects) return;
        expect(shownOf(all.map((point) => ({ ...point, costs: point.costs.toReversed() })))).toEqual(shown);
      }),
      runs,
    );
  });

  test('is spread over so many points, the best in each respect among them', () => {
    const all = Array.from({ length: 101 }, (_, id): Point => ({ costs: [id, (100 - id) ** 2], id }));
    expect(ids(spreadOver(all, 5))).toEqual([0, 25, 50, 75, 100]);
    expect(spreadOver(all, 200)).toBe(all);
    expect(spreadOver(all, 1)).toHaveLength(1);
  });

  test('takes numbers only', () => {
    const front = startFront(2);
    expect(() => front.add({ costs: [1, Number.NaN] })).toThrow('A point of a front has 2 costs, found 1, NaN');
    expect(() => front.add({ costs: [1] })).toThrow('A point of a front has 2 costs, found 1');
  });
});
