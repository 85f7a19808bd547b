import {
  ANGLE_SPREAD,
  BLADE_SECTION,
  CHORD_SPREAD,
  ROOT_THICKNESS,
  SECTION_FULLNESS,
  THRUST_BAND,
  TIP_THICKNESS,
} from '../../physics/index';
import { formatNumber } from '../../units/index';
import type { Equation, Theory } from '../block';

const GLAUERT = 'H. Glauert, Airplane Propellers, in W. F. Durand, Aerodynamic Theory IV';

const s = BLADE_SECTION;
const degrees = (radians: number, decimals = 1): string => ((180 / Math.PI) * radians).toFixed(decimals);
const band = {
  nothing: formatNumber(100 * THRUST_BAND.nothing),
  still: formatNumber(100 * THRUST_BAND.still),
  flying: formatNumber(100 * THRUST_BAND.flying),
};

const coefficients: Equation = {
  title: 'Thrust, torque, efficiency',
  text: 'n = Ω/2π,  J = V/(n D)\nP = C_T ρ n² D⁴,  Q = C_P ρ n² D⁵/2π\nη = P V/W = J C_T/C_P',
  doc: 'C_T and C_P stand in tables over J and the tip speed π n D, once for a set-up, with monotone cubics between.',
  source: 'Definition of the coefficients.',
};

export const propellerTheory: Theory = {
  equations: [
    coefficients,
    {
      title: 'Flow through a ring of the disc',
      text: 'φ_0 = atan(V/(Ω r)),  W = √(V² + (Ω r)²) cos(φ − φ_0)\nσ c_l cos(φ − φ_0) = 4 F sin φ sin(φ − φ_0),  σ = B c/(2π r)\nF = (2/π) acos e^(−B (R − r)/(2 r |sin φ|))',
      doc: 'φ angle of the flow to the plane of rotation, W its speed, c chord, B blades, F tip loss. Lift of the blades against momentum of the air; what the blades add stands at right angles on W.',
      source: `${GLAUERT}; tip loss by L. Prandtl.`,
    },
    {
      title: 'Coefficients',
      text: 'C_T = (π³/4) ∫ σ w² x (c_l cos φ − c_d sin φ) dx\nC_P = (π⁴/4) ∫ σ w² x² (c_l sin φ + c_d cos φ) dx',
      doc: 'x = r/R, w = W/(Ω R).',
      source: `${GLAUERT}.`,
    },
    {
      title: 'A measured pull',
      text: `C_T(Δβ, f_c) = P_m/(ρ n² D⁴) at rest and in flight\nof one of them: with the least (Δβ/${degrees(ANGLE_SPREAD)}°)² + ((f_c − 1)/${CHORD_SPREAD})²`,
      doc: `Shift of all blade angles and factor of all chords, by Newton’s method. Thirteen measured propellers, tuned by two points each, come back within 6 % in thrust from 0.7 of the advance ratio of their flight to that of best efficiency, and within 13 % a little beyond, where thrust runs out; untuned they are up to 28 % off. The band is the root mean square over them: ${band.nothing} % untuned, ${band.still} % by the pull at rest, ${band.flying} % by that in flight. Power comes within some 6 %.`,
      source: 'Derivation; J. B. Brandt and others, UIUC Propeller Database, volumes 1 to 4.',
    },
    {
      title: 'Section of the blades',
      text: `α = β − φ − α_L0\nc_l = a ((1 + √(f))/2)² sin α cos α,  f = 1/(1 + e^((|α| − α_s)/${s.stallBreadth}))\nc_d = c_d0 + ${s.liftDrag} c_l² + ${s.plateDrag} (1 − f) sin² α\nα_L0 = −${degrees(-s.zeroLiftAngle)}° − ${degrees(-s.zeroLiftTrend)}° lg(Re/${s.reynolds}),  c_d0 = ${s.drag.toFixed(3)} (Re/${s.reynolds})^−${s.dragPower}`,
      doc: `One section for all propellers. f is the share of the chord with attached flow; a = ${s.slope} per rad, more with Mach number (Prandtl and Glauert). α_L0 is held below Re 10⁴ and above 10⁵; α_s = ${degrees(s.stall, 0)}° + ${degrees(s.stallTrend)}° lg(Re/${s.reynolds}), later inboard of half radius.`,
      source:
        'Form after G. Kirchhoff’s free streamlines; numbers fitted once to eleven propellers together (J. B. Brandt and others, UIUC Propeller Database), none to a single one.',
    },
    {
      title: 'Blade',
      text: 'β = atan(p_r/(2π r)) + Δβ,  p_r = p · share of the shape',
      doc: 'Typed chords scale the shape, typed angles shift its twist, straight between the stations typed.',
      source: 'The helix; shapes from measured blades, see the blade shapes.',
    },
    {
      title: 'Mass and inertia',
      text: `t/c = ${TIP_THICKNESS} + ${ROOT_THICKNESS} (1 − r/R)²,  A = ${SECTION_FULLNESS} t c\nm = B ρ_p ∫ A dr + hub,  I_p = B ρ_p ∫ A r² dr + hub`,
      doc: 'Where no mass is typed.',
      source: 'Thickness, fullness and hub are guesses without a source.',
    },
  ],
  notModelled: [
    'The true section of the blades: thickness, camber and finish of yours are not known; the shift of the blade angle can make up for it.',
    'Blades that bend and twist under load.',
    'The nacelle, cowl or wing behind the propeller, and flow that comes at an angle.',
    'Shock waves beyond a rise of drag and a held lift; noise.',
  ],
};

export const measuredPropellerTheory: Theory = {
  equations: [
    coefficients,
    {
      title: 'Table',
      text: 'C_T = C_T(J),  C_P = C_P(J)',
      doc: 'Straight between the rows, read at twelve even steps from rest to the last row; beyond it straight on.',
      source: 'The rows that were typed.',
    },
  ],
  notModelled: [
    'Change of the coefficients with rpm: measured tables of small propellers rise by up to a third over the rpm range.',
  ],
};
