import { BLADE_SHARE, LANDING_OVER_STALL, SQUARE_PLATE_DRAG } from '../../physics/index';
import type { Theory } from '../block';

export const glideTheory: Theory = {
  equations: [
    {
      title: 'Stall and landing speed',
      text: 'V_s = √(2 m g/(ρ S C_L,max)),  V_l = k_l V_s',
      source: `Definition; ${LANDING_OVER_STALL} over stall: common practice, no source.`,
    },
    {
      title: 'Along the path',
      text: 'm_eff dV/dt = −½ ρ u² A_p − D … − T_b',
      doc: 'The balance of a lap in wind with the drag of the stopped propeller in place of thrust; yaw and roll balance at every place.',
      source: 'Derivation: Newton’s law along the path.',
    },
    {
      title: 'Stopped propeller',
      text: `A_p = ${SQUARE_PLATE_DRAG} (${BLADE_SHARE} D) D`,
      source:
        'Drag coefficient of a plate square to the air (Hoerner, from memory); width of the blades a guess without a source.',
    },
    {
      title: 'Run after touchdown',
      text: 's_r = (m/(2 k)) ln(1 + k V²/(μ m g))',
      doc: 'k drag of model and lines in level flight over V².',
      source: 'Derivation: m V dV/ds = −k V² − μ m g, lift gone.',
    },
    {
      title: 'Where to shut off',
      text: 'θ_o + Θ(θ_o) + s_r/R = θ_p',
      doc: 'Θ angle of the glide, which hangs on where it begins, so that in wind several θ_o may do. Every one around the circle is found between two of 24 places by a bracket; shown is the one that shuts off latest.',
      source: 'Derivation: the angles add up.',
    },
  ],
  notModelled: [
    'What the descent from flying height adds: the real glide is a little longer.',
    'A propeller that turns in the wind; needle and fuel that run the engine on.',
    'Whipping by the pilot, which lengthens the glide and tightens the lines.',
    'Lift and wind in the run after touchdown.',
  ],
};
