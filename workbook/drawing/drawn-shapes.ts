import type { Shape } from '../../engine/index';
import { cutAt } from './cut-lines';
import { type Frame, projectAll, type View } from './frame';
import { type Point, type Segment, segmentsOf } from './geometry';
import { type PartStyle, partStyle } from './parts';

/** A shape of the model on the page. */
export interface DrawnShape {
  readonly shape: Shape;
  readonly key: string;
  readonly view: View;
  readonly part: string;
  readonly style: PartStyle;
  readonly kind: 'mark' | 'circle' | 'path';
  readonly points: readonly Point[];
  readonly closed: boolean;
  readonly radius: number;
}

/** Where the lines to the pilot are cut, from the left edge of the plan. */
const CUT = 12;

function drawn(frame: Frame, shape: Shape, key: string): DrawnShape | undefined {
  const view = frame.views[shape.view];
  if (!view) return undefined;
  const all = projectAll(frame, shape);
  const points = shape.part === 'line' && shape.view === 'plan' ? cutAt(all, view.area.left + CUT) : all;
  if (points.length === 0) return undefined;
  const kind = points.length > 1 ? 'path' : shape.radius === undefined ? 'mark' : 'circle';
  return {
    shape,
    key,
    view: shape.view,
    part: shape.part,
    style: partStyle(shape.part, shape.view),
    kind,
    points,
    closed: shape.closed ?? false,
    radius: (shape.radius ?? 0) * frame.scale,
  };
}

/** The shapes of a design on the page, in the order of drawing. */
export function drawnAll(frame: Frame, shapes: readonly Shape[]): DrawnShape[] {
  return shapes
    .flatMap((shape, k) => drawn(frame, shape, `${shape.part}-${k}`) ?? [])
    .sort((a, b) => a.style.layer - b.style.layer);
}

const circlePoints = (centre: Point, radius: number): Point[] =>
  Array.from({ length: 12 }, (_, k) => ({
    x: centre.x + radius * Math.cos((k * Math.PI) / 6),
    y: centre.y + radius * Math.sin((k * Math.PI) / 6),
  }));

/** The strokes of a shape, a circle as twelve sides. */
export function strokesOf(shape: DrawnShape): Segment[] {
  if (shape.kind === 'mark') return [];
  if (shape.kind === 'circle') return segmentsOf(circlePoints(shape.points[0]!, shape.radius), true);
  return segmentsOf(shape.points, shape.closed);
}
