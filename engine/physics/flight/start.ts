import { lineDragAt } from '../line-drag';
import { type Constants, wingDragShare } from './constants';
import { engineAt, THRUST } from './engine-at';
import type { State } from './state';

const lineScratch = new Float64Array(2);
const engineScratch = new Float64Array(6);
/** Speed at which the drag of the lines is taken for the first guess, m/s. */
const USUAL_SPEED = 25;

/**
 * A first speed, m/s, from P(V) = c V² + k L²/(½ρ S V²): all drag that grows with V² in one number, level wings, nose
 * along the path. The highest knot of the thrust curve with more thrust than drag, and the crossing of the two by a
 * straight line and one step of Newton from there. Puts it into the state; false where drag beats thrust at all knots.
 */
export function guessSpeed(c: Constants, state: State): boolean {
  const s = c.setup;
  const half = 0.5 * s.density;
  lineScratch[0] = USUAL_SPEED / c.radius;
  lineDragAt(c.line, lineScratch, 0);
  const lines = (lineScratch[0]! * s.guideRadius) / (c.radius * USUAL_SPEED * USUAL_SPEED);
  const square = half * (c.wingDragArea + c.otherDragArea) + lines;
  const induced = s.inducedFactor / (half * s.wingArea);
  const lift = c.weight * c.cosElevation + c.pressStill;
  const liftSquare = (s.mass * c.tanElevation) / c.radius + c.pressTurning;
  const step = s.knotStep;
  let over = Number.NaN;
  for (let k = s.knotCount - 1; k > 0; k--) {
    const V = k * step;
    const total = lift + liftSquare * V * V;
    const spare = s.curves[s.thrustAt + k * s.stride]! - square * V * V - (induced * total * total) / (V * V);
    if (spare > 0) {
      // `over` is the lack of thrust at the knot above; at the last knot it isn't known and the knot itself will do.
      if (Number.isNaN(over)) {
        state.speed = V;
        return true;
      }
      const first = V + (step * spare) / (spare - over);
      const share = (first - V) / step;
      const low = s.curves[s.thrustAt + k * s.stride]!;
      const slope = (s.curves[s.thrustAt + (k + 1) * s.stride]! - low) / step;
      const lifted = lift + liftSquare * first * first;
      const bend = (induced * lifted * lifted) / (first * first);
      const left = low + share * step * slope - square * first * first - bend;
      state.speed = first - left / (slope - 2 * square * first + (2 * bend) / first);
      return state.speed > 0;
    }
    over = spare;
  }
  return false;
}

/** Speeds at which `leastLack` looks. */
const LOOKS = 200;

/**
 * The most thrust to spare at any speed, N (negative: the least that is missing), and where, m/s, with the drag of `guessSpeed`: level wings, nose along
 * the path. Drag cannot be less than that by more than the trim, so a model that lacks thrust here flies at no speed, tight lines or not.
 */
export function mostSpare(c: Constants, out: { spare: number; speed: number }): void {
  const s = c.setup;
  const half = 0.5 * s.density;
  const top = topSpeed(c) || USUAL_SPEED;
  const induced = s.inducedFactor / (half * s.wingArea);
  out.spare = Number.NEGATIVE_INFINITY;
  out.speed = top;
  for (let k = 1; k <= LOOKS; k++) {
    const V = (top * k) / LOOKS;
    lineScratch[0] = V / c.radius;
    lineDragAt(c.line, lineScratch, 0);
    const lines = (lineScratch[0]! * s.guideRadius) / c.radius;
    engineScratch[0] = V;
    engineAt(s, engineScratch);
    const lift =
      c.weight * c.cosElevation + c.pressStill + ((s.mass * c.tanElevation) / c.radius + c.pressTurning) * V * V;
    const drag =
      half * V * V * (c.wingDragArea * wingDragShare(c, V) + c.otherDragArea) + (induced * lift * lift) / (V * V);
    const spare = engineScratch[THRUST]! - drag - lines;
    if (spare > out.spare) {
      out.spare = spare;
      out.speed = V;
    }
  }
}

/**
 * A speed at which the propeller doesn't pull any more, m/s: the first knot above the thrust, or where the curve's
 * straight end crosses 0.
 */
export function topSpeed(c: Constants): number {
  const s = c.setup;
  const last = s.knotCount - 1;
  const end = s.curves[s.thrustAt + last * s.stride]!;
  if (end > 0) {
    const slope = (end - s.curves[s.thrustAt + (last - 1) * s.stride]!) / s.knotStep;
    const crossing = slope < 0 ? last * s.knotStep - end / slope : Number.POSITIVE_INFINITY;
    return Math.min(crossing, FASTEST);
  }
  for (let k = last - 1; k >= 0; k--) {
    if (s.curves[s.thrustAt + k * s.stride]! > 0) return (k + 1) * s.knotStep;
  }
  return 0;
}

/** No model on lines is near it, m/s. */
const FASTEST = 250;
