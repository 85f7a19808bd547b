import { expect, test } from 'vitest';
import { beyond, type Field, fieldAt, isolines } from '../../../workbook/charts/contour/isolines';

const field = (values: readonly (readonly number[])[]): Field => ({
  x: values[0]!.map((_, k) => 10 * k),
  y: values.map((_, k) => 10 * k),
  values,
});
const length = (line: readonly { x: number; y: number }[]): number =>
  line.slice(1).reduce((sum, p, k) => sum + Math.hypot(p.x - line[k]!.x, p.y - line[k]!.y), 0);
const area = (outline: readonly { x: number; y: number }[]): number =>
  Math.abs(
    outline.reduce(
      (sum, p, k) => sum + p.x * outline[(k + 1) % outline.length]!.y - p.y * outline[(k + 1) % outline.length]!.x,
      0,
    ),
  ) / 2;

test('of a plane the lines are straight, in one piece and where they belong', () => {
  const plane = field([0, 1, 2, 3].map((y) => [0, 1, 2, 3].map((x) => 10 * x + 5 * y)));
  const lines = isolines(plane, 22);
  expect(lines).toHaveLength(1);
  for (const { x, y } of lines[0]!) expect(x + 0.5 * y).toBeCloseTo(22, 9);
  const ends = [lines[0]![0]!, lines[0]!.at(-1)!];
  expect(length(lines[0]!)).toBeCloseTo(Math.hypot(ends[0]!.x - ends[1]!.x, ends[0]!.y - ends[1]!.y), 9);
});

test('a hill has a ring that comes back to where it began', () => {
  const hill = field([0, 1, 2, 3, 4].map((y) => [0, 1, 2, 3, 4].map((x) => 8 - (x - 2) ** 2 - (y - 2) ** 2)));
  const [ring, ...others] = isolines(hill, 5.5);
  expect(others).toEqual([]);
  expect(ring![0]).toEqual(ring!.at(-1));
});

test('where two hills meet in a cell each keeps a line of its own', () => {
  const saddle = field([
    [10, 0],
    [0, 10],
  ]);
  const middles = isolines(saddle, 4).map((line) => line.reduce((sum, p) => sum + (p.x + p.y) / 2, 0) / line.length);
  expect(middles.sort((a, b) => a - b)).toEqual([3, 7]);
});

test('cells beside a missing corner have no line, the others keep theirs', () => {
  const whole = field([0, 1, 2].map(() => [0, 1, 2, 3]));
  const holed = field(whole.values.map((row, y) => row.map((value, x) => (x === 3 && y === 0 ? Number.NaN : value))));
  expect(isolines(holed, 0.5)).toEqual(isolines(whole, 0.5));
  expect(isolines(holed, 2.5).map(length)).toEqual([10]);
  expect(isolines(whole, 2.5).map(length)).toEqual([20]);
});

test('what lies beyond a limit has the area that it has', () => {
  const plane = field([0, 1, 2, 3].map((y) => [0, 1, 2, 3].map((x) => x + y)));
  const sum = (side: 'above' | 'below'): number =>
    beyond(plane, 2, side).reduce((total, outline) => total + area(outline), 0);
  expect(sum('below')).toBeCloseTo(200, 6);
  expect(sum('above')).toBeCloseTo(700, 6);
});

test('between its corners the field is read straight, outside and beside gaps not at all', () => {
  const f = field([
    [0, 10],
    [20, Number.NaN],
    [40, 50],
  ]);
  expect(
    fieldAt(
      field([
        [0, 10],
        [20, 30],
      ]),
      { x: 5, y: 5 },
    ),
  ).toBe(15);
  expect(fieldAt(f, { x: 5, y: 5 })).toBeNaN();
  expect(fieldAt(f, { x: 25, y: 5 })).toBeNaN();
});
