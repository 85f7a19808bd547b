import type { Theory } from '../block';

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
      doc: 'ρ_l density and f filled share of the circle: stranded steel 8000 kg/m³ and 7/9, solid steel 7800 kg/m³ and 1, braid 975 kg/m³ and 0.7. A weight typed stands in place of it.',
      source:
        'Seven equal wires, each a third of the diameter, fill 7/9 of the circle (derivation). Densities: W. D. Callister, Materials Science, table B.1; J. E. Shigley, Mechanical Engineering Design, table 10-5; a fibre table of a university. 0.7 is an estimate without a source.',
    },
    {
      title: 'Stiffness and breaking load',
      text: 'E A = E f π d²/4\nF_b = r(d) S f π d²/4,  S = A/d^m for wire',
      doc: 'Of one line, without its ends. A = 2211 MPa·mm^m, m = 0.145 for music wire; 1867 and 0.146 for stainless; strands together hold 0.85 of the sum of their wires; braid 2.06 GPa on its circle. r brings the law to the rated rows of the kind in the library: straight in logarithms between them, held beyond.',
      source:
        'J. E. Shigley, Mechanical Engineering Design (Budynas and Nisbett), tables 10-4 and 10-5 (stainless from memory); 0.85 common practice, no source; braid: AMA control line general rule 5.3.5.1; solid wire: ASTM A228; ratings of strands recalled.',
    },
    {
      title: 'Drag coefficient of a smooth line',
      text: 'C_d = 11 Re^−¾ + 0.9 (1 − e^(−1000/Re)) + 1.2 (1 − e^(−(Re/4500)^0.7))',
      doc: 'By the local Reynolds number on the diameter, for solid lines where no coefficient is typed. Fit to Wieselsberger’s measurements, within 5 % from Re 17 to 2×10⁵.',
      source:
        'N.-S. Cheng, Calculation of drag coefficient for arrays of emergent circular cylinders with pseudofluid model, J. Hydraul. Eng. 139 (2013) 602–611.',
    },
  ],
  notModelled: [
    'Bow of the lines between handle and guide, but for trail and sag at the guide; the block "Lines in full" gives it.',
    'Vibration of the lines, but for the factor that may be typed.',
    'Interference of one line with the other.',
    'Kinks, rust and knots: they take much of the breaking load.',
  ],
};
