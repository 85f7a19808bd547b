import { formatNumber } from '../../engine/index';
import {
  type Box,
  LABEL_SIZE,
  type PlacedLabel,
  type Point,
  placeLabels,
  type Segment,
  textWidth,
} from '../drawing/index';
import type { Panel, Spot } from './family';

/** The present design or the baseline on a panel. */
export interface DrawnSpot {
  readonly kind: 'now' | 'baseline';
  readonly at: Point;
  readonly text: string;
  readonly label: PlacedLabel | undefined;
}

export const NOW_RADIUS = 5;
export const BASELINE_RADIUS = 3.5;
const HEIGHT = LABEL_SIZE + 2;
/** Two designs nearer than this, in pixels, are one. */
const SAME = 2.5;

/** Marks of the present design and, where it stands elsewhere, of the baseline, with their values beside them. */
export function placeSpots(
  panel: Panel,
  place: (spot: Spot) => Point,
  box: Box,
  taken: readonly Box[],
  strokes: readonly Segment[],
  before: ReadonlyMap<string, number> | undefined,
): DrawnSpot[] {
  const seen = (p: Point): boolean =>
    p.x >= box.left - 1 && p.x <= box.right + 1 && p.y >= box.top - 1 && p.y <= box.bottom + 1;
  const spots: { kind: DrawnSpot['kind']; at: Point; text: string; radius: number }[] = [];
  if (panel.now) {
    const at = place(panel.now);
    if (seen(at)) spots.push({ kind: 'now', at, text: `now ${formatNumber(panel.now.y)}`, radius: NOW_RADIUS });
  }
  if (panel.baseline) {
    const at = place(panel.baseline);
    const now = spots[0]?.at;
    const elsewhere = !now || Math.hypot(now.x - at.x, now.y - at.y) > SAME;
    const text = `baseline ${formatNumber(panel.baseline.y)}`;
    if (elsewhere && seen(at)) spots.push({ kind: 'baseline', at, text, radius: BASELINE_RADIUS });
  }
  const marks = spots.map(({ at, radius }) => ({
    left: at.x - radius,
    right: at.x + radius,
    top: at.y - radius,
    bottom: at.y + radius,
  }));
  const labels = placeLabels(
    spots.map(({ kind, at, text, radius }) => ({
      key: kind,
      at,
      settings: [{ width: textWidth(text, LABEL_SIZE) + 4, height: HEIGHT }],
      clear: radius,
    })),
    { frame: box, taken: [...taken, ...marks], strokes },
    before,
  );
  return spots.map(({ kind, at, text }) => ({ kind, at, text, label: labels.find((l) => l.key === kind) }));
}
