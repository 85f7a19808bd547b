import { describe, expect, it } from 'vitest';
import { modelSection } from '../../engine/blocks/wing/section';
import { type SmoothSection, sections, smoothSections } from '../../engine/library/index';
import { dragGrowth, nearPower, sectionCurves, smoothDrag, smoothLiftLimit } from '../../engine/physics/index';
import { csvRows, halfUnit, usedIn } from './aero-rows';

const DEGREE = Math.PI / 180;
const sectionNamed = (title: string) => sections.find((each) => each.title === title)!;
const smallest = (title: string): number => sectionNamed(title).drag;

/*
 * NACA Report 824 (recalled; what was read second-hand is named in `confirmed_fields`): slope per degree, angle in degrees. The library holds
 * the same values: half a unit of the last digit.
 */
describe('high Reynolds number', () => {
  const rows = csvRows('aero_section_data.csv');
  it.each(usedIn('aero_section_data.csv'))('%s', (name) => {
    const row = rows.find((each) => each.section === name)!;
    const section = sectionNamed(name);
    const near = (value: number, column: string): void => {
      expect(Math.abs(value - Number(row[column])), column).toBeLessThanOrEqual(halfUnit(row[column]!));
    };
    near(section.slope * DEGREE, 'lift_slope_per_deg');
    near(section.zeroLiftAngle / DEGREE, 'alpha_L0_deg');
    near(section.moment, 'cm_ac');
    near(section.drag, 'cd_min_or_point');
    near(section.liftLimit, 'cl_max');
    expect(section.memory).toBe(row.memory === 'true');
  });
});

/*
 * R. E. Sheldahl and P. C. Klimas, SAND80-2114 (1981): synthesised tables; C. L. Ladson, NASA TM 4074 (1988): tripped tests; a student
 * tunnel test. The wing block computes with the first of them.
 */
describe('low Reynolds number', () => {
  const rows = csvRows('aero_section_low_re.csv');
  const smooth = rows.filter((row) => row.source!.startsWith('Sheldahl'));
  const thicknessOf = (section: string): number => Number(section.slice(-2)) / 100;
  const curves = sectionCurves(smoothSections);

  it.each(usedIn('aero_section_low_re.csv'))('%s', (name) => {
    const row = rows.find((each) => `${each.section} ${each.reynolds}` === name)!;
    const [thickness, reynolds] = [thicknessOf(row.section!), Number(row.reynolds)];
    if (name === 'NACA 0012 6e6') {
      // Measured, tripped: slope and greatest lift within 2 % of the library's full-size row.
      const section = sectionNamed(row.section!);
      expect(Math.abs((section.slope * DEGREE) / Number(row.cl_alpha_per_deg_0_to_4deg) - 1)).toBeLessThan(0.02);
      expect(Math.abs(section.liftLimit / Number(row.cl_max_first_stall) - 1)).toBeLessThan(0.02);
      return;
    }
    if (name === 'NACA 0012 5e4 to 1.5e5') {
      // A soft point: about 0.8 in the middle of a wide range of Reynolds numbers.
      expect(Math.abs(smoothLiftLimit(curves, thickness, 1e5) / Number(row.cl_max_first_stall) - 1)).toBeLessThan(0.1);
      return;
    }
    const drag = Number(row.cd_at_0deg);
    expect(smoothDrag(curves, thickness, reynolds)).toBeCloseTo(drag, 12);
    const lift = row.cl_at_4deg === '' ? 0.44 : 4 * Number(row.cl_alpha_per_deg_0_to_4deg);
    expect(dragGrowth(curves, thickness, reynolds) * lift * lift).toBeCloseTo(Number(row.cd_at_4deg) - drag, 12);
    if (row.cl_max_first_stall !== '') {
      expect(smoothLiftLimit(curves, thickness, reynolds)).toBeCloseTo(Number(row.cl_max_first_stall), 12);
    }
  });

  /** The worst of all rows of a thickness against curves that know nothing of that thickness; Re from 1.6e5 up, as the source trusts it. */
  const leftOut = (section: string, column: string, law: (points: readonly SmoothSection[], re: number) => number) => {
    const others = smoothSections.filter((row) => row.thickness !== thicknessOf(section));
    const known = smooth.filter(
      (row) => row.section === section && row[column] !== '' && Number(row.reynolds) >= 1.6e5,
    );
    expect(known.length).toBeGreaterThanOrEqual(3);
    return Math.max(...known.map((row) => Math.abs(law(others, Number(row.reynolds)) / Number(row[column]) - 1)));
  };
  const SECTIONS = ['NACA 0012', 'NACA 0015', 'NACA 0018'];
  it.each(SECTIONS)('%s left out comes back from the others: drag within 6 %', (section) => {
    const worst = leftOut(section, 'cd_at_0deg', (points, re) =>
      smoothDrag(sectionCurves(points), thicknessOf(section), re),
    );
    expect(worst).toBeLessThan(0.06);
  });
  it.each(['NACA 0015', 'NACA 0018'])('%s left out comes back from the other: greatest lift within 12 %', (section) => {
    const worst = leftOut(section, 'cl_max_first_stall', (points, re) =>
      smoothLiftLimit(sectionCurves(points), thicknessOf(section), re),
    );
    // The worst is at Re 5e6, beyond the last row of the other; up to 2e6 it is 5 %.
    expect(worst).toBeLessThan(0.12);
  });
  it.each(SECTIONS)('each Reynolds number of %s left out comes back from its neighbours within 6 %', (section) => {
    const own = smoothSections.filter((row) => row.thickness === thicknessOf(section) && row.reynolds >= 8e4);
    for (const gone of own.slice(1, -1)) {
      const around = sectionCurves(smoothSections.filter((row) => row !== gone));
      const value = smoothDrag(around, gone.thickness, gone.reynolds);
      expect(Math.abs(value / gone.drag - 1), `${gone.reynolds}`).toBeLessThan(0.06);
    }
  });
  it('has the copy of the rows that the library computes with', () => {
    expect(smoothSections.length).toBe(smooth.length);
    for (const row of smooth) {
      const kept = smoothSections.find(
        (each) => each.thickness === thicknessOf(row.section!) && each.reynolds === Number(row.reynolds),
      )!;
      expect(kept.drag).toBe(Number(row.cd_at_0deg));
      expect(kept.liftLimit).toBe(row.cl_max_first_stall === '' ? Number.NaN : Number(row.cl_max_first_stall));
    }
  });
  it('scales the drag of NACA 0012 to thicker sections by its ratios at Re 2e6, at full size', () => {
    const drag = (section: string): number =>
      Number(rows.find((row) => row.section === section && row.reynolds === '2e6')!.cd_at_0deg);
    for (const title of ['NACA 0015', 'NACA 0018']) {
      const ratio = drag(title) / drag('NACA 0012');
      expect(Math.abs(smallest(title) - smallest('NACA 0012') * ratio)).toBeLessThanOrEqual(0.00006);
    }
  });
});

/*
 * NACA Report 824, ideal lift of the four-digit mean lines of 6 % camber at 30, 40 and 50 % of the chord (from memory): 0.80, 0.76, 0.75. The
 * theory of thin sections gives them within 2 %, so it may give those of the library: A_1 = (2/π) ∫ (dz/dx) cos θ dθ, c_l,i = π A_1.
 */
describe('lift of least drag', () => {
  const ideal = (m: number, p: number): number => {
    const n = 20_000;
    let sum = 0;
    for (let k = 0; k < n; k++) {
      const theta = ((k + 0.5) * Math.PI) / n;
      const x = (1 - Math.cos(theta)) / 2;
      const slope = (2 * m * (p - x)) / (x < p ? p * p : (1 - p) ** 2);
      sum += slope * Math.cos(theta);
    }
    return (2 * sum * Math.PI) / n;
  };
  it.each([
    [0.3, 0.8],
    [0.4, 0.76],
    [0.5, 0.75],
  ])('camber at %f of the chord', (place, printed) => {
    expect(Math.abs(ideal(0.06, place) / printed - 1)).toBeLessThan(0.021);
  });
  it('stands in the library for the cambers that it has', () => {
    for (const section of sections) {
      const camber = Number(section.title.at(5)) / 100;
      expect(Math.abs(section.leastDragLift - ideal(camber, 0.4)), section.title).toBeLessThanOrEqual(0.005);
    }
  });
});

describe('a section of a model', () => {
  it('is the measured one where it has no camber and is 12 % thick or more', () => {
    const section = modelSection('symmetrical', 0.15, 360_000);
    expect(section.drag).toBeCloseTo(0.0091, 12);
    expect(section.liftLimit).toBeCloseTo(0.9572, 12);
    expect(section.leastDragLift).toBe(0);
  });
  it('takes from full size what camber and a thin nose change', () => {
    const plain = modelSection('symmetrical', 0.12, 360_000);
    const cambered = modelSection('cambered 2 %', 0.12, 360_000);
    expect(cambered.drag / plain.drag).toBeCloseTo(0.006 / 0.0058, 12);
    expect(cambered.liftLimit / plain.liftLimit).toBeCloseTo(1.68 / 1.59, 12);
    expect(modelSection('symmetrical', 0.09, 360_000).liftLimit / plain.liftLimit).toBeCloseTo(1.32 / 1.59, 12);
  });
  it('has more drag and less greatest lift on a small slow wing, which one factor for all sizes has not', () => {
    const small = modelSection('symmetrical', 0.15, 80_000);
    const large = modelSection('symmetrical', 0.15, 700_000);
    expect(small.drag / large.drag).toBeCloseTo(0.0147 / 0.0077, 12);
    expect(small.liftLimit / large.liftLimit).toBeCloseTo(0.7189 / 1.0508, 12);
  });
  it('follows the Reynolds number by the power between half and twice it', () => {
    const { dragPower, liftPower } = modelSection('symmetrical', 0.15, 720_000);
    const curves = sectionCurves(smoothSections);
    const half = smoothDrag(curves, 0.15, 360_000);
    expect(half * 4 ** dragPower).toBeCloseTo(smoothDrag(curves, 0.15, 1_440_000), 12);
    expect(dragPower).toBeLessThan(-0.1);
    expect(liftPower).toBeGreaterThan(0.05);
  });
  it('is near the values read at the airspeed itself: 5 % from 0.7 to 1.4 times it, 9 % from half to twice it', () => {
    const worst = { near: 0, far: 0 };
    for (const thickness of [0.09, 0.12, 0.15, 0.18]) {
      for (const reynolds of [80_000, 150_000, 250_000, 360_000, 500_000, 700_000]) {
        const at = modelSection('symmetrical', thickness, reynolds);
        for (const ratio of [0.5, 0.7, 1.4, 2]) {
          const there = modelSection('symmetrical', thickness, ratio * reynolds);
          const drag = (at.drag * nearPower(ratio, 1, at.dragPower)) / there.drag;
          const lift = (at.liftLimit * ratio ** at.liftPower) / there.liftLimit;
          const span = ratio > 0.6 && ratio < 1.5 ? 'near' : 'far';
          worst[span] = Math.max(worst[span], Math.abs(drag - 1), Math.abs(lift - 1));
        }
      }
    }
    expect(worst.near).toBeLessThan(0.05);
    expect(worst.far).toBeLessThan(0.09);
  });
});
