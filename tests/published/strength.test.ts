import { describe, expect, it } from 'vitest';
import { gearFields } from '../../engine/blocks/gear/fields';
import { gearResults } from '../../engine/blocks/gear/results';
import { strengthFields } from '../../engine/blocks/strength/fields';
import {
  catenary,
  gearLeg,
  musicWireModuli,
  preload,
  ROLLING,
  STEEL_BOLT_YIELD,
  threadStressArea,
} from '../../engine/physics/index';
import { csvRows, halfUnit, jsonOf } from './aero-rows';
import { usedFlightRows } from './flight-rows';
import { levelPullOfSag } from './level-pull';

const INCH = 0.0254;
const POUND = 4.4482216152605;

/* Stress areas of threads: J. E. Shigley, table 8-2 (after ANSI B1.1), and public tables of ISO threads. */
describe('stress area of threads', () => {
  it.each(usedFlightRows('fastener_areas.csv'))('%s', (thread) => {
    const row = csvRows('fastener_areas.csv').find((each) => each.thread === thread)!;
    const pitch = row.threads_per_inch
      ? INCH / Number(row.threads_per_inch)
      : Number(/x([\d.]+)$/.exec(thread)![1]) / 1000;
    const area = threadStressArea(
      Number(row.nominal_diameter_mm) / 1000,
      pitch,
      row.threads_per_inch ? 'inch' : 'metric',
    );
    // The formula with the diameter in millimetres to three digits, so a digit of its own of the area is asked for.
    expect(Math.abs((area * 1e6) / Number(row.stress_area_mm2_formula) - 1)).toBeLessThan(1e-3);
    const printed = row.stress_area_in2_tabulated!;
    expect(Math.abs(area / INCH ** 2 - Number(printed))).toBeLessThan(1.5 * halfUnit(printed));
  });
});

/* ISO 898-1 values read in two public tables. */
describe('strength of screws', () => {
  it.each(usedFlightRows('fastener_grades.csv'))('%s', (grade) => {
    const row = csvRows('fastener_grades.csv').find((each) => each.grade === grade)!;
    if (grade.includes('5.8')) expect(STEEL_BOLT_YIELD / 1e6).toBe(Number(row.yield_MPa));
    else expect(strengthFields.screw_strength.default / 1e6).toBe(Number(row.proof_MPa));
  });
});

/* FAA AC 43.13-1B, table 7-3: flexible cable. */
describe('strength of cable', () => {
  it.each(usedFlightRows('wire_aircraft_cable.csv'))('%s', (name) => {
    const row = csvRows('wire_aircraft_cable.csv').find(
      (each) => `${each.nominal_diameter_in} ${each.construction}` === name,
    )!;
    for (const field of [strengthFields.cable_breaking_load, strengthFields.leadout_breaking_load]) {
      expect(Math.abs(field.default - Number(row.min_breaking_CRES_lbf) * POUND)).toBeLessThan(0.5);
    }
  });
});

/* Round wire and cantilever: Roark, Gere, Shigley (from memory). J. M. Gere, Mechanics of Materials, example 5-2; T. H. Wentzell, Machine Design, example 6.1. */
describe('bending and bolts', () => {
  const file = jsonOf('strength_wire_bending.json');
  const example = (id: string) => file.examples.find((each: { id: string }) => each.id === id);
  const d = 0.002;
  const leg = {
    points: [
      [0, 0, 0],
      [0, 0.1, 0],
    ],
    diameter: d,
    ...musicWireModuli(d),
    between: 0,
  } as const;
  const checks: Readonly<Record<string, () => void>> = {
    solid_round() {
      expect(file.solid_round).toMatchObject({ I: 'pi*d^4/64', J: 'pi*d^4/32', Z: 'pi*d^3/32' });
      const twisted = {
        ...leg,
        points: [
          [0, 0, 0],
          [0, 0.1, 0],
          [0.1, 0.1, 0],
        ],
      } as const;
      const { young, shear } = musicWireModuli(d);
      const [inertia, polar] = [(Math.PI * d ** 4) / 64, (Math.PI * d ** 4) / 32];
      const wanted = (2 * 0.1 ** 3) / (3 * young * inertia) + 0.1 ** 3 / (shear * polar);
      expect(gearLeg(twisted, [0, 0, 1]).compliance / wanted).toBeCloseTo(1, 12);
    },
    cantilever() {
      expect(file.cantilever).toMatchObject({ end_load_deflection: 'P*L^3/(3*E*I)', max_stress: '32*P*L/(pi*d^3)' });
      const answer = gearLeg(leg, [0, 0, 1]);
      expect(answer.compliance / (0.1 ** 3 / ((3 * leg.young * Math.PI * d ** 4) / 64))).toBeCloseTo(1, 12);
      expect(answer.stress / ((32 * 0.1) / (Math.PI * d ** 3))).toBeCloseTo(1, 12);
    },
    gere_5_2() {
      const { givens, answer } = example('gere_5_2');
      const bent = {
        ...leg,
        points: [
          [0, 0, 0],
          [0, answer.moment_N_m, 0],
        ],
        diameter: givens.wire_diameter_mm / 1000,
      } as const;
      expect(Math.abs(gearLeg(bent, [0, 0, 1]).stress / 1e6 - answer.max_stress_MPa)).toBeLessThan(1);
    },
    /* F. P. Beer et al., Vector Mechanics for Engineers: Statics, sample problem 7.9: a flat cable taken as a parabola; the catenary comes as near as it prints. */
    beer_7_9_parabolic_cable() {
      const { givens, answer } = example('beer_7_9_parabolic_cable');
      const weight = givens.mass_per_length_kg_m * givens.g_m_s2;
      const levelPull = levelPullOfSag(givens.span_m, givens.sag_m, weight);
      const cable = catenary(givens.span_m, 0, levelPull, weight);
      expect(Math.abs(cable.farTension - answer.end_tension_N)).toBeLessThan(2);
      expect(Math.abs((Math.atan(cable.farSlope) * 180) / Math.PI - answer.slope_deg)).toBeLessThan(0.05);
      expect(Math.abs(cable.length - answer.length_m)).toBeLessThan(5e-5);
    },
    wentzell_6_1_preload() {
      const { givens, answer } = example('wentzell_6_1_preload');
      const force = givens.preload_fraction * givens.proof_psi * givens.stress_area_in2;
      // The torque is printed to 10 in·lbf.
      const held = preload(answer.torque_in_lbf, givens.torque_coefficient, givens.nominal_in);
      expect(Math.abs(held / force - 1)).toBeLessThanOrEqual(5 / answer.torque_in_lbf);
    },
  };
  it.each(usedFlightRows('strength_wire_bending.json'))('%s', (name) => checks[name]!());
});

/* D. P. Raymer, ch. 11 (from memory); course notes on aircraft design, W. H. Mason. */
describe('the ground', () => {
  const file = jsonOf('aero_guidelines.json');
  it('shows the published band of the wheel angle', () => {
    const band = gearResults.wheel_angle.usual.map((angle) => Math.round((angle * 180) / Math.PI));
    expect(band).toEqual(file.landing_gear.taildragger_main_gear_ahead_of_cg_deg);
  });
  it.each([
    ['dry concrete or asphalt', 'pavement', gearFields.pavement],
    ['short dry grass', 'shortGrass', gearFields.short_grass],
    ['long grass', 'longGrass', gearFields.long_grass],
  ] as const)('takes the rolling resistance of %s', (name, key, field) => {
    expect(ROLLING[key]).toBe(file.rolling_resistance.values[name]);
    expect(field.default).toBe(ROLLING[key]);
  });
});
