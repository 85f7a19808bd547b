import type { Theory } from '../block';

export const ballastTheory: Theory = {
  equations: [
    {
      title: 'Weight at a station',
      text: 'm_b = m (s_0 − s_cg)/(s_b − s_0)',
      doc: 's_0 wanted CG, s_b where the weight goes: along x for tail and nose, along y for the tip. Negative: so much must come off there.',
      source: 'Derivation: moments about the wanted CG.',
    },
    {
      title: 'Moving the engine',
      text: 'Δx_e = m (x_0 − x_cg)/m_e',
      source: 'Derivation: moments; the whole mass stays.',
    },
    {
      title: 'Wings level under the lines',
      text: 'y_0 = (y_L − k y_g)/(1 − k),  k = ½ W_l/L,  L = m g + ½ W_l',
      doc: 'Tip weight that carries half the weight of the lines.',
      source: 'Derivation: moments of lift, weight and line load in roll about the CG.',
    },
  ],
  notModelled: ['Propeller torque, guide height and the centrifugal load of the lines: the flight block knows them.'],
};
