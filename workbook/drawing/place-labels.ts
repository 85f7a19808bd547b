import { type Box, inside, lengthInside, overlaps, type Point, type Segment } from './geometry';

/** A word or figure that has to stand near a point, in one or more settings (on one line, on two); the first is liked best. */
export interface LabelWish {
  readonly key: string;
  readonly at: Point;
  readonly settings: readonly { readonly width: number; readonly height: number }[];
  /** How far the point's own mark reaches. */
  readonly clear: number;
}

export interface PlacedLabel {
  readonly key: string;
  readonly setting: number;
  readonly box: Box;
  /** Number of the place and setting that was taken, to be preferred next time. */
  readonly place: number;
  /** From the label to its point, where they stand apart. */
  readonly leader?: Segment;
}

/** What labels keep away from. */
export interface Surroundings {
  readonly frame: Box;
  /** Never covered. */
  readonly taken: readonly Box[];
  /** Covered only where there is no free place. */
  readonly strokes: readonly Segment[];
  /** Things lie close together: a label further off is read better than one over an outline or a leader through a figure. */
  readonly crowded?: boolean;
}

const DIRECTIONS: readonly (readonly [number, number])[] = [
  [1, 0],
  [-1, 0],
  [0.8, -0.6],
  [0.8, 0.6],
  [-0.8, -0.6],
  [-0.8, 0.6],
  [0.45, -0.9],
  [0.45, 0.9],
  [-0.45, -0.9],
  [-0.45, 0.9],
  [0, -1],
  [0, 1],
];
const DISTANCES: readonly number[] = [4, 12, 20, 30, 42, 56, 74, 96, 124, 160];
/** Above this distance a leader is drawn. */
const LEADER = 9;

/** How far a leader to a label above or below leans toward the label's middle, so that it stands off upright outlines. */
const SLANT = 10;

/** Costs, against one pixel of distance: a pixel of covered stroke, a leader that crosses a label or a leader, a spot where a leader runs on a stroke, leaving the last place, the next setting. */
const STROKE_COST = 3;
const CROWDED_STROKE_COST = 5;
/** A leader may touch a figure this far, in pixels, and passes what is this near to its point. */
const TOUCH = 4;
const NEAR = 8;
const CROSSING_COST = 60;
const ON_STROKE_COST = 8;
const MOVE_COST = 14;
const SETTING_COST = 5;
/** Spots along a leader that are looked at, as shares of its length, and their half width in pixels. */
const SPOTS: readonly number[] = [0.3, 0.5, 0.7, 0.9];
const SPOT = 2;
/** A first round places each label beside those before it, the next let each move once more among all the others. */
const ROUNDS = 2;

interface Candidate extends PlacedLabel {
  readonly cost: number;
}

/** Where a label of this size stands when it is pushed off the point in a direction; above and below the point it keeps within the frame's sides. */
function boxAt(wish: LabelWish, setting: number, place: number, frame: Box): { box: Box; distance: number } {
  const [dx, dy] = DIRECTIONS[place % DIRECTIONS.length]!;
  const distance = DISTANCES[Math.floor(place / DIRECTIONS.length)]!;
  const { width, height } = wish.settings[setting]!;
  const reach = wish.clear + distance;
  const pushed = wish.at.x + dx * reach + (Math.sign(dx) * width) / 2;
  const upright = Math.abs(dy) > 0.8;
  const x = upright ? Math.min(Math.max(pushed, frame.left + width / 2), frame.right - width / 2) : pushed;
  const y = wish.at.y + dy * reach + (Math.abs(dy) > 0.6 ? (Math.sign(dy) * height) / 2 : 0);
  return {
    box: { left: x - width / 2, right: x + width / 2, top: y - height / 2, bottom: y + height / 2 },
    distance,
  };
}

function leaderOf(wish: LabelWish, box: Box, distance: number): Segment | undefined {
  if (distance <= LEADER) return undefined;
  const { x, y } = wish.at;
  const beside = x < box.left || x > box.right;
  const inward = Math.min(Math.max((box.left + box.right) / 2 - x, -SLANT), SLANT);
  const x1 = beside ? Math.min(Math.max(x, box.left), box.right) : x + inward;
  const y1 = beside ? (box.top + box.bottom) / 2 : y < box.top ? box.top : box.bottom;
  const away = Math.hypot(x1 - x, y1 - y);
  if (away <= wish.clear) return undefined;
  const start = wish.clear / away;
  return { x0: x + (x1 - x) * start, y0: y + (y1 - y) * start, x1, y1 };
}

function leaderCost(leader: Segment, strokes: readonly Segment[], others: readonly PlacedLabel[]): number {
  let cost = 0;
  for (const other of others) {
    if (lengthInside(leader, other.box) > 0) cost += CROSSING_COST;
    if (other.leader && cross(leader, other.leader)) cost += CROSSING_COST;
  }
  for (const share of SPOTS) {
    const x = leader.x0 + share * (leader.x1 - leader.x0);
    const y = leader.y0 + share * (leader.y1 - leader.y0);
    const spot = { left: x - SPOT, right: x + SPOT, top: y - SPOT, bottom: y + SPOT };
    if (strokes.some((s) => lengthInside(s, spot) > 0)) cost += ON_STROKE_COST;
  }
  return cost;
}

/** A point's own mark, and others so close that every leader from it passes them. */
const isNear = (box: Box, { x, y }: Point): boolean =>
  x > box.left - NEAR && x < box.right + NEAR && y > box.top - NEAR && y < box.bottom + NEAR;

function cross(a: Segment, b: Segment): boolean {
  const side = (s: Segment, x: number, y: number): number => (s.x1 - s.x0) * (y - s.y0) - (s.y1 - s.y0) * (x - s.x0);
  return side(a, b.x0, b.y0) * side(a, b.x1, b.y1) < 0 && side(b, a.x0, a.y0) * side(b, a.x1, a.y1) < 0;
}

const PLACES = DIRECTIONS.length * DISTANCES.length;

/** What a place costs; undefined where it is not free or costs no less than `limit`. */
function candidate(
  wish: LabelWish,
  { frame, taken, strokes, crowded = false }: Surroundings,
  others: readonly PlacedLabel[],
  place: number,
  moved: boolean,
  limit: number,
): Candidate | undefined {
  const setting = Math.floor(place / PLACES);
  const { box, distance } = boxAt(wish, setting, place % PLACES, frame);
  let cost = distance + setting * SETTING_COST + (moved ? MOVE_COST : 0);
  if (cost >= limit || !inside(box, frame)) return undefined;
  if (taken.some((b) => overlaps(b, box)) || others.some((o) => overlaps(o.box, box))) return undefined;
  for (const s of strokes) cost += (crowded ? CROWDED_STROKE_COST : STROKE_COST) * lengthInside(s, box);
  for (const o of others) if (o.leader && lengthInside(o.leader, box) > 0) cost += CROSSING_COST;
  if (cost >= limit) return undefined;
  const leader = leaderOf(wish, box, distance);
  if (!leader) return { key: wish.key, setting, box, place, cost };
  cost += leaderCost(leader, strokes, others);
  if (crowded)
    cost += CROSSING_COST * taken.filter((b) => !isNear(b, wish.at) && lengthInside(leader, b) > TOUCH).length;
  return cost >= limit ? undefined : { key: wish.key, setting, box, place, leader, cost };
}

function bestPlace(
  wish: LabelWish,
  surroundings: Surroundings,
  others: readonly PlacedLabel[],
  last: number | undefined,
): Candidate | undefined {
  let best: Candidate | undefined;
  if (last !== undefined) best = candidate(wish, surroundings, others, last, false, Number.POSITIVE_INFINITY);
  for (let place = 0; place < PLACES * wish.settings.length; place++) {
    const limit = best?.cost ?? Number.POSITIVE_INFINITY;
    best = candidate(wish, surroundings, others, place, last !== undefined, limit) ?? best;
  }
  return best;
}

/**
 * Gives each wish, in order of importance, its cheapest place around its point: inside the frame, over no other label or
 * mark, over as few strokes as can be. `before` holds the places taken last time: a label that moves with the hand stays
 * on its side. A wish without any free place is left out.
 */
export function placeLabels(
  wishes: readonly LabelWish[],
  surroundings: Surroundings,
  before: ReadonlyMap<string, number> = new Map(),
): PlacedLabel[] {
  const placed = new Map<string, PlacedLabel>();
  for (let round = 0; round < ROUNDS; round++) {
    for (const wish of wishes) {
      const others = [...placed.values()].filter((p) => p.key !== wish.key);
      const best = bestPlace(wish, surroundings, others, before.get(wish.key));
      if (best) {
        const { cost: _, ...label } = best;
        placed.set(wish.key, label);
      }
    }
  }
  return wishes.flatMap((wish) => placed.get(wish.key) ?? []);
}
