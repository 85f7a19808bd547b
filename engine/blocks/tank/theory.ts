import type { Theory } from '../block';

export const tankTheory: Theory = {
  equations: [
    {
      title: 'Apparent gravity',
      text: 'g_out = (V²/(R cos φ)) cos(φ − δ) − g sin(φ − δ)\ng_up = −(V²/(R cos φ)) sin(φ − δ) − g cos(φ − δ)',
      doc: 'Then turned by the sideslip β and by pitch θ, as the flight has them. At rest: g straight down, turned by the pitch at rest.',
      source: 'Derivation: gravity less the acceleration of the circle.',
    },
    {
      title: 'Cuts',
      text: 'Σ (h_k − s_k x_k)/|c_k| ≥ 1 stays, over the axes k along which c_k is typed',
      doc: 'h_k half the length, width and height, s_k the sign of c_k. One c takes off an end, two an edge, three a corner; any convex tank is a box so cut.',
      source: 'Geometry: a plane by what it takes off three edges of a box.',
    },
    {
      title: 'Fuel surface',
      text: 'the plane square to the apparent gravity that leaves the fuel on its far side',
      doc: 'The tank, any convex body, is cut by the plane; root of the volume over its level.',
      source:
        'Liquids at rest in their own frame, as Y. A. Cengel and J. M. Cimbala, Fluid Mechanics, ch. 3; cutting by I. E. Sutherland and G. W. Hodgman, Comm. ACM 17 (1974).',
    },
    {
      title: 'Head at the spray bar',
      text: 'p = ρ_f g · (spray bar − surface) + ½ ρ V² (vent facing forward) or + p_s (pressurised)',
      doc: 'Uniflow: from the inner end of the vent in place of the surface, as long as that end is covered. Positive: fuel is pressed to the engine.',
      source: 'Hydrostatics.',
    },
    {
      title: 'Fuel that stays',
      text: 'V_u: volume deeper than the pickup,  N_k = (V_k − V_u)/(fuel a lap)',
      source: 'Derivation: the pickup uncovers when the surface reaches it.',
    },
    {
      title: 'Spilling',
      text: 'inner end of the vent covered and its outer end deeper than the surface',
      source: 'Hydrostatics; air that is drawn in or pressed out is left out.',
    },
  ],
  notModelled: [
    'Sloshing, foam and bubbles; fuel in the lines and the drop of pressure along them.',
    'Clunk weights: the pickup stays where it is.',
    'Manoeuvres, wind around the lap and take-off, in which the surface turns.',
    'What the needle makes of the head: only how much the head changes.',
  ],
};
