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
      text: 'y_0 = [N y_t + y_L e (y_t − y_cg)]/[N + e (y_t − y_cg)]\nN = F (y_L − y_g) + Q,  e = L − F',
      doc: 'F press of the lines on the guide, Q torque of the propeller, L lift: where the CG lies once the tip weight is in at y_t.',
      source: 'Derivation: moments of lift, weight, torque and line load in roll about the CG.',
    },
  ],
  notModelled: [
    'Guide height, and what speed, torque and press change by with the weight that is added: a fraction of the last digit shown.',
  ],
};
