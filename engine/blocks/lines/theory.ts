import {
  CREEPING,
  LINE_KINDS,
  type LineKind,
  MUSIC_WIRE_LAW,
  ROUGH,
  ROUGH_POWER,
  ROUGH_REYNOLDS,
  STAINLESS_WIRE_LAW,
  STRAND_SHARE,
  WAKE,
  WAKE_REYNOLDS,
} from '../../physics/index';
import type { Theory } from '../block';

const [stranded, solid, braid] = LINE_KINDS as readonly [LineKind, LineKind, LineKind];
const [musicA, musicM] = MUSIC_WIRE_LAW;
const [stainlessA, stainlessM] = STAINLESS_WIRE_LAW;

export const linesTheory: Theory = {
  equations: [
    {
      title: 'Make-up',
      text: 'l_f = l_c + l_k + l_e + l_x,  l_m = l_f − y_g,  l_s = l_e + l_w\nR_g = r_h + l_f',
      doc: 'From whichever of l_f, l_m and l_e was measured.',
      source: 'Geometry.',
    },
    {
      title: 'Mass of the lines',
      text: 'μ = ρ_l f π d²/4\nm_l = n μ l_f',
      doc: `ρ_l density and f filled share of the circle: stranded steel ${stranded.density} kg/m³ and ${9 * stranded.filled}/9, solid steel ${solid.density} kg/m³ and ${solid.filled}, braid ${braid.density} kg/m³ and ${braid.filled}. A weight typed stands in place of it.`,
      source:
        'Seven equal wires, each a third of the diameter, fill 7/9 of the circle (derivation). Densities: W. D. Callister, Materials Science, table B.1; J. E. Shigley, Mechanical Engineering Design, table 10-5; a fibre table of a university. 0.7 is an estimate without a source.',
    },
    {
      title: 'Stiffness and breaking load',
      text: 'E A = E f π d²/4\nF_b = r(d) S f π d²/4,  S = A/d^m for wire',
      doc: `Of one line, without its ends. A = ${musicA} MPa·mm^m, m = ${musicM} for music wire; ${stainlessA} and ${stainlessM} for stainless; strands together hold ${STRAND_SHARE} of the sum of their wires; braid 2.06 GPa on its circle. r brings the law to the rated rows of the kind in the library: straight in logarithms between them, held beyond.`,
      source:
        'J. E. Shigley, Mechanical Engineering Design (Budynas and Nisbett), tables 10-4 and 10-5 (stainless from memory); 0.85 common practice, no source; braid: AMA control line general rule 5.3.5.1; solid wire: ASTM A228; ratings of strands recalled.',
    },
    {
      title: 'Drag coefficient of a smooth line',
      text: `C_d = ${CREEPING} Re^−¾ + ${WAKE} (1 − e^(−${WAKE_REYNOLDS}/Re)) + ${ROUGH} (1 − e^(−(Re/${ROUGH_REYNOLDS})^${ROUGH_POWER}))`,
      doc: 'By the local Reynolds number on the diameter, for solid lines where no coefficient is typed. Fit to Wieselsberger’s measurements, within 5 % from Re 17 to 2×10⁵.',
      source:
        'N.-S. Cheng, Calculation of drag coefficient for arrays of emergent circular cylinders with pseudofluid model, J. Hydraul. Eng. 139 (2013) 602–611.',
    },
  ],
  notModelled: [
    'Bow of the lines between handle and guide, but for trail and sag at the guide; “Lines in full” gives it.',
    'Vibration of the lines, but for the factor that may be typed.',
    'Interference of one line with the other.',
    'Kinks, rust and knots: they take much of the breaking load.',
  ],
};
