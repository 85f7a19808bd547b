import { nonNegative } from '../domain';

/** What holds the controls at one place of their travel; forces in N, arms in m. */
export interface HeldControl {
  /** Moment about the pivot that the lines must give beside that of the pivot's own friction: positive by the up line, N·m. */
  readonly moment: number;
  /** Lever arms of the up and of the down line about the pivot. */
  readonly upLever: number;
  readonly downLever: number;
  /** Friction of the pivot over the pull: coefficient × radius. */
  readonly pivotFriction: number;
}

/**
 * ΔT = [2 (M ± f T) + T (a_d − a_u)]/(a_u + a_d): pull of the up line less that of the down line (N) under a pull T of both, with the lever
 * arms a_u, a_d about the pivot, the moment M that the elevator asks for and the friction f T of the pivot against it. Derivation:
 * moments about the pivot, T_u + T_d = T.
 */
export function lineDifference(held: HeldControl, pull: number): number {
  const { moment, upLever, downLever, pivotFriction } = held;
  const friction = Math.sign(moment) * pivotFriction * nonNegative('pull', pull);
  return (2 * (moment + friction) + pull * (downLever - upLever)) / (upLever + downLever);
}

/**
 * T = |M|/(a − f): least pull of both lines (N) that still holds it, the whole of it in the line that pulls, the other just slack; a lever arm of
 * that line. Infinite where the friction of the pivot takes the whole arm. Derivation: as `lineDifference` with T_d or T_u = 0.
 */
export function pullToHold({ moment, upLever, downLever, pivotFriction }: HeldControl): number {
  if (moment === 0) return 0;
  const lever = (moment > 0 ? upLever : downLever) - pivotFriction;
  return lever > 0 ? Math.abs(moment) / lever : Number.POSITIVE_INFINITY;
}
