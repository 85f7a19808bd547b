import type { Theory } from '../block';

export const airTheory: Theory = {
  equations: [
    {
      title: 'Pressure from elevation',
      text: 'H = r z/(r + z)\np = p₀ ((T₀ − L H)/T₀)^(g/(R L))',
      doc: 'r = 6 356 766 m, p₀ = 1013.25 hPa, T₀ = 288.15 K, L = 6.5 K a kilometre, R = 287.05287 J/(kg·K). Used where no pressure is typed; it leaves out the weather of the day.',
      source: 'ISO 2533:1975 (r and the last digits of R from memory).',
    },
    {
      title: 'Density of moist air',
      text: 'ρ = p M_a/(Z R T) · [1 − x_v (1 − M_v/M_a)]\nx_v = h f(p, t) p_sv(t)/p',
      doc: 'M_a, M_v molar masses of dry air and water, R = 8.314472 J/(mol·K), Z compressibility, p_sv saturation pressure, f enhancement. Stated for 600 to 1100 hPa and 15 to 27 °C (range from memory); used from −20 to 45 °C.',
      source:
        'A. Picard, R. S. Davis, M. Gläser, K. Fujii, Revised formula for the density of moist air (CIPM-2007), Metrologia 45 (2008) 149–155.',
    },
    {
      title: 'Viscosity',
      text: 'μ = β T^1.5/(T + S)\nν = μ/ρ',
      doc: 'β = 1.458×10⁻⁶ kg/(m·s·K^½), S = 110.4 K, T in K.',
      source: 'Sutherland’s law as in US Standard Atmosphere 1976, eq. 51.',
    },
  ],
  notModelled: ['Change of density with flying height: the air at the field is taken all the way up.'],
};
