import { fromSI, type TraceAnswer, type TraceColumn } from '../../../engine/index';
import type { Point } from '../../drawing/index';
import { holdRange } from '../frame/hold-range';
import type { Zone } from '../frame/limits';
import { titleWithUnit } from '../frame/measure';
import { type Laid, type Title, titleAt } from '../frame/panels';
import type { TraceChartProps } from '../frame/props';
import { linear } from '../frame/scales';
import { roundTicks, type Ticks } from '../frame/ticks';
import { limitsOfColumn } from '../frame/trace-limits';
import type { Range } from '../frame/y-range';
import { type Compass, readCompass } from './compass';

/** One value around the lap. */
export interface RingPoint {
  /** Radians. */
  readonly angle: number;
  readonly value: number;
  readonly at: Point;
}
export interface RingExtreme {
  readonly kind: 'least' | 'greatest';
  readonly point: RingPoint;
  readonly label: Point;
  readonly anchor: 'start' | 'end' | 'middle';
}
/** The column of a trace that is drawn, and its place among all. */
export interface RingData {
  readonly column: TraceColumn;
  readonly index: number;
}
export interface RingLayout extends Laid {
  readonly title: Title;
  readonly centre: Point;
  readonly radius: number;
  readonly range: Range;
  readonly ticks: Ticks;
  readonly present: readonly RingPoint[];
  readonly baseline: readonly RingPoint[];
  readonly others: readonly { readonly order: number; readonly points: readonly RingPoint[] }[];
  readonly extremes: readonly RingExtreme[];
  readonly zones: readonly Zone[];
  /** Wind, flight and compass, where the angle is that of a lap. */
  readonly compass: Compass | undefined;
  /** Values of the trace without a number. */
  readonly missing: number;
  r(value: number): number;
  place(angle: number, radius: number): Point;
}

const MOST_RADIUS = 150;
const SIDE = 62;
/** Room above and below the ring for what stands at its four points. */
const EDGE = 22;
const RINGS = 4;
/** The least ring stands this far from the middle at least, so that there is room to read it. */
const HOLE = 0.18;

/** Reads one column of a trace against its first, which is an angle. */
export function readRing({ trace, cell }: TraceChartProps): RingData | string {
  const index = trace.columns.findIndex((each) => each.name === cell.up[0]);
  if (index < 1) return trace.message ?? `${trace.title} does not tell “${cell.up[0] ?? ''}”. Choose another.`;
  if (trace.present.length === 0) return trace.message ?? `${trace.title} has nothing to show for this design.`;
  return { column: trace.columns[index]!, index };
}

/** Lays a ring out: angle 0, straight downwind, at the top, running as the model flies seen from above, the value outward. */
export function layOutRing(
  { column, index }: RingData,
  props: TraceChartProps,
  width: number,
  before?: RingLayout,
): RingLayout {
  const { trace } = props;
  const read = (arrays: TraceAnswer['present'] | undefined): { angle: number; value: number }[] =>
    Array.from(arrays?.[0] ?? [], (angle, k) => ({ angle, value: fromSI(arrays![index]![k]!, column.unit) }));
  const present = read(trace.present);
  const baseline = read(trace.baseline);
  const others = (props.others ?? []).map((other) => read(other.trace));
  const numbers = [...present, ...baseline, ...others.flat()].map(({ value }) => value).filter(Number.isFinite);
  const zones = limitsOfColumn(column, props).filter(({ limit }) => Number.isFinite(limit));
  const high = Math.max(...numbers, ...zones.map(({ limit }) => limit));
  const low = Math.min(...numbers, ...zones.map(({ limit }) => limit));
  // A ring of what can't be negative shows its whole size: from nothing in the middle.
  const needed: Range = numbers.length === 0 ? [0, 1] : [low >= 0 ? 0 : low - HOLE * (high - low), high];
  const bare: Range = needed[1] > needed[0] ? needed : [needed[0] - 1, needed[1] + 1];
  const range = holdRange(bare, bare, props.moving ? before?.range : undefined);

  const { title, plotTop } = titleAt([titleWithUnit(column)], 0, width, EDGE + 6);
  const radius = Math.min(MOST_RADIUS, (width - 2 * SIDE) / 2);
  const centre = { x: width / 2, y: plotTop + radius };
  const r = linear(range, 0, radius);
  const compass = readCompass(trace);
  // As the model flies seen from above: with the compass or against it.
  const way = compass?.clockwise ? -1 : 1;
  const place = (angle: number, far: number): Point => ({
    x: centre.x - way * far * Math.sin(angle),
    y: centre.y - far * Math.cos(angle),
  });
  const drawn = (list: readonly { angle: number; value: number }[]): RingPoint[] =>
    list.flatMap((each) =>
      Number.isFinite(each.value + each.angle) ? [{ ...each, at: place(each.angle, Math.max(0, r(each.value))) }] : [],
    );
  const points = drawn(present);
  const ghosts = others
    .map((list, order) => ({ order, points: drawn(list) }))
    .filter((ghost) => ghost.points.length > 0);
  return {
    ...{ width, height: centre.y + radius + EDGE, panels: [], title, centre, radius, range, r, place, zones },
    ticks: roundTicks(range, RINGS),
    present: points,
    baseline: drawn(baseline),
    others: ghosts,
    variants: ghosts.map(({ order }) => order),
    extremes: extremesOf(points, centre, radius, place),
    compass,
    missing: present.length - points.length,
  };
}

/** Least and greatest value with their labels outside the outermost ring. */
function extremesOf(
  points: readonly RingPoint[],
  centre: Point,
  radius: number,
  place: RingLayout['place'],
): RingExtreme[] {
  if (points.length < 2) return [];
  const least = points.reduce((a, b) => (b.value < a.value ? b : a));
  const greatest = points.reduce((a, b) => (b.value > a.value ? b : a));
  if (least.value === greatest.value) return [];
  return (['greatest', 'least'] as const).map((kind) => {
    const point = kind === 'least' ? least : greatest;
    const out = place(point.angle, radius + 12);
    // The words stand beside the ring, clear of the figures of the angles at its four points.
    const right = out.x > centre.x + 1 || (Math.abs(out.x - centre.x) <= 1 && kind === 'least');
    const y = Math.min(Math.max(out.y, centre.y - radius + 16), centre.y + radius - 16);
    const apart = Math.abs(y - centre.y) < 16 ? y + 18 : y;
    const half = Math.sqrt(Math.max(0, (radius + 6) ** 2 - (apart - centre.y) ** 2));
    const label = { x: centre.x + (right ? half + 6 : -half - 6), y: apart };
    return { kind, point, label, anchor: right ? 'start' : 'end' };
  });
}
