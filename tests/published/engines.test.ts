import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { engines } from '../../engine/library/tables/engines';
import { FUELS, motorTorque } from '../../engine/physics/index';

const published = JSON.parse(readFileSync(new URL('engines_motors.json', import.meta.url), 'utf8'));
const TURN = 2 * Math.PI;
/** kg/kWh of a consumption in kg/J. */
const perKilowattHour = (consumption: number): number => consumption * 3.6e6;

/** Rows that no check uses, each with the reason. */
const NOT_USED: Readonly<Record<string, string>> = {
  two_stroke_textbook_example: 'Sizes a two-cylinder stationary engine from its mean pressure, which no block does.',
};

it('every set of the file is used, or listed with the reason', () => {
  const text = readFileSync(new URL('engines.test.ts', import.meta.url), 'utf8');
  for (const name of Object.keys(published)) {
    if (name in NOT_USED) expect(NOT_USED[name]).toMatch(/^[A-Z].{20,}\.$/);
    else expect(text, name).toContain(`published.${name}`);
  }
});

/*
 * A. E. Fitzgerald, C. Kingsley and S. D. Umans, Electric Machinery, example 7.9: permanent-magnet motor. The book rounds K to
 * 0.22 and takes the loss as a constant power; the three constants take it as a constant torque: 5 %.
 */
describe('a motor by its three constants', () => {
  const { givens, answer } = published.dc_motor_example;
  const noLoad = (TURN * givens.noload_rpm) / 60;
  const constant = (givens.noload_V - givens.noload_A * givens.R_ohm) / noLoad;
  it('has the constant and the loss of the example', () => {
    expect(constant).toBeCloseTo(answer.K_V_s_per_rad, 2);
    expect(constant * noLoad * givens.noload_A).toBeCloseTo(answer.noload_loss_W, 0);
    expect(published.dc_motor_three_constants.equations).toContain('T = K*(I - I0)');
  });
  it('gives its shaft power within 5 %', () => {
    const motor = {
      speedPerVolt: 1 / constant,
      resistance: givens.R_ohm,
      idleCurrent: givens.noload_A,
      voltage: givens.load_V,
      packResistance: 0,
    };
    const speed = (TURN * givens.load_rpm) / 60;
    expect(Math.abs((motorTorque(motor, speed) * speed) / answer.shaft_power_W - 1)).toBeLessThan(0.05);
    expect(motorTorque({ ...motor, voltage: givens.noload_V }, noLoad)).toBeCloseTo(0, 12);
  });
});

/* S. Menon and C. P. Cadou, University of Maryland: seven small glow engines; heating value of methanol from a US table of fuels. */
describe('fuel of glow engines', () => {
  const [worst, best] = published.small_glow_two_stroke.peak_overall_efficiency;
  const bsfc = published.derived_bsfc;
  const methanol = published.heating_values_MJ_kg.find((row: { fuel: string }) => row.fuel === 'methanol LHV').value;
  it('lies within what was measured and what the trade says', () => {
    const own = perKilowattHour(FUELS.glow.consumption);
    const [least, most] = [3.6 / (best * methanol), 3.6 / (worst * methanol)];
    expect(least).toBeCloseTo(bsfc.kg_per_kWh_at_9pct_pure_methanol, 1);
    expect(Math.abs(most / bsfc.kg_per_kWh_at_3pct_pure_methanol - 1)).toBeLessThan(0.02);
    expect(own).toBeGreaterThan(least);
    expect(own).toBeLessThan(most);
    // The band of a factor of two reaches over both.
    expect(own * FUELS.glow.spread).toBeGreaterThanOrEqual(0.99 * most);
    const [low, high] = published.bsfc_common_range_glow.value_kg_per_kWh;
    expect(own).toBeLessThanOrEqual(high);
    expect(own / FUELS.glow.spread).toBeGreaterThan(low);
  });
});

describe('engines of the library', () => {
  it('have the power of a plain 6.5 cm³ engine, R. R. Raine and others (2002)', () => {
    const row = engines.rows.find((each) => each.name === 'glow_6_5')!;
    const [plain] = published.more_engine_points[0].power_per_cm3_W_computed;
    expect(row.values.peak_power! / (row.values.displacement! * 1e6)).toBeCloseTo(plain, 0);
  });
  it('have the power and rpm of the FAI speed class', () => {
    const figure = published.fai_speed_class_figure;
    const row = engines.rows.find((each) => each.name === 'glow_2_5_racing')!;
    expect(figure.power_bhp).toBe('more than 2');
    expect(row.values.peak_power).toBeCloseTo(2 * 745.7, 0);
    expect((row.values.power_speed! * 60) / TURN).toBeCloseTo(figure.rpm, 6);
    expect(row.values.displacement! * 1e6).toBeCloseTo(figure.displacement_cm3, 9);
  });
  it('turn as fast as S. Menon and C. P. Cadou met, and give no less than theirs', () => {
    const {
      speed_range_rpm_typical: range,
      torque_range_N_m_converted: torques,
      peak_power_W: powers,
    } = published.small_glow_two_stroke;
    for (const { name, values, words } of engines.rows) {
      expect(words, name).toEqual({});
      if (name.includes('racing')) continue;
      const rpm = (values.power_speed! * 60) / TURN;
      expect(rpm, name).toBeGreaterThan(range[0]);
      expect(rpm, name).toBeLessThan(range[1]);
      expect(values.peak_torque!, name).toBeLessThan(torques[1]);
      // Their smallest, 0.16 cm³, gave 8 W, and less torque than they give for the usual ones.
      if (values.displacement! < 0.7e-6) expect(values.peak_power!, name).toBeGreaterThan(powers[0]);
      else expect(values.peak_torque!, name).toBeGreaterThan(0.9 * torques[0] - 0.001);
    }
  });
});
