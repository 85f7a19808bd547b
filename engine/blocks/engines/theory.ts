import {
  PITCH_SPEED_FACTOR,
  PITCH_SPEED_SHARE,
  PROPELLER_MASS_FACTOR,
  PROPELLER_SHAPE,
  STATIC_MERIT,
  STATIC_SCREW,
} from '../../physics/index';
import type { Equation, Theory } from '../block';
import { breathingEquation } from './breathing';
import { fuelEquation } from './theory-fuel';

const rotor: Equation = {
  title: 'Inertia of the propeller',
  text: `I_p = ${PROPELLER_SHAPE} m D²,  m = ${PROPELLER_MASS_FACTOR} kg/m³ · D³`,
  doc: 'Where none is typed.',
  source: 'A tapering bar of 20 g at 9 in: a guess without a source.',
};

const notModelled: readonly string[] = [
  'Change of power with mixture, plug and heat, but for the charge of air.',
  'The propeller as blades: an engine by its data or by tachometer takes one.',
  'Swirl and slipstream on wing, tail and fin.',
];

export const thrustLawTheory: Theory = {
  equations: [
    {
      title: 'Thrust',
      text: `P = k_P p_ρ P_0 (1 − V/V_0),  V_0 = ${PITCH_SPEED_FACTOR} n p`,
      doc: 'n turns a second; k_P the power factor; p_ρ what the air of today makes of it. Negative beyond V_0.',
      source: `A straight line through two measurements; ${PITCH_SPEED_FACTOR} common practice, no source.`,
    },
    {
      title: 'Torque',
      text: 'Q = k_P p_ρ P_0^1.5/(√(2 ρ_1 A) M Ω_1),  A = π D²/4,  Ω_1 = 2π n_1',
      doc: `M = ${STATIC_MERIT} share of the shaft power that an ideal propeller would need at rest. The same at all airspeeds; n_1 the rpm typed.`,
      source:
        'Momentum theory, H. Glauert, The Elements of Aerofoil and Airscrew Theory; M is a guess without a source.',
    },
    breathingEquation('1'),
    {
      title: 'Propeller in the air of today',
      text: 'n = n_1 (w ρ_1/ρ)^⅓,  p_ρ = (ρ/ρ_1) (n/n_1)²',
      doc: 'At the same advance ratio: rpm and V_0 stay where κ is 1 and the air is as moist.',
      source: 'Derivation: W = C_P ρ n³ D⁵,  P = C_T ρ n² D⁴.',
    },
    rotor,
    fuelEquation,
  ],
  notModelled,
};

export const measuredLapTheory: Theory = {
  equations: [
    {
      title: 'Speed and lift of the timed lap',
      text: 'V = 2π R cos φ/t,  sin φ = h/R\nL = m g cos φ + m (V²/R) tan φ + F_down',
      doc: 'R radius to the CG, h height above the handle, F_down press of the lines on the guide.',
      source: 'Derivation: circular motion.',
    },
    {
      title: 'Power of the timed lap',
      text: 'P V = [q C_D A + k L²/(q S)] V + F_line R_g V/R',
      doc: 'Drag of side force and trim is left out, about 1 % of the whole.',
      source: 'Derivation: energy.',
    },
    {
      title: 'Power that is held',
      text: 'v = −V/2 + √(V²/4 + P/(2 ρ A))\nW_i = k_P w P (V + v)',
      doc: 'v speed that the propeller adds at its disc of area A, ρ of that day; k_P the power factor, w what the air of today makes of it. Thrust at any airspeed is what an ideal propeller makes of W_i in the air of today.',
      source: 'Momentum theory, H. Glauert, The Elements of Aerofoil and Airscrew Theory.',
    },
    breathingEquation('k'),
    {
      title: 'Torque',
      text: 'Q = W_i/(η_b Ω),  Ω = 2π n_k (w ρ_k/ρ)^⅓',
      doc: `n_k rpm of the timed lap; rpm where none is typed: speed of the lap over ${PITCH_SPEED_SHARE} × pitch.`,
      source: `Definition of the blade efficiency; ${PITCH_SPEED_SHARE} common practice, no source.`,
    },
    {
      title: 'Thrust at rest and when slow',
      text: `P ≤ ${STATIC_SCREW} · 2π Q/p`,
      doc: 'Below the speed of the timed lap, never less than its thrust: blades stall and hold the engine back, which an ideal propeller does not. 1.01 to 1.57 of pitches of 0.44 to 0.75 diameters.',
      source: 'Measured at rest: UIUC Propeller Database, volume 1.',
    },
    rotor,
    fuelEquation,
  ],
  notModelled,
};
