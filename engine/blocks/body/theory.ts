import type { Theory } from '../block';

export const bodyTheory: Theory = {
  equations: [
    {
      title: 'Side area and its moments',
      text: 'S_b = ∫ d dx,  ∫ x d dx,  ∫ x² d dx',
      doc: 'd depth of the side between the four places of the ruler, straight from one to the next.',
      source: 'Derivation: integrals of products of straight lines.',
    },
    {
      title: 'Slender-body couple',
      text: 'N = q C_b ψ,  C_b = 2 ∫ ¼ π d² dx',
      doc: 'Turns the nose further out, where it points out. Full value of potential flow, which a blunt rear end does not reach.',
      source:
        'M. M. Munk, The Aerodynamic Forces on Airship Hulls, NACA Report 184 (1924), slender limit (from memory).',
    },
    {
      title: 'Friction',
      text: 'C_f = 1.328/√(Re) up to Re = 2×10⁵\nC_f = 0.074/Re^0.2 − 694/Re above it\nC_D A = C_f F S_wet',
      doc: 'Re by the length along the flow at the speed for friction. F = 1 + 1.5 (d/l)^1.5 + 7 (d/l)³ for the body; 1 + 2 (t/c) + 60 (t/c)⁴ for surfaces. S_wet = 2 S_b + 2 w l for a slab-sided body.',
      source:
        'Flat plates: H. Blasius and the 1/5 power law, as J. D. Anderson, Fundamentals of Aerodynamics, ch. 4. Form factors: S. F. Hoerner, Fluid-Dynamic Drag, ch. VI (from memory). Transition at 2×10⁵: common practice, no source.',
    },
    {
      title: 'Exposed items',
      text: 'C_D A = Σ C · frontal area',
      doc: 'One row for each thing: wheels by diameter × width, gear wire by length × diameter, cylinder head and tank by width × height, silencer by its circle.',
      source: 'Each coefficient has its source beside its field.',
    },
  ],
  notModelled: [
    'Lift of the fuselage; its effect on the wing.',
    'Interference between rows, but for what their coefficients hold.',
    'Cooling air through a cowl.',
    'Side-force slope from the shape: it is typed or the estimate is taken. It is uncertain for thin fuselages, and with it the sign of small rudder effects.',
  ],
};
