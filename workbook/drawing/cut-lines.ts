import type { Point, Segment } from './geometry';

/**
 * A line to the pilot is some hundred times as long as the picture is wide: it is drawn from the guide to the cut, in its
 * true direction, and lengthened there when what was given ends short of it.
 */
export function cutAt(points: readonly Point[], cut: number): Point[] {
  if (points.length < 2) return [];
  const fromGuide = points[0]!.x >= points.at(-1)!.x ? points : [...points].reverse();
  const visible: Point[] = [fromGuide[0]!];
  for (let k = 1; k < fromGuide.length; k++) {
    const a = fromGuide[k - 1]!;
    const b = fromGuide[k]!;
    const last = k === fromGuide.length - 1;
    if (b.x <= cut || last) {
      const run = b.x - a.x;
      visible.push(run < 0 ? { x: cut, y: a.y + ((cut - a.x) / run) * (b.y - a.y) } : b);
      return visible;
    }
    visible.push(b);
  }
  return visible;
}

/** Half the height of the break line above and below the lines it cuts, and the size of its zigzag. */
const OVERHANG = 7;
const ZIG = 4;

/** Break line: a thin straight line with one zigzag, across all lines that end at the cut. */
export function breakLine(ends: readonly Point[]): Point[] {
  if (ends.length === 0) return [];
  const x = ends[0]!.x;
  const top = Math.min(...ends.map((p) => p.y)) - OVERHANG;
  const bottom = Math.max(...ends.map((p) => p.y)) + OVERHANG;
  const middle = (top + bottom) / 2;
  return [
    { x, y: top },
    { x, y: middle - ZIG },
    { x: x - ZIG, y: middle - ZIG / 3 },
    { x: x + ZIG, y: middle + ZIG / 3 },
    { x, y: middle + ZIG },
    { x, y: bottom },
  ];
}

/** The arrow that says where the pilot stands: above the cut, pointing inboard. */
export function pilotArrow(ends: readonly Point[]): Segment | undefined {
  if (ends.length === 0) return undefined;
  const x = ends[0]!.x;
  const y = Math.min(...ends.map((p) => p.y)) - OVERHANG - 7;
  return { x0: x + 30, y0: y, x1: x - 6, y1: y };
}
