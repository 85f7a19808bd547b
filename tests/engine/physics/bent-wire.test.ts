import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bendWire, type Vector } from '../../../engine/physics/index';

const TWO_MM = 0.002;
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const lengthOf = (path: readonly Vector[]): number =>
  path.slice(1).reduce((sum, p, k) => sum + Math.hypot(...minus(p, path[k]!)), 0);

describe('bent wire', () => {
  it('square: both runs less a radius each, and a quarter of a circle on the centre line', () => {
    const wire = bendWire(
      [
        [0, 0, 0],
        [0.1, 0, 0],
        [0.1, 0.06, 0],
      ],
      TWO_MM,
      0.004,
    )!;
    expect(wire.length).toBeCloseTo(0.1 + 0.06 - 2 * 0.005 + (Math.PI / 2) * 0.005, 15);
    expect(wire.bends).toHaveLength(1);
    expect(wire.bends[0]!.angle).toBeCloseTo(Math.PI / 2, 14);
    expect(wire.bends[0]!.from).toBeCloseTo(0.095, 15);
    expect(wire.bends[0]!.to).toBeCloseTo(0.095 + (Math.PI / 2) * 0.005, 15);
    expect(wire.bends[0]!.turned).toBe(0);
  });

  it('the arc stands a radius from its middle and touches both runs', () => {
    const path = bendWire(
      [
        [0, 0, 0],
        [0.1, 0, 0],
        [0.1, 0.06, 0],
      ],
      TWO_MM,
      0.004,
    )!.path();
    expect(path[0]).toEqual([0, 0, 0]);
    expect(path.at(-1)).toEqual([0.1, 0.06, 0]);
    for (const p of path.slice(1, -1)) expect(Math.hypot(p[0] - 0.095, p[1] - 0.005, p[2])).toBeCloseTo(0.005, 14);
    expect(path[1]![0]).toBeCloseTo(0.095, 14);
    expect(path.at(-2)![1]).toBeCloseTo(0.005, 14);
  });

  it('tells how far the wire is turned from one bend to the next', () => {
    const turned = (last: Vector): number =>
      bendWire([[0, 0, 0], [0.1, 0, 0], [0.1, 0.1, 0], last], TWO_MM, 0.004)!.bends[1]!.turned;
    // On in the same plane, back the other way, and out of it to either side.
    expect(turned([0, 0.1, 0])).toBeCloseTo(0, 14);
    expect(Math.abs(turned([0.2, 0.1, 0]))).toBeCloseTo(Math.PI, 14);
    expect(turned([0.1, 0.1, 0.1])).toBeCloseTo(Math.PI / 2, 14);
    expect(turned([0.1, 0.1, -0.1])).toBeCloseTo(-Math.PI / 2, 14);
  });

  it('is the same wire whichever way it lies in space', () => {
    const corners: readonly Vector[] = [
      [0, 0, 0],
      [0.1, 0, 0],
      [0.1, 0.1, 0],
      [0.15, 0.1, 0.08],
    ];
    const lying = bendWire(corners, TWO_MM, 0.004)!;
    expect(lying.bends.map(({ angle }) => angle)).toEqual([Math.PI / 2, Math.PI / 2].map((v) => expect.closeTo(v, 12)));
    expect(lying.bends[1]!.turned).toBeCloseTo(Math.atan2(0.08, -0.05), 12);
    // Turned by 0.7 rad about (1, 2, 3): Rodrigues' rotation formula.
    const axis: Vector = [1 / Math.sqrt(14), 2 / Math.sqrt(14), 3 / Math.sqrt(14)];
    const [sine, cosine] = [Math.sin(0.7), Math.cos(0.7)];
    const leaning = ([x, y, z]: Vector): Vector => {
      const [u, v, w] = axis;
      const share = (1 - cosine) * dot(axis, [x, y, z]);
      return [
        x * cosine + sine * (v * z - w * y) + share * u,
        y * cosine + sine * (w * x - u * z) + share * v,
        z * cosine + sine * (u * y - v * x) + share * w,
      ];
    };
    const wire = bendWire(corners.map(leaning), TWO_MM, 0.004)!;
    const near = (values: readonly number[]) => values.map((value) => expect.closeTo(value, 12));
    expect(wire.length).toBeCloseTo(lying.length, 12);
    expect(wire.bends.flatMap(({ angle, from, to, turned }) => [angle, from, to, turned])).toEqual(
      near(lying.bends.flatMap(({ angle, from, to, turned }) => [angle, from, to, turned])),
    );
    expect(wire.path()).toEqual(lying.path().map((place) => near(leaning(place))));
  });

  it('is drawn by the fewest corners that stand no further apart than 5° of its bends', () => {
    const bent = (degrees: number): number => {
      const way = (degrees * Math.PI) / 180;
      const end: Vector = [0.1 + 0.1 * Math.cos(way), 0.1 * Math.sin(way), 0];
      return bendWire([[0, 0, 0], [0.1, 0, 0], end], TWO_MM, 0.004)!.path().length - 2;
    };
    // 29.8 steps of 5°, so 30 of them.
    expect(bent(149)).toBe(31);
    expect(bent(4)).toBe(2);
  });

  it('runs straight through places in line and those that are said twice', () => {
    const wire = bendWire(
      [
        [0, 0, 0],
        [0, 0, 0],
        [0, 0, -0.04],
        [0, 0, -0.1],
      ],
      TWO_MM,
      0.004,
    )!;
    expect(wire.length).toBeCloseTo(0.1, 15);
    expect(wire.bends).toEqual([]);
    expect(wire.path()).toEqual([
      [0, 0, 0],
      [0, 0, -0.1],
    ]);
  });

  it('has no answer where a run is too short for its bends, up to the shortest that is long enough', () => {
    const hook = (middle: number) =>
      bendWire(
        [
          [0, 0, 0],
          [0.1, 0, 0],
          [0.1, middle, 0],
          [0, middle, 0],
        ],
        TWO_MM,
        0.004,
      );
    expect(hook(0.00999)).toBeUndefined();
    expect(hook(0.01001)!.bends[1]!.from).toBeCloseTo(hook(0.01001)!.bends[0]!.to + 0.00001, 12);
  });

  it('cuts what its centre line is long, of any wire', () => {
    const place = fc.tuple(...([0, 1, 2].map(() => fc.double({ min: -0.3, max: 0.3, noNaN: true })) as never[]));
    fc.assert(
      fc.property(fc.array(place, { minLength: 2, maxLength: 6 }), (corners) => {
        const points = corners as unknown as Vector[];
        if (points.some((p, k) => k > 0 && Math.hypot(...minus(p, points[k - 1]!)) < 1e-3)) return;
        const wire = bendWire(points, 0.0015, 0.003);
        if (!wire) return;
        // An arc drawn by corners is a little short of it: less than its step squared over 24.
        expect(lengthOf(wire.path())).toBeLessThanOrEqual(wire.length + 1e-12);
        expect(lengthOf(wire.path())).toBeGreaterThan(wire.length * (1 - (Math.PI / 36) ** 2 / 24) - 1e-12);
        for (const { angle, from, to } of wire.bends) expect(to - from).toBeCloseTo(0.00375 * angle, 12);
        expect(dot(wire.path()[0]!, wire.path()[0]!)).toBeCloseTo(dot(points[0]!, points[0]!), 12);
      }),
    );
  });

  it('refuses what is no wire', () => {
    expect(() => bendWire([[0, 0, 0]], TWO_MM, 0.004)).toThrow('a bent wire has 1 places; it must have at least 2');
    expect(() => bendWire([], 0, 0.004)).toThrow('wire diameter');
    expect(() => bendWire([], TWO_MM, 0)).toThrow('inside radius of the bends');
  });
});
