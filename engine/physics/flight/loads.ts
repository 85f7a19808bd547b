/**
 * Residuals of the steady circular flight at a state, their derivatives, and the loads met on the way.
 * Rows: 0 path (N), 1 yaw (N·m), 2 roll (N·m), 3 lift (N). Columns: V, β, δ, θ; place 4 row + column.
 */
export interface Balance {
  readonly residual: Float64Array;
  readonly jacobian: Float64Array;
  thrust: number;
  torque: number;
  shaftSpeed: number;
  lineDrag: number;
  linePress: number;
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
    thrust: 0,
    torque: 0,
    shaftSpeed: 0,
    lineDrag: 0,
    linePress: 0,
    tensionInward: 0,
    tensionBackward: 0,
    guideTrail: 0,
    guideReach: 0,
    lift: 0,
    wingLift: 0,
    tailLift: 0,
    sideForce: 0,
    drag: 0,
    wingInduced: 0,
    tailInduced: 0,
    pitchTurn: 0,
    yawTurn: 0,
  };
}
