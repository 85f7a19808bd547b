import { solveDense } from '../../engine/numerics/index';

/** A flat half wing, straight tapered, mirrored at the centreline: aspect ratio of the whole, tip over root chord, leading-edge sweep (rad). */
export interface HalfWing {
  readonly aspectRatio: number;
  readonly taper: number;
  readonly sweep: number;
}

/**
 * Lift slope (1/rad) of a flat plate by a vortex lattice: horseshoes on the quarter line of n × m panels, closer together at the tip, with no flow
 * through the plate at their three-quarter points. It knows nothing of the engine's theories. Source: V. M. Falkner (1943), S. M. Belotserkovskii;
 * as J. Katz and A. Plotkin, Low-Speed Aerodynamics, ch. 12.
 */
export function latticeSlope({ aspectRatio, taper, sweep }: HalfWing, along = 4, across = 20): number {
  // Half span 1, so that the area is 4/A.
  const area = 4 / aspectRatio;
  const root = area / (1 + taper);
  const chord = (y: number): number => root * (1 + (taper - 1) * y);
  const place = (y: number, share: number): number => y * Math.tan(sweep) + share * chord(y);
  const panels: { x1: number; y1: number; x2: number; y2: number; x: number; y: number }[] = [];
  for (let j = 0; j < across; j++) {
    const at = (k: number): number => Math.sin((k * Math.PI) / (2 * across));
    const [y1, y2, y] = [at(j), at(j + 1), at(j + 0.5)];
    for (let i = 0; i < along; i++) {
      const [bound, tested] = [(i + 0.25) / along, (i + 0.75) / along];
      panels.push({ x1: place(y1, bound), y1, x2: place(y2, bound), y2, x: place(y, tested), y });
    }
  }
  const n = panels.length;
  const matrix = new Float64Array(n * n);
  const strength = new Float64Array(n).fill(-1);
  for (const [k, { x, y }] of panels.entries()) {
    for (const [l, { x1, y1, x2, y2 }] of panels.entries()) {
      matrix[k * n + l] = horseshoe(x, y, x1, y1, x2, y2) + horseshoe(x, y, x2, -y2, x1, -y1);
    }
  }
  solveDense(matrix, strength, n);
  // L/q = 2 Σ Γ Δy/V over both halves.
  return panels.reduce((sum, { y1, y2 }, k) => sum + 4 * strength[k]! * (y2 - y1), 0) / area;
}

/** Downward speed at (x, y) by a horseshoe of unit strength from (x1, y1) to (x2, y2), its legs straight aft. */
function horseshoe(x: number, y: number, x1: number, y1: number, x2: number, y2: number): number {
  const [a, b, c, d] = [x - x1, y - y1, x - x2, y - y2];
  const [e, f, g, h] = [Math.hypot(a, b), Math.hypot(c, d), x2 - x1, y2 - y1];
  const bound = ((g * a + h * b) / e - (g * c + h * d) / f) / (a * d - c * b);
  return (bound - (1 + a / e) / b + (1 + c / f) / d) / (4 * Math.PI);
}
