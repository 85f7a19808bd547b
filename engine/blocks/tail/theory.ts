import { FIN_END_PLATE, FLAT_PLATE_SECTION_SLOPE, HINGE_EFFICIENCY, TAIL_SPAN_EFFICIENCY } from '../../physics/index';
import type { Theory } from '../block';

export const tailTheory: Theory = {
  equations: [
    {
      title: 'Lift slopes',
      text: `a_t = 2π A_t/(2 + √(4 + (2π A_t/${FLAT_PLATE_SECTION_SLOPE})² (1 + tan² Λ_½)))\na_f likewise with ${FIN_END_PLATE} A_f`,
      doc: `A_t, A_f aspect ratios of stabiliser and fin. Stabiliser and fin are taken as thin flat plates with a section slope of ${FLAT_PLATE_SECTION_SLOPE} per radian; the body and the stabiliser at its root make the fin act as if it were longer.`,
      source: `USAF DATCOM 4.1.3.2 after Polhamus and DATCOM practice for the fin (from memory); ${FLAT_PLATE_SECTION_SLOPE} fitted to measured slopes of flat plates of aspect ratio 2 to 6, within 6 %.`,
    },
    {
      title: 'Downwash',
      text: 'dε/dα = 2 a/(π A)',
      doc: 'a, A lift slope and aspect ratio of the wing.',
      source:
        'Lifting-line theory of the elliptical wing, far behind it; as B. Etkin and L. D. Reid, Dynamics of Flight.',
    },
    {
      title: 'Elevator and rudder',
      text: `τ = ${HINGE_EFFICIENCY} [1 − (θ − sin θ)/π],  cos θ = 2 E − 1`,
      doc: `E share of the chord that turns; τ how far it acts like turning the whole surface; 1 where all of it turns. ${HINGE_EFFICIENCY} for the gap.`,
      source: `H. Glauert, The Elements of Aerofoil and Airscrew Theory (thin aerofoil with hinged flap); ${HINGE_EFFICIENCY} common practice, no source.`,
    },
    {
      title: 'Tail volume',
      text: 'V_H = l_t S_t/(c̄ S)',
      doc: 'l_t from the quarter chord of the wing to that of the tail.',
      source: 'Definition.',
    },
    {
      title: 'Drag due to tail lift',
      text: `k_t = 1/(${TAIL_SPAN_EFFICIENCY} π A_t)`,
      source: 'Square tips and hinge gaps: common practice, no source.',
    },
    {
      title: 'Bending stiffness of the surfaces',
      text: 'E I = D c',
      doc: 'D bending stiffness per width of the layers they are cut from, c chord. Nothing else in the sheet uses it: it tells stacks apart.',
      source: 'Derivation: composite beam by plane sections.',
    },
  ],
  notModelled: [
    'Propeller wash on stabiliser and fin.',
    'Bending and twisting of the surfaces under load; flutter.',
    'Interference of fin and stabiliser with the body but for the factor on the fin.',
  ],
};
