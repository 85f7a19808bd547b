import { SHAPE_STEPS } from '../../physics/index';
import type { Theory } from '../block';

const A_PIECE = 'Derivation: balance of a piece of line in steady rotation.';

export const lineShapeTheory: Theory = {
  equations: [
    {
      title: 'Balance of a piece of line',
      text: 'dr/ds = t̂,  d(T_s t̂)/ds + f = 0\nf = n μ Ω² (x, y, 0) − n μ g ẑ − ½ ρ C_d n k_d d |v_n| v_n\nv = Ω ẑ × r,  v_n = v − (v·t̂) t̂,  Ω = 2π/t',
      doc: 'r (x, y, z) from the axis of the pilot, turning with the lines, x and y level, z up; t̂ along the line, outward; t lap time. Only the part of the air’s speed across the line drags (v_n), in still air; C_d by the local Reynolds number for a smooth line.',
      source: `${A_PIECE} Flow across the line: S. F. Hoerner, Fluid-Dynamic Drag, ch. III (from memory).`,
    },
    {
      title: 'Ends',
      text: 'r(0) = r_h t̂(0)\nr(l) = R_g (cos φ, 0, sin φ),  T_s(l) = T',
      doc: 'The arm turns freely about the axis, so it points along the lines where they leave the handle. Guide, elevation and pull are those of level flight; the length l along the bow is found.',
      source: 'Derivation: the arm bears no moment about the axis, as in the closed forms of level flight.',
    },
    {
      title: 'Trail along the line',
      text: 'ε_s ≈ ε (r/R_g)³,  ε_h ≈ ε/3',
      doc: 'The limit of little trail, one C_d, even tension and r_h = 0; the full shape does not use it.',
      source: 'Derivation: moments about the axis of the drag inside of r.',
    },
    {
      title: 'Stretch and bow',
      text: 'Δl_s = ∫ T_s ds/(n E A),  Δl_b = l − |r(l) − r(0)|\nΔl = Δl_s − Δl_b',
      doc: 'Lines made up to the length l_f stand at the radius R_g + Δl. Level flight takes R_g: the difference is some millimetres.',
      source: 'Hooke’s law along the line.',
    },
    {
      title: 'Uneven pull',
      text: 'T_1 = T/n + ΔT/2,  T_2 = T/n − ΔT/2,  ΔT = k_Δ T unless typed\nκ_h = atan((Δl_s2 + Δl_b2)/b_h)',
      doc: 'Each of both lines has a shape of its own between the same ends. The harder pulled line stretches more and bows less, so its handle end comes out; the handle has to turn by κ_h before the elevator moves.',
      source: 'Derivation: two lines of one length unstretched.',
    },
    {
      title: 'Sag at rest',
      text: 'b_0 = c (cosh(l_f/(2 c)) − 1),  c = T_0/(n μ g)',
      doc: 'Ends level and l_f apart.',
      source: 'Catenary: F. P. Beer et al., Vector Mechanics for Engineers: Statics, section 7.10.',
    },
    {
      title: 'Solution',
      text: 'Shooting from the handle: both angles, tension there and length are bettered by Newton’s method until place and pull at the guide are met to 10⁻¹⁰',
      doc: `Runge-Kutta of fourth order in ${SHAPE_STEPS} steps; twice as many change the bow by less than 1 part in 10⁴. Without turning it gives the exact catenary.`,
      source: 'H. B. Keller, Numerical Methods for Two-Point Boundary-Value Problems, ch. 2 (from memory).',
    },
  ],
  notModelled: [
    'Wind: the shape is that of level flight in calm air.',
    'Friction of the air along the line.',
    'Stiffness and vibration of the lines, but for the drag factor that may be typed.',
    'Leadouts, connectors and handle cable apart from the lines: all of the length counts as line.',
    'The distance of one line from the other: both start and end at one place.',
    'What handle cable, leadouts and bellcrank give way.',
  ],
};
