import type { Point } from '../../drawing/index';
import type { GuessLayout } from './layout';

/** The heights after the pen went from one point to another: every place that it passed has the height at which it did. */
export function drawnBetween(
  heights: readonly number[],
  { places, valueAt }: Pick<GuessLayout, 'places' | 'valueAt'>,
  from: Point,
  to: Point,
): readonly number[] {
  const nearest = nearestPlace(places, to.x);
  const [left, right] = from.x <= to.x ? [from, to] : [to, from];
  return heights.map((height, k) => {
    const x = places[k]!;
    if (k === nearest) return rounded(valueAt(to.y));
    if (x < left.x || x > right.x || right.x === left.x) return height;
    return rounded(valueAt(left.y + ((right.y - left.y) * (x - left.x)) / (right.x - left.x)));
  });
}

function nearestPlace(places: readonly number[], x: number): number {
  let best = 0;
  for (let k = 1; k < places.length; k++) if (Math.abs(places[k]! - x) < Math.abs(places[best]! - x)) best = k;
  return best;
}

/** Steps from the bottom to the top of the plot by an arrow, and by a page key. */
const FINE = 40;
const COARSE = 8;

/** What a key does to the line: it goes to another place, or raises or lowers this one; undefined for other keys. */
export function keyed(
  key: string,
  at: number,
  heights: readonly number[],
  [low, high]: readonly [number, number],
): { readonly at: number; readonly heights: readonly number[] } | undefined {
  const last = heights.length - 1;
  if (key === 'ArrowLeft') return { at: Math.max(0, at - 1), heights };
  if (key === 'ArrowRight') return { at: Math.min(last, at + 1), heights };
  if (key === 'Home') return { at: 0, heights };
  if (key === 'End') return { at: last, heights };
  const by = STEPS[key];
  if (by === undefined) return undefined;
  const raised = Math.min(high, Math.max(low, heights[at]! + by * (high - low)));
  return { at, heights: heights.with(at, rounded(raised)) };
}

const STEPS: Readonly<Record<string, number>> = {
  ArrowUp: 1 / FINE,
  ArrowDown: -1 / FINE,
  PageUp: 1 / COARSE,
  PageDown: -1 / COARSE,
};

/** As fine as anybody draws. */
const rounded = (si: number): number => Number(si.toPrecision(4));
