import type { Theory } from '../block';

export const balanceTheory: Theory = {
  equations: [
    {
      title: 'CG on the mean chord',
      text: 'h = (x_cg − x_c̄)/c̄',
      doc: 'x_c̄ leading edge of the mean chord c̄.',
      source: 'Definition.',
    },
    {
      title: 'Neutral point',
      text: 'x_n = [k_w x_¼ + k_t x_t − C]/(k_w + k_t)\nk_w = S a,  k_t = S_t a_t (1 − dε/dα)',
      doc: 'x_¼, x_t quarter chords of wing and tail; C = 2 ∫ ¼ π w² dx pitch couple of the body.',
      source:
        'Derivation: the CG about which dM/dα = 0; as J. D. Anderson, Introduction to Flight, ch. 7. Couple: M. M. Munk, NACA Report 184 (from memory).',
    },
    {
      title: 'Static margin',
      text: 'SM = (x_n − x_cg)/c̄',
      source: 'Definition.',
    },
  ],
  notModelled: ['Propeller and slipstream in the neutral point.', 'Loose controls: the elevator is taken as held.'],
};
