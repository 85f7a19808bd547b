/** Plane geometry of the page, in pixels, x to the right and y down. */
export interface Point {
  readonly x: number;
  readonly y: number;
}
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}
export interface Segment {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

export const overlaps = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

export const inside = (a: Box, outer: Box): boolean =>
  a.left >= outer.left && a.right <= outer.right && a.top >= outer.top && a.bottom <= outer.bottom;

/** Length of the part of a segment that lies inside a box; 0 when it passes by. Clips the segment's parameter against each side. */
export function lengthInside(s: Segment, box: Box): number {
  if (Math.max(s.x0, s.x1) < box.left || Math.min(s.x0, s.x1) > box.right) return 0;
  if (Math.max(s.y0, s.y1) < box.top || Math.min(s.y0, s.y1) > box.bottom) return 0;
  const dx = s.x1 - s.x0;
  const dy = s.y1 - s.y0;
  let from = 0;
  let to = 1;
  const sides: readonly (readonly [number, number])[] = [
    [-dx, s.x0 - box.left],
    [dx, box.right - s.x0],
    [-dy, s.y0 - box.top],
    [dy, box.bottom - s.y0],
  ];
  for (const [rate, room] of sides) {
    if (rate === 0) {
      if (room < 0) return 0;
    } else if (rate < 0) from = Math.max(from, room / rate);
    else to = Math.min(to, room / rate);
  }
  return to > from ? (to - from) * Math.hypot(dx, dy) : 0;
}

/** Sides of a polyline or, closed, of a polygon. */
export function segmentsOf(points: readonly Point[], closed: boolean): Segment[] {
  const segments: Segment[] = [];
  for (let k = closed ? 0 : 1; k < points.length; k++) {
    const a = points[k === 0 ? points.length - 1 : k - 1]!;
    const b = points[k]!;
    segments.push({ x0: a.x, y0: a.y, x1: b.x, y1: b.y });
  }
  return segments;
}
