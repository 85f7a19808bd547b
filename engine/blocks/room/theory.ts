import type { Theory } from '../block';

export const roomTheory: Theory = {
  equations: [
    {
      title: 'Gap seen from the side',
      text: 'g_x = max(x_fB − x_rA, x_fA − x_rB)\ng = √(g_x² + g_z²) where both are above 0, else max(g_x, g_z)',
      doc: 'f, r front and rear of the upright boxes around two things A and B; g_z in the same way from their bottoms and tops.',
      source: 'Derivation: distance of two rectangles.',
    },
    {
      title: 'Engine at its rearmost',
      text: 'x_r = min(x_b2, x_k − l_k/2 − n_b − l_s) − l_e/2\nΔx_r = x_r − x_e\ng_s = x_k − l_k/2 − x_e − l_e/2 − n_b − l_s',
      doc: 'The tank counts where it stands at the height of the engine.',
      source: 'Derivation: geometry.',
    },
  ],
  notModelled: [
    'What stands beside each other across the body: a tank on the other side of a profile fuselage has room here only by its height.',
    'Round corners, screws, silencer, and what needle and control arms pass over as they turn.',
    'Formers and doublers of a built-up fuselage.',
  ],
};
