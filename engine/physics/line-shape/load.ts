import { cylinderDragCoefficient } from '../cylinder-drag';

/** Lines side by side that share their shape, turning steadily about the pilot's upright axis. SI. */
export interface TurningBundle {
  readonly count: number;
  readonly diameter: number;
  /** μ, of one line. */
  readonly linearMass: number;
  /** On diameter × length; NaN: of a smooth cylinder by the local Reynolds number. */
  readonly dragCoefficient: number;
  readonly dragFactor: number;
  readonly density: number;
  readonly kinematicViscosity: number;
  readonly gravity: number;
  /** Ω, rad/s, counter-clockwise seen from above positive. */
  readonly rate: number;
}

/**
 * Load on the lines per length, N/m, to out[0 … 2]:
 *
 *   f = n μ Ω² (x, y, 0) − n μ g ẑ − ½ ρ C_d d n k |v_n| v_n,  v = Ω ẑ × r,  v_n = v − (v·t̂) t̂
 *
 * x, y level and z up from a point of the axis, turning with the lines; t̂ (tx, ty, tz) along the line. Still air. Only the part of the
 * air's speed across the line counts, with Re by it.
 * Derivation: a steady rotation; the cross-flow law as S. F. Hoerner, Fluid-Dynamic Drag, ch. III (from memory).
 */
export function lineLoad(
  b: TurningBundle,
  x: number,
  y: number,
  tx: number,
  ty: number,
  tz: number,
  out: Float64Array,
): void {
  const mass = b.count * b.linearMass;
  const swing = mass * b.rate * b.rate;
  out[0] = swing * x;
  out[1] = swing * y;
  out[2] = -mass * b.gravity;
  const [vx, vy] = [-b.rate * y, b.rate * x];
  const along = vx * tx + vy * ty;
  const [nx, ny, nz] = [vx - along * tx, vy - along * ty, -along * tz];
  const across = Math.sqrt(nx * nx + ny * ny + nz * nz);
  if (across === 0) return;
  const coefficient = Number.isNaN(b.dragCoefficient)
    ? cylinderDragCoefficient((across * b.diameter) / b.kinematicViscosity)
    : b.dragCoefficient;
  const drag = 0.5 * b.density * coefficient * b.diameter * b.count * b.dragFactor * across;
  out[0] -= drag * nx;
  out[1] -= drag * ny;
  out[2] -= drag * nz;
}
