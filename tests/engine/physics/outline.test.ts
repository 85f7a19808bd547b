import { describe, expect, it } from 'vitest';
import {
  depthAt,
  measureOutline,
  type Outline,
  type OutlineBay,
  OutlineCrossing,
  outlineBays,
  overBays,
} from '../../../engine/physics/outline';

const reversed = (outline: Outline): number[] =>
  Array.from({ length: outline.length / 2 }, (_, k) =>
    outline.slice(outline.length - 2 * k - 2, outline.length - 2 * k),
  ).flat();
const moved = (outline: Outline, dx: number, dz: number): number[] =>
  outline.map((v, k) => v + (k % 2 === 0 ? dx : dz));
const rectangle = (x: number, z: number, l: number, h: number): number[] => [x, z, x + l, z, x + l, z + h, x, z + h];
const circle = (n: number, r: number): number[] =>
  Array.from({ length: n }, (_, k) => [
    r * Math.cos((2 * Math.PI * k) / n),
    r * Math.sin((2 * Math.PI * k) / n),
  ]).flat();

describe('area and moments of an outline', () => {
  it('of a rectangle are those of textbooks, away from the origin', () => {
    const m = measureOutline(rectangle(0.3, -0.1, 0.4, 0.2));
    expect(m.area).toBeCloseTo(0.08, 15);
    expect(m.momentX / m.area).toBeCloseTo(0.5, 14);
    expect(m.momentZ / m.area).toBeCloseTo(0, 14);
    expect(m.secondMomentX / m.area).toBeCloseTo(0.4 ** 2 / 12 + 0.5 ** 2, 14);
  });
  it('of a triangle: half base times height, centroid at the mean of the corners, l²/18 about it for a right one', () => {
    const m = measureOutline([0, 0, 0.6, 0, 0, 0.3]);
    expect(m.area).toBeCloseTo(0.09, 15);
    expect(m.momentX / m.area).toBeCloseTo(0.2, 15);
    expect(m.momentZ / m.area).toBeCloseTo(0.1, 15);
    expect(m.secondMomentX / m.area - 0.2 ** 2).toBeCloseTo(0.6 ** 2 / 18, 15);
  });
  it('of a polygon of n sides in a circle: ½ n r² sin 2π/n, and nearly π r² and r²/4 for many', () => {
    const m = measureOutline(circle(7, 0.1));
    expect(m.area).toBeCloseTo(3.5 * 0.01 * Math.sin((2 * Math.PI) / 7), 15);
    expect(m.momentX).toBeCloseTo(0, 15);
    const round = measureOutline(circle(150, 1));
    expect(round.area / Math.PI).toBeCloseTo(1, 3);
    expect(round.secondMomentX / round.area).toBeCloseTo(0.25, 3);
  });
  it('do not hang on the way round, on the first corner, nor on corners said twice', () => {
    const kite = [0, 0, 0.2, 0.1, 0.7, 0, 0.2, -0.15];
    const m = measureOutline(kite);
    for (const other of [reversed(kite), [...kite.slice(4), ...kite.slice(0, 4)], [...kite, 0, 0], [0, 0, ...kite]]) {
      const n = measureOutline(other);
      for (const key of ['area', 'momentX', 'momentZ', 'secondMomentX'] as const)
        expect(n[key]).toBeCloseTo(m[key], 15);
    }
  });
  it('move with the outline by the rule of parallel axes', () => {
    const kite = [0, 0, 0.2, 0.1, 0.7, 0, 0.2, -0.15];
    const m = measureOutline(kite);
    const n = measureOutline(moved(kite, 3, -2));
    expect(n.area).toBeCloseTo(m.area, 13);
    expect(n.momentX).toBeCloseTo(m.momentX + 3 * m.area, 13);
    expect(n.momentZ).toBeCloseTo(m.momentZ - 2 * m.area, 13);
    expect(n.secondMomentX).toBeCloseTo(m.secondMomentX + 6 * m.momentX + 9 * m.area, 12);
  });
});

describe('an outline that is none', () => {
  it('crosses itself: both sides are named', () => {
    expect(() => measureOutline([0, 0, 1, 1, 1, 0, 0, 1])).toThrow(
      'the outline crosses itself: its side from 0, 0 to 1, 1 meets the one from 1, 0 to 0, 1; its line must go round once',
    );
    expect(() => measureOutline([0, 0, 1, 1, 1, 0, 0, 1])).toThrow(OutlineCrossing);
    expect(() => measureOutline([0, 0, 2, 0, 2, 1, 1, 0, 0, 1])).toThrow(
      /from 0, 0 to 2, 0 meets the one from 2, 1 to 1, 0;/,
    );
    expect(() => measureOutline([2, 1, 1, 0, 0, 1, 0, 0, 2, 0])).toThrow(
      /from 2, 1 to 1, 0 meets the one from 0, 0 to 2, 0;/,
    );
    expect(() => measureOutline([0, 0, 3, 0, 3, 1, 1, 1, 1, 2, 2, 2, 2, -1, 0, -1])).toThrow(/crosses itself/);
  });
  it('has too few corners, or goes to and fro', () => {
    expect(() => measureOutline([0, 0, 1, 1, 0, 0])).toThrow(
      new RangeError('the outline has 2 corners; it must have 3 or more'),
    );
    expect(() => measureOutline([0, 0, 1, 0, 2, 0])).toThrow(
      new RangeError('the outline encloses no area; it must go round a surface'),
    );
  });
  it('is not said of a concave one whose sides would meet if they went on', () => {
    expect(measureOutline([0, 0, 2, 0, 2, 1, 1, 0.1, 0, 1]).area).toBeCloseTo(1.1, 14);
  });
});

describe('bays of an outline', () => {
  it('are straight between the stations of its corners, whichever way round', () => {
    const trapezium = [0, 0, 0.5, 0.1, 0.5, 0.3, 0, 0.4];
    const bay: OutlineBay = { from: 0, to: 0.5, depthFrom: 0.4, depthTo: 0.2, edgeFrom: 0, edgeTo: 0.1 };
    for (const outline of [trapezium, reversed(trapezium)]) {
      const [only, ...more] = outlineBays(outline);
      expect(more).toEqual([]);
      for (const [key, value] of Object.entries(bay)) expect(only![key as keyof OutlineBay]).toBeCloseTo(value, 15);
    }
  });
  it('have the area of the outline, and count pieces of one line together', () => {
    const horseshoe = [0, 0, 2, 0, 2, 3, 0, 3, 0, 2, 1.5, 2, 1.5, 1, 0, 1];
    const bays = outlineBays(horseshoe);
    expect(bays.map(({ depthFrom, edgeFrom }) => [depthFrom, edgeFrom])).toEqual([
      [2, 0],
      [3, 0],
    ]);
    expect(overBays(bays, (_, depth) => depth)).toBeCloseTo(measureOutline(horseshoe).area, 14);
    expect(overBays(bays, (x, depth) => x * depth)).toBeCloseTo(measureOutline(horseshoe).momentX, 14);
    expect(overBays(bays, (x, depth) => x * x * depth)).toBeCloseTo(measureOutline(horseshoe).secondMomentX, 14);
  });
  it('are integrated exactly to the third degree', () => {
    const bays = outlineBays([0, 0, 1, 0, 1, 2]);
    expect(overBays(bays, (x, depth, edge) => x * depth * depth + edge)).toBeCloseTo(1, 15);
    expect(overBays(bays, () => 1)).toBeCloseTo(1, 15);
  });
  it('tell the depth anywhere', () => {
    const bays = outlineBays([0, 0, 1, 0, 3, 0, 3, 2, 1, 1, 0, 1]);
    expect([-0.1, 0, 0.5, 1, 2, 3, 3.1].map((x) => depthAt(bays, x))).toEqual([0, 1, 1, 1, 1.5, 2, 0]);
  });
});
