import { NEEDLE_SETTINGS } from '../../physics/index';
import type { Theory } from '../block';

export const raceTheory: Theory = {
  equations: [
    {
      title: 'Laps a tank',
      text: 'n_p = ⌊n_r + (V_u/v − n_s − t_r/t) + n_g⌋',
      doc: 'Fuel flows at v/t in the run and under power, and not in the glide; to the end of the race without n_g.',
      source: 'Derivation: fuel drawn over time.',
    },
    {
      title: 'Race time',
      text: 't_N = Σ [t_r + (n − n_r − n_g) t + t_g] + Σ [t_c + V/q + t_s]',
      doc: 'n laps of each stint, V fuel taken before it: full, and at the last stop only what the rest of the race needs. The last stint ends under power.',
      source: 'Derivation: the times follow one another.',
    },
    {
      title: 'Needle',
      text: 't = t_f (1 + Δt (1 − s)²),  v = v_f (1 − Δv (1 − s))',
      doc: 'Index f: at the fastest needle.',
      source: 'Derivation: power is flat at its peak, flow goes with the opening of the needle.',
    },
    {
      title: 'Best needle',
      text: `shortest t_N among ${NEEDLE_SETTINGS} settings from 0 to 100 %`,
      source: 'Derivation: search, since stops are whole.',
    },
    {
      title: 'Standard air and calm',
      text: 't_k = t_m t_i/t_f,  P_i = P (ρ_i/ρ)^κ',
      doc: 'Level flight solved anew in the air of ISO 2533 at sea level, with the thrust P_i.',
      source: 'ISO 2533:1975; derivation: thrust of a propeller at the same advance ratio goes with density.',
    },
  ],
  notModelled: [
    'Traffic: overtaking, and waiting for the pilots to change places.',
    'A warm engine that restarts faster than a cold one, and stops that go wrong.',
    'The mass of the fuel that is burnt: laps are as fast at the end as at the start.',
    'How wind alters run and glide, unless the design has a launch and a glide to take them from.',
  ],
};
