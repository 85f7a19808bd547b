import { beyond, dot, fuelSurface, type Place } from '../../physics/index';
import { PRESSURE, VOLUME } from '../../units/index';
import type { Quantity, TraceColumns } from '../block';
import { MILLIMETRES, PLAIN } from '../measures';
import { outlineOf } from './outline';
import { TANK_PARTS, TANK_VIEWS, type TankPart, type TankView } from './parts';
import { referenceLevel, type TankSet } from './set';

/** Corners of the outlines in the pictures of a tank, those of one outline behind each other. */
export const tankViewColumns = {
  left: {
    ...{ dimension: VOLUME, unit: 'mL', tradeUnit: 'fl oz', symbol: 'V', title: 'Fuel left' },
    doc: 'For which this corner stands; without a number for what stands whatever is left.',
  },
  view: { ...PLAIN, symbol: 'k_w', title: 'View', doc: 'Plan and end view in level flight, side view at rest.' },
  part: { ...PLAIN, symbol: 'k_p', title: 'Part', doc: 'Tank, fuel, pickup, vent, spray bar, head.' },
  along: { ...MILLIMETRES, symbol: 'x', title: 'To the right', doc: 'Aft, or outboard in the end view.' },
  up: { ...MILLIMETRES, symbol: 'z', title: 'Up', doc: 'Upward, or outboard in the plan.' },
  head: {
    ...{ dimension: PRESSURE, unit: 'Pa', symbol: 'p', title: 'Head at the spray bar' },
    doc: 'Of this outline, where it is the head.',
  },
} as const satisfies Readonly<Record<string, Quantity>>;

/** What the pictures are made from. */
export interface TankScene {
  readonly set: TankSet;
  readonly flight: Place;
  readonly rest: Place;
  /** Nose up at rest, rad. */
  readonly pitch: number;
  /** What it is filled with, and what is left when the pickup uncovers, m³. */
  readonly whole: number;
  readonly unusable: number;
  /** Head in flight and at rest with the level that the fuel breathes from, Pa. */
  head(view: 'flight' | 'rest', reference: number): number;
}

/** Amounts of fuel that are drawn, between none and all. */
const FRAMES = 40;

/** Every outline of a tank that empties, in plan and end view as it flies and from the side as it stands. */
export function tankViews(scene: TankScene): TraceColumns {
  const { set, whole } = scene;
  const columns = { left: [], view: [], part: [], along: [], up: [], head: [] } as Record<
    keyof typeof tankViewColumns,
    number[]
  >;
  const [sine, cosine] = [Math.sin(scene.pitch), Math.cos(scene.pitch)];
  const seen: Readonly<Record<TankView, (p: Place) => [number, number]>> = {
    plan: ([x, y]) => [x, y],
    end: ([, y, z]) => [y, z],
    rest: ([x, , z]) => [x * cosine + z * sine, z * cosine - x * sine],
  };
  const put = (
    view: TankView,
    part: TankPart,
    points: readonly [number, number][],
    left: number,
    head = Number.NaN,
  ) => {
    for (const [along, up] of points) {
      columns.left.push(left);
      columns.view.push(TANK_VIEWS.indexOf(view));
      columns.part.push(TANK_PARTS.indexOf(part));
      columns.along.push(along);
      columns.up.push(up);
      columns.head.push(head);
    }
  };
  for (const view of TANK_VIEWS) {
    const see = seen[view];
    put(view, 'tank', outlineOf(set.body.flat().map(see)), Number.NaN);
    put(view, 'vent', [see(set.vent)], Number.NaN);
    put(view, 'spray', [see(set.spray)], Number.NaN);
  }
  for (let k = 0; k <= FRAMES; k++) {
    const left = (whole * k) / FRAMES;
    const dry = left <= scene.unusable;
    for (const view of TANK_VIEWS) {
      const see = seen[view];
      const gravity = view === 'rest' ? scene.rest : scene.flight;
      const { level } = fuelSurface(set.body, gravity, left);
      if (left > 0) put(view, 'fuel', outlineOf(beyond(set.body, gravity, level).flat().map(see)), left);
      const bare = view === 'rest' ? dot(gravity, set.pickup) < level : dry;
      put(view, bare ? 'uncovered' : 'pickup', [see(set.pickup)], left);
      if (bare || view === 'plan') continue;
      const reference = referenceLevel(set, gravity, level);
      const head = scene.head(view === 'rest' ? 'rest' : 'flight', reference);
      put(view, 'head', [see(foot(set.spray, gravity, reference)), see(set.spray)], left, head);
    }
  }
  return columns;
}

/** The place of the plane g · p = level that lies straight over or under another place. Geometry. */
function foot(p: Place, gravity: Place, level: number): Place {
  const share = (level - dot(gravity, p)) / dot(gravity, gravity);
  return [p[0] + share * gravity[0], p[1] + share * gravity[1], p[2] + share * gravity[2]];
}
