import type { TablePiece } from './chapter';

/** Symbols that the equations of flight share and that are no field or result. */
export const flightSymbols: TablePiece = {
  kind: 'table',
  title: 'Symbols of the flight',
  columns: ['symbol', 'unit', 'meaning'],
  rows: [
    ['R, R_g, r_h', 'm', 'radius from the pilot to the CG, to the guide, and to the grip: R = R_g + a'],
    ['a', 'm', 'guide inboard of the CG, y_cg − y_guide'],
    ['Δ', 'm', 'guide aft of the CG'],
    ['φ', 'rad', 'elevation of the chord from handle to guide'],
    ['ψ, δ, θ', 'rad', 'yaw (nose out), roll (outboard wing low), pitch (thrust line above the path)'],
    [
      'ε, γ, σ',
      'rad',
      'line trail at the guide, the guide’s own trail behind the CG’s radius, sag of the lines at the guide',
    ],
    ['T, T_r', 'N', 'pull of all lines at the model, and its radial part'],
    ['F_line, F_down', 'N', 'drag of the lines and their press downward, both at the guide'],
    ['P, τ, η', 'N, rad, rad', 'thrust, engine offset (nose out), down thrust'],
    ['Y, N', 'N, N·m', 'outward force of body and fin, yaw moment (nose out)'],
    ['q', 'Pa', 'dynamic pressure ½ρV²'],
    ['μ, n, d', 'kg/m, –, m', 'mass a length of one line, number of lines, diameter'],
  ],
};
