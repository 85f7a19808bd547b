import { describe, expect, it } from 'vitest';
import { SECTION_FAMILIES, sectionsOf } from '../../../engine/library/index';
import { type SectionFacts, sectionAt, VISCOUS_LIFT_DRAG } from '../../../engine/physics/index';

const thin: SectionFacts = { thickness: 0.06, slope: 6, zeroLiftAngle: 0, moment: -0.01, drag: 0.004, liftLimit: 1 };
const thick: SectionFacts = {
  thickness: 0.1,
  slope: 5,
  zeroLiftAngle: -0.02,
  moment: -0.03,
  drag: 0.008,
  liftLimit: 2,
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

it('lets section drag grow with lift by about a hundredth of lift squared', () => {
  expect(VISCOUS_LIFT_DRAG).toBeCloseTo(0.0098, 4);
});
