import { MUSIC_WIRE_LAW, MUSIC_WIRE_RANGE } from '../../physics/index';
import type { Theory } from '../block';

const [strength, power] = MUSIC_WIRE_LAW;
const [thinnest, thickest] = MUSIC_WIRE_RANGE;

export const gearTheory: Theory = {
  equations: [
    {
      title: 'Pitch at rest',
      text: 'D sin(β + φ) = ½ d_w',
      doc: 'D, φ length and direction from the axle to the tail rest or nose wheel.',
      source: 'Geometry: the ground touches the wheel and passes through the other support.',
    },
    {
      title: 'Loads at rest',
      text: 'N_s = W b/l,  N_m = W − N_s',
      doc: 'b, l distance of the CG and of the other support from the contact of the main wheels, along the ground.',
      source: 'Derivation: moments about the contact.',
    },
    {
      title: 'Nosing over',
      text: 'μ_t = [W b + (h − h_P) P cos β − s_P P sin β]/[h (W − P sin β)]',
      doc: 'b, h arm and height of the CG over the contact about which the model would tip (that of the nose wheel, if it has one); h_P, s_P height of the propeller and its distance behind that contact; P thrust at rest.',
      source: 'Derivation: moments about the contact in the frame of the model, with its own inertia.',
    },
    {
      title: 'Step',
      text: 's = ½ d_w (1 − cos α),  tan α = b/(h − ½ d_w)',
      source: 'Derivation: the force at the edge passes through axle and CG.',
    },
    {
      title: 'Gear wire',
      text: '1/k_g = ∫ M_b²/(E I) ds + ∫ M_t²/(G J) ds + M_x² w/(2 E I)\nF_y = s_y S_ut/σ_1,  U = ½ F_y²/k_g',
      doc: 'M_b, M_t bending and torsion along the wire by 1 N at the axle, I = π d_g⁴/64, J = 2 I, w wire between the straps of a one-piece gear, σ_1 greatest stress (von Mises) by 1 N.',
      source: `Unit-load method, as R. C. Hibbeler, Mechanics of Materials, ch. 14; music wire: S_ut the least strength of the wire table (ASTM A228), between and beyond its rows as ${strength}/d_g^${power} MPa runs (d_g in mm, ${1000 * thinnest} to ${1000 * thickest} mm; J. E. Shigley, Mechanical Engineering Design, table 10-4), E, G and the elastic share from its table 10-5.`,
    },
    {
      title: 'Wire to cut',
      text: 'l_c = Σ s_k − Σ 2 R_b tan(½ θ_k) + Σ R_b θ_k,  R_b = r_b + ½ d_g',
      doc: 's_k distances between the corners of the wire, axles included; θ_k turn at each corner, R_b radius of the centre line there.',
      source: 'Derivation: arcs that touch both runs. Length kept on the centre line: common practice, no source.',
    },
    {
      title: 'Landing',
      text: 'v_s = √(2 n U/m)',
      doc: 'n legs that share the blow; the lift carries the weight meanwhile.',
      source: 'Derivation: energy.',
    },
    {
      title: 'Usual angle from wheel contact to CG',
      text: '16° to 25° with a tail rest',
      source: 'D. P. Raymer, Aircraft Design: A Conceptual Approach, ch. 11 (from memory).',
    },
  ],
  notModelled: [
    'Lift, drag and elevator during the run; they help as the speed grows.',
    'Give of the tyres, of the wood under the straps and of the wheels’ axles; curvature of the wire at its bends.',
    'Pull of the lines on the ground, which tips the model inward or outward.',
    'Wheels that stick, soft ground and holes.',
  ],
};
