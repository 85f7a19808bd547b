import {
  EARTH_RADIUS,
  GAS_CONSTANT_OF_DRY_AIR,
  LAPSE_RATE,
  SEA_LEVEL_PRESSURE,
  SEA_LEVEL_TEMPERATURE,
  SUTHERLAND_FACTOR,
  SUTHERLAND_TEMPERATURE,
} from '../../physics/index';
import { formatNumber } from '../../units/index';
import type { Theory } from '../block';

export const airTheory: Theory = {
  equations: [
    {
      title: 'Pressure from elevation',
      text: 'H = r z/(r + z)\np = p_0 ((T_0 − L H)/T_0)^(g/(R L))',
      doc: `r = ${formatNumber(EARTH_RADIUS, 7)} m, p_0 = ${SEA_LEVEL_PRESSURE / 100} hPa, T_0 = ${SEA_LEVEL_TEMPERATURE} K, L = ${formatNumber(1000 * LAPSE_RATE)} K a kilometre, R = ${GAS_CONSTANT_OF_DRY_AIR} J/(kg·K). Used where no pressure is typed; it leaves out the weather of the day.`,
      source: 'ISO 2533:1975 (r and the last digits of R from memory).',
    },
    {
      title: 'Density of moist air',
      text: 'ρ = p M_a [1 − x_v (1 − M_v/M_a)]/(Z R T)\nx_v = h f(p, t) p_sv(t)/p',
      doc: 'M_a, M_v molar masses of dry air and water, R = 8.314472 J/(mol·K), Z compressibility, p_sv saturation pressure, f enhancement. Stated for 600 to 1100 hPa and 15 to 27 °C (range from memory); used from −20 to 45 °C.',
      source:
        'A. Picard, R. S. Davis, M. Gläser, K. Fujii, Revised formula for the density of moist air (CIPM-2007), Metrologia 45 (2008) 149–155.',
    },
    {
      title: 'Dry part',
      text: 'δ = 1 − h p_sv M_v/(R T ρ)',
      doc: 'Of the mass of the air. Vapour as an ideal gas without f, which is 0.4 % of it.',
      source: 'Derivation: mass of vapour in a volume.',
    },
    {
      title: 'Viscosity',
      text: 'μ = β T^1.5/(T + S)\nν = μ/ρ',
      doc: `β = ${formatNumber(1e6 * SUTHERLAND_FACTOR, 4)}×10⁻⁶ kg/(m·s·K^½), S = ${SUTHERLAND_TEMPERATURE} K, T in K.`,
      source: 'Sutherland’s law as in US Standard Atmosphere 1976, eq. 51.',
    },
  ],
  notModelled: ['Change of density with flying height: the air at the field is taken all the way up.'],
};
