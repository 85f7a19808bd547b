import { type Arranged, boxOf } from './arrange';
import type { PaperMark } from './marks';

export const PAPERS = {
  a4: { title: 'A4', width: 210, height: 297 },
  letter: { title: 'Letter', width: 215.9, height: 279.4 },
} as const;
export type Paper = keyof typeof PAPERS;

/** What a printer leaves white at the edges, room for title and check bar at the foot, and how far tiles lie over each other, mm. */
export const MARGIN = 10;
export const FOOT = 24;
export const OVERLAP = 10;

/** One page: the part of a template within its frame. */
export interface Tile {
  readonly row: number;
  readonly column: number;
  /** Of the template, at the left top of the frame, mm. */
  readonly from: readonly [x: number, y: number];
}

export interface Tiling {
  /** Of the page, mm. */
  readonly page: readonly [width: number, height: number];
  /** Of the frame in it. */
  readonly frame: readonly [width: number, height: number];
  readonly rows: number;
  readonly columns: number;
  /** Those that have something on them. */
  readonly tiles: readonly Tile[];
}

/** Over how many pages a template goes, on paper upright or on its side, whichever takes fewer. */
export function tile(arranged: Arranged, paper: Paper): Tiling {
  const { width, height } = PAPERS[paper];
  const upright = tileOn(arranged, [width, height]);
  const lying = tileOn(arranged, [height, width]);
  return lying.tiles.length < upright.tiles.length ? lying : upright;
}

function tileOn({ width, height, marks }: Arranged, page: Tiling['page']): Tiling {
  const frame = [page[0] - 2 * MARGIN, page[1] - 2 * MARGIN - FOOT] as const;
  const count = (size: number, room: number): number =>
    size <= room ? 1 : 1 + Math.ceil((size - room) / (room - OVERLAP));
  const [columns, rows] = [count(width, frame[0]), count(height, frame[1])];
  const tiles: Tile[] = [];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const from = [column * (frame[0] - OVERLAP), row * (frame[1] - OVERLAP)] as const;
      if (marks.some((mark) => touches(mark, from, frame))) tiles.push({ row, column, from });
    }
  }
  return { page, frame, rows, columns, tiles };
}

/** Whether something of a mark lies in a frame. */
function touches(mark: PaperMark, [x, y]: Tile['from'], [width, height]: Tiling['frame']): boolean {
  const box = boxOf([mark]);
  if (box.right < x || box.left > x + width || box.bottom < y || box.top > y + height) return false;
  if (mark.is === 'hole' || mark.is === 'words') return true;
  const points = mark.closed ? [...mark.points, mark.points[0]!] : mark.points;
  return points.slice(1).some((to, k) => crosses(points[k]!, to, [x, y, x + width, y + height]));
}

type Corners = readonly [left: number, top: number, right: number, bottom: number];
type Point = readonly [number, number];

/** Whether a line runs through a box. Source: Y.-D. Liang, B. A. Barsky, ACM Transactions on Graphics 3 (1984), from memory. */
function crosses([x0, y0]: Point, [x1, y1]: Point, [left, top, right, bottom]: Corners): boolean {
  let [first, last] = [0, 1];
  for (const [step, room] of [
    [x0 - x1, x0 - left],
    [x1 - x0, right - x0],
    [y0 - y1, y0 - top],
    [y1 - y0, bottom - y0],
  ] as const) {
    if (step === 0 && room < 0) return false;
    if (step < 0) first = Math.max(first, room / step);
    if (step > 0) last = Math.min(last, room / step);
  }
  return first <= last;
}
