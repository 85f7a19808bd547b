import { formatNumber, fromSI, type Shape } from '../../engine/index';
import { type Frame, project } from './frame';
import { type Box, type Point, type Segment, segmentsOf } from './geometry';
import { LABEL_SIZE } from './ink';
import { textWidth } from './text-width';

/** A length written along its dimension line. Points on the page. */
export interface DimensionLine {
  readonly key: string;
  readonly from: Point;
  readonly to: Point;
  readonly extensions: readonly Segment[];
  readonly text: string;
  readonly textAt: Point;
}

const GAP = 3;
const BEYOND = 4;
const ABOVE = 4;

function spread(
  shapes: readonly Shape[],
  view: Shape['view'],
  part: string,
  offset: 0 | 1,
): [number, number] | undefined {
  const numbers = shapes
    .filter((s) => s.view === view && s.part === part)
    .flatMap((s) => s.points.filter((_, k) => k % 2 === offset));
  return numbers.length < 2 ? undefined : [Math.min(...numbers), Math.max(...numbers)];
}

function level(key: string, from: Point, to: Point, y: number, length: number, unit: string): DimensionLine {
  const text = formatNumber(fromSI(length, unit));
  const past = (p: Point): Segment => {
    const way = Math.sign(y - p.y);
    return { x0: p.x, y0: p.y + way * GAP, x1: p.x, y1: y + way * BEYOND };
  };
  return {
    key,
    from: { x: from.x, y },
    to: { x: to.x, y },
    extensions: [past(from), past(to)],
    text,
    textAt: { x: (from.x + to.x) / 2, y: y - ABOVE },
  };
}

/** How far in front of the wing, and below the side view, the dimension lines run. */
const AHEAD_OF_WING = 15;
const BELOW_SIDE = 16;

/** Panel spans from the centreline in the plan, length of the body in the side view; lengths in `unit`. */
export function dimensionLines(shapes: readonly Shape[], frame: Frame, unit: string): DimensionLine[] {
  const lines: DimensionLine[] = [];
  const span = spread(shapes, 'plan', 'wing', 1);
  const chord = spread(shapes, 'plan', 'wing', 0);
  if (frame.views.plan && span && chord) {
    const y = project(frame, 'plan', chord[0], 0).y - AHEAD_OF_WING;
    for (const [key, tip] of [
      ['inboard span', span[0]],
      ['outboard span', span[1]],
    ] as const) {
      if (tip === 0) continue;
      const end = project(frame, 'plan', tipEdge(shapes, tip), tip);
      const middle = { x: project(frame, 'plan', 0, 0).x, y };
      lines.push({ ...level(key, middle, end, y, Math.abs(tip), unit) });
    }
  }
  const length = spread(shapes, 'side', 'body', 0);
  const bottom = frame.views.side?.extent.bottom;
  if (frame.arrangement !== 'strip' && length && bottom !== undefined) {
    const y = frame.views.side!.origin.y + bottom * frame.scale + BELOW_SIDE;
    const low = (x: number): Point => {
      const here = shapes
        .filter((s) => s.view === 'side' && s.part === 'body')
        .flatMap((s) => s.points.flatMap((p, k) => (k % 2 === 0 && p === x ? [s.points[k + 1]!] : [])));
      return project(frame, 'side', x, Math.min(...here));
    };
    lines.push(level('body length', low(length[0]), low(length[1]), y, length[1] - length[0], unit));
  }
  return lines;
}

/** Station of the forward end of a wing tip. */
function tipEdge(shapes: readonly Shape[], tip: number): number {
  let x = Number.POSITIVE_INFINITY;
  for (const s of shapes) {
    if (s.view !== 'plan' || s.part !== 'wing') continue;
    for (let k = 0; k + 1 < s.points.length; k += 2) if (s.points[k + 1] === tip) x = Math.min(x, s.points[k]!);
  }
  return x;
}

/** Room that a dimension's figure takes. */
export function dimensionBox(d: DimensionLine): Box {
  const half = textWidth(d.text, LABEL_SIZE) / 2 + 2;
  return {
    left: d.textAt.x - half,
    right: d.textAt.x + half,
    top: d.textAt.y - LABEL_SIZE,
    bottom: d.textAt.y + 2,
  };
}

/** Slender closed arrowhead at `tip`, pointing away from `tail`. */
export function arrowHead(tip: Point, tail: Point, length = 7): Point[] {
  const away = Math.hypot(tip.x - tail.x, tip.y - tail.y) || 1;
  const ux = (tip.x - tail.x) / away;
  const uy = (tip.y - tail.y) / away;
  const half = length / 6;
  const back = { x: tip.x - ux * length, y: tip.y - uy * length };
  return [tip, { x: back.x - uy * half, y: back.y + ux * half }, { x: back.x + uy * half, y: back.y - ux * half }];
}

export const dimensionStrokes = (d: DimensionLine): Segment[] => [
  ...segmentsOf([d.from, d.to], false),
  ...d.extensions,
];
