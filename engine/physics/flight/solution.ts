import { type Constants, wingDragShare } from './constants';
import type { Balance } from './loads';
import type { State } from './state';

/**
 * `settled`; or why there is no steady flight: too little thrust, lines slack, more lift needed than the wing gives,
 * height out of reach of the lines.
 */
export type FlightStatus = 'settled' | 'too little thrust' | 'lines slack' | 'beyond lift limit' | 'out of reach';
export type FlightMethod = 'newton' | 'march' | 'scan';

/**
 * A steady flight, SI and radians. All numbers but those of the reason are NaN unless `status` is settled or beyond
 * lift limit.
 */
export interface FlightSolution {
  status: FlightStatus;
  method: FlightMethod;
  iterations: number;
  /** Largest imbalance of force over the weight, of moment over weight × 1 m. */
  residual: number;
  /** Slope of the spare thrust with speed, N·s/m; negative on the fast side of the power curve. */
  slope: number;
  /** Determinant of yaw and roll; positive where both stand stable. */
  determinant: number;
  speed: number;
  radius: number;
  elevation: number;
  sideslip: number;
  noseOut: number;
  outboardLow: number;
  pitch: number;
  lineTrail: number;
  /** How far the guide trails behind the radius through the CG, m. */
  guideTrail: number;
  lineSag: number;
  pull: number;
  pullRadial: number;
  lineDrag: number;
  linePress: number;
  lift: number;
  wingLift: number;
  tailLift: number;
  liftCoefficient: number;
  sideForce: number;
  elevator: number;
  thrust: number;
  torque: number;
  shaftSpeed: number;
  drag: number;
  dragWing: number;
  dragInduced: number;
  dragTail: number;
  dragItems: number;
  dragTrim: number;
  /** Part of the side force that holds the model back, and of the pull. */
  dragSide: number;
  pullBackward: number;
  /** Of the reasons: thrust that is missing at the best speed (N, m/s); speed below which the lines hang (m/s). */
  shortfall: number;
  shortfallSpeed: number;
  slackSpeed: number;
}

export function newSolution(): FlightSolution {
  return {
    status: 'settled',
    method: 'newton',
    iterations: 0,
    residual: Number.NaN,
    slope: Number.NaN,
    determinant: Number.NaN,
    speed: Number.NaN,
    radius: Number.NaN,
    elevation: Number.NaN,
    sideslip: Number.NaN,
    noseOut: Number.NaN,
    outboardLow: Number.NaN,
    pitch: Number.NaN,
    lineTrail: Number.NaN,
    guideTrail: Number.NaN,
    lineSag: Number.NaN,
    pull: Number.NaN,
    pullRadial: Number.NaN,
    lineDrag: Number.NaN,
    linePress: Number.NaN,
    lift: Number.NaN,
    wingLift: Number.NaN,
    tailLift: Number.NaN,
    liftCoefficient: Number.NaN,
    sideForce: Number.NaN,
    elevator: Number.NaN,
    thrust: Number.NaN,
    torque: Number.NaN,
    shaftSpeed: Number.NaN,
    drag: Number.NaN,
    dragWing: Number.NaN,
    dragInduced: Number.NaN,
    dragTail: Number.NaN,
    dragItems: Number.NaN,
    dragTrim: Number.NaN,
    dragSide: Number.NaN,
    pullBackward: Number.NaN,
    shortfall: Number.NaN,
    shortfallSpeed: Number.NaN,
    slackSpeed: Number.NaN,
  };
}

/**
 * Reads the results off a balanced state.
 *
 *   T = √(T_r² + T_b² + F_down²) at the guide, γ = atan(s/ρ), ε = atan(T_b/T_r) + γ, σ = atan(F_down/T_r)
 *   ψ = atan2(cos θ sin β cos δ + sin θ sin δ, cos θ cos β): the nose seen along the chord's plane
 *   δ_e = [θ + i_t − dε/dα (θ + i_w − α_0) + p̂ l_t/R − L_t/(q S_t a_t)]/τ_e, trailing edge up positive
 */
export function readSolution(c: Constants, x: State, b: Balance, out: FlightSolution): void {
  const s = c.setup;
  const q = 0.5 * s.density * x.speed * x.speed;
  const ct = Math.cos(x.pitch);
  const flat = Math.sqrt(b.tensionInward * b.tensionInward + b.tensionBackward * b.tensionBackward);
  const lineTrail = Math.atan2(b.tensionBackward, b.tensionInward) + Math.atan2(b.guideTrail, b.guideReach);
  const level = ((s.inducedFactor * b.lift) / (q * s.wingArea) + s.dragSlope) * b.lift;
  const attack = x.pitch + s.wingIncidence - s.zeroLiftAngle;
  const tailAngle = x.pitch + s.tailIncidence - s.downwash * attack + (b.pitchTurn * c.tailBehind) / c.radius;
  out.speed = x.speed;
  out.radius = c.radius;
  out.elevation = Math.asin(c.sinElevation);
  out.sideslip = x.sideslip;
  out.noseOut = Math.atan2(
    ct * Math.sin(x.sideslip) * Math.cos(x.roll) + Math.sin(x.pitch) * Math.sin(x.roll),
    ct * Math.cos(x.sideslip),
  );
  out.outboardLow = x.roll;
  out.pitch = x.pitch;
  out.lineTrail = lineTrail;
  out.guideTrail = b.guideTrail;
  out.lineSag = Math.atan2(b.linePress, b.tensionInward);
  out.pull = Math.sqrt(flat * flat + b.linePress * b.linePress);
  out.pullRadial = flat * Math.cos(lineTrail);
  out.lineDrag = b.lineDrag;
  out.linePress = b.linePress;
  out.lift = b.lift;
  out.wingLift = b.wingLift;
  out.tailLift = b.tailLift;
  out.liftCoefficient = b.wingLift / (q * s.wingArea);
  out.sideForce = b.sideForce;
  out.elevator = (tailAngle - b.tailLift / (q * s.tailArea * s.tailSlope)) / s.elevatorEffect;
  out.thrust = b.thrust;
  out.torque = b.torque;
  out.shaftSpeed = b.shaftSpeed;
  out.drag = b.drag;
  out.dragWing = q * c.wingDragArea * wingDragShare(c, x.speed);
  out.dragInduced = level;
  out.dragTail = q * s.tailDragArea;
  out.dragItems = q * s.dragArea;
  out.dragTrim = b.wingInduced - level + b.tailInduced;
  out.dragSide = b.sideForce * Math.sin(x.sideslip);
  out.pullBackward = b.tensionBackward;
}
