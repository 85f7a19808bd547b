import { solveDense } from './dense';
import { rungeKutta, type Slope } from './runge-kutta';

/** A boundary-value problem: dy/dx = f(x, y; p) between two ends, with as many unknowns p as conditions at the far end. */
export interface BoundaryProblem {
  /** How many numbers y holds. */
  readonly size: number;
  readonly from: number;
  readonly to: number;
  /** Of the Runge-Kutta method between the ends. */
  readonly steps: number;
  /** Fills y at the near end from the unknowns. */
  begin(p: Float64Array, y: Float64Array): void;
  /** dy/dx; may look at what `begin` kept of the unknowns. */
  readonly slope: Slope;
  /** By how much the far end misses its conditions: as many numbers as unknowns, scaled so that 1 is large. */
  miss(y: Float64Array, out: Float64Array): void;
}

export interface Shot {
  /**
   * `settled`; `too many steps`; `stuck` where no step lessens the miss; `singular` where the unknowns do not bear on the
   * conditions; `not a number`, or an endless one, met with the
   * unknowns given.
   */
  status: 'settled' | 'too many steps' | 'stuck' | 'singular' | 'not a number';
  /** Steps of Newton's method. */
  iterations: number;
  /** Largest miss of a condition. */
  residual: number;
}

export interface ShootingOptions {
  /** Largest miss that counts as none; default 1e-10. */
  readonly tolerance?: number;
  /** Most steps of Newton's method; default 30. */
  readonly iterations?: number;
}

/** How far an unknown is moved to see what it does, over its size. */
const NUDGE = 1e-7;
const SHORTEST = 1 / 64;

/**
 * Solves a boundary-value problem by shooting: carries y from the near end with a guess of the unknowns `p`, sees by how much
 * the far end misses, and betters p by Newton's method, with differences for derivatives. A step that doesn't lessen the miss is
 * halved, up to 6 times. p is overwritten with the best unknowns found.
 *
 * It neither throws nor gives a bare NaN: read `status` first. Good where y does not grow by many powers of ten between the ends.
 * Source: H. B. Keller, Numerical Methods for Two-Point Boundary-Value Problems, ch. 2 (from memory).
 */
export function shoot(problem: BoundaryProblem, p: Float64Array, options: ShootingOptions = {}): Shot {
  const { tolerance = 1e-10, iterations: most = 30 } = options;
  const n = p.length;
  const y = new Float64Array(problem.size);
  const [missed, nudged, trial] = [new Float64Array(n), new Float64Array(n), new Float64Array(n)];
  const jacobian = new Float64Array(n * n);
  const at = (unknowns: Float64Array, out: Float64Array): number => {
    problem.begin(unknowns, y);
    rungeKutta(problem.slope, y, problem.from, problem.to, problem.steps);
    problem.miss(y, out);
    let largest = 0;
    for (let i = 0; i < n; i++) largest = Math.max(largest, Math.abs(out[i]!));
    return largest;
  };
  let residual = at(p, missed);
  for (let iterations = 0; ; iterations++) {
    if (!Number.isFinite(residual)) return { status: 'not a number', iterations, residual };
    if (residual <= tolerance) return { status: 'settled', iterations, residual };
    if (iterations >= most) return { status: 'too many steps', iterations, residual };
    trial.set(p);
    for (let j = 0; j < n; j++) {
      const step = NUDGE * Math.max(1, Math.abs(p[j]!));
      trial[j] = p[j]! + step;
      at(trial, nudged);
      trial[j] = p[j]!;
      for (let i = 0; i < n; i++) jacobian[i * n + j] = (nudged[i]! - missed[i]!) / step;
    }
    const change = Float64Array.from(missed);
    const determinant = solveDense(jacobian, change, n);
    if (determinant === 0 || Number.isNaN(determinant)) return { status: 'singular', iterations, residual };
    let share = 1;
    let next = Number.NaN;
    for (; share >= SHORTEST; share /= 2) {
      for (let i = 0; i < n; i++) trial[i] = p[i]! - share * change[i]!;
      next = at(trial, nudged);
      if (next < residual) break;
    }
    if (!(next < residual)) return { status: 'stuck', iterations, residual };
    p.set(trial);
    missed.set(nudged);
    residual = next;
  }
}
