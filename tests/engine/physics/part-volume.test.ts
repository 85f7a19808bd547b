import { describe, expect, it } from 'vitest';
import { runMass } from '../../../engine/physics/part';
import {
  SECTION_FILL,
  sectionVolume,
  stripVolume,
  taperedVolume,
  triangleVolume,
  tubeVolume,
} from '../../../engine/physics/part-volume';

/* Closed forms against sums over thin slices, and against what a ruler says of simple ones. */
const sum = (of: (s: number) => number): number => {
  const n = 20000;
  let total = 0;
  for (let i = 0; i < n; i++) total += of((i + 0.5) / n) / n;
  return total;
};

describe('strips, triangles and lengths off the roll', () => {
  it('are prisms', () => {
    expect(stripVolume(0.9, 0.01, 0.005)).toBeCloseTo(45e-6, 18);
    expect(triangleVolume(0.9, 0.01, 0.006)).toBeCloseTo(27e-6, 18);
    expect(runMass(0.6, 0.0158)).toBeCloseTo(0.00948, 15);
  });
  it('refuse less than nothing', () => {
    expect(() => stripVolume(-1, 1, 1)).toThrow('length is -1; it must be 0 or greater');
    expect(() => stripVolume(1, -1, 1)).toThrow('width is -1; it must be 0 or greater');
    expect(() => stripVolume(1, 1, -1)).toThrow('thickness is -1; it must be 0 or greater');
    expect(() => triangleVolume(-1, 1, 1)).toThrow('length is -1; it must be 0 or greater');
    expect(() => triangleVolume(1, -1, 1)).toThrow('width is -1; it must be 0 or greater');
    expect(() => triangleVolume(1, 1, -1)).toThrow('height is -1; it must be 0 or greater');
    expect(() => runMass(-1, 1)).toThrow('length is -1; it must be 0 or greater');
    expect(() => runMass(1, -1)).toThrow('mass per length is -1; it must be 0 or greater');
  });
});

describe('a tube', () => {
  it('is the circle outside less the circle inside', () => {
    const outside = (Math.PI / 4) * 0.006 ** 2;
    const inside = (Math.PI / 4) * 0.004 ** 2;
    expect(tubeVolume(0.5, 0.006, 0.001)).toBeCloseTo(0.5 * (outside - inside), 18);
  });
  it('is a rod where the wall fills it, and stays one', () => {
    const rod = (Math.PI / 4) * 0.006 ** 2;
    expect(tubeVolume(1, 0.006, 0.003)).toBeCloseTo(rod, 18);
    expect(tubeVolume(1, 0.006, 0.005)).toBeCloseTo(rod, 18);
  });
  it('refuses less than nothing', () => {
    expect(() => tubeVolume(1, -1, 1)).toThrow('diameter is -1; it must be 0 or greater');
    expect(() => tubeVolume(1, 1, -1)).toThrow('wall is -1; it must be 0 or greater');
    expect(() => tubeVolume(-1, 1, 0.1)).toThrow('length is -1; it must be 0 or greater');
  });
});

describe('a tapered sheet', () => {
  const [l, a1, a2, t1, t2] = [0.4, 0.1, 0.06, 0.006, 0.002];
  it('is the sum of its slices', () => {
    const slices = l * sum((s) => (a1 + (a2 - a1) * s) * (t1 + (t2 - t1) * s));
    expect(Math.abs(taperedVolume(l, a1, a2, t1, t2) / slices - 1)).toBeLessThan(1e-8);
  });
  it('is the same from either end, and a plain sheet where nothing is said of the other', () => {
    expect(taperedVolume(l, a2, a1, t2, t1)).toBeCloseTo(taperedVolume(l, a1, a2, t1, t2), 18);
    expect(taperedVolume(l, a1, Number.NaN, t1, Number.NaN)).toBeCloseTo(l * a1 * t1, 18);
    expect(taperedVolume(l, a1, 0, t1, Number.NaN)).toBeCloseTo((l * a1 * t1) / 2, 18);
  });
  it('refuses less than nothing', () => {
    expect(() => taperedVolume(-1, 1, 1, 1, 1)).toThrow('length is -1; it must be 0 or greater');
    expect(() => taperedVolume(1, -1, 1, 1, 1)).toThrow('width is -1; it must be 0 or greater');
    expect(() => taperedVolume(1, 1, -1, 1, 1)).toThrow('width at the other end is -1; it must be 0 or greater');
    expect(() => taperedVolume(1, 1, 1, -1, 1)).toThrow('thickness is -1; it must be 0 or greater');
    expect(() => taperedVolume(1, 1, 1, 1, -1)).toThrow('thickness at the other end is -1; it must be 0 or greater');
  });
});

describe('a rib or a core', () => {
  it('fills 0.685 of its chord by its thickness, as a four-digit section does', () => {
    // NACA Report 460: half thickness 5 t (0.2969 √x − 0.1260 x − 0.3516 x² + 0.2843 x³ − 0.1015 x⁴), both halves.
    const half = (x: number): number =>
      5 * (0.2969 * Math.sqrt(x) - 0.126 * x - 0.3516 * x ** 2 + 0.2843 * x ** 3 - 0.1015 * x ** 4);
    expect(Math.abs(SECTION_FILL - 2 * sum(half))).toBeLessThan(1e-6);
    expect(SECTION_FILL).toBeCloseTo(0.6851, 4);
  });
  it('is the sum of its slices where it tapers', () => {
    const [l, c1, c2, ratio] = [0.5, 0.25, 0.18, 0.15];
    const slices = l * sum((s) => SECTION_FILL * ratio * (c1 + (c2 - c1) * s) ** 2);
    expect(Math.abs(sectionVolume(l, c1, c2, ratio, 0) / slices - 1)).toBeLessThan(1e-8);
    expect(sectionVolume(l, c2, c1, ratio, 0)).toBeCloseTo(sectionVolume(l, c1, c2, ratio, 0), 18);
  });
  it('has no taper where no other chord is said, and is less what is cut away', () => {
    const whole = sectionVolume(0.002, 0.22, Number.NaN, 0.12, 0);
    expect(whole).toBeCloseTo(0.002 * SECTION_FILL * 0.12 * 0.22 ** 2, 18);
    expect(sectionVolume(0.002, 0.22, Number.NaN, 0.12, 0.4)).toBeCloseTo(0.6 * whole, 18);
    expect(sectionVolume(0.002, 0.22, Number.NaN, 0.12, 1)).toBe(0);
  });
  it('is near so many ribs cut one by one', () => {
    const n = 11;
    const ribs = Array.from({ length: n }, (_, i) => 0.25 + ((0.18 - 0.25) * i) / (n - 1));
    const each = ribs.reduce((total, c) => total + sectionVolume(0.002, c, Number.NaN, 0.15, 0), 0);
    expect(Math.abs((n * sectionVolume(0.002, 0.25, 0.18, 0.15, 0)) / each - 1)).toBeLessThan(0.002);
  });
  it('refuses what cannot be', () => {
    expect(() => sectionVolume(-1, 1, 1, 0.1, 0)).toThrow('length is -1; it must be 0 or greater');
    expect(() => sectionVolume(1, -1, 1, 0.1, 0)).toThrow('chord is -1; it must be 0 or greater');
    expect(() => sectionVolume(1, 1, -1, 0.1, 0)).toThrow('tip chord is -1; it must be 0 or greater');
    expect(() => sectionVolume(1, 1, 1, -0.1, 0)).toThrow('thickness over chord is -0.1; it must be 0 or greater');
    expect(() => sectionVolume(1, 1, 1, 0.1, 1.1)).toThrow('share cut away is 1.1; it must lie from 0 to 1');
  });
});
