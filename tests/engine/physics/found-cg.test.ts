import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cgOnScales,
  explainingMass,
  fingertipCg,
  foundTogether,
  hangingCg,
  tipScaleCg,
} from '../../../engine/physics/index';

const DEGREE = Math.PI / 180;

describe('the CG found', () => {
  test('on fingertips: behind the leading edge where they are', () => {
    expect(fingertipCg(0.01, 0.04, 0.002)).toEqual({ at: 0.05, error: 0.002 });
    expect(() => fingertipCg(0, 0.04, -1)).toThrow('error of the fingertip is -1; it must be 0 or greater');
  });

  test('on two scales by hand: 600 g at 0, 200 g at 400 mm: 100 mm', () => {
    const supports = [
      { reading: 0.6, place: 0 },
      { reading: 0.2, place: 0.4 },
    ];
    const found = cgOnScales(supports, 0.001, 0);
    expect(found.at).toBeCloseTo(0.1, 15);
    // Each scale turns the model about the CG with its own arm: 100 mm and 300 mm.
    expect(found.error).toBeCloseTo(Math.hypot(0.1, 0.3) * (0.001 / 0.8), 15);
    expect(cgOnScales(supports, 0, 0.001).error).toBeCloseTo((0.001 * Math.hypot(0.6, 0.2)) / 0.8, 15);
  });

  test('on three scales both ways', () => {
    const read = [0.35, 0.33, 0.12];
    const x = cgOnScales(
      read.map((reading, k) => ({ reading, place: [-0.05, -0.05, 0.55][k]! })),
      0,
      0,
    );
    const y = cgOnScales(
      read.map((reading, k) => ({ reading, place: [-0.1, 0.1, 0][k]! })),
      0,
      0,
    );
    expect(x.at).toBeCloseTo((-0.05 * 0.68 + 0.55 * 0.12) / 0.8, 15);
    expect(y.at).toBeCloseTo((0.1 * -0.02) / 0.8, 15);
  });

  test('nothing on any scale is no answer; less than nothing is refused', () => {
    expect(cgOnScales([{ reading: 0, place: 0 }], 0, 0)).toEqual({ at: Number.NaN, error: Number.NaN });
    expect(() => cgOnScales([{ reading: -0.1, place: 0 }], 0, 0)).toThrow(
      'reading of a scale is -0.1; it must be 0 or greater',
    );
  });

  test('hanging level: at the guide; nose low by 5° under half a metre: 43.7 mm ahead of it', () => {
    const guide = { x: 0.08, y: -0.5 };
    expect(hangingCg(guide, 0, 0, { angle: 0, place: 0 })).toEqual({ at: 0.08, error: 0 });
    const found = hangingCg(guide, 0, 5 * DEGREE, { angle: 0.5 * DEGREE, place: 0 });
    expect(found.at).toBeCloseTo(0.08 - 0.5 * Math.tan(5 * DEGREE), 15);
    expect(found.at).toBeCloseTo(0.03626, 5);
    // By a difference quotient.
    const more = hangingCg(guide, 0, 5.5 * DEGREE, { angle: 0, place: 0 });
    expect(found.error).toBeCloseTo(Math.abs(more.at - found.at), 4);
    expect(hangingCg(guide, 0, -5 * DEGREE, { angle: 0, place: 0 }).at).toBeGreaterThan(0.08);
    expect(() => hangingCg(guide, -0.5, 0, { angle: 0, place: 0 })).toThrow(
      'CG below the guide is 0; it must be greater than 0',
    );
    expect(() => hangingCg(guide, 0, 1, { angle: 0, place: 0 })).toThrow(/^droop is 1; it must lie from/);
  });

  test('a CG that is known droops the nose by the angle that finds it again', () => {
    const place = fc.double({ min: -0.1, max: 0.1, noNaN: true });
    fc.assert(
      fc.property(place, place, fc.double({ min: -0.7, max: -0.3, noNaN: true }), (x, guideX, guideY) => {
        const droop = Math.atan2(guideX - x, -guideY);
        expect(hangingCg({ x: guideX, y: guideY }, 0, droop, { angle: 0, place: 0 }).at).toBeCloseTo(x, 12);
      }),
      { seed: 13 },
    );
  });

  test('with a scale under a tip: what it reads times its arm over the mass', () => {
    const errors = { reading: 0.001, place: 0 };
    const outboard = tipScaleCg(1.2, 0, { reading: 0.024, place: 0.6 }, errors);
    expect(outboard.at).toBeCloseTo(0.012, 15);
    expect(outboard.error).toBeCloseTo(0.0005, 15);
    expect(tipScaleCg(1.2, 0, { reading: 0.024, place: -0.6 }, errors).at).toBeCloseTo(-0.012, 15);
    expect(tipScaleCg(1.2, 0.01, { reading: 0, place: 0.6 }, errors).at).toBe(0.01);
    expect(() => tipScaleCg(0, 0, { reading: 0, place: 0 }, errors)).toThrow('mass is 0; it must be greater than 0');
  });

  test('several ways together: the surer counts for more, and both are surer than either', () => {
    const found = foundTogether([
      { at: 0.05, error: 0.002 },
      { at: 0.056, error: 0.004 },
      { at: Number.NaN, error: Number.NaN },
    ]);
    expect(found.at).toBeCloseTo(0.0512, 12);
    expect(found.error).toBeCloseTo(0.002 * Math.sqrt(0.8), 12);
    expect(foundTogether([])).toEqual({ at: Number.NaN, error: Number.NaN });
    expect(
      foundTogether([
        { at: 1, error: 0 },
        { at: 2, error: 1 },
      ]),
    ).toEqual({ at: 1, error: 0 });
  });

  test('the mass that explains it, put into the table, makes it the model', () => {
    const mass = fc.double({ min: 0.2, max: 2, noNaN: true });
    const place = fc.double({ min: -0.2, max: 0.3, noNaN: true });
    fc.assert(
      fc.property(mass, place, mass, place, (tableMass, tableX, foundMass, foundX) => {
        if (Math.abs(foundMass - tableMass) < 1e-3) return;
        const missing = explainingMass({ mass: tableMass, at: tableX }, { mass: foundMass, at: foundX });
        expect(tableMass + missing.mass).toBeCloseTo(foundMass, 12);
        expect((tableMass * tableX + missing.mass * missing.at) / foundMass).toBeCloseTo(foundX, 9);
      }),
      { seed: 13 },
    );
    expect(explainingMass({ mass: 1, at: 0.04 }, { mass: 1, at: 0.05 }).at).toBe(Infinity);
  });
});
