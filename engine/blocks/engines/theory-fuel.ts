import type { Equation } from '../block';

/** The same for every engine with a tank. */
export const fuelEquation: Equation = {
  title: 'Fuel',
  text: 'q_f = V_d/(N_d t_d),  else q_f = b W/ρ_f',
  doc: 'The measured draw of a flight first; else by specific consumption b and shaft power W. The band is ±10 % for what was measured or typed and a factor of two for the guess.',
  source:
    'Definition. b of glow fuel from efficiencies of 3 to 9 % (S. Menon and C. P. Cadou, University of Maryland); b of diesel fuel is a guess without a source.',
};
