import type { JSX } from 'preact';
import type { Shape } from '../../engine/index';
import { type DrawnShape, drawnAll } from './drawn-shapes';
import { frameFor } from './frame';
import type { Box } from './geometry';
import { ShapeLine } from './shape-line';

/** Width at which it is laid out, px; it is shown as wide as its place. */
const WIDTH = 320;
/** Room around the model, px. */
const ROOM = 4;

/** Where the shapes lie; undefined where there are none. */
function boxOf(shapes: readonly DrawnShape[]): Box | undefined {
  const ends = shapes.flatMap(({ points, radius }) =>
    points.map(({ x, y }) => ({ left: x - radius, right: x + radius, top: y - radius, bottom: y + radius })),
  );
  if (ends.length === 0) return undefined;
  return {
    left: Math.min(...ends.map(({ left }) => left)) - ROOM,
    right: Math.max(...ends.map(({ right }) => right)) + ROOM,
    top: Math.min(...ends.map(({ top }) => top)) - ROOM,
    bottom: Math.max(...ends.map(({ bottom }) => bottom)) + ROOM,
  };
}

/** Plan and side view of a model side by side without a word, to know it by; nothing where nothing can be drawn. */
export function SmallPicture({
  shapes,
  title,
}: {
  readonly shapes: readonly Shape[];
  readonly title: string;
}): JSX.Element | null {
  const frame = frameFor(shapes, 'strip', WIDTH);
  // The lines to the pilot are as long on every model.
  const drawn = frame ? drawnAll(frame, shapes).filter(({ kind, part }) => kind !== 'mark' && part !== 'line') : [];
  const box = boxOf(drawn);
  if (!box) return null;
  const [width, height] = [Math.ceil(box.right - box.left), Math.ceil(box.bottom - box.top)];
  return (
    <svg
      role="img"
      class="small-picture"
      aria-label={`${title}: plan and side view`}
      width={width}
      height={height}
      viewBox={`${Math.floor(box.left)} ${Math.floor(box.top)} ${width + 1} ${height + 1}`}
    >
      {drawn.map((shape) => (
        <ShapeLine key={shape.key} shape={shape} />
      ))}
    </svg>
  );
}
