import { CLOSED, COARSE, LAP_PLACES } from '../../physics/index';
import { superscript } from '../../units/index';
import type { Theory } from '../block';

export const lapTheory: Theory = {
  equations: [
    {
      title: 'Wind along and across the path',
      text: 'w_t = −W_H sin θ_a,  w_r = W_H cos θ_a,  W_H = W (H/z_w)^p_w',
      doc: 'θ_a azimuth from straight downwind of the pilot, in the direction of flight; w_t along the path, w_r outward.',
      source: 'Geometry; power law of the wind with height: common practice, no source.',
    },
    {
      title: 'Air that the model meets',
      text: 'u = V − w_t,  s = w_r cos(φ − δ),  r = −w_r sin(φ − δ),  m = u − s tan β\nv² = u² + s² + r²,  n² = m² + r²\nχ = atan(s/u),  χ_u = atan(r/m)',
      doc: 's air along the span, r air from below, in the axes rolled by δ. Side forces and drag go with ½ ρ v², the lift of the wing with ½ ρ n²: air along a straight wing does not lift. Side forces see β + χ, the wing its angle and χ_u; curved flow is V/u as strong as in calm air. Drag acts along the air, lift square to the span and to the air across it, so that it leans along the path by r/n; what leans acts off the CG and turns the model. Thrust is read at the inflow along the shaft.',
      source: 'Derivation: strips of wing, body and fin in the air that each meets.',
    },
    {
      title: 'Lines in wind',
      text: 'F_l = (1/R_g) ∫ ½ ρ C_d n k_d d v_t |v| r dr,  v_t = ω r − w_t,  |v|² = v_t² + w_u²\nF_d − (1/R_g) ∫ ½ ρ C_d n k_d d w_u |v| r dr,  w_u = −w_r sin φ',
      doc: 'The wind across the lines, w_u, adds to their drag and lifts or presses them; each element has its own airspeed.',
      source: 'Derivation: moments about the axis of the pilot.',
    },
    {
      title: 'Along the path',
      text: 'm_eff dV/dt = P e_t − D u/v + L l_t − Y sin β − T_b,  m_eff = m + m_l/3',
      doc: 'l_t forward part of the direction of the lift, T_b the part of the pull along the path: drag of the lines, and the guide off the radius.',
      source: 'Derivation: Newton’s law along the path; the lines’ inertia by moments about the pilot.',
    },
    {
      title: 'Pull',
      text: 'T_r = m V²/R − m g sin φ + S cos δ + N sin δ\nS = Y cos β + P e_o + D s/v + L l_o,  N = L l_u + P e_u + D r/v',
      doc: 'As in level flight; yaw and roll balance at every place, as if at once. Held against a full balance of a rigid body, strip by strip: at 25 m/s least and greatest pull agree within 1.5 % up to 10 m/s of wind in level flight and 6 m/s at 30° of elevation. It ends near slack: where the least pull comes down to about half of the weight, trust neither number.',
      source: 'Derivation: balance along the chord. Check computed for this project, not published.',
    },
    {
      title: 'The lap that closes',
      text: 'dV/dθ_a = F_t R cos φ/(m_eff V),  V(2π) = V(0)',
      doc: `Solved at ${LAP_PLACES} places at once by the wave through them, with Newton’s method on speeds and angles until no step of a speed is as large as 10${superscript(Math.log10(CLOSED))} m/s; the extremes lie between the places. A lap at ${COARSE} places starts it, or weaker winds where that leads to none. Where no lap closes that way it is flown lap after lap (Runge–Kutta of fourth order), which says where it gives way. In winds of up to a fifth of the speed the pull is within 10⁻⁵ of that of a far finer solution, in stronger ones within 3×10⁻⁴. Without wind it is level flight exactly.`,
      source: 'Derivation: periodic solution of the equation of motion.',
    },
    {
      title: 'Wind at the floor',
      text: 'T_1(W_f) = T_f',
      source: 'Root by the secant rule, else by a bracket.',
    },
  ],
  notModelled: [
    'Turbulence: a gust is a stronger steady wind all around the lap.',
    'In-and-out motion of the model on its lines; the pilot’s own whipping and stepping.',
    'Climb and dive with the wind: the height is held.',
    'Wind shadow of trees, buildings and people; wind that lifts or sinks.',
    'The sign of small changes of lap time: the side force of a thin fuselage is uncertain.',
  ],
};
