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
      text: 'q = ½ ρ (u² + w_r²),  u = V − w_t\nχ = atan(w_r cos φ/u),  χ_u = atan(w_r sin φ/u)',
      doc: 'Drag acts along the air, lift square to it; side forces see β + χ, the wing sees its angle less χ_u.',
      source: 'Derivation: the balances of level flight with the forces turned with the air.',
    },
    {
      title: 'Along the path',
      text: 'm_eff dV/dt = P e_t − D cos χ cos χ_u − L sin χ_u − Y sin β − T_b,  m_eff = m + m_l/3',
      doc: 'T_b the part of the pull along the path: drag of the lines, each element by its own airspeed ω r − w_t, and the guide off the radius.',
      source: 'Derivation: Newton’s law along the path; the lines’ inertia by moments about the pilot.',
    },
    {
      title: 'Pull',
      text: 'T_r = m V²/R − m g sin φ + (Y cos β + D sin χ + P e_o) cos δ + …',
      doc: 'As in level flight; yaw and roll balance at every place (quasi-steady: slower than the model turns by under 0.1 %).',
      source: 'Derivation: balance along the chord.',
    },
    {
      title: 'The lap that closes',
      text: 'dV/dθ_a = F_t R cos φ/(m_eff V),  V(2π) = V(0)',
      doc: 'Solved at 48 places at once by the wave through them, with Newton’s method on the speeds until no step is as large as 10⁻⁷ m/s; the extremes lie between the places. Where no lap closes that way it is flown lap after lap (Runge–Kutta of fourth order), which says where it gives way. In winds of up to a fifth of the speed the pull is within 10⁻⁶ of that of a far finer solution; in stronger ones, where side forces set in at the edge of cross-flow, within 10⁻³. Without wind it is level flight exactly.',
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
