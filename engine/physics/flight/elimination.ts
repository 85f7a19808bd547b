import type { Balance } from './loads';

/**
 * Newton's step of the four balances, by eliminating first the pitch θ, then β and δ, so that what is left is the path
 * balance as a function of speed alone.
 */
export interface Step {
  speed: number;
  sideslip: number;
  roll: number;
  pitch: number;
  /** Slope of the path balance with speed along the curve on which yaw, roll and lift stay balanced, N·s/m. */
  slope: number;
  /** Determinant of yaw and roll in β and δ with the lift balanced; positive where both stand stable. */
  determinant: number;
  /** Of `trimStep`: what the path balance comes to with that step taken, N, and how the angles follow the speed, rad·s/m. */
  left: number;
  sideslipPerSpeed: number;
  rollPerSpeed: number;
  pitchPerSpeed: number;
}

export const newStep = (): Step => ({
  speed: Number.NaN,
  sideslip: Number.NaN,
  roll: Number.NaN,
  pitch: Number.NaN,
  slope: Number.NaN,
  determinant: Number.NaN,
  left: Number.NaN,
  sideslipPerSpeed: Number.NaN,
  rollPerSpeed: Number.NaN,
  pitchPerSpeed: Number.NaN,
});

/** Fills `out` for a step in all four unknowns; allocates nothing. */
export function fullStep(b: Balance, out: Step): void {
  eliminate(b, out, true);
}

/** The same at a speed that stays: yaw, roll and lift alone. `slope` is right once they are balanced. */
export function trimStep(b: Balance, out: Step): void {
  eliminate(b, out, false);
}

function eliminate(b: Balance, out: Step, free: boolean): void {
  const J = b.jacobian;
  const r = b.residual;
  const pivot = J[15]!;
  // Rows path, yaw, roll without θ.
  const m0 = J[3]! / pivot;
  const m1 = J[7]! / pivot;
  const m2 = J[11]! / pivot;
  const pathV = J[0]! - m0 * J[12]!;
  const pathB = J[1]! - m0 * J[13]!;
  const pathD = J[2]! - m0 * J[14]!;
  const yawV = J[4]! - m1 * J[12]!;
  const yawB = J[5]! - m1 * J[13]!;
  const yawD = J[6]! - m1 * J[14]!;
  const rollV = J[8]! - m2 * J[12]!;
  const rollB = J[9]! - m2 * J[13]!;
  const rollD = J[10]! - m2 * J[14]!;
  const path = r[0]! - m0 * r[3]!;
  const yaw = r[1]! - m1 * r[3]!;
  const roll = r[2]! - m2 * r[3]!;
  // Rows yaw and roll without β and δ: how these move with V, and how far they have to go at this V.
  const determinant = yawB * rollD - yawD * rollB;
  const slipPerSpeed = (rollV * yawD - yawV * rollD) / determinant;
  const rollPerSpeed = (yawV * rollB - rollV * yawB) / determinant;
  const slip = (roll * yawD - yaw * rollD) / determinant;
  const lean = (yaw * rollB - roll * yawB) / determinant;
  const slope = pathV + pathB * slipPerSpeed + pathD * rollPerSpeed;
  const left = path + pathB * slip + pathD * lean;
  const speed = free ? -left / slope : 0;
  out.speed = speed;
  out.sideslip = slip + slipPerSpeed * speed;
  out.roll = lean + rollPerSpeed * speed;
  out.pitch = -(r[3]! + J[12]! * speed + J[13]! * out.sideslip + J[14]! * out.roll) / pivot;
  out.slope = slope;
  out.determinant = determinant;
  if (free) return;
  out.left = left;
  out.sideslipPerSpeed = slipPerSpeed;
  out.rollPerSpeed = rollPerSpeed;
  out.pitchPerSpeed = -(J[12]! + J[13]! * slipPerSpeed + J[14]! * rollPerSpeed) / pivot;
}
