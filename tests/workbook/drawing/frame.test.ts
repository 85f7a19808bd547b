import { describe, expect, test } from 'vitest';
import { frameFor, project } from '../../../workbook/drawing/frame';
import { PAPER_WIDTH } from '../../../workbook/store/printing';
import { quernShapes } from './quern';

const MM_PER_PIXEL = 25.4 / 96;

test.each([
  ['column', 300, 20],
  ['column', 340, 15],
  ['column', 640, 8],
  ['strip', 360, 30],
] as const)('a %s of %i px is drawn at 1 : %i, true on paper', (arrangement, width, denominator) => {
  const frame = frameFor(quernShapes(), arrangement, width)!;
  expect(frame.denominator).toBe(denominator);
  const a = project(frame, 'plan', 0, -0.515);
  const b = project(frame, 'plan', 0, 0.485);
  expect((b.x - a.x) * MM_PER_PIXEL * denominator).toBeCloseTo(1000, 6);
  expect(b.y).toBeCloseTo(a.y, 9);
});

test('the plan has its nose up and the pilot on the left, the side view its nose on the left and up is up', () => {
  const frame = frameFor(quernShapes(), 'column', 340)!;
  expect(project(frame, 'plan', -0.15, 0).y).toBeLessThan(project(frame, 'plan', 0.5, 0).y);
  expect(project(frame, 'plan', 0, -0.5).x).toBeLessThan(project(frame, 'plan', 0, 0.4).x);
  expect(project(frame, 'side', -0.15, 0).x).toBeLessThan(project(frame, 'side', 0.5, 0).x);
  expect(project(frame, 'side', 0, 0.1).y).toBeLessThan(project(frame, 'side', 0, 0).y);
});

test.each(['column', 'strip'] as const)(
  'every point lies on the page of a %s, with room for the lines on the left',
  (arrangement) => {
    for (const width of [300, 340, 360, 500, 900]) {
      const shapes = quernShapes();
      const frame = frameFor(shapes, arrangement, width)!;
      for (const s of shapes.filter((shape) => shape.part !== 'line')) {
        for (let k = 0; k < s.points.length; k += 2) {
          const p = project(frame, s.view, s.points[k]!, s.points[k + 1]!);
          expect(p.x).toBeGreaterThanOrEqual(s.view === 'plan' ? 50 : 0);
          expect(p.x).toBeLessThanOrEqual(width);
          expect(p.y).toBeGreaterThanOrEqual(0);
          expect(p.y).toBeLessThanOrEqual(frame.height);
        }
      }
    }
  },
);

test('the picture stands still while the engine slides forward and back', () => {
  const start = frameFor(quernShapes(), 'column', 340)!;
  let frame = start;
  for (const engine of [-0.155, -0.149, -0.14, -0.15]) {
    frame = frameFor(quernShapes({ engine }), 'column', 340, frame)!;
    expect(project(frame, 'plan', 0, 0)).toEqual(project(start, 'plan', 0, 0));
  }
});

test('it makes room when the model grows out of it', () => {
  const start = frameFor(quernShapes(), 'column', 340)!;
  const longer = frameFor(quernShapes({ engine: -0.4 }), 'column', 340, start)!;
  expect(longer.views.plan!.extent.top).toBeLessThan(start.views.plan!.extent.top);
});

test('a model with a side view only has no plan', () => {
  const side = quernShapes().filter((s) => s.view === 'side');
  expect(frameFor(side, 'column', 340)!.views.plan).toBeUndefined();
  expect(frameFor([], 'column', 340)).toBeUndefined();
});

describe('on paper', () => {
  const ISO_5455 = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

  test.each([
    [0.3, 5],
    [0.5, 5],
    [1, 10],
    [1.9, 20],
  ])(
    'a model %f times the size of the Quern is drawn at 1 : %i, a scale of ISO 5455, and true',
    (size, denominator) => {
      const shapes = quernShapes().map((shape) => ({
        ...shape,
        points: shape.points.map((metres) => metres * size),
        ...(shape.radius === undefined ? {} : { radius: shape.radius * size }),
      }));
      const frame = frameFor(shapes, 'paper', PAPER_WIDTH)!;
      expect(ISO_5455).toContain(frame.denominator);
      expect(frame.denominator).toBe(denominator);
      const a = project(frame, 'plan', 0, -0.515);
      const b = project(frame, 'plan', 0, 0.485);
      expect((b.x - a.x) * MM_PER_PIXEL * denominator).toBeCloseTo(1000, 6);
    },
  );

  test('it is as wide as A4 allows and as high as Letter', () => {
    const [wide, high] = [210 - 2 * 12 - 2 * 4, 279.4 - 12 - 34 - 2 * 3];
    for (const size of [0.2, 0.5, 1, 1.6, 3]) {
      const shapes = quernShapes().map((shape) => ({ ...shape, points: shape.points.map((metres) => metres * size) }));
      const frame = frameFor(shapes, 'paper', PAPER_WIDTH)!;
      expect(frame.width * MM_PER_PIXEL).toBeLessThan(wide);
      expect(frame.height * MM_PER_PIXEL).toBeLessThan(high);
    }
  });
});
