import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rearmostEngine, type SideBox, sideGap } from '../../../engine/physics/index';

const box = (front: number, rear: number, bottom: number, top: number): SideBox => ({ front, rear, bottom, top });
const some = fc
  .tuple(...Array.from({ length: 4 }, () => fc.double({ min: -2, max: 2, noNaN: true })))
  .map(([a, b, c, d]) => box(Math.min(a!, b!), Math.max(a!, b!), Math.min(c!, d!), Math.max(c!, d!)));
const moved = ({ front, rear, bottom, top }: SideBox, x: number, z: number): SideBox =>
  box(front + x, rear + x, bottom + z, top + z);

describe('the gap of two boxes', () => {
  const tank = box(-0.1, -0.02, -0.02, 0.02);

  it('runs along the body where they stand at one height, upright where they stand above each other', () => {
    expect(sideGap(box(-0.18, -0.12, -0.01, 0.03), tank)).toBeCloseTo(0.02, 15);
    expect(sideGap(tank, box(-0.05, 0.2, 0.025, 0.05))).toBeCloseTo(0.005, 15);
  });

  it('is the distance of their corners where they stand neither', () => {
    expect(sideGap(tank, box(0.01, 0.2, 0.06, 0.08))).toBeCloseTo(0.05, 15);
  });

  it('is 0 where they touch, and below it by the least that parts them', () => {
    expect(sideGap(box(-0.2, -0.1, 0, 0.01), tank)).toBe(0);
    expect(sideGap(box(-0.2, -0.09, 0, 0.01), tank)).toBeCloseTo(-0.01, 15);
    expect(sideGap(box(-0.2, 0.2, 0.015, 0.04), tank)).toBeCloseTo(-0.005, 15);
  });

  it('is the same whichever is named first and wherever both stand, and parting them by it makes it 0', () => {
    const place = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(some, some, place, place, (a, b, x, z) => {
        const gap = sideGap(a, b);
        expect(sideGap(b, a)).toBe(gap);
        expect(sideGap(moved(a, x, z), moved(b, x, z))).toBeCloseTo(gap, 12);
        if (gap >= 0) return;
        const ways = [moved(b, -gap, 0), moved(b, gap, 0), moved(b, 0, -gap), moved(b, 0, gap)];
        const left = ways.map((way) => sideGap(a, way));
        expect(Math.max(...left)).toBeCloseTo(0, 12);
      }),
    );
  });

  it('is not known where a place is not, and boxes turned over are refused', () => {
    expect(sideGap(tank, box(Number.NaN, Number.NaN, 0, 1))).toBeNaN();
    expect(() => sideGap(tank, box(1, 0, 0, 1))).toThrow('rear is 0; it must not lie ahead of front, 1');
    expect(() => sideGap(tank, box(0, 1, 2, 1))).toThrow('top is 1; it must not lie under bottom, 2');
  });
});

describe('an engine at its rearmost', () => {
  it('stands at the rear of its bearers, or with its room ahead of what stands behind', () => {
    expect(rearmostEngine(0.06, -0.05, 0.1, 0.01)).toBeCloseTo(-0.08, 15);
    expect(rearmostEngine(0.06, 0.02, -0.08, 0.012)).toBeCloseTo(-0.122, 15);
    expect(rearmostEngine(0.06, 0.02, Number.POSITIVE_INFINITY, 0.012)).toBeCloseTo(-0.01, 15);
  });

  it('has a length, and a room that is not below 0', () => {
    expect(() => rearmostEngine(0, 0, 0, 0)).toThrow('length is 0; it must be greater than 0');
    expect(() => rearmostEngine(0.06, 0, 0, -0.01)).toThrow('room is -0.01; it must be 0 or greater');
  });
});
