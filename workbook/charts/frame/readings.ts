import type { Box, Point } from '../../drawing/index';

/** One value that can be read off a chart. */
export interface Reading {
  readonly at: Point;
  /** What it is, with units, one quantity a line. */
  readonly lines: readonly string[];
  /** Of a trial series: the sample that it is of. */
  readonly sample?: number;
}

/** Readings that follow each other: the points of a line, the bars of a row. */
export interface ReadSeries {
  /** What all of them are of; '' where there is nothing to tell apart. */
  readonly name: string;
  readonly points: readonly Reading[];
  /** The plot that they lie in: the cross reaches to its left and lower edge. */
  readonly plot?: Box;
  /** Nothing is read at the lower edge. */
  readonly upOnly?: true;
}

/** Which reading is looked at. */
export interface ReadAt {
  readonly series: number;
  readonly point: number;
}

export const readingAt = (all: readonly ReadSeries[], at: ReadAt | undefined): Reading | undefined =>
  at && all[at.series]?.points[at.point];

/** The reading as it is said aloud. */
export function said(all: readonly ReadSeries[], at: ReadAt | undefined): string {
  const reading = readingAt(all, at);
  if (!reading) return '';
  const name = all[at!.series]!.name;
  return [...(name === '' ? [] : [name]), ...reading.lines].join(', ');
}

/** The reading nearest to a place. */
export function nearestReading(all: readonly ReadSeries[], to: Point): ReadAt | undefined {
  let best: ReadAt | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const [series, { points }] of all.entries()) {
    for (const [point, { at }] of points.entries()) {
      const away = Math.hypot(at.x - to.x, at.y - to.y);
      if (away < least) {
        least = away;
        best = { series, point };
      }
    }
  }
  return best;
}

/** The next reading for a key; the same one where there is none in that direction, undefined for a key that moves nothing. */
export function nextReading(all: readonly ReadSeries[], from: ReadAt, key: string): ReadAt | undefined {
  const last = (all[from.series]?.points.length ?? 0) - 1;
  // What stands by itself, such as a bar, has its neighbours in other series.
  if (last === 0) {
    if (key === 'Home') return { series: 0, point: 0 };
    if (key === 'End') return { series: all.length - 1, point: 0 };
    if (key === 'ArrowRight') return beside(all, from, 1);
    if (key === 'ArrowLeft') return beside(all, from, -1);
  }
  switch (key) {
    case 'ArrowRight':
      return { ...from, point: Math.min(last, from.point + 1) };
    case 'ArrowLeft':
      return { ...from, point: Math.max(0, from.point - 1) };
    case 'Home':
      return { ...from, point: 0 };
    case 'End':
      return { ...from, point: last };
    case 'ArrowUp':
      return beside(all, from, -1);
    case 'ArrowDown':
      return beside(all, from, 1);
    default:
      return undefined;
  }
}

/** From one series to the next above or below on the screen, at the point that lies nearest across. */
function beside(all: readonly ReadSeries[], from: ReadAt, way: 1 | -1): ReadAt {
  const here = readingAt(all, from)?.at;
  if (!here) return from;
  let best = from;
  let least = Number.POSITIVE_INFINITY;
  for (const [series, { points }] of all.entries()) {
    const point = nearestAcross(points, here);
    const at = points[point]?.at;
    if (!at || series === from.series) continue;
    // Of two that lie at one height the later counts as the lower.
    const step = way * (at.y - here.y) || way * (series - from.series) * 1e-6;
    if (step > 0 && step < least) {
      least = step;
      best = { series, point };
    }
  }
  return best;
}

function nearestAcross(points: readonly Reading[], here: Point): number {
  let best = 0;
  const cost = ({ at }: Reading): number => Math.abs(at.x - here.x) + 1e-3 * Math.abs(at.y - here.y);
  for (const [k, point] of points.entries()) if (cost(point) < cost(points[best]!)) best = k;
  return best;
}
