import { CROSS_FLOW_BEGINS, CROSS_FLOW_ENDS, CROSS_FLOW_FROM, SETTLED_WITHIN } from '../../physics/index';
import { formatNumber, superscript } from '../../units/index';
import type { Theory } from '../block';

const BODY_IN_A_CIRCLE = 'Derivation: Newton’s and Euler’s laws for a body in uniform circular motion.';
const slip = (sine: number): string => formatNumber((180 / Math.PI) * Math.asin(sine), 2);
const from = slip(CROSS_FLOW_FROM);
const ABOUT_THE_PILOT = 'Derivation: moments about the axis of the pilot, of a straight line.';

export const flightTheory: Theory = {
  equations: [
    {
      title: 'Circle',
      text: 'R = R_g + y_cg − y_g,  sin φ = (H − H_h)/R\nt = 2π R cos φ/V',
      source: 'Geometry.',
    },
    {
      title: 'Along the lines and across them',
      text: 'T_r = m V²/R − m g sin φ + S cos δ + N sin δ\nN cos δ = m g cos φ + m (V²/R) tan φ + F_d + S sin δ\nS = Y cos β + P_o,  N = L + P_u',
      doc: 'T_r inward part of the pull; S, N forces along the span and upward in the rolled axes; P_o, P_u parts of the thrust along them.',
      source: BODY_IN_A_CIRCLE,
    },
    {
      title: 'Along the path',
      text: 'P_t = D + Y sin β + T_b\nT_b = (F_l R_g − s_g T_r)/ρ_g',
      doc: 'T_b backward part of the pull, P_t forward part of the thrust; the guide stands at the radius ρ_g and trails by s_g.',
      source: BODY_IN_A_CIRCLE,
    },
    {
      title: 'Yaw, roll and pitch about the CG',
      text: 'Σ moments of pull at the guide, side forces, lift and drag off the CG, thrust off the CG, torque, turning of the propeller, and (I_zz − I_yy) ω² p̂ r̂ = 0\np̂ = tan φ cos δ − sin δ,  r̂ = cos δ + tan φ sin δ,  ω = V/R',
      doc: 'p̂, r̂ rates of turn over ω about the span and the upright axis. Pitch shares the lift out between wing and tail; the elevator gives the tail its part. For small angles and no forces of the air it comes to the leadout rule: guide aft of the CG by nearly the line trail; further aft holds the nose out.',
      source: BODY_IN_A_CIRCLE,
    },
    {
      title: 'Fin and body in curved flow',
      text: 'Y/q = S_f a_f (β − r̂ l_f/R − τ_r δ_r) + a_b ∫ (β + r̂ ξ/R) dS',
      doc: `ξ how far a strip of the side lies ahead of the CG, l_f fin behind the CG. The fin’s part acts at its height and rolls the model. From about ${from}° of sideslip on (a guess) cross-flow drag on the side counts, sin² β − sin² ${from}°, its corner rounded between ${slip(CROSS_FLOW_BEGINS)}° and ${slip(CROSS_FLOW_ENDS)}°.`,
      source: 'Derivation: strips in the local flow.',
    },
    {
      title: 'Drag of the lines',
      text: 'F_l = (1/R_g) ∫ ½ ρ C_d n k_d d (ω r)² r dr from r_h to R_g',
      doc: 'What the model feels at the guide; C_d by the local Reynolds number for a smooth line. The handle takes the rest. With one C_d and r_h = 0 it is a quarter of the drag at the full speed of the guide.',
      source: ABOUT_THE_PILOT,
    },
    {
      title: 'Press of the lines on the guide',
      text: 'F_d = ½ m_l g cos φ (1 + r_h/R_g) + ⅓ m_l (V²/R) tan φ',
      source: ABOUT_THE_PILOT,
    },
    {
      title: 'Pull',
      text: 'T = √(T_r² + T_b² + F_d²)\nε = atan(T_b/T_r) + atan(s_g/ρ_g),  σ = atan(F_d/T_r)\nT_h = T + ½ n μ ω² (R_g² − r_h²) − m_l g sin φ',
      source: 'Derivation: balance along the line.',
    },
    {
      title: 'Wing, tail and elevator',
      text: 'L_w = q S a (θ + i_w − α_0)\nδ_e = [θ + i_t − dε/dα (θ + i_w − α_0) + p̂ l_t/R − L_t/(q S_t a_t)]/τ_e',
      source: 'Definition of the lift slopes, with the flow curved along the tail arm.',
    },
    {
      title: 'Drag of the model',
      text: 'D = k_D q (S c_d0 + C_D A) + k L_w²/(q S) + k_t L_t²/(q S_t) + dε/dα L_t L_w/(q S a)',
      doc: 'k_D the drag factor. The last term: the lift of the tail leans back in the downwash.',
      source: 'Derivation: sum of the rows.',
    },
    {
      title: 'Solution',
      text: 'Newton’s method on path, yaw, roll and lift at once; else along the curve of balanced yaw, roll and lift downward from the speed without thrust; else a search along that curve',
      doc: `Accepted with tight lines, stable in yaw and roll, on the fast side of the power curve, out of balance by less than 10${superscript(Math.log10(SETTLED_WITHIN))} of the weight. Angles up to about 45° are looked at; the laws hold to some 20°.`,
      source: 'Derivation: residuals of the balances above, with exact derivatives.',
    },
  ],
  notModelled: [
    'Wind, gusts and turbulence.',
    'Whipping by the pilot.',
    'Manoeuvres: gyroscopic moments beyond those of level flight, unsteady lift.',
    'In-and-out motion of the model on its lines.',
    'Flutter and bending.',
    'Interference of the lines with each other; slipstream on the fin.',
    'Ground effect.',
  ],
};
