import { RELEASES } from '../../physics/index';
import type { Theory } from '../block';

export const launchTheory: Theory = {
  equations: [
    {
      title: 'Along the circle',
      text: 'm_eff dV/dt = P cos τ cos ψ_0 − q A_D u/v − Y sin ψ_0 − F_l − μ N,  N = m g [1 − (u/V_f)²]',
      doc: 'u, v airspeed along the path and whole; Y side force of body and fin in the air from aside; lift grows with the square of u, the air along the chord, and carries the model at V_f: air from aside or behind does not lift. The last step is shortened by a straight line to V_f.',
      source: 'Derivation: Newton’s law along the path.',
    },
    {
      title: 'Pull in the run',
      text: 'T = m V²/R + P sin(τ + ψ_0) + Y cos ψ_0 + q A_D w_o/v',
      doc: 'w_o outward wind. At release the engine offset and the wind alone hold the lines tight.',
      source: 'Derivation: balance along the lines, wheels that roll freely sideways.',
    },
    {
      title: 'Best release',
      text: `greatest of the least pulls of the run, among ${RELEASES} places of release`,
      source: 'Derivation: search around the circle.',
    },
  ],
  notModelled: [
    'Grip of the tyres across their rolling, which holds a model out a little on grass.',
    'The helper’s push and the pilot’s step back, which tighten the lines.',
    'Bouncing, swerving, elevator; wind that lifts a wing.',
  ],
};
