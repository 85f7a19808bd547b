import { Matrix, SVD } from 'ml-matrix';

/** What is to be fitted. */
export interface LeastSquaresProblem {
  readonly start: Float64Array;
  /** Ends of each parameter, both allowed; may be infinite. */
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** By how much each parameter changes when it changes by much: brings all of them to order one. */
  readonly scale: Float64Array;
  /** A direction along which a standard error would be more than so many scales counts as one that changes nothing; missing: none does. */
  readonly loosest?: number;
}

/** (predicted − measured)/error of every observation at each of these points; NaN where there is no prediction. */
export type Residuals = (points: readonly Float64Array[]) => readonly Float64Array[];
/** Asks for the residuals at some points, and goes on when it's told them: whoever drives it may rest in between. */
type Asking<T> = Generator<readonly Float64Array[], T, readonly Float64Array[]>;

export interface LeastSquares {
  /**
   * `settled`: no step makes the sum less. `stuck`: a way down was seen and every step along it failed, as where predictions end.
   * `not settled`: the iterations ran out. `no answer`: no prediction at the start or beside it.
   */
  readonly status: 'settled' | 'stuck' | 'not settled' | 'no answer';
  readonly parameters: Float64Array;
  readonly residuals: Float64Array;
  /** Sum of the squares of the residuals. */
  readonly sum: number;
  /** Derivative of residual i by scaled parameter j at the solution: jacobian[j][i]. */
  readonly jacobian: readonly Float64Array[];
  /** Parameters that stand at an end and would go on beyond it. */
  readonly held: readonly boolean[];
  readonly iterations: number;
}

const MOST_ITERATIONS = 60;
const MOST_TRIES = 25;
/** Half the span of a central difference, in scales: its error is of the order of 1e-8, that of rounding less. */
const DIFFERENCE = 1e-4;
/** A step smaller than this, in scales, is none. */
const REST = 1e-9;
/** A way down of less than this, in squares of measuring errors and as a share of the sum, isn't worth a word. */
const WORTH = 1e-3;
/** Singular values below this share of the greatest are noise of the differences. */
const RANK_SHARE = 1e-6;

/**
 * Parameters p within their ends for which Σ r_i(p)² is least, r_i the difference between prediction and measurement in measuring
 * errors.
 *
 *   minimise |J d + r|² + λ |D d|²,  p ← p + d,  J_ij = ∂r_i/∂p_j by central differences,  D_j = |column j of J|
 *
 * Gauss–Newton, damped (λ > 0) as long as a step fails; the step comes from the singular value decomposition, so a direction that
 * changes nothing is left alone. Sources: K. Levenberg, Quart. Appl. Math. 2 (1944) 164; D. W. Marquardt, J. SIAM 11 (1963) 431;
 * Å. Björck, Numerical Methods for Least Squares Problems (1996), section 9.2 (from memory).
 */
export function* leastSquaresSteps(problem: LeastSquaresProblem): Asking<LeastSquares> {
  let at = clamp(problem, problem.start, new Float64Array(problem.start.length));
  let [r] = (yield [at]) as [Float64Array];
  let sum = squares(r);
  let damping = 0;
  let jacobian: readonly Float64Array[] = at.length === 0 ? [] : [new Float64Array(0)];
  let held: readonly boolean[] = Array.from(at, () => false);
  const ended = (status: LeastSquares['status'], iterations: number): LeastSquares => ({
    ...{ status, parameters: at, residuals: r, sum, jacobian, held, iterations },
  });
  if (Number.isNaN(sum)) return ended('no answer', 0);
  for (let iteration = 1; iteration <= MOST_ITERATIONS; iteration++) {
    const found = yield* differences(problem, at, r);
    if (!found) return ended('no answer', iteration);
    jacobian = found;
    held = heldAtEnds(problem, at, r, jacobian);
    const whole = stepOf(jacobian, r, held, 0, problem.loosest);
    const promised = sum - squares(predicted(jacobian, r, whole));
    let rests = false;
    let moved = false;
    for (let tries = 0; tries < MOST_TRIES && !moved && !rests; tries++) {
      const step = damping === 0 ? whole : stepOf(jacobian, r, held, damping, problem.loosest);
      const next = clamp(problem, at, step);
      rests = next.every((value, j) => Math.abs(value - at[j]!) <= REST * problem.scale[j]!);
      if (rests) break;
      const [there] = (yield [next]) as [Float64Array];
      const less = squares(there);
      if (less < sum) {
        [at, r, sum, moved] = [next, there, less, true];
        damping = damping < 1e-3 ? 0 : damping / 10;
      } else damping = Math.max(1e-3, 10 * damping);
    }
    if (moved) continue;
    return ended(damping > 0 && promised > WORTH * Math.max(1, sum) ? 'stuck' : 'settled', iteration);
  }
  return ended('not settled', MOST_ITERATIONS);
}

/** The same without a rest. */
export function leastSquares(problem: LeastSquaresProblem, residuals: Residuals): LeastSquares {
  const steps = leastSquaresSteps(problem);
  let step = steps.next();
  while (!step.done) step = steps.next(residuals(step.value));
  return step.value;
}

const squares = (values: Float64Array): number => values.reduce((sum, value) => sum + value * value, 0);

/** `from` and a step in scales, held within the ends. */
function clamp({ low, high, scale }: LeastSquaresProblem, from: Float64Array, step: Float64Array): Float64Array {
  return from.map((value, j) => Math.min(high[j]!, Math.max(low[j]!, value + scale[j]! * step[j]!)));
}

/** Columns of the Jacobian by scaled parameters; undefined where a parameter has no prediction on either side. */
function* differences(
  problem: LeastSquaresProblem,
  at: Float64Array,
  r: Float64Array,
): Asking<readonly Float64Array[] | undefined> {
  const points = [...at.keys()].flatMap((j) =>
    [DIFFERENCE, -DIFFERENCE].map((by) =>
      clamp(
        problem,
        at,
        at.map((_, k) => (k === j ? by : 0)),
      ),
    ),
  );
  const there = yield points;
  const columns: Float64Array[] = [];
  for (const j of at.keys()) {
    const ends = [2 * j, 2 * j + 1].map((k) => ({ value: points[k]![j]!, r: there[k]! }));
    const known = ends.filter((end) => !end.r.some((each) => Number.isNaN(each)));
    const [first, second = { value: at[j]!, r }] = known;
    const span = first ? (first.value - second.value) / problem.scale[j]! : 0;
    if (!first || span === 0) return undefined;
    columns.push(first.r.map((value, i) => (value - second.r[i]!) / span));
  }
  return columns;
}

/** Parameters that stand at an end while the sum falls beyond it. */
function heldAtEnds(
  { low, high }: LeastSquaresProblem,
  at: Float64Array,
  r: Float64Array,
  jacobian: readonly Float64Array[],
): boolean[] {
  return jacobian.map((column, j) => {
    const slope = column.reduce((sum, value, i) => sum + value * r[i]!, 0);
    return (at[j]! <= low[j]! && slope > 0) || (at[j]! >= high[j]! && slope < 0);
  });
}

/** The step d of the doc comment above, in scales; nothing along what changes nothing. */
function stepOf(
  jacobian: readonly Float64Array[],
  r: Float64Array,
  held: readonly boolean[],
  damping: number,
  loosest?: number,
): Float64Array {
  const step = new Float64Array(jacobian.length);
  const norms = jacobian.map((column) => Math.sqrt(squares(column)));
  const free = [...jacobian.keys()].filter((j) => !held[j] && norms[j]! > 0);
  if (free.length === 0) return step;
  const svd = new SVD(matrixOf(jacobian, norms, free));
  const { leftSingularVectors, rightSingularVectors, diagonal } = svd;
  const seen = seenDirections(svd, norms, free, loosest);
  for (const [k, s] of diagonal.entries()) {
    if (!seen[k]) continue;
    let along = 0;
    for (let i = 0; i < r.length; i++) along -= leftSingularVectors.get(i, k) * r[i]!;
    const by = (along * s) / (s * s + damping);
    for (const [c, j] of free.entries()) step[j]! += (by * rightSingularVectors.get(c, k)) / norms[j]!;
  }
  return step;
}

/** Which directions the observations see, of the decomposition of the columns named. */
export const seenDirections = (
  { diagonal, rightSingularVectors }: SVD,
  norms: readonly number[],
  columns: readonly number[],
  loosest = Number.POSITIVE_INFINITY,
): readonly boolean[] =>
  diagonal.map((s, k) => {
    if (!(s > RANK_SHARE * diagonal[0]!)) return false;
    const error = Math.max(...columns.map((j, c) => Math.abs(rightSingularVectors.get(c, k)) / (norms[j]! * s)));
    return error <= loosest;
  });

/** The columns named, each over its norm; rows of zeros fill up where there are fewer observations than parameters. */
export function matrixOf(
  jacobian: readonly Float64Array[],
  norms: readonly number[],
  columns: readonly number[],
): Matrix {
  const rows = jacobian[columns[0]!]!.length;
  const matrix = Matrix.zeros(Math.max(rows, columns.length), columns.length);
  for (const [c, j] of columns.entries()) {
    for (let i = 0; i < rows; i++) matrix.set(i, c, jacobian[j]![i]! / norms[j]!);
  }
  return matrix;
}

const predicted = (jacobian: readonly Float64Array[], r: Float64Array, step: Float64Array): Float64Array =>
  r.map((value, i) => jacobian.reduce((sum, column, j) => sum + column[i]! * step[j]!, value));
