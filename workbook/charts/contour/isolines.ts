import { bisector } from 'd3-array';
import { contours } from 'd3-contour';
import type { Point } from '../../drawing/index';

/** A result over a grid of pixels: values[row][column], NaN where there is none. */
export interface Field {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly values: readonly (readonly number[])[];
}

/** A place by columns and rows: (0, 0) is the first value, (0.5, 0) between it and its neighbour in the row. */
type Place = readonly [column: number, row: number];

/** Outlines of what lies at a level or above it, half way between values; the first place comes again at the end. */
function outlines({ x, y, values }: Field, level: number): Place[][] {
  const areas = contours().size([x.length, y.length]).smooth(false);
  // The module counts from the corner of a pixel whose middle has the value. What is missing is nowhere above.
  return areas
    .contour(values.flat(), level)
    .coordinates.flatMap((rings) => rings.map((ring) => ring.map(([c, r]): Place => [c! - 0.5, r! - 0.5])));
}

/** Where the level is passed between two neighbouring values; beside a gap and at the edge of the field at the value that there is. */
function crossing({ x, y, values }: Field, level: number, [column, row]: Place): Point {
  const [c0, r0, c1, r1] = [Math.floor(column), Math.floor(row), Math.ceil(column), Math.ceil(row)];
  const [a, b] = [values[r0]?.[c0], values[r1]?.[c1]];
  const is = (value: number | undefined): value is number => value !== undefined && !Number.isNaN(value);
  const share = is(a) && is(b) ? (level - a) / (b - a) : is(a) ? 0 : 1;
  const along = (list: readonly number[], k0: number, k1: number): number => {
    const [from, to] = [list[k0] ?? list[k1]!, list[k1] ?? list[k0]!];
    return from + share * (to - from);
  };
  return { x: along(x, c0, c1), y: along(y, r0, r1) };
}

/** Whether a piece of an outline runs within a cell whose four corners all have a value. */
function within({ values }: Field, a: Place, b: Place): boolean {
  const c = Math.floor((a[0] + b[0]) / 2);
  const r = Math.floor((a[1] + b[1]) / 2);
  const corners = [values[r]?.[c], values[r]?.[c + 1], values[r + 1]?.[c], values[r + 1]?.[c + 1]];
  return corners.every((value) => value !== undefined && !Number.isNaN(value));
}

/** Lines of one level through a field: outlines without what runs along the edge of the field or beside a gap. */
export const isolines = (field: Field, level: number): Point[][] =>
  outlines(field, level).flatMap((ring) => {
    const lines: Place[][] = [];
    let line: Place[] = [];
    for (const [k, place] of ring.entries()) {
      if (k > 0 && !within(field, ring[k - 1]!, place)) {
        lines.push(line);
        line = [];
      }
      line.push(place);
    }
    // An outline begins anywhere: where it is broken, its end and its beginning are one line.
    const [first] = lines;
    if (first) lines[0] = [...line, ...first.slice(1)];
    else lines.push(line);
    return lines
      .filter(({ length }) => length > 1)
      .map((places) => places.map((place) => crossing(field, level, place)));
  });

/** Outlines of where a field lies beyond a level; a hole runs the other way round. */
export function beyond({ x, y, values }: Field, level: number, side: 'below' | 'above'): Point[][] {
  const sign = side === 'above' ? 1 : -1;
  const field = { x, y, values: values.map((row) => row.map((value) => sign * value)) };
  return outlines(field, sign * level).map((ring) => ring.map((place) => crossing(field, sign * level, place)));
}

/** Value of the field at a place, straight between the four corners around it; NaN outside and beside a gap. */
export function fieldAt({ x, y, values }: Field, at: Point): number {
  const c = interval(x, at.x);
  const r = interval(y, at.y);
  if (c < 0 || r < 0) return Number.NaN;
  const u = (at.x - x[c]!) / (x[c + 1]! - x[c]!);
  const v = (at.y - y[r]!) / (y[r + 1]! - y[r]!);
  const row = (k: number): number => values[k]![c]! * (1 - u) + values[k]![c + 1]! * u;
  return row(r) * (1 - v) + row(r + 1) * v;
}

/** Which interval of a rising or falling list holds a number. */
function interval(list: readonly number[], at: number): number {
  const way = list[0]! <= list.at(-1)! ? 1 : -1;
  const k = bisector((each: number) => way * each).left(list, way * at);
  if (k === 0) return list[0] === at && list.length > 1 ? 0 : -1;
  return k < list.length ? k - 1 : -1;
}
