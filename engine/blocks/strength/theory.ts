import { LOST_OF_PITCH } from '../../physics/index';
import type { Theory } from '../block';

export const strengthTheory: Theory = {
  equations: [
    {
      title: 'Cable, connectors, lines and leadouts',
      text: 'F = n k F_b/u',
      doc: 'k share that the ends leave of the breaking load F_b of one.',
      source: 'Derivation: equilibrium.',
    },
    {
      title: 'Bellcrank',
      text: 'F_6 = 2 S_p W/(½ b_p u),  W = t_p (w_p³ − d_p³)/(6 w_p)',
      doc: 'Each line pulls at the end of its arm with half of the load.',
      source: 'Bending of a beam, as J. M. Gere, Mechanics of Materials, ch. 5; section by subtraction.',
    },
    {
      title: 'Pivot bolt',
      text: 'F_7 = n_b S_b/√((32 e_b/(π d_b³))² + 3 (4/(π d_b²))²)',
      doc: 'n_b 1 held on one side, 2 on both.',
      source: 'Cantilever of round section with mean shear (von Mises), as J. M. Gere, Mechanics of Materials.',
    },
    {
      title: 'Platform',
      text: 'F_8 = S_d d_b t_d,  F_9 = S_g A_d',
      source: 'Mean pressure and mean shear.',
    },
    {
      title: 'Two ratios',
      text: 'F_w/F_t and F_t/T_m',
      doc: 'Never one: the first says whether the system stands its test, the second whether the test proves the flight.',
      source: 'Definition.',
    },
    {
      title: 'Engine screws',
      text: 'F_s = T_s/(K d_s),  A_s = (π/4) (d_s − c p_s)²\nM_s = S_s A_s/F_s,  M_l = S_l A_l/F_s',
      doc: `c = ${LOST_OF_PITCH.metric} for metric threads, ${LOST_OF_PITCH.inch} for inch threads.`,
      source:
        'J. E. Shigley, Mechanical Engineering Design, ch. 8; T. H. Wentzell, Machine Design, example 6.1; stress area by ISO 898-1 and ANSI B1.1.',
    },
  ],
  notModelled: [
    'Kinks, nicks, rust, age and heat, which take much of the strength of a line.',
    'Tiredness of metal and wood under many loads; shock by a catch of slack lines.',
    'Wing structure around the platform; tilting of the pivot bolt in soft wood.',
    'Vibration and heat at the engine screws; wood that shrinks under them.',
  ],
};
