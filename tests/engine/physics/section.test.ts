import { describe, expect, it } from 'vitest';
import { SECTION_FAMILIES, sectionsOf } from '../../../engine/library/index';
import {
  nearPower,
  type SectionFacts,
  type SectionPoint,
  sectionAt,
  sectionCurves,
  smoothDrag,
  smoothLiftLimit,
} from '../../../engine/physics/index';

const thin: SectionFacts = {
  thickness: 0.06,
  slope: 6,
  zeroLiftAngle: 0,
  moment: -0.01,
  drag: 0.004,
  liftLimit: 1,
  leastDragLift: 0.1,
};
const thick: SectionFacts = {
  thickness: 0.1,
  slope: 5,
  zeroLiftAngle: -0.02,
  moment: -0.03,
  drag: 0.008,
  liftLimit: 2,
  leastDragLift: 0.5,
};

describe('a section between two rows', () => {
  it('is on the straight line between them', () => {
    const between = sectionAt([thin, thick], 0.07);
    expect(between.thickness).toBe(0.07);
    expect(between.slope).toBeCloseTo(5.75, 14);
    expect(between.zeroLiftAngle).toBeCloseTo(-0.005, 14);
    expect(between.moment).toBeCloseTo(-0.015, 14);
    expect(between.drag).toBeCloseTo(0.005, 14);
    expect(between.liftLimit).toBeCloseTo(1.25, 14);
    expect(between.leastDragLift).toBeCloseTo(0.2, 14);
  });
  it('is the row itself at its thickness', () => {
    expect(sectionAt([thin, thick], 0.06)).toEqual(thin);
    expect(sectionAt([thin, thick], 0.1)).toEqual(thick);
  });
  it('holds the end rows beyond them', () => {
    expect(sectionAt([thin, thick], 0.02)).toEqual({ ...thin, thickness: 0.02 });
    expect(sectionAt([thin, thick], 0.2)).toEqual({ ...thick, thickness: 0.2 });
  });
  it('cannot be made of nothing', () => {
    expect(() => sectionAt([], 0.1)).toThrow(new RangeError('rows is empty; it must hold one section or more'));
    expect(() => sectionAt([thin], Number.NaN)).toThrow(
      new RangeError('thickness over chord is NaN; it must be a finite number'),
    );
  });
});

describe('the section families', () => {
  it('run from thin to thick without a thickness twice, drag rising with it', () => {
    for (const family of SECTION_FAMILIES) {
      const rows = sectionsOf(family);
      expect(rows.length).toBeGreaterThan(1);
      for (let k = 1; k < rows.length; k++) {
        expect(rows[k]!.thickness).toBeGreaterThan(rows[k - 1]!.thickness);
        expect(rows[k]!.drag).toBeGreaterThanOrEqual(rows[k - 1]!.drag);
      }
    }
  });
  it('lift near 2π per radian, and lift nothing at an angle that grows with camber', () => {
    for (const family of SECTION_FAMILIES) {
      for (const row of sectionsOf(family)) {
        expect(row.slope).toBeGreaterThan(5.8);
        expect(row.slope).toBeLessThan(6.4);
        expect(row.moment).toBeLessThanOrEqual(0);
      }
    }
    const angle = SECTION_FAMILIES.map((family) => sectionAt(sectionsOf(family), 0.12).zeroLiftAngle);
    expect(angle[0]).toBeCloseTo(0, 12);
    expect(angle[1]!).toBeLessThan(angle[0]!);
    expect(angle[2]!).toBeLessThan(angle[1]!);
  });
});

describe('drag and greatest lift by Reynolds number', () => {
  const point = (thickness: number, reynolds: number, drag: number, liftLimit: number): SectionPoint => ({
    thickness,
    reynolds,
    drag,
    growth: 0.01,
    liftLimit,
  });
  // Drag of 12 % as 1/√Re, of 16 % over it from 1.5 to 2 times, by rows at either end of the range.
  const curves = sectionCurves([
    point(0.16, 400_000, 0.02, 0.9),
    point(0.12, 100_000, 0.02, 0.8),
    point(0.12, 1_600_000, 0.005, 1.8),
    point(0.12, 400_000, 0.01, 1.2),
    point(0.16, 100_000, 0.03, 0.6),
  ]);
  it('is a power of Re between rows, and so is the ratio of one thickness to the other; straight across thickness', () => {
    const twelve = 0.02 / Math.SQRT2;
    expect(smoothDrag(curves, 0.12, 200_000)).toBeCloseTo(twelve, 14);
    expect(smoothDrag(curves, 0.16, 200_000)).toBeCloseTo(twelve * Math.sqrt(1.5 * 2), 14);
    expect(smoothDrag(curves, 0.13, 200_000)).toBeCloseTo(0.75 * twelve + 0.25 * twelve * Math.sqrt(3), 14);
    expect(smoothLiftLimit(curves, 0.16, 200_000)).toBeCloseTo(0.75 * Math.sqrt(0.8 * 1.2), 14);
  });
  it('fills a thickness of few rows in by the one of many: the ratio is held beyond its rows', () => {
    expect(smoothDrag(curves, 0.16, 1_600_000)).toBeCloseTo(2 * 0.005, 14);
    expect(smoothDrag(curves, 0.16, 50_000)).toBeCloseTo(1.5 * 0.02 * Math.SQRT2, 14);
  });
  it('is carried on to 40 000 below, held above, and held beyond the ends of thickness', () => {
    expect(smoothDrag(curves, 0.12, 50_000)).toBeCloseTo(0.02 * Math.SQRT2, 14);
    expect(smoothDrag(curves, 0.12, 10_000)).toBe(smoothDrag(curves, 0.12, 40_000));
    expect(smoothDrag(curves, 0.12, 4e6)).toBeCloseTo(0.005, 14);
    expect(smoothDrag(curves, 0.2, 200_000)).toBeGreaterThan(smoothDrag(curves, 0.16, 200_000));
    expect(smoothDrag(curves, 0.4, 200_000)).toBe(smoothDrag(curves, 0.25, 200_000));
    expect(smoothLiftLimit(curves, 0.06, 200_000)).toBe(smoothLiftLimit(curves, 0.12, 200_000));
  });
  it('is carried on across thickness down to 6 %, and held below', () => {
    const gentle = sectionCurves([
      point(0.12, 100_000, 0.02, 0.8),
      point(0.12, 400_000, 0.01, 1.2),
      point(0.16, 100_000, 0.022, 0.8),
      point(0.16, 400_000, 0.011, 1.2),
    ]);
    const drag = (thickness: number): number => smoothDrag(gentle, thickness, 200_000);
    expect(drag(0.06) / drag(0.12)).toBeCloseTo(0.85, 12);
    expect(drag(0.03)).toBe(drag(0.06));
    expect(drag(0.061)).toBeGreaterThan(drag(0.06));
  });
  it('has no less drag than a laminar plate', () => {
    const steep = sectionCurves([
      point(0.12, 100_000, 0.009, 1),
      point(0.12, 400_000, 0.008, 1),
      point(0.15, 100_000, 0.012, 1),
      point(0.15, 400_000, 0.011, 1),
    ]);
    expect(smoothDrag(steep, 0.06, 160_000)).toBeCloseTo(2.656 / 400, 14);
  });
  it('refuses nothing measured, and a Reynolds number that is none', () => {
    const nothing = 'points say nothing; one thickness or more must be measured';
    expect(() => sectionCurves([])).toThrow(new RangeError(nothing));
    const why = 'Reynolds number is 0; it must be greater than 0';
    expect(() => smoothDrag(curves, 0.12, 0)).toThrow(new RangeError(why));
  });
});

it('follows a power of the airspeed by a quotient: 1 % from half to twice, 7 % from a quarter to four times', () => {
  for (const n of [-0.4, -0.2, 0, 0.2, 0.4]) {
    expect(nearPower(25, 25, n)).toBe(1);
    for (const ratio of [0.5, 0.8, 1.3, 2])
      expect(Math.abs(nearPower(25 * ratio, 25, n) / ratio ** n - 1)).toBeLessThan(0.01);
    for (const ratio of [0.25, 4]) expect(Math.abs(nearPower(ratio, 1, n) / ratio ** n - 1)).toBeLessThan(0.07);
    expect(nearPower(0, 25, n)).toBeCloseTo((1 - n) / (1 + n), 14);
  }
});
