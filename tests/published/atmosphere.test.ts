import { describe, expect, it } from 'vitest';
import {
  dryAirDensity,
  EARTH_RADIUS,
  GAS_CONSTANT_OF_DRY_AIR,
  LAPSE_RATE,
  moistAirDensity,
  SEA_LEVEL_PRESSURE,
  SEA_LEVEL_TEMPERATURE,
  STANDARD_GRAVITY,
  soundSpeed,
  standardPressure,
  standardTemperature,
  viscosityOfAir,
} from '../../engine/physics/index';
import { csvRows, halfUnit, jsonOf, usedIn } from './aero-rows';

/*
 * ISO 2533:1975 and US Standard Atmosphere 1976 (the same below 32 km), table against geopotential height. Units as in the
 * column heads; tolerance half a unit of the last printed digit. Viscosities: computed in the reference from the printed
 * constants of Sutherland's law, not themselves printed.
 */
describe('standard atmosphere', () => {
  const columns: Readonly<Record<string, (height: number) => number>> = {
    temperature_K: standardTemperature,
    pressure_Pa: standardPressure,
    density_kg_m3: (h) => dryAirDensity(standardPressure(h), standardTemperature(h)),
    // The tip Mach number of a propeller rests on it.
    speed_of_sound_m_s: (h) =>
      soundSpeed(standardPressure(h), dryAirDensity(standardPressure(h), standardTemperature(h))),
    dynamic_viscosity_Pa_s: (h) => viscosityOfAir(standardTemperature(h)),
    kinematic_viscosity_m2_s: (h) =>
      viscosityOfAir(standardTemperature(h)) / dryAirDensity(standardPressure(h), standardTemperature(h)),
  };
  const used = usedIn('atmosphere_isa.csv');
  it.each(used)('%s', (name) => {
    const [height, column] = name.split(' ') as [string, string];
    const row = csvRows('atmosphere_isa.csv').find((each) => each.geopotential_altitude_m === height)!;
    const computed = columns[column]!(Number(height));
    expect(Math.abs(computed - Number(row[column]))).toBeLessThanOrEqual(halfUnit(row[column]!));
  });
});

/*
 * Defining constants as printed in the two standards; R and the radius of the earth are from memory in the reference. Half a unit of the
 * last digit.
 */
describe('constants of the standard atmosphere', () => {
  const constants: Readonly<Record<string, number>> = {
    T0: SEA_LEVEL_TEMPERATURE,
    p0: SEA_LEVEL_PRESSURE,
    rho0: dryAirDensity(SEA_LEVEL_PRESSURE, SEA_LEVEL_TEMPERATURE),
    lapse_rate_troposphere: -LAPSE_RATE,
    g0: STANDARD_GRAVITY,
    R_specific: GAS_CONSTANT_OF_DRY_AIR,
    earth_radius_for_geopotential: EARTH_RADIUS,
    gamma: soundSpeed(SEA_LEVEL_PRESSURE, 1.225) ** 2 / (SEA_LEVEL_PRESSURE / 1.225),
  };
  const file = jsonOf('atmosphere_constants.json');
  const used = usedIn('atmosphere_constants.json').filter((name) => !/^(sutherland|cipm|moist)/.test(name));
  it.each(used)('%s', (name) => {
    const printed = file.isa_constants.find((row: { name: string }) => row.name === name).value;
    expect(Math.abs(constants[name]! - printed)).toBeLessThanOrEqual(halfUnit(printed));
  });
});

/* US Standard Atmosphere 1976, eq. 51, Pa·s at 288.15 K; F. M. White, Viscous Fluid Flow, Table 1-2 at 273.15 K (from memory). */
describe('Sutherland’s law', () => {
  const [standard, white] = jsonOf('atmosphere_constants.json').sutherland;
  it('sutherland 0', () => {
    expect(Math.abs(viscosityOfAir(288.15) - standard['mu_at_288.15K_Pa_s'])).toBeLessThanOrEqual(
      halfUnit(standard['mu_at_288.15K_Pa_s']),
    );
    for (const t of [250, 300]) {
      expect(viscosityOfAir(t)).toBeCloseTo((standard.beta * t ** 1.5) / (t + standard.S_K), 15);
    }
  });
  it('sutherland 1', () => {
    expect(Math.abs(viscosityOfAir(white.T0_K) - white.mu0_Pa_s)).toBeLessThanOrEqual(halfUnit(white.mu0_Pa_s));
  });
});

describe('moist air', () => {
  const { cipm_2007: c, moist_air_check_values: values } = jsonOf('atmosphere_constants.json');
  /* A. Picard and others, CIPM-2007, Metrologia 45 (2008): written once more from the printed constants; relative 1e-12. */
  it('cipm_2007', () => {
    for (const [p, T, h] of [
      [101325, 293.15, 0.5],
      [90000, 275.15, 0.9],
      [103000, 308.15, 0.1],
    ] as const) {
      const t = T - 273.15;
      const psv = Math.exp(c.A_per_K2 * T * T + c.B_per_K * T + c.C + c.D_K / T);
      const xv = (h * (c.alpha + c.beta_per_Pa * p + c.gamma_per_degC2 * t * t) * psv) / p;
      const Z =
        1 -
        (p / T) *
          (c.a0_K_per_Pa +
            c.a1_per_Pa * t +
            c.a2_per_K_Pa * t * t +
            (c.b0_K_per_Pa + c.b1_per_Pa * t) * xv +
            (c.c0_K_per_Pa + c.c1_per_Pa * t) * xv * xv) +
        (p / T) ** 2 * (c.d_K2_per_Pa2 + c.e_K2_per_Pa2 * xv * xv);
      const Ma = (28.96546 + 12.011 * (c.xCO2_default - 0.0004)) * 1e-3;
      const rho = ((p * Ma) / (Z * c.R_J_per_mol_K * T)) * (1 - xv * (1 - c.Mv_kg_per_mol / Ma));
      expect(Math.abs(moistAirDensity(p, T, h) / rho - 1)).toBeLessThan(1e-12);
    }
  });
  /*
   * kg/m³. Row 0: S. V. Gupta, Mass Metrology, table of air density; row 1: F. E. Jones, The Air Density Equation, example of NIST; both
   * by older equations, which differ by 6e-5: tolerance 1e-4 relative. Row 2: computed in the reference from the same constants, half a unit.
   */
  it.each(usedIn('atmosphere_constants.json').filter((name) => name.startsWith('moist')))('%s', (name) => {
    const row = values[Number(name.split(' ')[2])];
    const pressure = row.p_Pa ?? row.p_mmHg * 133.322387415;
    const tolerance = row.computed ? halfUnit(row.rho_kg_m3) : 1e-4 * row.rho_kg_m3;
    const computed = moistAirDensity(pressure, row.t_degC + 273.15, row.rh);
    expect(Math.abs(computed - row.rho_kg_m3)).toBeLessThanOrEqual(tolerance);
  });
});
