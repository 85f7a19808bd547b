import type { Shape } from '../../engine/index';
import type { Box, Point } from './geometry';

export type View = Shape['view'];
/** One view under the other beside the pieces, both side by side in a low strip on a phone, or one under the other on paper. */
export type Arrangement = 'column' | 'strip' | 'paper';

/** Where metres come to lie in pixels. */
export interface Frame {
  readonly arrangement: Arrangement;
  readonly width: number;
  readonly height: number;
  /** The drawing is 1 : denominator at 96 pixels an inch, which is the size it prints at. */
  readonly denominator: number;
  /** Pixels per metre. */
  readonly scale: number;
  readonly views: Readonly<Partial<Record<View, ViewFrame>>>;
}
interface ViewFrame {
  /** Metres that the view has room for: plan (y, x), side (x, z); left/right across the page, top/bottom along it. */
  readonly extent: Box;
  /** Its place on the page, with the room for its labels. */
  readonly area: Box;
  /** Point of the page at the datum on the centreline or reference line. */
  readonly origin: Point;
}

/** Scales of ISO 5455: full size and reductions. */
const ISO_DENOMINATORS: readonly number[] = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];
/** On the screen with the steps between that plans are sold in. */
const DENOMINATORS: readonly number[] = [
  1, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100, 200, 500, 1000,
];
export const PIXELS_PER_METRE = 96 / 0.0254;

/** Extents are rounded out to this many metres, so that the picture stands still while a part moves a little. */
const STEP = 0.02;
/** The frame of the last picture is kept while the model fills at least this share of its extent. */
const KEEP = 0.8;

/** Room for the lines that leave to the pilot, and around the views. */
const LINES_ROOM = 52;
const MARGIN = 14;
const COLUMN_GAP = 34;
const FOOT = 26;

/** Position on the page, in metres, before scale and place: x to the right, y down. */
function paper(view: View, a: number, b: number): Point {
  return view === 'plan' ? { x: b, y: a } : { x: a, y: -b };
}

/** Extent of one view; the lines to the pilot don't count, since they are cut. */
function extentOf(shapes: readonly Shape[], view: View): Box | undefined {
  let box: Box | undefined;
  for (const shape of shapes) {
    if (shape.view !== view || shape.part === 'line') continue;
    const r = shape.radius ?? 0;
    for (let k = 0; k + 1 < shape.points.length; k += 2) {
      const p = paper(view, shape.points[k]!, shape.points[k + 1]!);
      box = {
        left: Math.min(box?.left ?? Number.POSITIVE_INFINITY, p.x - r),
        right: Math.max(box?.right ?? Number.NEGATIVE_INFINITY, p.x + r),
        top: Math.min(box?.top ?? Number.POSITIVE_INFINITY, p.y - r),
        bottom: Math.max(box?.bottom ?? Number.NEGATIVE_INFINITY, p.y + r),
      };
    }
  }
  return box;
}

const roundOut = (box: Box): Box => ({
  left: Math.floor(box.left / STEP - 1e-9) * STEP,
  right: Math.ceil(box.right / STEP + 1e-9) * STEP,
  top: Math.floor(box.top / STEP - 1e-9) * STEP,
  bottom: Math.ceil(box.bottom / STEP + 1e-9) * STEP,
});
const across = (box: Box | undefined): number => (box ? box.right - box.left : 0);
const along = (box: Box | undefined): number => (box ? box.bottom - box.top : 0);

/** The extent of the last picture, when the model still lies inside it and fills it. */
function kept(now: Box | undefined, before: Box | undefined): Box | undefined {
  if (!now) return undefined;
  const rounded = roundOut(now);
  if (!before) return rounded;
  const holds =
    now.left >= before.left && now.right <= before.right && now.top >= before.top && now.bottom <= before.bottom;
  const filled = across(rounded) * along(rounded) >= KEEP * across(before) * along(before);
  return holds && filled ? before : rounded;
}

/** Chooses the largest scale at which both views fit the width, and in a strip the height, and places them. */
export function frameFor(
  shapes: readonly Shape[],
  arrangement: Arrangement,
  width: number,
  before?: Frame,
): Frame | undefined {
  const plan = kept(extentOf(shapes, 'plan'), before?.views.plan?.extent);
  const side = kept(extentOf(shapes, 'side'), before?.views.side?.extent);
  if (!plan && !side) return undefined;
  return arrangement === 'strip' ? stripFrame(plan, side, width) : columnFrame(plan, side, width, arrangement);
}

function largestScale(
  fits: (scale: number) => boolean,
  denominators = DENOMINATORS,
): { denominator: number; scale: number } {
  const denominator = denominators.find((d) => fits(PIXELS_PER_METRE / d)) ?? denominators.at(-1)!;
  return { denominator, scale: PIXELS_PER_METRE / denominator };
}

function viewFrame(extent: Box, area: Box, roomLeft: number, scale: number, top: number): ViewFrame {
  const spare = area.right - area.left - roomLeft - MARGIN - across(extent) * scale;
  const left = area.left + roomLeft + Math.max(0, spare) / 2;
  return { extent, area, origin: { x: left - extent.left * scale, y: top - extent.top * scale } };
}

/** Height of the two views on paper at most, px: most of a page of Letter. */
const PAPER_HEIGHT = 720;

function columnFrame(
  plan: Box | undefined,
  side: Box | undefined,
  width: number,
  arrangement: 'column' | 'paper',
): Frame {
  const onPaper = arrangement === 'paper';
  const { denominator, scale } = largestScale(
    (s) =>
      across(plan) * s <= width - LINES_ROOM - MARGIN &&
      across(side) * s <= width - 2 * MARGIN &&
      (!onPaper || (along(plan) + along(side)) * s <= PAPER_HEIGHT - 2 * MARGIN - 2 * COLUMN_GAP - FOOT),
    onPaper ? ISO_DENOMINATORS : DENOMINATORS,
  );
  const planBottom = plan ? 2 * MARGIN + along(plan) * scale : 0;
  const sideTop = planBottom + (side ? COLUMN_GAP : 0);
  const sideBottom = side ? sideTop + along(side) * scale + COLUMN_GAP : planBottom;
  const height = Math.ceil(sideBottom + FOOT);
  return {
    arrangement,
    width,
    height,
    denominator,
    scale,
    views: {
      ...(plan && {
        plan: viewFrame(plan, { left: 0, right: width, top: 0, bottom: planBottom }, LINES_ROOM, scale, MARGIN),
      }),
      ...(side && {
        side: viewFrame(side, { left: 0, right: width, top: planBottom, bottom: sideBottom }, MARGIN, scale, sideTop),
      }),
    },
  };
}

/** Height that a strip may take on a phone beside three figures and the first control. */
const STRIP_HEIGHT = 190;

function stripFrame(plan: Box | undefined, side: Box | undefined, width: number): Frame {
  const room = width - (plan ? LINES_ROOM + MARGIN : 0) - (side ? 2 * MARGIN : 0);
  const { denominator, scale } = largestScale(
    (s) =>
      (across(plan) + across(side)) * s <= room &&
      Math.max(along(plan), along(side)) * s <= STRIP_HEIGHT - 2 * MARGIN - FOOT,
  );
  const deepest = Math.max(along(plan), along(side)) * scale;
  const bottom = 2 * MARGIN + deepest;
  const planWidth = plan ? LINES_ROOM + MARGIN + across(plan) * scale + (side ? 0 : room - across(plan) * scale) : 0;
  const spare = plan && side ? Math.max(0, room - (across(plan) + across(side)) * scale) / 2 : 0;
  const split = planWidth + spare;
  return {
    arrangement: 'strip',
    width,
    height: Math.ceil(bottom + FOOT),
    denominator,
    scale,
    views: {
      ...(plan && { plan: viewFrame(plan, { left: 0, right: split, top: 0, bottom }, LINES_ROOM, scale, MARGIN) }),
      ...(side && {
        side: viewFrame(
          side,
          { left: split, right: width, top: 0, bottom },
          MARGIN,
          scale,
          MARGIN + (deepest - along(side) * scale) / 2,
        ),
      }),
    },
  };
}

/** Page position of a point of a shape: plan nose up with the pilot on the left, side nose left. */
export function project(frame: Frame, view: View, a: number, b: number): Point {
  const { origin } = frame.views[view]!;
  const p = paper(view, a, b);
  return { x: origin.x + p.x * frame.scale, y: origin.y + p.y * frame.scale };
}

export function projectAll(frame: Frame, shape: Shape): Point[] {
  const points: Point[] = [];
  for (let k = 0; k + 1 < shape.points.length; k += 2) {
    points.push(project(frame, shape.view, shape.points[k]!, shape.points[k + 1]!));
  }
  return points;
}

/** A place on the model, metres: in the plan x and y, in the side view x and z. */
export type Place = { readonly x: number } & ({ readonly y: number } | { readonly z: number });

/** The place that a point of the page shows; undefined outside both views. */
export function placeAt(frame: Frame, { x, y }: Point): Place | undefined {
  for (const view of ['plan', 'side'] as const) {
    const at = frame.views[view];
    if (!at || x < at.area.left || x > at.area.right || y < at.area.top || y > at.area.bottom) continue;
    const across = (x - at.origin.x) / frame.scale;
    const down = (y - at.origin.y) / frame.scale;
    return view === 'plan' ? { x: down, y: across } : { x: across, z: -down };
  }
  return undefined;
}
