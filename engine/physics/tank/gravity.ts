import type { Place } from './polyhedron';

export interface FlightAttitude {
  /** Speed over the ground (m/s), radius of the CG along the chord (m), elevation φ, roll δ, sideslip β, pitch θ (rad), gravity (m/s²). */
  readonly speed: number;
  readonly radius: number;
  readonly elevation: number;
  readonly outboardLow: number;
  readonly sideslip: number;
  readonly pitch: number;
  readonly gravity: number;
  /** dV/dt, m/s²; 0 in steady flight. */
  readonly acceleration?: number;
}

/**
 * Apparent gravity in the model's own axes (m/s²: aft, outboard, up), which its fuel feels in a level lap:
 *
 *   g_out = (V²/(R cos φ)) cos(φ − δ) − g sin(φ − δ),  g_up = −(V²/(R cos φ)) sin(φ − δ) − g cos(φ − δ)
 *
 * and −dV/dt along the path, turned by the sideslip β about the upright axis of the rolled model and by pitch θ about the span: the turns
 * by which the balance of the flight has its angles. Nose-out as it is seen, ψ, holds some of roll and pitch already.
 * Derivation: gravity less the acceleration of the circle; the wing plane stands at φ − δ to the horizontal.
 */
export function gravityInFlight(a: FlightAttitude): Place {
  const turning = (a.speed * a.speed) / (a.radius * Math.cos(a.elevation));
  const lean = a.elevation - a.outboardLow;
  const along = -(a.acceleration ?? 0);
  const out = turning * Math.cos(lean) - a.gravity * Math.sin(lean);
  const up = -turning * Math.sin(lean) - a.gravity * Math.cos(lean);
  const forward = along * Math.cos(a.sideslip) + out * Math.sin(a.sideslip);
  const outboard = out * Math.cos(a.sideslip) - along * Math.sin(a.sideslip);
  return pitched(forward, outboard, up, a.pitch);
}

/** Gravity in the axes of a model that stands with its nose up by `pitch` (rad): aft, outboard, up, m/s². Geometry. */
export const gravityAtRest = (gravity: number, pitch: number): Place => pitched(0, 0, -gravity, pitch);

/** From axes level with the path to those of a model pitched nose up. */
function pitched(forward: number, outboard: number, up: number, pitch: number): Place {
  const [c, s] = [Math.cos(pitch), Math.sin(pitch)];
  return [-(forward * c + up * s), outboard, up * c - forward * s];
}
