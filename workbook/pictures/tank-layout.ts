import { TANK_VIEWS, type TankView } from '../../engine/index';
import type { Box, Point } from '../drawing/index';
import type { TankOutlines } from './tank-outlines';

/** One view in its place on the page. */
export interface PlacedView {
  readonly view: TankView;
  readonly area: Box;
  place(p: { readonly x: number; readonly y: number }): Point;
}
export interface TankLayout {
  readonly width: number;
  readonly height: number;
  /** Pixels a metre, the same in every view. */
  readonly scale: number;
  readonly views: readonly PlacedView[];
}

const NARROW = 520;
const TITLE = 20;
/** Around the outlines: room for the words beside the marks. */
const SIDE = 22;
const ABOVE = 26;
const GAP = 14;
/** Height that two views below each other may take, where nothing else is said. */
const MOST_HEIGHT = 420;
const MOST_SCALE = 6000;

interface Extent {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

function extentOf(outlines: TankOutlines, view: TankView): Extent {
  const all = [...outlines.still, ...outlines.levels.flatMap((level) => level.outlines)];
  const points = all.filter((each) => each.view === view).flatMap((each) => each.points);
  const [x, y] = [points.map((p) => p.x), points.map((p) => p.y)];
  return { left: Math.min(...x), right: Math.max(...x), low: Math.min(...y), high: Math.max(...y) };
}

/** All views at one scale: plan over side view with the end view beside them, or below each other on a narrow page. The scale does not hang on what is left. */
export function layOutTank(outlines: TankOutlines, width: number, mostHeight = MOST_HEIGHT): TankLayout {
  const extents = Object.fromEntries(TANK_VIEWS.map((view) => [view, extentOf(outlines, view)])) as Record<
    TankView,
    Extent
  >;
  const wide = ({ left, right }: Extent): number => right - left;
  const high = ({ low, high: top }: Extent): number => top - low;
  const { plan, end, rest } = extents;
  const narrow = width < NARROW;
  const long = Math.max(wide(plan), wide(rest));
  const scale = Math.min(
    MOST_SCALE,
    narrow ? (width - 2 * SIDE) / Math.max(long, wide(end)) : (width - 4 * SIDE - GAP) / (long + wide(end)),
    narrow ? MOST_SCALE : (mostHeight - 2 * (TITLE + 2 * ABOVE)) / (high(plan) + high(rest)),
  );
  const placed = (view: TankView, left: number, top: number, room: number): PlacedView => {
    const extent = extents[view];
    const inset = left + SIDE + (room - 2 * SIDE - scale * wide(extent)) / 2;
    const bottom = top + TITLE + 2 * ABOVE + scale * high(extent);
    return {
      view,
      area: { left, right: left + room, top, bottom },
      place: (p) => ({ x: inset + scale * (p.x - extent.left), y: bottom - ABOVE - scale * (p.y - extent.low) }),
    };
  };
  if (narrow) {
    let top = 0;
    const views = (['plan', 'end', 'rest'] as const).map((view) => {
      const next = placed(view, 0, top, width);
      top = next.area.bottom + GAP;
      return next;
    });
    return { width, height: top - GAP, scale, views };
  }
  const right = Math.max(scale * wide(end) + 2 * SIDE, (width - GAP) * 0.36);
  const first = placed('plan', 0, 0, width - GAP - right);
  const below = placed('rest', 0, first.area.bottom + GAP, width - GAP - right);
  const beside = placed('end', width - right, 0, right);
  const height = Math.max(below.area.bottom, beside.area.bottom);
  return { width, height, scale, views: [first, beside, below] };
}
