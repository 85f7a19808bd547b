import { interpolateAt } from '../../numerics/index';
import type { Constants } from '../flight/index';
import { CROSS_FLOW_FROM, wingDragShare } from '../flight/index';

/** Wind at the model, m/s: along its path (with it positive) and outward from the pilot, level. */
export interface WindThere {
  along: number;
  outward: number;
}

/** Imbalances and loads at one place of a lap in wind. */
export interface WindLoads {
  /** Force left along the path, N. */
  path: number;
  /** Imbalance in yaw and roll, N·m, and of the wing's lift, N. */
  yaw: number;
  roll: number;
  wing: number;
  /** Pull of all lines at the guide, and its part along the chord, N. */
  pull: number;
  tensionInward: number;
  airspeed: number;
  liftCoefficient: number;
}

export const newWindLoads = (): WindLoads => ({
  path: 0,
  yaw: 0,
  roll: 0,
  wing: 0,
  pull: 0,
  tensionInward: 0,
  airspeed: 0,
  liftCoefficient: 0,
});

const read = new Float64Array(6);
/** Lift and drag hang on each other where the air comes askew; a few rounds settle them. */
const ROUNDS = 12;
const ALIKE = 1e-13;

/**
 * Balance of forces and moments at one place of a circular flight in wind, quasi-steady in yaw and roll.
 *
 * State, axes and loads are those of steady flight (`balance`), with V over the ground in all inertia forces and in the turn rates. The
 * wind w_t along the path and w_r outward, level, meets a chord at the elevation φ as w_o = w_r cos φ along it and w_u = −w_r sin φ
 * across it. Air comes from the direction a = (−u, w_o, w_u)/v, u = V − w_t, v² = u² + w_r²:
 *
 *   q = ½ ρ v²;  drag along a;  lift normal to a in the plane of a and u₁
 *   side forces see β + χ, χ = atan[(w_o cos δ − w_u sin δ)/u];  the wing sees θ + i_w − α_0 + χ_u, χ_u = atan[(w_o sin δ + w_u cos δ)/u]
 *   lines: F (`linesInWind`), each element by its own airspeed ω r − w_t; it hangs on V only, so it's handed in, N
 *   along t:  m_eff dV/dt = P e_t − D u/v + L l_t − Y sin β − T_b
 *
 * With no wind every line is that of steady flight. Derivation: as there; forces turned with the air. Left out: yaw and roll inertia, the drag
 * of the wind along the lines, the change of turn rates with the wind's own curl.
 */
export function windBalance(
  c: Constants,
  wind: WindThere,
  F: number,
  V: number,
  beta: number,
  delta: number,
  theta: number,
  out: WindLoads,
): void {
  const s = c.setup;
  const R = c.radius;
  const [sb, cb, sd, cd] = [Math.sin(beta), Math.cos(beta), Math.sin(delta), Math.cos(delta)];
  const [st, ct] = [Math.sin(theta), Math.cos(theta)];
  const pitchTurn = c.tanElevation * cd - sd;
  const yawTurn = cd + c.tanElevation * sd;

  const u = V - wind.along;
  const windOut = wind.outward * c.cosElevation;
  const windUp = -wind.outward * c.sinElevation;
  const v = Math.sqrt(u * u + wind.outward * wind.outward);
  const q = 0.5 * s.density * v * v;
  const side = windOut * cd - windUp * sd;
  const rise = windOut * sd + windUp * cd;
  const slip = beta + Math.atan2(side, u);
  const lifted = Math.atan2(rise, u);
  const [aT, aO, aU] = [-u / v, side / v, rise / v];
  const lean = 1 / Math.sqrt(1 - aU * aU);
  const [lT, lO, lU] = [-aU * aT * lean, -aU * aO * lean, (1 - aU * aU) * lean];

  interpolateAt(s.curves, s.thrustAt, s.stride, s.knotStep, s.knotCount, u, read, 0);
  interpolateAt(s.curves, s.torqueAt, s.stride, s.knotStep, s.knotCount, u, read, 2);
  interpolateAt(s.curves, s.shaftSpeedAt, s.stride, s.knotStep, s.knotCount, u, read, 4);
  const P = read[0]!;
  const Q = s.turning * read[2]!;
  const gyro = (s.turning * s.rotorInertia * read[4]! * V) / R;
  const shaftUp = st * c.cosDownThrust - ct * c.sinDownThrust;
  const flat = c.cosSideThrust * (ct * c.cosDownThrust + st * c.sinDownThrust);
  const et = flat * cb - c.sinSideThrust * sb;
  const eo = flat * sb + c.sinSideThrust * cb;
  const eu = c.cosSideThrust * shaftUp;

  const sinSlip = Math.sin(slip);
  const over = sinSlip * sinSlip - CROSS_FLOW_FROM * CROSS_FLOW_FROM;
  const cross = over > 0 ? Math.sign(sinSlip) * over : 0;
  const Y = q * (c.sideSlip * slip + c.sideTurn * yawTurn + c.sideSet + c.crossForce * cross);
  const N = q * (c.yawSlip * slip + c.yawTurn * yawTurn + c.yawSet + c.crossYaw * cross);

  const press = c.pressStill + c.pressTurning * V * V;
  const turn = (s.mass * V * V) / R;
  const A = turn - c.weight * c.sinElevation;
  const B = c.weight * c.cosElevation + turn * c.tanElevation + press;

  // Guide from the CG in the rolled axes.
  const behind = c.guideBehind * ct + c.guideAbove * st;
  const above = c.guideAbove * ct - c.guideBehind * st;
  const trail = behind * cb - c.guideInboard * sb;
  const inward = behind * sb + c.guideInboard * cb;
  const reach = R - inward * cd + above * sd;
  const rollBody = P * c.thrustRoll;
  const yawBody = P * c.thrustYaw + N;
  const tilted = rollBody * ct + yawBody * st;
  const upright = yawBody * ct - rollBody * st;
  const pitchBody = P * c.thrustPitch;
  const perArm = 1 / (c.tailBehind + c.wingAhead);
  const share = wingDragShare(c, v);
  const profile = q * (share * c.wingDragArea + c.otherDragArea);
  const k = s.inducedFactor / (q * s.wingArea);
  const kTail = s.tailInducedFactor / (q * s.tailArea);
  const washed = s.downwash / (q * c.wingStrength);

  let L = B;
  let Lw = B;
  let wingInduced = 0;
  let tailInduced = 0;
  let D = 0;
  let T = 0;
  let backward = 0;
  let pullIn = 0;
  let pullDown = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const S = Y * cb + P * eo + D * aO + L * lO;
    const up = (B + S * sd) / cd;
    T = A + S * cd + up * sd;
    const lift = (up - P * eu - D * aU) / lU;
    backward = (F * s.guideRadius - trail * T) / reach;
    pullIn = T * cd - press * sd;
    pullDown = T * sd + press * cd;
    const moment =
      q * c.wingMoment +
      trail * pullDown +
      above * backward +
      tilted * sb +
      pitchBody * cb -
      Q * eo +
      gyro * yawTurn * et;
    const wing = (lift * c.tailBehind - moment) * perArm;
    const tail = lift - wing;
    wingInduced = (k * wing + s.dragSlope) * wing;
    tailInduced = kTail * tail * tail + washed * tail * wing;
    const drag = profile + wingInduced + tailInduced;
    const change = Math.abs(lift - L) + Math.abs(wing - Lw) + Math.abs(drag - D);
    [L, Lw, D] = [lift, wing, drag];
    // Without wind nothing above hangs on lift or drag: one more round would only repeat it.
    if (change < ALIKE * c.weight || (aO === 0 && aU === 0)) break;
  }
  const Lt = L - Lw;
  const wingArm = c.liftOutboard;
  const tailArm = -s.cgY;
  const inertia = c.inertiaTurn * V * V;

  out.path = P * et + D * aT + L * lT - Y * sb - backward;
  out.yaw =
    trail * pullIn -
    inward * backward +
    upright +
    Q * eu +
    gyro * pitchTurn * et -
    (q * (share * c.wingDragMoment + c.otherDragMoment) + wingInduced * wingArm + tailInduced * tailArm) * aT;
  out.roll =
    -(Lw * wingArm + Lt * tailArm) * lU -
    above * pullIn -
    inward * pullDown +
    tilted * cb -
    pitchBody * sb -
    Q * et +
    gyro * (pitchTurn * eu - yawTurn * eo) +
    inertia * pitchTurn * yawTurn;
  out.wing = Lw - q * c.wingStrength * (theta + s.wingIncidence - s.zeroLiftAngle + lifted);
  out.tensionInward = T;
  out.pull = Math.sqrt(T * T + backward * backward + press * press);
  out.airspeed = v;
  out.liftCoefficient = Lw / (q * s.wingArea);
}
