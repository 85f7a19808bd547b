/**
 * Slope that keeps a cubic monotone where the data are: the harmonic mean of the two neighbouring secants, 0 at a
 * turning point. Equal secants give exactly that secant, so data on a straight line stay on it.
 */
const between = (left: number, right: number): number => (left * right > 0 ? (2 * left * right) / (left + right) : 0);

/** Slope at an end from its own secant and the next: the parabola's, held to the sign and to three times the secant. */
function atEnd(own: number, next: number): number {
  const slope = own + (own - next) / 2;
  if (slope * own <= 0) return 0;
  return Math.abs(slope) > 3 * Math.abs(own) ? 3 * own : slope;
}

/**
 * Piecewise cubic through a table that neither overshoots nor wiggles: value to out[o], derivative to out[o + 1]. The function stands in
 * `values` at 0, step, 2 step …, `count` numbers from index `at` on, one every `stride` places.
 *
 *   y = y_0 + x t-form of Hermite's cubic with slopes m_i = 2 s_{i−1} s_i/(s_{i−1} + s_i) (0 where the secants s differ
 *     in sign)
 *
 * Beyond the ends it goes on straight with the end's slope. Reads at most four values; allocates nothing. Needs three
 * values or more.
 * Source: F. N. Fritsch and J. Butland, A method for constructing local monotone piecewise cubic interpolants, SIAM J.
 * Sci. Stat. Comput. 5 (1984) 300-304, for even steps (from memory).
 */
export function interpolateAt(
  values: Float64Array,
  at: number,
  stride: number,
  step: number,
  count: number,
  x: number,
  out: Float64Array,
  o: number,
): void {
  findKnot(step, count, x, here);
  readKnot(values, at, stride, here, out, o);
}

/** Where a number lies among even knots: what several tables on the same knots have in common. */
export interface Knot {
  /** Of the knot on its left, and of the last one that has two on its right. */
  index: number;
  last: number;
  step: number;
  perStep: number;
  /** From that knot, and over the step. */
  distance: number;
  share: number;
}

export const newKnot = (): Knot => ({
  index: 0,
  last: 0,
  step: Number.NaN,
  perStep: Number.NaN,
  distance: Number.NaN,
  share: Number.NaN,
});

const here = newKnot();

/** Fills `knot` for `x` among `count` knots at 0, step, 2 step …; three or more. */
export function findKnot(step: number, count: number, x: number, knot: Knot): void {
  const last = count - 2;
  const perStep = 1 / step;
  let k = Math.floor(x * perStep);
  if (!(k > 0)) k = 0;
  else if (k > last) k = last;
  const distance = x - k * step;
  knot.index = k;
  knot.last = last;
  knot.step = step;
  knot.perStep = perStep;
  knot.distance = distance;
  knot.share = distance * perStep;
}

/** Value and derivative of the table that begins at `at`, to out[o] and out[o + 1]. */
export function readKnot(
  values: Float64Array,
  at: number,
  stride: number,
  knot: Knot,
  out: Float64Array,
  o: number,
): void {
  const { index: k, last, perStep, distance, share: t } = knot;
  const i = at + k * stride;
  const left = values[i]!;
  const right = values[i + stride]!;
  const secant = (right - left) * perStep;
  const after = k < last ? (values[i + 2 * stride]! - right) * perStep : secant;
  const before = k > 0 ? (left - values[i - stride]!) * perStep : secant;
  const m0 = k > 0 ? between(before, secant) : atEnd(secant, after);
  const m1 = k < last ? between(secant, after) : atEnd(secant, before);
  if (t < 0) {
    out[o] = left + distance * m0;
    out[o + 1] = m0;
  } else if (t > 1) {
    out[o] = right + (distance - knot.step) * m1;
    out[o + 1] = m1;
  } else {
    // Differences first: they vanish exactly for a straight line.
    const rise = secant - m0;
    const fall = secant - m1;
    const bend = 2 * rise + fall;
    const twist = rise + fall;
    out[o] = left + distance * (m0 + t * (bend - t * twist));
    out[o + 1] = m0 + t * (2 * bend - 3 * t * twist);
  }
}
