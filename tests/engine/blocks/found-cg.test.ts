import { describe, expect, it } from 'vitest';
import { foundCg } from '../../../engine/blocks/found-cg/index';
import { type Numbers, runBlock } from './run-block';

const DEGREE = Math.PI / 180;
/** A racer of 800 g dry, 860 g with a full tank. */
const links = {
  parts: {
    ...{
      mass: 0.83,
      x: 0.039,
      y: 0.004,
      mass_empty: 0.8,
      x_empty: 0.042,
      y_empty: 0.005,
      mass_half: 0.83,
      x_half: 0.039,
    },
    ...{ y_half: 0.0045, mass_full: 0.86, x_full: 0.036, y_full: 0.004, x_sd: 0.003, y_sd: 0.002 },
  },
  wing: { outboard_span: 0.48 },
  leadouts: { guide_x: 0.07, guide_y: -0.52 },
};
const of = (typed: Numbers, others: Readonly<Record<string, Numbers>> = links) => runBlock(foundCg, typed, others);

describe('the CG found', () => {
  it('says nothing but what the table has until something is measured', () => {
    const { results, why } = of({});
    expect(why).toBeUndefined();
    expect(results).toMatchObject({
      table_mass: 0.8,
      table_x: 0.042,
      table_y: 0.005,
      x: Number.NaN,
      lacking_mass: Number.NaN,
    });
  });
  it('reads the table with the tank as it was', () => {
    const dry = of({ finger: 0.045 }).results;
    expect(dry.difference_x).toBeCloseTo(0.003, 12);
    const wet = of({ finger: 0.045, fuel: 2 }).results;
    expect(wet.difference_x).toBeCloseTo(0.009, 12);
    expect(of({ finger: 0.045, fuel: 3 }).results.difference_x).toBeCloseTo(0.006, 12);
  });
  it('puts fingertips, scales and hanging together, the surer counting for more', () => {
    const scales = { scale_1: 0.6, scale_1_x: -0.06, scale_2: 0.2, scale_2_x: 0.36 };
    const { results } = of({ finger: 0.045, ...scales, droop: 3 * DEGREE });
    expect(results.finger_x).toBe(0.045);
    expect(results.scales_x).toBeCloseTo((0.6 * -0.06 + 0.2 * 0.36) / 0.8, 12);
    expect(results.hanging_x).toBeCloseTo(0.07 - 0.525 * Math.tan(3 * DEGREE), 12);
    const [least, most] = [
      Math.min(results.finger_x!, results.scales_x!, results.hanging_x!),
      Math.max(results.finger_x!, results.scales_x!, results.hanging_x!),
    ];
    expect(results.x).toBeGreaterThan(least);
    expect(results.x).toBeLessThan(most);
    expect(results.x_error).toBeLessThan(0.002);
    expect(results.unsure_x).toBeCloseTo(Math.hypot(results.x_error!, 0.003), 12);
    expect(results.mass).toBeCloseTo(0.8, 12);
  });
  it('finds y by three scales that stand apart, by a scale under the tip, and hangs from where it is found', () => {
    const three = {
      ...{ scale_1: 0.3, scale_1_x: -0.06, scale_1_y: -0.1, scale_2: 0.34, scale_2_x: -0.06, scale_2_y: 0.1 },
      ...{ scale_3: 0.16, scale_3_x: 0.5 },
    };
    expect(of(three).results.y).toBeCloseTo((0.1 * 0.04) / 0.8, 12);
    const tip = of({ tip_scale: 0.02 }).results;
    expect(tip.tip_y).toBeCloseTo((0.02 * 0.48) / 0.8, 12);
    expect(tip.difference_y).toBeCloseTo(tip.tip_y! - 0.005, 12);
    expect(of({ tip_scale: 0.02, whole: 0.96 }).results.tip_y).toBeCloseTo(0.01, 12);
    expect(of({ tip_scale: 0.02, droop: 3 * DEGREE }).results.hanging_x).toBeCloseTo(
      0.07 - (0.52 + tip.tip_y!) * Math.tan(3 * DEGREE),
      12,
    );
    // Two in one line across tell nothing of it.
    expect(of({ scale_1: 0.6, scale_1_x: 0, scale_2: 0.2, scale_2_x: 0.4 }).results.y).toBeNaN();
  });
  it('tells which mass where makes the table the model', () => {
    const { results } = of({ finger: 0.045, whole: 0.812 });
    expect(results.lacking_mass).toBeCloseTo(0.012, 12);
    expect(results.lacking_x).toBeCloseTo((0.812 * 0.045 - 0.8 * 0.042) / 0.012, 9);
    const together = (0.8 * 0.042 + results.lacking_mass! * results.lacking_x!) / 0.812;
    expect(together).toBeCloseTo(0.045, 12);
  });
  it('looks for no place of a mass that the scale can’t tell, and for a mass at a place where nothing was weighed', () => {
    const same = of({ finger: 0.045, whole: 0.801 }).results;
    expect(same.lacking_mass).toBeCloseTo(0.001, 12);
    expect(same.lacking_x).toBeNaN();
    const there = of({ finger: 0.045, station: 0.5 }).results;
    expect(there.lacking_mass).toBeCloseTo((0.8 * 0.003) / (0.5 - 0.045), 12);
    expect(there.lacking_x).toBe(0.5);
  });
  it('refuses scales that read nothing, and a model that would not hang below the guide', () => {
    expect(of({ scale_1: 0, scale_1_x: 0, scale_2: 0, scale_2_x: 0.4 }).why).toBe('weightless');
    expect(of({ whole: 0 }).why).toBe('weightless');
    const beyond = { ...links, parts: { ...links.parts, y_empty: -0.6 } };
    expect(of({ droop: 0 }, beyond).why).toBe('hung');
    expect(of({}, beyond).why).toBeUndefined();
  });
});
