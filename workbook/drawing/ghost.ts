import type { Shape } from '../../engine/index';

/** Smaller shifts than this, in metres, are not seen at the scale of the drawing. */
const SEEN = 0.0003;

const keyOf = (shape: Shape): string => `${shape.view} ${shape.part}`;

function differs(a: Shape, b: Shape): boolean {
  return (
    a.points.length !== b.points.length ||
    Math.abs((a.radius ?? 0) - (b.radius ?? 0)) > SEEN ||
    a.points.some((p, k) => Math.abs(p - b.points[k]!) > SEEN)
  );
}

/** What of the baseline stands elsewhere in the present design, or is gone from it. The n-th shape of a part is compared with the n-th. */
export function movedShapes(shapes: readonly Shape[], ghost: readonly Shape[]): Shape[] {
  const present = new Map<string, Shape[]>();
  for (const shape of shapes) {
    const list = present.get(keyOf(shape));
    if (list) list.push(shape);
    else present.set(keyOf(shape), [shape]);
  }
  const seen = new Map<string, number>();
  return ghost.filter((shape) => {
    const n = seen.get(keyOf(shape)) ?? 0;
    seen.set(keyOf(shape), n + 1);
    const now = present.get(keyOf(shape))?.[n];
    return now === undefined || differs(now, shape);
  });
}
