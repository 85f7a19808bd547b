import { expect, test } from 'vitest';
import { breakLine, cutAt, pilotArrow } from '../../../workbook/drawing/cut-lines';

const trail = Math.tan((3.3 * Math.PI) / 180);
const guide = { x: 60, y: 80 };
const far = { x: 60 - 4600, y: 80 + 4600 * trail };

test('a line is cut in its true direction, whichever end comes first', () => {
  for (const points of [
    [guide, far],
    [far, guide],
  ]) {
    const [from, to] = cutAt(points, 12);
    expect(from).toEqual(guide);
    expect(to!.x).toBe(12);
    expect((to!.y - guide.y) / (guide.x - to!.x)).toBeCloseTo(trail, 12);
  }
});

test('a line that ends short of the cut is lengthened to it', () => {
  const cut = cutAt([guide, { x: 40, y: 80 + 20 * trail }], 12);
  expect(cut.at(-1)!.x).toBe(12);
  expect(cut.at(-1)!.y).toBeCloseTo(80 + 48 * trail, 9);
});

test('a bent line keeps its points before the cut', () => {
  const bent = [guide, { x: 40, y: 82 }, { x: -200, y: 150 }];
  expect(cutAt(bent, 12).slice(0, 2)).toEqual(bent.slice(0, 2));
  expect(cutAt(bent, 12)).toHaveLength(3);
});

test('the break line crosses both lines, and the arrow stands above it and points inboard', () => {
  const ends = [
    { x: 12, y: 80 },
    { x: 12, y: 90 },
  ];
  const ys = breakLine(ends).map((p) => p.y);
  expect(Math.min(...ys)).toBeLessThan(80);
  expect(Math.max(...ys)).toBeGreaterThan(90);
  const arrow = pilotArrow(ends)!;
  expect(arrow.x1).toBeLessThan(arrow.x0);
  expect(arrow.y0).toBeLessThan(Math.min(...ys));
  expect(breakLine([])).toEqual([]);
  expect(pilotArrow([])).toBeUndefined();
});
