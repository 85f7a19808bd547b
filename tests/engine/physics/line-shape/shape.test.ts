import { describe, expect, it } from 'vitest';
import { integrate } from '../../../../engine/numerics/index';
import {
  bowOf,
  catenary,
  endsOf,
  lineDrag,
  lineShape,
  lineStretch,
  linesMass,
  linesPressDown,
  pullAtHandle,
  unevenPair,
} from '../../../../engine/physics/index';
import { bundleAt, endsAt, GRAVITY, GUIDE, LEVEL, RADIUS, REACH, SPEED } from './lines';

const ELEVATIONS = [-0.05, 0, LEVEL, 0.5, 1.05, 1.3];
const still = { density: 1e-12 };

describe('shape of turning lines', () => {
  it.each(ELEVATIONS)('meets guide and pull at the elevation %f, in few steps', (elevation) => {
    for (const dragCoefficient of [1.15, Number.NaN]) {
      const shape = lineShape(bundleAt(elevation, { dragCoefficient }), endsAt(elevation));
      expect(shape.status).toBe('settled');
      expect(shape.iterations).toBeLessThanOrEqual(5);
      expect(shape.residual).toBeLessThan(1e-10);
      const end = shape.along.length - 1;
      expect(shape.x[end]).toBeCloseTo(GUIDE * Math.cos(elevation), 8);
      expect(shape.y[end]).toBeCloseTo(0, 8);
      expect(shape.z[end]).toBeCloseTo(GUIDE * Math.sin(elevation), 8);
      expect(Math.hypot(shape.pullX[end]!, shape.pullY[end]!, shape.pullZ[end]!)).toBeCloseTo(25.5, 8);
      // The arm points along the lines.
      expect(Math.hypot(...shape.handle)).toBeCloseTo(REACH, 12);
      expect(shape.handle[1] * shape.pullX[0]!).toBeCloseTo(shape.handle[0] * shape.pullY[0]!, 12);
    }
  });

  it('is fine enough with its steps', () => {
    for (const elevation of ELEVATIONS) {
      for (const dragCoefficient of [1.15, Number.NaN]) {
        const bundle = bundleAt(elevation, { dragCoefficient });
        const [coarse, fine] = [24, 96].map((steps) => {
          const shape = lineShape(bundle, endsAt(elevation), steps);
          return { ...bowOf(shape, bundle.rate), ...endsOf(shape, elevation, bundle.rate) };
        });
        for (const name of ['greatestBack', 'greatestDown', 'extra', 'drag', 'press', 'handlePull'] as const)
          expect(Math.abs(coarse![name] / fine![name] - 1), `${name} at ${elevation}`).toBeLessThan(1e-4);
      }
    }
  });

  it('balances the moments of drag about the axis, exactly', () => {
    const bundle = bundleAt(LEVEL);
    const shape = lineShape(bundle, endsAt(LEVEL), 200);
    // Drag × radius by a sum along the shape, of each piece's speed across it.
    let moment = 0;
    const at = (k: number): number => {
      const [x, y, z] = [shape.pullX[k]!, shape.pullY[k]!, shape.pullZ[k]!];
      const T = Math.hypot(x, y, z);
      const v = [-bundle.rate * shape.y[k]!, bundle.rate * shape.x[k]!, 0] as const;
      const along = (v[0] * x + v[1] * y) / T;
      const [nx, ny, nz] = [v[0] - (along * x) / T, v[1] - (along * y) / T, -(along * z) / T];
      const force = 0.5 * 1.225 * 1.15 * 0.00038 * 2 * Math.hypot(nx, ny, nz);
      return force * (shape.x[k]! * ny - shape.y[k]! * nx);
    };
    for (let k = 1; k < shape.along.length; k++)
      moment += ((at(k - 1) + at(k)) / 2) * (shape.along[k]! - shape.along[k - 1]!);
    const { drag } = endsOf(shape, LEVEL, bundle.rate);
    expect((drag * GUIDE * Math.cos(LEVEL)) / moment).toBeCloseTo(1, 4);
  });
});

describe('the closed forms of lines', () => {
  const rate = SPEED / RADIUS;
  const mass = linesMass(2, 0.0006, GUIDE - REACH);
  const drag = lineDrag({ ...bundleAt(LEVEL), handleReach: REACH, guideRadius: GUIDE }, rate);
  const shape = lineShape(bundleAt(LEVEL), endsAt(LEVEL));
  const ends = endsOf(shape, LEVEL, bundleAt(LEVEL).rate);
  const off = (value: number, closed: number): number => Math.abs(value / closed - 1);

  it('agree in drag, trail and pull at the handle within 0.5 %', () => {
    expect(off(ends.drag, drag)).toBeLessThan(0.0015);
    expect(off(ends.guideTrail, Math.asin(drag / 25.5))).toBeLessThan(0.0015);
    const atHandle = pullAtHandle(25.5, 0.0012, rate, REACH, GUIDE, mass * GRAVITY, LEVEL);
    expect(off(ends.handlePull, atHandle)).toBeLessThan(1e-5);
    expect(off(ends.handleTrail, ends.guideTrail / 3)).toBeLessThan(0.005);
  });

  it('agree in press on the guide within 1 %: what the sag of 2 cm itself takes is beyond them', () => {
    const closed = linesPressDown(mass, GRAVITY, LEVEL, REACH, GUIDE, SPEED, RADIUS);
    expect(ends.press).toBeLessThan(closed);
    expect(off(ends.press, closed)).toBeLessThan(0.01);
    // Lines that are pulled straight press as the integral of their own loads along a straight line.
    const load = (r: number): number =>
      (0.0012 * (GRAVITY * Math.cos(LEVEL) + rate * rate * r * Math.tan(LEVEL)) * r) / GUIDE;
    const pull = 5000;
    const straight = endsOf(lineShape(bundleAt(LEVEL), endsAt(LEVEL, { pull })), LEVEL, bundleAt(LEVEL).rate);
    expect(off(straight.press, integrate(load, REACH, GUIDE, 8))).toBeLessThan(1e-4);
    expect(off(straight.drag, drag)).toBeLessThan(1e-4);
  });

  it('agree in the cubic law of the trail along the line, where the hand has no reach', () => {
    const bundle = bundleAt(0, { linearMass: 1e-9 });
    const line = lineShape(bundle, endsAt(0, { handle: 0, pull: 100 }));
    const { guideTrail, handleTrail } = endsOf(line, 0, bundle.rate);
    expect(handleTrail / guideTrail).toBeCloseTo(1 / 3, 4);
    const middle = 12;
    const trail = Math.atan2(line.pullY[middle]!, line.pullX[middle]!) - Math.atan2(line.y[middle]!, line.x[middle]!);
    expect(trail / guideTrail).toBeCloseTo(1 / 8, 3);
    // r ε/3 (1 − (r/R)³) is greatest at r = R/∛4.
    const greatest = (GUIDE * guideTrail * 0.75) / (3 * Math.cbrt(4));
    expect(bowOf(line, bundle.rate).greatestBack / greatest).toBeCloseTo(1, 3);
  });

  it('agree in stretch', () => {
    const one = lineStretch(25.5 / 2, GUIDE - REACH, 17000);
    const swing = (0.0012 * rate * rate * (GUIDE ** 3 * (2 / 3) - GUIDE * GUIDE * REACH + REACH ** 3 / 3)) / 2;
    expect(off(shape.pullLength / (2 * 17000), one + swing / (2 * 17000))).toBeLessThan(0.001);
  });
});

describe('limits and symmetries', () => {
  it('is a straight radius without air and weight', () => {
    const bundle = bundleAt(0, { ...still, gravity: 0 });
    const shape = lineShape(bundle, endsAt(0));
    const bow = bowOf(shape, bundle.rate);
    for (const value of [bow.greatestBack, bow.greatestDown, bow.extra]) expect(Math.abs(value)).toBeLessThan(1e-9);
    const { handleTrail, press, drag, handlePull } = endsOf(shape, 0, bundle.rate);
    for (const value of [handleTrail, press, drag]) expect(Math.abs(value)).toBeLessThan(1e-9);
    expect(handlePull).toBeCloseTo(25.5 + 0.5 * 0.0012 * bundle.rate ** 2 * (GUIDE ** 2 - REACH ** 2), 9);
  });

  it('lies in one upright plane without air', () => {
    const shape = lineShape(bundleAt(0.4, still), endsAt(0.4));
    for (const y of shape.y) expect(Math.abs(y)).toBeLessThan(1e-9);
    expect(bowOf(shape, 1).greatestDown).toBeGreaterThan(0.01);
  });

  it('lies in the plane of the circle without weight, and is the same above and below it', () => {
    const level = lineShape(bundleAt(0, { gravity: 0 }), endsAt(0));
    for (const z of level.z) expect(Math.abs(z)).toBeLessThan(1e-9);
    const [high, low] = [0.3, -0.3].map((elevation) =>
      lineShape(bundleAt(elevation, { gravity: 0 }), endsAt(elevation)),
    );
    for (const [k, z] of high!.z.entries()) {
      expect(low!.z[k]).toBeCloseTo(-z, 8);
      expect(low!.y[k]).toBeCloseTo(high!.y[k]!, 8);
    }
  });

  it('is mirrored in plan by flying the other way', () => {
    const [there, back] = [bundleAt(LEVEL), bundleAt(LEVEL, { rate: -bundleAt(LEVEL).rate })];
    const [first, second] = [lineShape(there, endsAt(LEVEL)), lineShape(back, endsAt(LEVEL))];
    for (const [k, y] of first.y.entries()) {
      expect(second.y[k]).toBeCloseTo(-y, 10);
      expect(second.z[k]).toBeCloseTo(first.z[k]!, 10);
    }
    expect(bowOf(second, back.rate).greatestBack).toBeCloseTo(bowOf(first, there.rate).greatestBack, 10);
    expect(bowOf(first, there.rate).greatestBack).toBeGreaterThan(0.1);
    expect(endsOf(second, LEVEL, back.rate).guideTrail).toBeCloseTo(endsOf(first, LEVEL, there.rate).guideTrail, 10);
    expect(endsOf(first, LEVEL, there.rate).handleTrail).toBeGreaterThan(0);
  });

  it('has n lines hang as one that weighs and drags n times as much', () => {
    const pair = lineShape(bundleAt(LEVEL), endsAt(LEVEL));
    const one = lineShape(bundleAt(LEVEL, { count: 1 }), endsAt(LEVEL, { pull: 12.75 }));
    for (const [k, y] of pair.y.entries()) expect(one.y[k]).toBeCloseTo(y, 9);
    expect(one.pullLength).toBeCloseTo(pair.pullLength / 2, 7);
  });

  it.each([
    [0, 2],
    [0.3, 1],
    [-0.6, 0.5],
    [1.1, 3],
  ])('is the exact catenary at rest, %f rad up', (elevation, levelPull) => {
    const [c, s] = [Math.cos(elevation), Math.sin(elevation)];
    const exact = catenary((GUIDE - REACH) * c, (GUIDE - REACH) * s, levelPull, 0.0012 * GRAVITY);
    const ends = endsAt(elevation, { pull: exact.farTension, handle: [REACH * c, 0, REACH * s] });
    const shape = lineShape(bundleAt(elevation, { rate: 0 }), ends, 96);
    expect(shape.status).toBe('settled');
    expect(shape.length / exact.length).toBeCloseTo(1, 8);
    expect(shape.pullZ[0]! / shape.pullX[0]!).toBeCloseTo(exact.nearSlope, 7);
    expect(shape.pullX[40]).toBeCloseTo(levelPull, 7);
    expect(bowOf(shape, 0).greatestDown / (exact.sag * c)).toBeCloseTo(1, 4);
  });

  it('comes to the catenary as the turning ends', () => {
    const exact = catenary(GUIDE - REACH, 0, 2, 0.0012 * GRAVITY);
    const ends = endsAt(0, { pull: exact.farTension, handle: [REACH, 0, 0] });
    const misses = [0.02, 0.01, 0.005].map((rate) => lineShape(bundleAt(0, { rate }), ends).length - exact.length);
    // The loads grow with the square of the rate.
    expect(misses[0]! / misses[1]!).toBeGreaterThan(3.5);
    expect(Math.abs(misses[2]!)).toBeLessThan(2e-6);
  });

  it('says that there is no shape where drag carries the lines away', () => {
    const shape = lineShape(bundleAt(LEVEL), endsAt(LEVEL, { pull: 0.2 }));
    expect(shape.status).not.toBe('settled');
    expect(shape.residual).toBeGreaterThan(1e-3);
  });

  it('refuses lines without length or pull', () => {
    expect(() => lineShape(bundleAt(0), endsAt(0, { pull: 0 }))).toThrow(
      new RangeError('pull is 0; it must be greater than 0'),
    );
    expect(() => lineShape(bundleAt(0), endsAt(0, { handle: 20 }))).toThrow(
      new RangeError('handle reach is 20; it must lie from 0 to 18.9'),
    );
    expect(() => lineShape(bundleAt(0), endsAt(0, { handle: GUIDE }))).toThrow(
      new RangeError('distance from handle to guide is 0; it must be greater than 0'),
    );
  });
});

describe('uneven pull', () => {
  const { handle } = lineShape(bundleAt(LEVEL), endsAt(LEVEL));
  const held = endsAt(LEVEL, { handle });

  it('is nothing where both lines pull alike, and each lies as both together', () => {
    const pair = unevenPair(bundleAt(LEVEL), held, 0, 17000)!;
    expect([pair.stretch, pair.bow]).toEqual([0, 0]);
    const both = lineShape(bundleAt(LEVEL), endsAt(LEVEL));
    for (const [k, y] of both.y.entries()) expect(pair.easier.y[k]).toBeCloseTo(y, 8);
  });

  it('stretches the harder line more, by Hooke, and straightens it', () => {
    const pair = unevenPair(bundleAt(LEVEL), held, 4, 17000)!;
    expect(pair.stretch / lineStretch(4, GUIDE - REACH, 17000)).toBeCloseTo(1, 2);
    expect(pair.bow).toBeGreaterThan(0.0005);
    // The bow takes length as the inverse square of the pull.
    const extra = bowOf(lineShape(bundleAt(LEVEL), endsAt(LEVEL)), bundleAt(LEVEL).rate).extra;
    const byPull = extra * ((12.75 / 10.75) ** 2 - (12.75 / 14.75) ** 2);
    expect(pair.bow / byPull).toBeCloseTo(1, 1);
    // Stretch is the larger part, but the bow is no trifle.
    expect(pair.bow / pair.stretch).toBeGreaterThan(0.3);
    const twice = unevenPair(bundleAt(LEVEL), held, 4, 34000)!;
    expect(twice.stretch).toBeCloseTo(pair.stretch / 2, 12);
    expect(twice.bow).toBe(pair.bow);
  });

  it('has no answer where the easier line has no pull left', () => {
    expect(unevenPair(bundleAt(LEVEL), held, 25.5, 17000)).toBeUndefined();
  });
});
