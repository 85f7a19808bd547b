/**
 * Residuals of the steady circular flight at a state, their derivatives, and the loads met on the way.
 * Rows: 0 path (N), 1 yaw (N·m), 2 roll (N·m), 3 lift (N). Columns: V, β, δ, θ; place 4 row + column.
 */
export interface Balance {
  readonly residual: Float64Array;
  readonly jacobian: Float64Array;
  /** Room for the engine's curves. */
  readonly engine: Float64Array;
  thrust: number;
  torque: number;
  shaftSpeed: number;
  /** Of the lines, put there before the forces are: drag at the guide, press on it downward, and their slopes with V. */
  lineDrag: number;
  lineDragSlope: number;
  linePress: number;
  linePressSlope: number;
  /** All of the airspeed, and its part across the span, m/s. */
  airspeed: number;
  across: number;
  /** Tension along the chord, and its part backward along the path at the CG. */
  tensionInward: number;
  tensionBackward: number;
  /** How far the guide trails behind the radius of the CG, and its own radius along the chord, m. */
  guideTrail: number;
  guideReach: number;
  lift: number;
  wingLift: number;
  tailLift: number;
  sideForce: number;
  drag: number;
  /** Of the drag in wind with V, β, δ, θ: those of the visit before until the forces are there, 0 at first. */
  readonly dragSlopes: Float64Array;
  /** Drag that the wing's lift and the tail's make. */
  wingInduced: number;
  tailInduced: number;
  /** Rates of turn in V/R: about the rolled span axis (nose up) and the rolled upright axis. */
  pitchTurn: number;
  yawTurn: number;
}

export function newBalance(): Balance {
  return {
    residual: new Float64Array(4),
    jacobian: new Float64Array(16),
    engine: new Float64Array(6),
    thrust: Number.NaN,
    torque: Number.NaN,
    shaftSpeed: Number.NaN,
    lineDrag: Number.NaN,
    lineDragSlope: Number.NaN,
    linePress: Number.NaN,
    linePressSlope: Number.NaN,
    airspeed: Number.NaN,
    across: Number.NaN,
    tensionInward: Number.NaN,
    tensionBackward: Number.NaN,
    guideTrail: Number.NaN,
    guideReach: Number.NaN,
    lift: Number.NaN,
    wingLift: Number.NaN,
    tailLift: Number.NaN,
    sideForce: Number.NaN,
    drag: 0,
    dragSlopes: new Float64Array(4),
    wingInduced: Number.NaN,
    tailInduced: Number.NaN,
    pitchTurn: Number.NaN,
    yawTurn: Number.NaN,
  };
}
