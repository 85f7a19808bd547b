import { ESTIMATE_SPREAD, SCALE_SPREAD, SECTION_FILL, STATION_SPREAD } from '../../physics/index';
import type { Theory } from '../block';

export const partsTheory: Theory = {
  equations: [
    {
      title: 'Mass of a part',
      text: 'sheet m = S t ρ,  stack m = S w,  rod m = ¼ π d² l ρ,  solid m = v ρ,  run m = l μ,  finish m = S w · coats',
      doc: 'S area, t thickness, ρ density, w mass per area, μ mass per length; of several, times n. A weighed mass stands in place of the estimate, as long as the part is made of what it was made of on the scale. A cut-out has a negative area or volume.',
      source: 'Definition of density.',
    },
    {
      title: 'Volume of a shape',
      text: `strip v = l a t,  triangle v = ½ l a h,  tube v = π (d − t) t l\ntapered v = l [(a_1 t_1 + a_2 t_2)/3 + (a_1 t_2 + a_2 t_1)/6]\nribs, core v = ${SECTION_FILL.toPrecision(3)} (t/c) l (c_1² + c_1 c_2 + c_2²)/3 · (1 − s)`,
      doc: 'l length, of a rib the thickness of its sheet; a width, t thickness or wall, h height, d outer diameter; c chord and t/c the thickness of its section; s share cut away. m = v ρ, ribs times their number: they stand evenly along a straight taper.',
      source:
        'Derivation: prisms and straight tapers; area of a four-digit section, E. N. Jacobs, K. E. Ward and R. M. Pinkerton, NACA Report 460, 1933, thickness distribution.',
    },
    {
      title: 'Mass and CG',
      text: 'm = Σ m_i,  x_cg = Σ m_i x_i/m',
      doc: 'y and z alike. Fuel rows count with the share of fuel on board.',
      source: 'Derivation: statics of rigid bodies.',
    },
    {
      title: 'Moments of inertia',
      text: 'I_xx = Σ [m_i (b² + c²)/12 + m_i (Δy² + Δz²)],  I_xy = Σ m_i Δx Δy',
      doc: 'b, c lengths of the part along the two other axes, Δ from the CG. The products are plain sums: the inertia tensor holds their negative. A part’s own products are left out.',
      source: 'Derivation: parallel-axis theorem.',
    },
    {
      title: 'Uncertainty',
      text: 's_m² = Σ s_m,i²\ns_x² = Σ [((x_i − x_cg) s_m,i)² + (m_i s_x,i)²]/m²',
      doc: `Where none is typed: ${100 * ESTIMATE_SPREAD} % of an estimated mass, ${1000 * SCALE_SPREAD} g on the scale, ${1000 * STATION_SPREAD} mm of station (common practice, no source).`,
      source: 'JCGM 100, eq. 10, independent tolerances, first order.',
    },
    {
      title: 'On the bench',
      text: 'b_k = 1 − s_x,k²/s_x²,  m_r = m_k (x_0 − x_k)/(x_r − x_0)',
      doc: 'b_k share of the band that goes once part k has been on the scale at its estimate, s_x,k the uncertainty then. m_r what is not weighed yet may weigh for a CG at x_0: its own CG at x_r, what is known m_k with its CG at x_k; between the ends of what is allowed where x_0 may lie to either side.',
      source: 'Derivation: moments about the wanted CG.',
    },
    {
      title: 'Stacks of layers',
      text: 'w = Σ w_i,  t = Σ t_i\nz̄ = Σ E_i t_i z_i/Σ E_i t_i,  D = Σ E_i [t_i³/12 + t_i (z_i − z̄)²]',
      doc: 'w mass per area, D bending stiffness per width; layers that do not slip.',
      source: 'Derivation: composite beam by plane sections.',
    },
  ],
  notModelled: ['Glue, hinges, screws and finish that no row holds: type them, they stand far from the CG.'],
};
