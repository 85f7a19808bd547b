import { formatNumber } from '../../../engine/index';
import {
  type Box,
  LABEL_SIZE,
  type PlacedLabel,
  type Point,
  placeLabels,
  type Segment,
  textWidth,
} from '../../drawing/index';
import type { Panel, Spot } from './family';

/** The present design or the baseline on a panel. */
export interface DrawnSpot {
  readonly kind: 'now' | 'baseline' | 'variant';
  /** Place of a variant among those on the chart: it has a sign of its own. */
  readonly order?: number;
  /** What it is a value of, where one panel has several. */
  readonly of?: string;
  readonly at: Point;
  readonly text: string;
  readonly label: PlacedLabel | undefined;
}

export const NOW_RADIUS = 5;
export const BASELINE_RADIUS = 3.5;
const HEIGHT = LABEL_SIZE + 2;
/** Two designs nearer than this, in pixels, are one. */
const SAME = 2.5;

/** The room of a mark. */
export const around = ({ x, y }: Point, r: number): Box => ({ left: x - r, right: x + r, top: y - r, bottom: y + r });

/** A design to be marked. */
export interface Marked {
  readonly kind: DrawnSpot['kind'];
  readonly order?: number;
  readonly of?: string;
  readonly at: Point;
  readonly text: string;
}

/** Characters of a variant's name beside its mark; the words under the chart have all of it. */
const LONGEST_NAME = 22;

/** "Ply tail 40.8", "Ply tail, engine 8 mm… 40.8". */
export const variantText = (name: string, ...numbers: readonly number[]): string => {
  const short = name.length <= LONGEST_NAME ? name : `${name.slice(0, LONGEST_NAME - 1).trimEnd()}…`;
  return `${short} ${numbers.map((number) => formatNumber(number)).join(', ')}`;
};

/** Present design, baseline and variants on a panel of lines. */
export function markedOn(panel: Panel, place: (spot: Spot) => Point): Marked[] {
  const marked: Marked[] = [];
  if (panel.now) marked.push({ kind: 'now', at: place(panel.now), text: `now ${formatNumber(panel.now.y)}` });
  if (panel.baseline) {
    const text = `baseline ${formatNumber(panel.baseline.y)}`;
    marked.push({ kind: 'baseline', at: place(panel.baseline), text });
  }
  for (const [order, { name, spot }] of panel.others.entries()) {
    if (spot) marked.push({ kind: 'variant', order, at: place(spot), text: variantText(name, spot.y) });
  }
  return marked;
}

/** Marks of the present design and, where it stands elsewhere, of the baseline, with their values beside them. */
export function placeSpots(
  marked: readonly Marked[],
  box: Box,
  taken: readonly Box[],
  strokes: readonly Segment[],
  before: ReadonlyMap<string, number> | undefined,
): DrawnSpot[] {
  const seen = (p: Point): boolean =>
    p.x >= box.left - 1 && p.x <= box.right + 1 && p.y >= box.top - 1 && p.y <= box.bottom + 1;
  const present = marked.filter((each) => each.kind === 'now' && seen(each.at));
  const isPresent = ({ at, of }: Marked): boolean => {
    const now = present.find((each) => each.of === of)?.at;
    return now !== undefined && Math.hypot(now.x - at.x, now.y - at.y) <= SAME;
  };
  const spots = marked
    .filter((each) => seen(each.at) && (each.kind === 'now' || !isPresent(each)))
    .map((each) => ({ ...each, radius: each.kind === 'now' ? NOW_RADIUS : BASELINE_RADIUS }));
  const marks = spots.map(({ at, radius }) => around(at, radius));
  const labels = placeLabels(
    spots.map(({ at, text, radius, ...spot }) => ({
      key: keyOf(spot),
      at,
      settings: [{ width: textWidth(text, LABEL_SIZE) + 4, height: HEIGHT }],
      clear: radius,
    })),
    { frame: box, taken: [...taken, ...marks], strokes },
    before,
  );
  return spots.map(({ radius: _, ...spot }) => ({ ...spot, label: labels.find((l) => l.key === keyOf(spot)) }));
}

/** Tells the marks of one panel apart. */
export const keyOf = ({ kind, of, order }: Pick<Marked, 'kind' | 'of' | 'order'>): string =>
  [kind, of, order].filter((part) => part !== undefined).join(' ');

/** Where the words of the last picture stood, so that they stay on their side. */
export const placesOf = (spots: readonly DrawnSpot[] | undefined): ReadonlyMap<string, number> | undefined =>
  spots && new Map(spots.flatMap((spot) => (spot.label ? [[keyOf(spot), spot.label.place] as const] : [])));
