import type { Shape, TracedPlan } from '../../../../engine/index';
import type { Place } from '../../../drawing/index';

/** A point of the drawing, m from the datum: to the right and down. */
export interface OnDrawing {
  readonly right: number;
  readonly down: number;
}

/** The plan has its nose up, the side view its nose to the left. */
export const onDrawing = (place: Place): OnDrawing =>
  'y' in place ? { right: place.y, down: place.x } : { right: place.x, down: -place.z };

type Laid = Pick<TracedPlan, 'right' | 'down' | 'scale' | 'angle'>;
const DEGREE = Math.PI / 180;

/** Turns a point about another, degrees clockwise as it is seen. */
function turned(point: OnDrawing, about: OnDrawing, degrees: number): OnDrawing {
  const [right, down] = [point.right - about.right, point.down - about.down];
  const [cosine, sine] = [Math.cos(degrees * DEGREE), Math.sin(degrees * DEGREE)];
  return { right: about.right + right * cosine - down * sine, down: about.down + right * sine + down * cosine };
}

/** The picture so large that two of its points are so far apart (m); the first stays where it is. Undefined where they are one point. */
export function scaledBy<P extends Laid>(plan: P, from: OnDrawing, to: OnDrawing, metres: number): P | undefined {
  const factor = metres / Math.hypot(to.right - from.right, to.down - from.down);
  if (!(factor > 0) || !Number.isFinite(factor)) return undefined;
  return {
    ...plan,
    scale: plan.scale * factor,
    right: from.right + factor * (plan.right - from.right),
    down: from.down + factor * (plan.down - from.down),
  };
}

/** The picture turned about a point, degrees clockwise. */
export const turnedBy = <P extends Laid>(plan: P, about: OnDrawing, degrees: number): P => ({
  ...plan,
  ...turned(plan, about, degrees),
  angle: within(plan.angle + degrees),
});

const within = (degrees: number): number => ((degrees + 540) % 360) - 180;

/** The picture turned about the first of two points so that they lie level or upright, whichever is nearer. */
export function straightened<P extends Laid>(plan: P, from: OnDrawing, to: OnDrawing): P {
  const angle = Math.atan2(to.down - from.down, to.right - from.right) / DEGREE;
  return turnedBy(plan, from, 90 * Math.round(angle / 90) - angle);
}

/** The picture moved so that what is at one point comes to lie at another. */
export const movedTo = <P extends Laid>(plan: P, from: OnDrawing, to: OnDrawing): P => ({
  ...plan,
  right: plan.right + to.right - from.right,
  down: plan.down + to.down - from.down,
});

/** A picture that is new: as long as the model, in its middle. */
export function firstPlace(
  { width, height }: { readonly width: number; readonly height: number },
  view: Shape['view'],
  shapes: readonly Shape[],
): Laid {
  const seen = shapes.filter((shape) => shape.view === view && shape.part !== 'line');
  const [a, b] = [0, 1].map((offset) => seen.flatMap(({ points }) => points.filter((_, k) => k % 2 === offset)));
  const [rights, downs] = view === 'plan' ? [b!, a!] : [a!, b!.map((z) => -z)];
  const span = (of: readonly number[]): number => Math.max(...of) - Math.min(...of);
  const middle = (of: readonly number[]): number => (Math.max(...of) + Math.min(...of)) / 2;
  if (rights.length === 0) return { right: 0, down: 0, scale: 1 / Math.max(width, height), angle: 0 };
  return {
    right: middle(rights),
    down: middle(downs),
    scale: Math.max(span(rights) / width, span(downs) / height),
    angle: 0,
  };
}

/** How far from the datum the frame follows a picture, m. */
const FAR = 4;

/** The corners of the picture, which the frame has to hold. */
export function roomOfPlan(plan: TracedPlan): Shape[] {
  const half = { right: (plan.width / 2) * plan.scale, down: (plan.height / 2) * plan.scale };
  const near = (metres: number): number => Math.min(Math.max(metres, -FAR), FAR);
  const points = [-1, 1].flatMap((x) =>
    [-1, 1].flatMap((y) => {
      const corner = { right: plan.right + x * half.right, down: plan.down + y * half.down };
      const { right, down } = turned(corner, plan, plan.angle);
      return plan.view === 'plan' ? [near(down), near(right)] : [near(right), -near(down)];
    }),
  );
  return [{ view: plan.view, part: 'room', points }];
}
