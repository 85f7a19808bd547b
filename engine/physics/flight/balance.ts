import { lineDragAt } from '../line-drag';
import type { Constants } from './constants';
import { engineAt } from './engine-at';
import type { Balance } from './loads';
import type { State } from './state';

/** Sine of the sideslip beyond which the cross-flow drag of the body counts. */
export const CROSS_FLOW_FROM = Math.sin((10 * Math.PI) / 180);

const read = new Float64Array(8);

/**
 * Balance of forces and moments in steady level circular flight, with all derivatives.
 *
 * State: V speed of the CG; β sideslip, nose out positive; δ roll about the path, outboard low positive; θ pitch of the
 * reference line above the path. Axes: t along the path, o outboard along the chord from handle to guide, u across it,
 * upward. They are rolled by δ about t, o₁ = o cos δ − u sin δ and u₁ = o sin δ + u cos δ, then turned by β about u₁ and
 * pitched by θ to the body. The lift acts along u₁, the drag along −t, the side force Y of body and fin normal to the
 * body, the thrust P along the shaft e; φ elevation, ω = V/R.
 *
 *   along o:  T_r = m V²/R − m g sin φ + S cos δ + N sin δ,  S = Y cos β + P e_o1,  N = L + P e_u1
 *   along u:  N cos δ = m g cos φ + m (V²/R) tan φ + F_down + S sin δ
 *   about the pilot:  T_b = (F_line R_g − s T_r)/ρ
 *   along t:  P e_t − D − Y sin β − T_b = 0                                              (row 0)
 *   about u₁ (row 1) and about t (row 2):  pull at the guide, side forces, lift and drag off the CG, thrust off the CG,
 *     torque, gyroscopic moment of the propeller and inertia (I_up − I_span) ω² p̂ r̂ add up to 0
 *   about o₁:  likewise, which shares L = L_w + L_t out between wing and tail; the elevator gives the tail its part
 *   wing:  L_w − q S a (θ + i_w − α_0) = 0                                               (row 3)
 *
 * T_b is the pull's part backward along the path where the guide trails the radius of the CG by s at the radius ρ: it is
 * T sin(ε − γ) with F_line = T sin ε and tan γ = s/ρ. Turn rates over ω: p̂ = tan φ cos δ − sin δ about o₁,
 * r̂ = cos δ + tan φ sin δ about u₁.
 *
 * Derivation: Newton's and Euler's laws for a body in uniform circular motion. For small δ, β and θ it comes to the usual
 * closed forms: yaw T [Δ cos(ψ + ε − γ) − a sin(ψ + ε − γ)] + …, roll −L (y_L − y_cg) − T [a sin(δ + σ) + …] + …, and
 * nose-out ψ = β + θ δ. Valid for |β|, |δ|, |θ| up to some 20°; C_L below the stall.
 */
export function balance(c: Constants, state: State, b: Balance): void {
  const { speed: V, sideslip: beta, roll: delta, pitch: theta } = state;
  const s = c.setup;
  const R = c.radius;
  const q = 0.5 * s.density * V * V;
  const qV = s.density * V;
  const sb = Math.sin(beta);
  const cb = Math.cos(beta);
  const sd = Math.sin(delta);
  const cd = Math.cos(delta);
  const td = sd / cd;
  const st = Math.sin(theta);
  const ct = Math.cos(theta);
  const pitchTurn = c.tanElevation * cd - sd;
  const yawTurn = cd + c.tanElevation * sd;

  // Engine: P, Q, H and their slopes with airspeed.
  read[0] = V;
  engineAt(s, read);
  const P = read[0]!;
  const P_V = read[1]!;
  const Q = s.turning * read[2]!;
  const Q_V = s.turning * read[3]!;
  const spin = s.turning * s.rotorInertia;
  const gyro = (spin * read[4]! * V) / R;
  const gyro_V = (spin * (read[5]! * V + read[4]!)) / R;

  // Shaft e in the rolled axes; up and forward in the plane of the body, less down thrust.
  const shaftUp = st * c.cosDownThrust - ct * c.sinDownThrust;
  const shaftForward = ct * c.cosDownThrust + st * c.sinDownThrust;
  const flat = c.cosSideThrust * shaftForward;
  const et = flat * cb - c.sinSideThrust * sb;
  const eo = flat * sb + c.sinSideThrust * cb;
  const eu = c.cosSideThrust * shaftUp;
  const etT = -eu * cb;
  const eoT = -eu * sb;
  const euT = flat;

  // Side force Y and yaw moment N of body and fin, normal to the body; cross-flow beyond 10°.
  const over = sb * sb - CROSS_FLOW_FROM * CROSS_FLOW_FROM;
  const cross = over > 0 ? Math.sign(sb) * over : 0;
  const crossB = over > 0 ? 2 * Math.abs(sb) * cb : 0;
  const sideUnit = c.sideSlip * beta + c.sideTurn * yawTurn + c.sideSet + c.crossForce * cross;
  const yawUnit = c.yawSlip * beta + c.yawTurn * yawTurn + c.yawSet + c.crossYaw * cross;
  const Y = q * sideUnit;
  const Y_V = qV * sideUnit;
  const Y_B = q * (c.sideSlip + c.crossForce * crossB);
  const Y_D = q * c.sideTurn * pitchTurn;
  const N = q * yawUnit;
  const N_V = qV * yawUnit;
  const N_B = q * (c.yawSlip + c.crossYaw * crossB);
  const N_D = q * c.yawTurn * pitchTurn;

  // Lines: drag by moments about the pilot, press on the guide.
  read[6] = V / R;
  lineDragAt(c.line, read, 6);
  const F = read[6]!;
  const F_V = read[7]! / R;
  const press = c.pressStill + c.pressTurning * V * V;
  const press_V = 2 * c.pressTurning * V;

  // Along o and u: the tension inward and the lift.
  const turn = (s.mass * V * V) / R;
  const A = turn - c.weight * c.sinElevation;
  const A_V = (2 * turn) / V;
  const B = c.weight * c.cosElevation + turn * c.tanElevation + press;
  const B_V = A_V * c.tanElevation + press_V;
  const S = Y * cb + P * eo;
  const S_V = Y_V * cb + P_V * eo;
  const S_B = Y_B * cb - Y * sb + P * et;
  const S_D = Y_D * cb;
  const S_T = P * eoT;
  const up = (B + S * sd) / cd;
  const up_V = (B_V + S_V * sd) / cd;
  const up_B = S_B * td;
  const up_D = S_D * td + S + up * td;
  const up_T = S_T * td;
  const T = A + S * cd + up * sd;
  const T_V = A_V + S_V * cd + up_V * sd;
  const T_B = S_B * cd + up_B * sd;
  const T_D = S_D * cd - S * sd + up_D * sd + up * cd;
  const T_T = S_T * cd + up_T * sd;
  const L = up - P * eu;
  const L_V = up_V - P_V * eu;
  const L_T = up_T - P * euT;

  // Guide from the CG in the rolled axes: (−trail, −inward, above).
  const behind = c.guideBehind * ct + c.guideAbove * st;
  const above = c.guideAbove * ct - c.guideBehind * st;
  const trail = behind * cb - c.guideInboard * sb;
  const inward = behind * sb + c.guideInboard * cb;
  const trail_T = above * cb;
  const inward_T = above * sb;
  const reach = R - inward * cd + above * sd;
  const backward = (F * s.guideRadius - trail * T) / reach;
  const backward_V = (F_V * s.guideRadius - trail * T_V) / reach;
  const backward_B = (inward * T - trail * T_B + backward * trail * cd) / reach;
  const backward_D = (-trail * T_D - backward * (inward * sd + above * cd)) / reach;
  const backward_T = (-trail_T * T - trail * T_T + backward * (inward_T * cd + behind * sd)) / reach;

  // Pull on the guide along −o₁ and −u₁.
  const pullIn = T * cd - press * sd;
  const pullDown = T * sd + press * cd;
  const pullIn_V = T_V * cd - press_V * sd;
  const pullDown_V = T_V * sd + press_V * cd;
  const pullIn_D = T_D * cd - pullDown;
  const pullDown_D = T_D * sd + pullIn;

  // Couples about the body's axes, turned into the rolled ones.
  const rollBody = P * c.thrustRoll;
  const yawBody = P * c.thrustYaw + N;
  const yawBody_V = P_V * c.thrustYaw + N_V;
  const tilted = rollBody * ct + yawBody * st;
  const upright = yawBody * ct - rollBody * st;
  const tilted_V = P_V * c.thrustRoll * ct + yawBody_V * st;
  const upright_V = yawBody_V * ct - P_V * c.thrustRoll * st;
  const pitchBody = P * c.thrustPitch;
  const pitchBody_V = P_V * c.thrustPitch;

  // About o₁: how wing and tail share the lift.
  const moment =
    q * c.wingMoment +
    trail * pullDown +
    above * backward +
    tilted * sb +
    pitchBody * cb -
    Q * eo +
    gyro * yawTurn * et;
  const moment_V =
    qV * c.wingMoment +
    trail * pullDown_V +
    above * backward_V +
    tilted_V * sb +
    pitchBody_V * cb -
    Q_V * eo +
    gyro_V * yawTurn * et;
  const moment_B =
    -inward * pullDown +
    trail * T_B * sd +
    above * backward_B +
    N_B * st * sb +
    tilted * cb -
    pitchBody * sb -
    Q * et -
    gyro * yawTurn * eo;
  const moment_D = trail * pullDown_D + above * backward_D + N_D * st * sb + gyro * pitchTurn * et;
  const moment_T =
    trail_T * pullDown +
    trail * T_T * sd -
    behind * backward +
    above * backward_T +
    upright * sb -
    Q * eoT +
    gyro * yawTurn * etT;
  const perArm = 1 / (c.tailBehind + c.wingAhead);
  const Lw = (L * c.tailBehind - moment) * perArm;
  const Lw_V = (L_V * c.tailBehind - moment_V) * perArm;
  const Lw_B = (up_B * c.tailBehind - moment_B) * perArm;
  const Lw_D = (up_D * c.tailBehind - moment_D) * perArm;
  const Lw_T = (L_T * c.tailBehind - moment_T) * perArm;
  const Lt = L - Lw;
  const Lt_V = L_V - Lw_V;
  const Lt_B = up_B - Lw_B;
  const Lt_D = up_D - Lw_D;
  const Lt_T = L_T - Lw_T;

  // Drag: profile (the wing's by the airspeed, `wingDragShare`), wing due to lift, tail induced and the tail's lift leaning back in the downwash.
  const x = V * c.perSectionSpeed - 1;
  const below = 1 / (1 + c.dragBelow * x);
  const share = (1 + c.dragAbove * x) * below;
  const share_V = (c.dragAbove - share * c.dragBelow) * below * c.perSectionSpeed;
  const profile = q * (share * c.wingDragArea + c.otherDragArea);
  const profile_V = (2 * profile) / V + q * share_V * c.wingDragArea;
  const profileYaw = q * (share * c.wingDragMoment + c.otherDragMoment);
  const profileYaw_V = (2 * profileYaw) / V + q * share_V * c.wingDragMoment;
  const k = s.inducedFactor / (q * s.wingArea);
  const kTail = s.tailInducedFactor / (q * s.tailArea);
  const lean = s.downwash / (q * c.wingStrength);
  const wingInduced = (k * Lw + s.dragSlope) * Lw;
  const tailInduced = kTail * Lt * Lt + lean * Lt * Lw;
  const D = profile + wingInduced + tailInduced;
  const byWing = 2 * k * Lw + s.dragSlope;
  const tailByTail = 2 * kTail * Lt + lean * Lw;
  const tailByWing = lean * Lt;
  const wing_V = byWing * Lw_V - (2 * k * Lw * Lw) / V;
  const tail_V = tailByTail * Lt_V + tailByWing * Lw_V - (2 * tailInduced) / V;
  const tail_B = tailByTail * Lt_B + tailByWing * Lw_B;
  const tail_D = tailByTail * Lt_D + tailByWing * Lw_D;
  const tail_T = tailByTail * Lt_T + tailByWing * Lw_T;
  const wingArm = c.liftOutboard;
  const tailArm = -s.cgY;

  const r = b.residual;
  const J = b.jacobian;
  r[0] = P * et - D - Y * sb - backward;
  J[0] = P_V * et - profile_V - wing_V - tail_V - Y_V * sb - backward_V;
  J[1] = -P * eo - byWing * Lw_B - tail_B - Y_B * sb - Y * cb - backward_B;
  J[2] = -byWing * Lw_D - tail_D - Y_D * sb - backward_D;
  J[3] = P * etT - byWing * Lw_T - tail_T - backward_T;

  r[1] =
    trail * pullIn -
    inward * backward +
    upright +
    Q * eu +
    gyro * pitchTurn * et +
    profileYaw +
    wingInduced * wingArm +
    tailInduced * tailArm;
  J[4] =
    trail * pullIn_V -
    inward * backward_V +
    upright_V +
    Q_V * eu +
    gyro_V * pitchTurn * et +
    profileYaw_V +
    wing_V * wingArm +
    tail_V * tailArm;
  J[5] =
    -inward * pullIn +
    trail * T_B * cd -
    trail * backward -
    inward * backward_B +
    N_B * ct -
    gyro * pitchTurn * eo +
    byWing * Lw_B * wingArm +
    tail_B * tailArm;
  J[6] =
    trail * pullIn_D -
    inward * backward_D +
    N_D * ct -
    gyro * yawTurn * et +
    byWing * Lw_D * wingArm +
    tail_D * tailArm;
  J[7] =
    trail_T * pullIn +
    trail * T_T * cd -
    inward_T * backward -
    inward * backward_T -
    tilted +
    Q * euT +
    gyro * pitchTurn * etT +
    byWing * Lw_T * wingArm +
    tail_T * tailArm;

  const inertia = c.inertiaTurn * V * V;
  r[2] =
    -Lw * wingArm -
    Lt * tailArm -
    above * pullIn -
    inward * pullDown +
    tilted * cb -
    pitchBody * sb -
    Q * et +
    gyro * (pitchTurn * eu - yawTurn * eo) +
    inertia * pitchTurn * yawTurn;
  J[8] =
    -Lw_V * wingArm -
    Lt_V * tailArm -
    above * pullIn_V -
    inward * pullDown_V +
    tilted_V * cb -
    pitchBody_V * sb -
    Q_V * et +
    gyro_V * (pitchTurn * eu - yawTurn * eo) +
    2 * c.inertiaTurn * V * pitchTurn * yawTurn;
  J[9] =
    -Lw_B * wingArm -
    Lt_B * tailArm -
    above * T_B * cd -
    trail * pullDown -
    inward * T_B * sd +
    N_B * st * cb -
    tilted * sb -
    pitchBody * cb +
    Q * eo -
    gyro * yawTurn * et;
  J[10] =
    -Lw_D * wingArm -
    Lt_D * tailArm -
    above * pullIn_D -
    inward * pullDown_D +
    N_D * st * cb -
    gyro * (yawTurn * eu + pitchTurn * eo) +
    inertia * (pitchTurn * pitchTurn - yawTurn * yawTurn);
  J[11] =
    -Lw_T * wingArm -
    Lt_T * tailArm +
    behind * pullIn -
    above * T_T * cd -
    inward_T * pullDown -
    inward * T_T * sd +
    upright * cb -
    Q * etT +
    gyro * (pitchTurn * euT - yawTurn * eoT);

  const strength = q * c.wingStrength;
  const attack = theta + s.wingIncidence - s.zeroLiftAngle;
  r[3] = Lw - strength * attack;
  J[12] = Lw_V - qV * c.wingStrength * attack;
  J[13] = Lw_B;
  J[14] = Lw_D;
  J[15] = Lw_T - strength;

  b.thrust = P;
  b.torque = read[2]!;
  b.shaftSpeed = read[4]!;
  b.lineDrag = F;
  b.linePress = press;
  b.tensionInward = T;
  b.tensionBackward = backward;
  b.guideTrail = trail;
  b.guideReach = reach;
  b.lift = L;
  b.wingLift = Lw;
  b.tailLift = Lt;
  b.sideForce = Y;
  b.drag = D;
  b.wingInduced = wingInduced;
  b.tailInduced = tailInduced;
  b.pitchTurn = pitchTurn;
  b.yawTurn = yawTurn;
}
