import type { JSX } from 'preact';
import type { DrawnShape } from './drawn-shapes';
import type { Point } from './geometry';
import { ink, type LineKindName, lineKinds } from './ink';
import { MarkSign } from './marks';

export const round = (v: number): number => Math.round(v * 100) / 100;
export const pathOf = (points: readonly Point[], closed: boolean): string =>
  `M${points.map((p) => `${round(p.x)},${round(p.y)}`).join('L')}${closed ? 'Z' : ''}`;

/** Attributes of a stroke of this line kind. */
export const stroke = (kind: LineKindName, colour = ink('ink')) => ({
  stroke: colour,
  'stroke-width': lineKinds[kind].width,
  'stroke-dasharray': lineKinds[kind].dash || undefined,
});

/** A line of the model, or one of its marks. `bare`: what lies under it is seen through it. */
export function ShapeLine({ shape, bare }: { shape: DrawnShape; bare?: boolean }): JSX.Element {
  const at = shape.points[0]!;
  if (shape.kind === 'mark') {
    return (
      <g data-mark={shape.part} data-view={shape.view}>
        <MarkSign part={shape.part} at={at} />
      </g>
    );
  }
  const filled = !bare && shape.style.filled && (shape.closed || shape.kind === 'circle');
  // Where it will be is not known yet.
  const colour = shape.shape.behind ? ink('muted') : ink('ink');
  const attributes = {
    ...stroke(shape.style.line, colour),
    fill: filled ? ink('paper') : 'none',
    'data-part': shape.part,
  };
  return shape.kind === 'circle' ? (
    <circle cx={round(at.x)} cy={round(at.y)} r={round(shape.radius)} {...attributes} />
  ) : (
    <path d={pathOf(shape.points, shape.closed)} {...attributes} />
  );
}
