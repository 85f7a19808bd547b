import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Box, inside, overlaps } from '../../../workbook/drawing/geometry';
import { type LabelWish, placeLabels } from '../../../workbook/drawing/place-labels';

const frame: Box = { left: 0, right: 340, top: 0, bottom: 260 };
const wish = (key: string, x: number, y: number, width = 60, height = 13): LabelWish => ({
  key,
  at: { x, y },
  settings: [{ width, height }],
  clear: 6,
});
const point = fc.record({ x: fc.integer({ min: 0, max: 340 }), y: fc.integer({ min: 0, max: 260 }) });

test('labels keep inside the frame and off each other and off what is taken (seed 4)', () => {
  fc.assert(
    fc.property(fc.array(point, { maxLength: 9 }), fc.array(point, { maxLength: 5 }), (points, marks) => {
      const taken = marks.map(({ x, y }) => ({ left: x - 20, right: x + 20, top: y - 8, bottom: y + 8 }));
      const wishes = points.map(({ x, y }, k) => wish(`w${k}`, x, y));
      const placed = placeLabels(wishes, { frame, taken, strokes: [] });
      for (const [k, label] of placed.entries()) {
        expect(inside(label.box, frame)).toBe(true);
        for (const other of [...taken, ...placed.slice(k + 1).map((p) => p.box)]) {
          expect(overlaps(label.box, other)).toBe(false);
        }
      }
    }),
    { seed: 4 },
  );
});

test('alone, a label stands beside its point without a leader', () => {
  const [label] = placeLabels([wish('a', 100, 100)], { frame, taken: [], strokes: [] });
  expect(label!.box).toEqual({ left: 110, right: 170, top: 93.5, bottom: 106.5 });
  expect(label!.leader).toBeUndefined();
});

test('strokes are kept clear where there is room beside them', () => {
  const strokes = [{ x0: 104, y0: 100, x1: 300, y1: 100 }];
  const [label] = placeLabels([wish('a', 100, 100)], { frame, taken: [], strokes });
  expect(label!.box.right).toBeLessThanOrEqual(100);
});

test('a label pushed far off is joined to its point by a leader that starts at the mark and ends at the label', () => {
  const taken = [{ left: 70, right: 330, top: 80, bottom: 120 }];
  const [label] = placeLabels([wish('a', 100, 100)], { frame, taken, strokes: [] });
  const { x0, y0, x1, y1 } = label!.leader!;
  expect(Math.hypot(x0 - 100, y0 - 100)).toBeCloseTo(6, 9);
  expect(x1 >= label!.box.left && x1 <= label!.box.right && y1 >= label!.box.top && y1 <= label!.box.bottom).toBe(true);
});

test('a label that moves with the hand stays on its side', () => {
  const strokes = [{ x0: 104, y0: 100, x1: 300, y1: 100 }];
  const first = placeLabels([wish('a', 100, 100)], { frame, taken: [], strokes });
  const before = new Map(first.map((p) => [p.key, p.place]));
  const [next] = placeLabels([wish('a', 101, 104)], { frame, taken: [], strokes: [] }, before);
  expect(next!.place).toBe(first[0]!.place);
});

test('where the first setting has no room, the next is taken', () => {
  const tight = { left: 60, right: 180, top: 60, bottom: 140 };
  const both: LabelWish = {
    ...wish('a', 120, 100),
    settings: [
      { width: 130, height: 13 },
      { width: 50, height: 26 },
    ],
  };
  expect(placeLabels([both], { frame: tight, taken: [], strokes: [] })[0]!.setting).toBe(1);
});

test('a label without any room is left out', () => {
  expect(placeLabels([wish('a', 100, 100)], { frame, taken: [frame], strokes: [] })).toEqual([]);
});
