import { describe, expect, it } from 'vitest';
import {
  beyond,
  fuelSurface,
  gravityAtRest,
  gravityInFlight,
  headAt,
  type Place,
  placed,
  placedBody,
  prism,
  solidOf,
  tankShape,
  volumeBeyond,
} from '../../../../engine/physics/tank/index';

const G = 9.80665;
const box = tankShape({ length: 0.07, width: 0.03, height: 0.04, edgeHeight: 0.04, taper: 0 });
const VOLUME = 0.07 * 0.03 * 0.04;
const wedge = tankShape({ length: 0.07, width: 0.03, height: 0.04, edgeHeight: 0.01, taper: 0.02 });
const close = (found: number, wanted: number): void => expect(found / wanted).toBeCloseTo(1, 9);

describe('convex bodies', () => {
  it('have the volume and middle of their shape', () => {
    close(solidOf(box).volume, VOLUME);
    for (const part of solidOf(box).centroid) expect(part).toBeCloseTo(0, 14);
    close(solidOf(wedge).volume, 0.07 * (0.01 * 0.04 + (0.02 * (0.04 + 0.01)) / 2));
    // A tetrahedron, no prism at all.
    const [o, a, b, c]: Place[] = [
      [0, 0, 0],
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ];
    const corner = [
      [o!, a!, b!],
      [o!, b!, c!],
      [o!, a!, c!],
      [a!, b!, c!],
    ];
    close(solidOf(corner).volume, 1 / 6);
    for (const part of solidOf(corner).centroid) close(part, 0.25);
    close(solidOf(beyond(corner, [0, 0, 1], 0.5)).volume, 1 / 48);
  });
  it('are cut into two parts that make the whole, along any plane', () => {
    for (const [n, d] of [
      [[1, 0, 0], 0.01],
      [[0.3, -0.5, 0.8], 0.002],
      [[-1, 2, 0.1], 0],
      [[0, 0, 1], 0.02],
      [[0, 1, 0], -0.015],
    ] as [Place, number][]) {
      const other: Place = [-n[0], -n[1], -n[2]];
      const [far, near] = [solidOf(beyond(wedge, n, d)).volume, solidOf(beyond(wedge, other, -d)).volume];
      close(far + near, solidOf(wedge).volume);
    }
  });
  it('turn and move without changing', () => {
    const at = { middle: [-0.06, 0.016, 0.01], yaw: 0.2, roll: -0.3 } as const;
    close(solidOf(placedBody(at, wedge)).volume, solidOf(wedge).volume);
    expect(placed({ middle: [0, 0, 0], yaw: 0.1, roll: 0 }, [-1, 0, 0])[1]).toBeGreaterThan(0);
    expect(placed({ middle: [0, 0, 0], yaw: 0, roll: 0.1 }, [0, 1, 0])[2]).toBeLessThan(0);
  });
  it('of one outline are prisms', () => {
    close(
      solidOf(
        prism(
          [
            [0, 0],
            [2, 0],
            [0, 1],
          ],
          3,
        ),
      ).volume,
      3,
    );
  });
});

describe('the fuel surface', () => {
  it('of a box at rest has the closed form: depth is volume over base', () => {
    const gravity: Place = [0, 0, -G];
    const { level, fuel } = fuelSurface(box, gravity, VOLUME / 4);
    close(-level / G, -0.02 + 0.01);
    close(fuel.volume, VOLUME / 4);
    expect(fuel.centroid[2]).toBeCloseTo(-0.015, 9);
    close(headAt(860, gravity, [0, 0, -0.02], level), 860 * G * 0.01);
  });
  it('of a tilted box is the wedge of the closed form while it touches one corner', () => {
    const tilt = 0.4;
    const gravity: Place = [0, G * Math.sin(tilt), -G * Math.cos(tilt)];
    // A triangle of legs a along y and b along z, b = a tan: its area gives a.
    const a = 0.012;
    const volume = (0.07 * a * a * Math.tan(tilt)) / 2;
    const { level } = fuelSurface(box, gravity, volume);
    const at: Place = [0, 0.015 - a, -0.02];
    expect(headAt(860, gravity, at, level)).toBeCloseTo(0, 6);
  });
  it('falls as the fuel is drawn', () => {
    const gravity: Place = [1, 30, -9];
    const levels = [1, 0.8, 0.5, 0.2, 0.05, 0].map(
      (share) => fuelSurface(wedge, gravity, share * solidOf(wedge).volume).level,
    );
    for (let k = 1; k < levels.length; k++) expect(levels[k]!).toBeGreaterThan(levels[k - 1]!);
  });
  it('leaves behind what lies deeper than the pickup', () => {
    const gravity: Place = [0, 0, -G];
    close(volumeBeyond(box, gravity, [0, 0, -0.015]), VOLUME / 8);
    expect(volumeBeyond(box, gravity, [0, 0, -0.02])).toBe(0);
    expect(volumeBeyond(box, gravity, [0, 0, -0.5])).toBe(0);
  });
  it('refuses less than nothing', () => {
    expect(() => fuelSurface(box, [0, 0, -G], -1)).toThrow('volume of fuel is -1; it must be 0 or greater');
  });
});

describe('apparent gravity', () => {
  const level = { speed: 25, radius: 18, elevation: 0, outboardLow: 0, sideslip: 0, pitch: 0, gravity: 9.81 };
  it('stands the surface at 74° at 25 m/s on 18 m', () => {
    const [, out, up] = gravityInFlight(level);
    expect((Math.atan2(out, -up) * 180) / Math.PI).toBeCloseTo(74.2, 1);
    expect(Math.hypot(out, 0) / 9.81).toBeCloseTo(3.54, 2);
  });
  it('is turned by roll against the elevation: level wings feel the circle outboard and the weight down', () => {
    const turning = 25 ** 2 / (18 * Math.cos(0.3));
    const [, out, up] = gravityInFlight({ ...level, elevation: 0.3, outboardLow: 0.3 });
    close(out, turning);
    close(up, -9.81);
    // Along the lines, wings in their plane: both pull along and across them.
    const [, along, across] = gravityInFlight({ ...level, elevation: 0.3 });
    close(along, turning * Math.cos(0.3) - 9.81 * Math.sin(0.3));
    close(across, -turning * Math.sin(0.3) - 9.81 * Math.cos(0.3));
    // The outboard wing below the horizon: the weight pulls the fuel outboard.
    expect(gravityInFlight({ ...level, speed: 1e-6, elevation: 0.3, outboardLow: 0.4 })[1]).toBeCloseTo(
      9.81 * Math.sin(0.1),
      9,
    );
  });
  it('is turned by yaw and pitch as axes are', () => {
    const [aft, outboard] = gravityInFlight({ ...level, sideslip: 0.1, acceleration: 2 });
    const turning = 25 ** 2 / 18;
    close(aft, 2 * Math.cos(0.1) - turning * Math.sin(0.1));
    close(outboard, turning * Math.cos(0.1) + 2 * Math.sin(0.1));
    const [, , up] = gravityInFlight({ ...level, acceleration: 2, pitch: 0.2 });
    close(up, 2 * Math.sin(0.2) - 9.81 * Math.cos(0.2));
  });
  it('at 60° is that of the model as its balance turns it, which nose-out as it is seen is not', () => {
    const [phi, roll, slip, pitch] = [Math.PI / 3, -0.2, 0.02, 0.15];
    const turning = 25 ** 2 / (18 * Math.cos(phi));
    // Horizontal outward and vertical in the axes along and across the lines, then about the path, the upright axis, the span.
    const level2 = [0, turning * Math.cos(phi) - 9.81 * Math.sin(phi), -turning * Math.sin(phi) - 9.81 * Math.cos(phi)];
    const turn = (v: number[], a: number, b: number, angle: number): number[] => {
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      const out = [...v];
      out[a] = c * v[a]! + s * v[b]!;
      out[b] = c * v[b]! - s * v[a]!;
      return out;
    };
    const body = turn(turn(turn(level2, 1, 2, -roll), 0, 1, slip), 0, 2, pitch);
    const found = gravityInFlight({ ...level, elevation: phi, outboardLow: roll, sideslip: slip, pitch });
    close(found[0], -body[0]!);
    close(found[1], body[1]!);
    close(found[2], body[2]!);
  });
  it('keeps its size however the model is turned', () => {
    const size = (a: Place): number => Math.hypot(...a);
    const turned = { ...level, elevation: 0.3, outboardLow: 0.2, sideslip: 0.1, pitch: -0.15 };
    const plain = { ...level, elevation: 0.3 };
    close(size(gravityInFlight(turned)), size(gravityInFlight(plain)));
  });
  it('points outboard and aft of a model with its nose out and in, down at rest, aft with the nose up', () => {
    expect(gravityInFlight({ ...level, sideslip: 0.1 })[0]).toBeLessThan(0);
    expect(gravityInFlight({ ...level, acceleration: 2 })[0]).toBeCloseTo(2, 12);
    expect(gravityAtRest(G, 0.2)[0]).toBeCloseTo(G * Math.sin(0.2), 12);
    expect(gravityAtRest(G, 0)[2]).toBe(-G);
  });
});
