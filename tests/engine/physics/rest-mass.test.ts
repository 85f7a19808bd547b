import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { restMass } from '../../../engine/physics/index';

const cgWith = (known: number, knownX: number, rest: number, restX: number): number =>
  (known * knownX + rest * restX) / (known + rest);

describe('what the rest may weigh', () => {
  test('by hand: 300 g at 20 mm, the rest at 80 mm, wanted at 40 mm: half as much', () => {
    const found = restMass(0.3, 0.02, 0.08, 0.04, 0.04);
    expect(found).toMatchObject({ status: 'settled' });
    if (found.status === 'settled') {
      expect(found.least).toBeCloseTo(0.15, 12);
      expect(found.most).toBeCloseTo(0.15, 12);
    }
  });
  test('behind the known ends with the limit that lies aft, ahead of it with the one that lies forward', () => {
    expect(restMass(0.3, 0.02, 0.08, 0.03, 0.05)).toEqual({
      status: 'settled',
      least: (0.3 * (0.03 - 0.02)) / (0.08 - 0.03),
      most: (0.3 * (0.05 - 0.02)) / (0.08 - 0.05),
    });
    expect(restMass(0.3, 0.08, 0.02, 0.03, 0.05)).toEqual({
      status: 'settled',
      least: (0.3 * (0.05 - 0.08)) / (0.02 - 0.05),
      most: (0.3 * (0.03 - 0.08)) / (0.02 - 0.03),
    });
  });
  test('nothing at all where the known lies there, however much where the rest does', () => {
    expect(restMass(0.3, 0.04, 0.08, 0.03, 0.05)).toMatchObject({ least: 0 });
    expect(restMass(0.3, 0.02, 0.04, 0.03, 0.05)).toMatchObject({ most: Infinity });
    expect(restMass(0.3, 0.04, 0.04, 0.03, 0.05)).toEqual({ status: 'settled', least: 0, most: Infinity });
    expect(restMass(0, Number.NaN, 0.04, 0.03, 0.05)).toEqual({ status: 'settled', least: 0, most: Infinity });
  });
  test('none where the CG goes the other way, or not so far', () => {
    expect(restMass(0.3, 0.06, 0.08, 0.03, 0.05)).toEqual({ status: 'none' });
    expect(restMass(0.3, 0.02, 0.03, 0.03, 0.05)).toEqual({ status: 'none' });
    expect(restMass(0, 0, 0.06, 0.03, 0.05)).toEqual({ status: 'none' });
    expect(restMass(0.3, 0.06, 0.06, 0.03, 0.05)).toEqual({ status: 'none' });
  });
  test('less than nothing is known: refused', () => {
    expect(() => restMass(-0.1, 0, 0, 0, 0)).toThrow(new RangeError('known mass is -0.1; it must be 0 or greater'));
  });
  test('within what it says the CG lies between the limits, beyond it does not', () => {
    const place = fc.double({ min: -0.3, max: 0.6, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 3, noNaN: true }),
        place,
        place,
        place,
        fc.double({ min: 0.001, max: 0.1, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (known, knownX, restX, low, width, rest) => {
          const high = low + width;
          const found = restMass(known, knownX, restX, low, high);
          const cg = cgWith(known, knownX, rest, restX);
          if (Math.min(Math.abs(cg - low), Math.abs(cg - high)) < 1e-9) return;
          const inside = cg > low && cg < high;
          const allowed = found.status === 'settled' && rest >= found.least && rest <= found.most;
          expect(allowed).toBe(inside);
        },
      ),
      { seed: 13 },
    );
  });
});
