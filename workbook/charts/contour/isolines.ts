import type { Point } from '../../drawing/index';

/** A result over a grid of pixels: values[row][column], NaN where there is none. */
export interface Field {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly values: readonly (readonly number[])[];
}

interface Piece {
  readonly ends: readonly [number, number];
}

/**
 * Lines of one level through a field, straight from edge to edge of its cells (marching squares). A cell with a missing
 * corner has none; where two corners across from each other stand out, the mean of the four says which of them are joined.
 */
export function isolines({ x, y, values }: Field, level: number): Point[][] {
  const wide = x.length;
  const points = new Map<number, Point>();
  const pieces: Piece[] = [];
  // Edges have numbers of their own, so that neighbouring cells meet in the same point: even along a row, odd along a column.
  const flat = (row: number, column: number): number => edge(2 * (row * wide + column), row, column, row, column + 1);
  const steep = (row: number, column: number): number =>
    edge(2 * (row * wide + column) + 1, row, column, row + 1, column);
  const edge = (key: number, r0: number, c0: number, r1: number, c1: number): number => {
    if (!points.has(key)) {
      const a = values[r0]![c0]!;
      const share = (level - a) / (values[r1]![c1]! - a);
      points.set(key, { x: x[c0]! + share * (x[c1]! - x[c0]!), y: y[r0]! + share * (y[r1]! - y[r0]!) });
    }
    return key;
  };
  for (let r = 0; r + 1 < y.length; r++) {
    for (let c = 0; c + 1 < wide; c++) {
      const corners = [values[r]![c]!, values[r]![c + 1]!, values[r + 1]![c + 1]!, values[r + 1]![c]!];
      if (corners.some(Number.isNaN)) continue;
      const above = corners.map((value) => value >= level);
      const sides = [() => flat(r, c), () => steep(r, c + 1), () => flat(r + 1, c), () => steep(r, c)];
      const crossed = sides.filter((_, k) => above[k] !== above[(k + 1) % 4]).map((side) => side());
      if (crossed.length === 2) pieces.push({ ends: [crossed[0]!, crossed[1]!] });
      if (crossed.length === 4) {
        const mean = corners.reduce((a, b) => a + b, 0) / 4 >= level;
        const [s0, s1, s2, s3] = crossed as [number, number, number, number];
        const firstAlone = mean !== above[0];
        pieces.push({ ends: firstAlone ? [s0, s3] : [s0, s1] }, { ends: firstAlone ? [s1, s2] : [s2, s3] });
      }
    }
  }
  return joined(pieces).map((keys) => keys.map((key) => points.get(key)!));
}

/** Pieces that share an end, in one line each. */
function joined(pieces: readonly Piece[]): number[][] {
  const at = new Map<number, Set<Piece>>();
  for (const piece of pieces) {
    for (const end of piece.ends) at.set(end, (at.get(end) ?? new Set()).add(piece));
  }
  const left = new Set(pieces);
  const lengthen = (line: number[]): void => {
    for (;;) {
      const end = line.at(-1)!;
      const next = [...(at.get(end) ?? [])].find((piece) => left.has(piece));
      if (!next) return;
      left.delete(next);
      line.push(next.ends[0] === end ? next.ends[1] : next.ends[0]);
    }
  };
  const lines: number[][] = [];
  for (const piece of pieces) {
    if (!left.delete(piece)) continue;
    const line = [...piece.ends];
    lengthen(line);
    line.reverse();
    lengthen(line);
    lines.push(line);
  }
  return lines;
}

/** Outlines of the parts of the cells where the field lies beyond a level. */
export function beyond({ x, y, values }: Field, level: number, side: 'below' | 'above'): Point[][] {
  const outlines: Point[][] = [];
  const depth = (value: number): number => (side === 'above' ? value - level : level - value);
  for (let r = 0; r + 1 < y.length; r++) {
    for (let c = 0; c + 1 < x.length; c++) {
      const corners = [
        { x: x[c]!, y: y[r]!, d: depth(values[r]![c]!) },
        { x: x[c + 1]!, y: y[r]!, d: depth(values[r]![c + 1]!) },
        { x: x[c + 1]!, y: y[r + 1]!, d: depth(values[r + 1]![c + 1]!) },
        { x: x[c]!, y: y[r + 1]!, d: depth(values[r + 1]![c]!) },
      ];
      if (corners.some(({ d }) => Number.isNaN(d))) continue;
      const outline: Point[] = [];
      for (const [k, a] of corners.entries()) {
        const b = corners[(k + 1) % 4]!;
        if (a.d >= 0) outline.push({ x: a.x, y: a.y });
        if (a.d >= 0 === b.d >= 0) continue;
        const share = a.d / (a.d - b.d);
        outline.push({ x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) });
      }
      if (outline.length > 2) outlines.push(outline);
    }
  }
  return outlines;
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
  for (let k = 0; k + 1 < list.length; k++) if ((at - list[k]!) * (at - list[k + 1]!) <= 0) return k;
  return -1;
}
