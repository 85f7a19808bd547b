import type { Air } from './air-there';
import type { Constants } from './constants';
import { CROSS_FLOW_BEGINS, crossFlow, crossFlowSlope } from './cross-flow';
import { engineAt, SHAFT_SPEED, THRUST, TORQUE } from './engine-at';
import type { Balance } from './loads';
import type { State } from './state';

/**
 * Balance of forces and moments in a level circle, in calm air or in wind, with its slopes: the one place where forces are written.
 *
 * State: V speed of the CG over the ground; β angle of the nose from the path, outward positive; δ roll about the path, outboard low positive;
 * θ pitch of the reference line above the path. Axes: t along the path, o outboard along the chord from handle to guide, u across it,
 * upward. They are rolled by δ about t, o₁ = o cos δ − u sin δ and u₁ = o sin δ + u cos δ, then turned by β about u₁ and
 * pitched by θ to the body. φ elevation, ω = V/R. Wind: w_t along the path, w_o along the chord, w_u across it.
 *
 * The air meets the model as (−u, s, r) in t, o₁, u₁: u = V − w_t, s = w_o cos δ − w_u sin δ, r = w_o sin δ + w_u cos δ. With v² = u² + s² + r²,
 * m = u − s tan β what meets the wing across its span, and n² = m² + r²:
 *
 *   side forces of body and fin, Y square to the body, see β + χ, χ = atan(s/u), at ½ρ v²; in curved flow r̂ (V/u)/R
 *   the wing sees θ + i_w − α_0 + χ_u, χ_u = atan(r/m), at ½ρ n²: air along a straight wing does not lift
 *   lift along l = (r, r tan β, m), made a unit: square to the span and to the air across it; drag along (−u, s, r)/v
 *   thrust P by the inflow along the shaft, u − s e_o − r e_u
 *
 *   along o:  T_r = m V²/R − m g sin φ + S cos δ + N sin δ,  S = Y cos β + P e_o1 + D s/v + L l_o,  N = L l_u + P e_u1 + D r/v
 *   along u:  N cos δ = m g cos φ + m (V²/R) tan φ + F_down + S sin δ
 *   about the pilot:  T_b = (F_line R_g − s_g T_r)/ρ_g
 *   along t:  P e_t − D u/v + L l_t − Y sin β − T_b                                        (row 0; 0 in steady flight)
 *   about u₁ (row 1) and about t (row 2):  pull at the guide, side forces (the fin's at its height), lift and drag off the CG, thrust off the CG,
 *     torque, gyroscopic moment of the propeller and inertia (I_up − I_span) ω² p̂ r̂ add up to 0
 *   about o₁:  likewise, which shares L = L_w + L_t out between wing and tail; the elevator gives the tail its part
 *   wing:  L_w − ½ρ n² S a (θ + i_w − α_0 + χ_u) = 0                                        (row 3)
 *
 * T_b is the pull's part backward along the path where the guide trails the radius of the CG by s_g at the radius ρ_g: it is
 * T sin(ε − γ) with F_line = T sin ε and tan γ = s_g/ρ_g. Turn rates over ω: p̂ = tan φ cos δ − sin δ about o₁,
 * r̂ = cos δ + tan φ sin δ about u₁.
 *
 * Along the span the air is faster outboard, u (1 + k y), k = V/(u R). What the angle of attack lifts grows with the square of that and acts at
 * y_0 + κ k; what the wind from below lifts, L_r = ½ρ n² S a χ_u, grows with its first power and acts at y_0 + ½ κ k. Leaning forward by l_t they
 * turn the model in yaw with one power less each.
 *
 * What the lines take and how they press stands in `b` already (`linesInCalm`, `linesInWind`). D in S and N is that of the visit before, with which it
 * agrees to the last bits when the state has settled; 0 at first.
 *
 * Derivation: Newton's and Euler's laws for a body in circular motion, and strips of wing and body in the air that they meet. Without wind
 * and for small δ, β and θ it comes to the usual
 * closed forms: yaw T [Δ cos(ψ + ε − γ) − a sin(ψ + ε − γ)] + …, roll −L (y_L − y_cg) − T [a sin(δ + σ) + …] + …, and
 * nose-out ψ = β + θ δ. Slopes by hand; in wind they leave out how torque, spin and what thrust does to the pitch follow the angles by the inflow; D of the visit before
 * follows by the slopes that it had there. Valid for |β|, |δ|, |θ| up to some 20°; C_L below the stall; u > 0.
 */
export function forces(c: Constants, state: State, air: Air, b: Balance): void {
  const { speed: V, sideslip: beta, roll: delta, pitch: theta } = state;
  const s = c.setup;
  const R = c.radius;
  const sb = Math.sin(beta);
  const cb = Math.cos(beta);
  const sd = Math.sin(delta);
  const cd = Math.cos(delta);
  const td = sd / cd;
  const st = Math.sin(theta);
  const ct = Math.cos(theta);
  const pitchTurn = c.tanElevation * cd - sd;
  const yawTurn = cd + c.tanElevation * sd;

  // Air that meets the model, and its directions with their slopes.
  let u = V;
  let v = V;
  let side = 0;
  let rise = 0;
  let slip = beta;
  let sinSlip = sb;
  let cosSlip = cb;
  let slip_V = 0;
  let slip_D = 0;
  let climb = 0;
  let climb_V = 0;
  let climb_D = 0;
  let faster = 1;
  let faster_V = 0;
  let v_V = 1;
  let aT = -1;
  let aT_V = 0;
  let aO = 0;
  let aO_V = 0;
  let aO_D = 0;
  let aU = 0;
  let aU_V = 0;
  let aU_D = 0;
  let lT = 0;
  let lT_V = 0;
  let lT_D = 0;
  let lU = 1;
  let lU_V = 0;
  let lU_D = 0;
  let lT_B = 0;
  let lO = 0;
  let lO_V = 0;
  let lO_B = 0;
  let lO_D = 0;
  let lU_B = 0;
  let climb_B = 0;
  let ahead = V;
  let ahead_B = 0;
  let ahead_D = 0;
  let across = V * V;
  if (!air.still) {
    u = V - air.along;
    side = air.out * cd - air.up * sd;
    rise = air.out * sd + air.up * cd;
    const tb = sb / cb;
    const perCosine = 1 + tb * tb;
    ahead = u - side * tb;
    ahead_B = -side * perCosine;
    ahead_D = rise * tb;
    across = ahead * ahead + rise * rise;
    const whole = u * u + rise * rise + side * side;
    v = Math.sqrt(whole);
    const askew = Math.atan2(side, u);
    const flat = 1 / (u * u + side * side);
    slip = beta + askew;
    sinSlip = Math.sin(slip);
    cosSlip = Math.cos(slip);
    slip_V = -side * flat;
    slip_D = -u * rise * flat;
    climb = Math.atan2(rise, ahead);
    climb_V = -rise / across;
    climb_B = (-rise * ahead_B) / across;
    climb_D = (ahead * side - rise * ahead_D) / across;
    faster = V / u;
    faster_V = -air.along / (u * u);
    const perV = 1 / v;
    const perV3 = perV / whole;
    v_V = u * perV;
    aT = -u * perV;
    aT_V = u * u * perV3 - perV;
    aO = side * perV;
    aO_V = -side * u * perV3;
    aO_D = -rise * perV;
    aU = rise * perV;
    aU_V = -rise * u * perV3;
    aU_D = side * perV;
    const leant = rise * rise * perCosine;
    const perN = 1 / Math.sqrt(ahead * ahead + leant);
    const perN3 = perN * perN * perN;
    const perN_V = -ahead * perN3;
    const perN_B = -(ahead * ahead_B + leant * tb) * perN3;
    const perN_D = -(ahead * ahead_D + rise * side * perCosine) * perN3;
    lT = rise * perN;
    lT_V = rise * perN_V;
    lT_B = rise * perN_B;
    lT_D = side * perN + rise * perN_D;
    lO = tb * lT;
    lO_V = tb * lT_V;
    lO_B = perCosine * lT + tb * lT_B;
    lO_D = tb * lT_D;
    lU = ahead * perN;
    lU_V = perN + ahead * perN_V;
    lU_B = ahead_B * perN + ahead * perN_B;
    lU_D = ahead_D * perN + ahead * perN_D;
  }
  const q = 0.5 * s.density * v * v;
  const qV = s.density * u;
  const lifting = 0.5 * s.density * across;
  const lifting_V = s.density * ahead;
  const lifting_B = lifting_V * ahead_B;
  const lifting_D = lifting_V * ahead_D + s.density * rise * side;
  const byLifting_V = lifting_V / lifting;

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

  // Engine: P, Q, H and their slopes with airspeed.
  const read = b.engine;
  read[0] = u - side * eo - rise * eu;
  engineAt(s, read);
  const P = read[THRUST]!;
  const P_V = read[THRUST + 1]!;
  const Q = s.turning * read[TORQUE]!;
  const Q_V = s.turning * read[TORQUE + 1]!;
  const spin = s.spinning * s.rotorInertia;
  const gyro = (spin * read[SHAFT_SPEED]! * V) / R;
  const gyro_V = (spin * (read[SHAFT_SPEED + 1]! * V + read[SHAFT_SPEED]!)) / R;
  // How thrust follows the angles, by the inflow.
  let P_B = 0;
  let P_D = 0;
  let P_T = 0;
  if (!air.still) {
    P_B = -P_V * side * et;
    P_D = P_V * (rise * eo - side * eu);
    P_T = -P_V * (side * eoT + rise * euT);
  }

  // Side force Y, yaw moment N of body and fin and roll moment K of the fin, square to the body; cross-flow from about 10° on.
  let cross = 0;
  let cross_B = 0;
  if (Math.abs(sinSlip) > CROSS_FLOW_BEGINS) {
    cross = crossFlow(sinSlip);
    cross_B = crossFlowSlope(sinSlip) * cosSlip;
  }
  const turning = yawTurn * faster;
  const turning_D = pitchTurn * faster;
  const sideUnit = c.sideSlip * slip + c.sideTurn * turning + c.sideSet + c.crossForce * cross;
  const yawUnit = c.yawSlip * slip + c.yawTurn * turning + c.yawSet + c.crossYaw * cross;
  const rollUnit = c.rollSlip * slip + c.rollTurn * turning + c.rollSet;
  const sideUnit_B = c.sideSlip + c.crossForce * cross_B;
  const yawUnit_B = c.yawSlip + c.crossYaw * cross_B;
  const Y = q * sideUnit;
  const Y_B = q * sideUnit_B;
  let Y_V = qV * sideUnit;
  let Y_D = q * c.sideTurn * turning_D;
  const N = q * yawUnit;
  const N_B = q * yawUnit_B;
  let N_V = qV * yawUnit;
  let N_D = q * c.yawTurn * turning_D;
  const K = q * rollUnit;
  const K_B = q * c.rollSlip;
  let K_V = qV * rollUnit;
  let K_D = q * c.rollTurn * turning_D;
  if (!air.still) {
    const turning_V = yawTurn * faster_V;
    Y_V += q * (sideUnit_B * slip_V + c.sideTurn * turning_V);
    Y_D += q * sideUnit_B * slip_D;
    N_V += q * (yawUnit_B * slip_V + c.yawTurn * turning_V);
    N_D += q * yawUnit_B * slip_D;
    K_V += q * (c.rollSlip * slip_V + c.rollTurn * turning_V);
    K_D += q * c.rollSlip * slip_D;
  }

  // Lines: drag by moments about the pilot, press on the guide.
  const F = b.lineDrag;
  const F_V = b.lineDragSlope;
  const press = b.linePress;
  const press_V = b.linePressSlope;

  // Along o and u: the tension inward and the lift.
  const turn = (s.mass * V * V) / R;
  const A = turn - c.weight * c.sinElevation;
  const A_V = (2 * turn) / V;
  const B = c.weight * c.cosElevation + turn * c.tanElevation + press;
  const B_V = A_V * c.tanElevation + press_V;
  const before = b.drag;
  const follows = b.dragSlopes;
  let S = Y * cb + P * eo;
  let S_V = Y_V * cb + P_V * eo;
  let S_B = Y_B * cb - Y * sb + P * et;
  let S_D = Y_D * cb;
  let S_T = P * eoT;
  if (!air.still) {
    S += before * aO;
    S_V += before * aO_V + follows[0]! * aO;
    S_B += P_B * eo + follows[1]! * aO;
    S_D += P_D * eo + before * aO_D + follows[2]! * aO;
    S_T += P_T * eo + follows[3]! * aO;
  }
  let up = (B + S * sd) / cd;
  let up_V = (B_V + S_V * sd) / cd;
  let up_B = S_B * td;
  let up_D = S_D * td + S + up * td;
  let up_T = S_T * td;
  let L = up - P * eu;
  let L_V = up_V - P_V * eu;
  let L_B = up_B;
  let L_D = up_D;
  let L_T = up_T - P * euT;
  if (!air.still) {
    // L l_o is a part of S.
    const upright = 1 / (lU - lO * td);
    const perCosine = 1 + td * td;
    L = (L - before * aU) * upright;
    L_V = (L_V - before * aU_V - follows[0]! * aU - L * (lU_V - lO_V * td)) * upright;
    L_B = (L_B - P_B * eu - follows[1]! * aU - L * (lU_B - lO_B * td)) * upright;
    L_D = (L_D - P_D * eu - before * aU_D - follows[2]! * aU - L * (lU_D - lO_D * td - lO * perCosine)) * upright;
    L_T = (L_T - P_T * eu - follows[3]! * aU) * upright;
    const aside = L * lO;
    const aside_V = L_V * lO + L * lO_V;
    const aside_B = L_B * lO + L * lO_B;
    const aside_D = L_D * lO + L * lO_D;
    const aside_T = L_T * lO;
    S += aside;
    S_V += aside_V;
    S_B += aside_B;
    S_D += aside_D;
    S_T += aside_T;
    up += aside * td;
    up_V += aside_V * td;
    up_B += aside_B * td;
    up_D += aside_D * td + aside * perCosine;
    up_T += aside_T * td;
  }
  const T = A + S * cd + up * sd;
  const T_V = A_V + S_V * cd + up_V * sd;
  const T_B = S_B * cd + up_B * sd;
  const T_D = S_D * cd - S * sd + up_D * sd + up * cd;
  const T_T = S_T * cd + up_T * sd;

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
  const rollBody = P * c.thrustRoll + K;
  const rollBody_V = P_V * c.thrustRoll + K_V;
  const yawBody = P * c.thrustYaw + N;
  const yawBody_V = P_V * c.thrustYaw + N_V;
  const tilted = rollBody * ct + yawBody * st;
  const tilted_V = rollBody_V * ct + yawBody_V * st;
  let tilted_B = K_B * ct + N_B * st;
  let tilted_D = K_D * ct + N_D * st;
  const standing = yawBody * ct - rollBody * st;
  const standing_V = yawBody_V * ct - rollBody_V * st;
  let standing_B = N_B * ct - K_B * st;
  let standing_D = N_D * ct - K_D * st;
  if (!air.still) {
    const tilting = c.thrustRoll * ct + c.thrustYaw * st;
    const upending = c.thrustYaw * ct - c.thrustRoll * st;
    tilted_B += P_B * tilting;
    tilted_D += P_D * tilting;
    standing_B += P_B * upending;
    standing_D += P_D * upending;
  }
  const pitchBody = P * c.thrustPitch;
  const pitchBody_V = P_V * c.thrustPitch;

  // About o₁: how wing and tail share the lift.
  const moment =
    lifting * c.wingMoment +
    trail * pullDown +
    above * backward +
    tilted * sb +
    pitchBody * cb -
    Q * eo +
    gyro * yawTurn * et;
  const moment_V =
    lifting_V * c.wingMoment +
    trail * pullDown_V +
    above * backward_V +
    tilted_V * sb +
    pitchBody_V * cb -
    Q_V * eo +
    gyro_V * yawTurn * et;
  const moment_B =
    lifting_B * c.wingMoment -
    inward * pullDown +
    trail * T_B * sd +
    above * backward_B +
    tilted_B * sb +
    tilted * cb -
    pitchBody * sb -
    Q * et -
    gyro * yawTurn * eo;
  const moment_D =
    lifting_D * c.wingMoment + trail * pullDown_D + above * backward_D + tilted_D * sb + gyro * pitchTurn * et;
  const moment_T =
    trail_T * pullDown +
    trail * T_T * sd -
    behind * backward +
    above * backward_T +
    standing * sb -
    Q * eoT +
    gyro * yawTurn * etT;
  const perArm = 1 / (c.tailBehind + c.wingAhead);
  const Lw = (L * c.tailBehind - moment) * perArm;
  const Lw_V = (L_V * c.tailBehind - moment_V) * perArm;
  const Lw_B = (L_B * c.tailBehind - moment_B) * perArm;
  const Lw_D = (L_D * c.tailBehind - moment_D) * perArm;
  const Lw_T = (L_T * c.tailBehind - moment_T) * perArm;
  const Lt = L - Lw;
  const Lt_V = L_V - Lw_V;
  const Lt_B = L_B - Lw_B;
  const Lt_D = L_D - Lw_D;
  const Lt_T = L_T - Lw_T;

  // Drag: profile (the wing's by the airspeed, `wingDragShare`), wing due to lift, tail induced and the tail's lift leaning back in the downwash.
  const x = v * c.perSectionSpeed - 1;
  const below = 1 / (1 + c.dragBelow * x);
  const share = (1 + c.dragAbove * x) * below;
  const share_V = (c.dragAbove - share * c.dragBelow) * below * c.perSectionSpeed * v_V;
  const profile = q * (share * c.wingDragArea + c.otherDragArea);
  const profile_V = qV * (share * c.wingDragArea + c.otherDragArea) + q * share_V * c.wingDragArea;
  const wingDragMoment = c.wingDragMoment + c.wingDragTurn * faster;
  const profileYaw = q * (share * wingDragMoment + c.otherDragMoment);
  const profileYaw_V =
    qV * (share * wingDragMoment + c.otherDragMoment) +
    q * (share_V * wingDragMoment + share * c.wingDragTurn * faster_V);
  const strength = lifting * c.wingStrength;
  const k = s.inducedFactor / (lifting * s.wingArea);
  const kTail = s.tailInducedFactor / (lifting * s.tailArea);
  const lean = s.downwash / strength;
  const wingInduced = (k * Lw + s.dragSlope) * Lw;
  const tailInduced = kTail * Lt * Lt + lean * Lt * Lw;
  const D = profile + wingInduced + tailInduced;
  const byWing = 2 * k * Lw + s.dragSlope;
  const tailByTail = 2 * kTail * Lt + lean * Lw;
  const tailByWing = lean * Lt;
  const square = k * Lw * Lw;
  const wing_V = byWing * Lw_V - square * byLifting_V;
  let wing_B = byWing * Lw_B;
  let wing_D = byWing * Lw_D;
  const wing_T = byWing * Lw_T;
  const tail_V = tailByTail * Lt_V + tailByWing * Lw_V - tailInduced * byLifting_V;
  let tail_B = tailByTail * Lt_B + tailByWing * Lw_B;
  let tail_D = tailByTail * Lt_D + tailByWing * Lw_D;
  const tail_T = tailByTail * Lt_T + tailByWing * Lw_T;
  if (!air.still) {
    const byLifting_B = lifting_B / lifting;
    const byLifting_D = lifting_D / lifting;
    wing_B -= square * byLifting_B;
    wing_D -= square * byLifting_D;
    tail_B -= tailInduced * byLifting_B;
    tail_D -= tailInduced * byLifting_D;
    follows[0] = profile_V + wing_V + tail_V;
    follows[1] = wing_B + tail_B;
    follows[2] = wing_D + tail_D;
    follows[3] = wing_T + tail_T;
  }

  // Where lift and drag act across the span: the air is faster outboard.
  const half = 0.5 * c.liftTurn * faster;
  const half_V = 0.5 * c.liftTurn * faster_V;
  const wingArm = c.liftOutboard + 2 * half;
  const tailArm = -s.cgY;
  let rolling = Lw * wingArm + Lt * tailArm;
  let rolling_V = Lw_V * wingArm + 2 * Lw * half_V + Lt_V * tailArm;
  let rolling_B = Lw_B * wingArm + Lt_B * tailArm;
  let rolling_D = Lw_D * wingArm + Lt_D * tailArm;
  const rolling_T = Lw_T * wingArm + Lt_T * tailArm;
  let risen = 0;
  let risen_V = 0;
  let risen_B = 0;
  let risen_D = 0;
  if (!air.still) {
    risen = strength * climb;
    risen_V = c.wingStrength * lifting_V * climb + strength * climb_V;
    risen_B = c.wingStrength * lifting_B * climb + strength * climb_B;
    risen_D = c.wingStrength * lifting_D * climb + strength * climb_D;
    // Upward it is the less, the more it leans.
    rolling -= risen * half;
    rolling_V = (rolling_V - risen * half_V - risen_V * half) * lU + rolling * lU_V;
    rolling_B = (rolling_B - risen_B * half) * lU + rolling * lU_B;
    rolling_D = (rolling_D - risen_D * half) * lU + rolling * lU_D;
    rolling *= lU;
  }
  const dragging = profileYaw + wingInduced * wingArm + tailInduced * tailArm;

  const r = b.residual;
  const J = b.jacobian;
  r[0] = P * et + D * aT - Y * sb - backward;
  J[0] = P_V * et + (profile_V + wing_V + tail_V) * aT + D * aT_V - Y_V * sb - backward_V;
  J[1] = -P * eo + (wing_B + tail_B) * aT - Y_B * sb - Y * cb - backward_B;
  J[2] = (wing_D + tail_D) * aT - Y_D * sb - backward_D;
  J[3] = P * etT + (wing_T + tail_T) * aT - backward_T;

  r[1] = trail * pullIn - inward * backward + standing + Q * eu + gyro * pitchTurn * et - dragging * aT;
  J[4] =
    trail * pullIn_V -
    inward * backward_V +
    standing_V +
    Q_V * eu +
    gyro_V * pitchTurn * et -
    (profileYaw_V + wing_V * wingArm + 2 * wingInduced * half_V + tail_V * tailArm) * aT -
    dragging * aT_V;
  J[5] =
    -inward * pullIn +
    trail * T_B * cd -
    trail * backward -
    inward * backward_B +
    standing_B -
    gyro * pitchTurn * eo -
    (wing_B * wingArm + tail_B * tailArm) * aT;
  J[6] =
    trail * pullIn_D -
    inward * backward_D +
    standing_D -
    gyro * yawTurn * et -
    (wing_D * wingArm + tail_D * tailArm) * aT;
  J[7] =
    trail_T * pullIn +
    trail * T_T * cd -
    inward_T * backward -
    inward * backward_T -
    tilted +
    Q * euT +
    gyro * pitchTurn * etT -
    (wing_T * wingArm + tail_T * tailArm) * aT;

  const inertia = c.inertiaTurn * V * V;
  r[2] =
    -rolling -
    above * pullIn -
    inward * pullDown +
    tilted * cb -
    pitchBody * sb -
    Q * et +
    gyro * (pitchTurn * eu - yawTurn * eo) +
    inertia * pitchTurn * yawTurn;
  J[8] =
    -rolling_V -
    above * pullIn_V -
    inward * pullDown_V +
    tilted_V * cb -
    pitchBody_V * sb -
    Q_V * et +
    gyro_V * (pitchTurn * eu - yawTurn * eo) +
    2 * c.inertiaTurn * V * pitchTurn * yawTurn;
  J[9] =
    -rolling_B -
    above * T_B * cd -
    trail * pullDown -
    inward * T_B * sd +
    tilted_B * cb -
    tilted * sb -
    pitchBody * cb +
    Q * eo -
    gyro * yawTurn * et;
  J[10] =
    -rolling_D -
    above * pullIn_D -
    inward * pullDown_D +
    tilted_D * cb -
    gyro * (yawTurn * eu + pitchTurn * eo) +
    inertia * (pitchTurn * pitchTurn - yawTurn * yawTurn);
  J[11] =
    -rolling_T * lU +
    behind * pullIn -
    above * T_T * cd -
    inward_T * pullDown -
    inward * T_T * sd +
    standing * cb -
    Q * etT +
    gyro * (pitchTurn * euT - yawTurn * eoT);

  if (!air.still) {
    // The lift leans along the path and, with the nose out, along the span.
    const leanArm = c.liftOutboard + half;
    const leaning = Lw * leanArm - risen * half + Lt * tailArm;
    const leaning_V = Lw_V * leanArm + (Lw - risen) * half_V - risen_V * half + Lt_V * tailArm;
    const leaning_B = Lw_B * leanArm - risen_B * half + Lt_B * tailArm;
    const leaning_D = Lw_D * leanArm - risen_D * half + Lt_D * tailArm;
    const swinging = Lw * c.wingAhead - Lt * c.tailBehind;
    r[0]! += L * lT;
    J[0]! += L_V * lT + L * lT_V;
    J[1]! += P_B * et + L_B * lT + L * lT_B;
    J[2]! += P_D * et + L_D * lT + L * lT_D;
    J[3]! += P_T * et + L_T * lT;
    r[1]! += swinging * lO - leaning * lT;
    J[4]! += (Lw_V * c.wingAhead - Lt_V * c.tailBehind) * lO + swinging * lO_V - leaning_V * lT - leaning * lT_V;
    J[5]! += (Lw_B * c.wingAhead - Lt_B * c.tailBehind) * lO + swinging * lO_B - leaning_B * lT - leaning * lT_B;
    J[6]! += (Lw_D * c.wingAhead - Lt_D * c.tailBehind) * lO + swinging * lO_D - leaning_D * lT - leaning * lT_D;
    J[7]! += (Lw_T * c.wingAhead - Lt_T * c.tailBehind) * lO - (Lw_T * leanArm + Lt_T * tailArm) * lT;
  }

  const attack = theta + s.wingIncidence - s.zeroLiftAngle + climb;
  r[3] = Lw - strength * attack;
  J[12] = Lw_V - lifting_V * c.wingStrength * attack - strength * climb_V;
  J[13] = Lw_B - lifting_B * c.wingStrength * attack - strength * climb_B;
  J[14] = Lw_D - lifting_D * c.wingStrength * attack - strength * climb_D;
  J[15] = Lw_T - strength;

  b.airspeed = v;
  b.across = air.still ? V : Math.sqrt(across);
  b.thrust = P;
  b.torque = read[TORQUE]!;
  b.shaftSpeed = read[SHAFT_SPEED]!;
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
