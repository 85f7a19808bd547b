import {
  BODY_FORM,
  LAMINAR_FACTOR,
  laminarFriction,
  MODEL_TRANSITION,
  SURFACE_FORM,
  TURBULENT_FACTOR,
  TURBULENT_POWER,
  turbulentFriction,
} from '../../physics/index';
import { formatNumber } from '../../units/index';
import type { Theory } from '../block';

const transition = `${MODEL_TRANSITION / 1e5}×10⁵`;
/** What the laminar part takes off the turbulent law, times Re. */
const saved = MODEL_TRANSITION * (turbulentFriction(MODEL_TRANSITION) - laminarFriction(MODEL_TRANSITION));

export const bodyTheory: Theory = {
  equations: [
    {
      title: 'Side area and its moments',
      text: 'S_b = ∫ d dx,  ∫ x d dx,  ∫ x² d dx',
      doc: 'd depth of the side between the four places of the ruler, straight from one to the next.',
      source: 'Derivation: integrals of products of straight lines.',
    },
    {
      title: 'Side by its outline',
      text: 'S_b = ½ Σ w,  w = x z′ − x′ z\n∫ x dA = ⅙ Σ (x + x′) w,  ∫ x² dA = Σ (x² + x x′ + x′²) w/12',
      doc: 'x station and z height of a corner, x′ and z′ of the next, the last joining the first. d of the couple below is how much of the line across at a station is inside. The middle of the fuselage is as high as the centre of the area, ∫ z dA/S_b.',
      source: 'Derivation: Green’s theorem over straight sides.',
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
      text: `C_f = ${LAMINAR_FACTOR}/√(Re) up to Re = ${transition}\nC_f = ${TURBULENT_FACTOR}/Re^${TURBULENT_POWER} − ${formatNumber(saved)}/Re above it\nC_D A = C_f F S_wet`,
      doc: `Re by the length along the flow at the speed for friction. F = 1 + ${BODY_FORM[0]} (d/l)^1.5 + ${BODY_FORM[1]} (d/l)³ for the body; 1 + ${SURFACE_FORM[0]} (t/c) + ${SURFACE_FORM[1]} (t/c)⁴ for surfaces. S_wet = 2 S_b + 2 w l for a slab-sided body.`,
      source: `Flat plates: H. Blasius and the 1/5 power law, as J. D. Anderson, Fundamentals of Aerodynamics, ch. 4. Form factors: S. F. Hoerner, Fluid-Dynamic Drag, ch. VI (from memory). Transition at ${transition}: common practice, no source.`,
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
