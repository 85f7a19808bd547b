import {
  type Box,
  inside,
  LABEL_SIZE,
  lengthInside,
  overlaps,
  type Point,
  type Segment,
  segmentsOf,
  textWidth,
} from '../../drawing/index';
import type { Zone } from '../frame/limits';
import { WORD_LINE, type ZoneWords } from '../frame/zone-words';
import { type Field, fieldAt } from './isolines';

/** Places along a line that its figure may take, as shares, the best first. */
const ALONG: readonly number[] = [0.5, 0.35, 0.65, 0.22, 0.78, 0.1, 0.9];
/** Places for the words of a region, in each direction. */
const TRIES = 9;

/** Room of a figure that stands on its line. */
export const boxOf = ({ x, y }: Point, text: string): Box => {
  const half = textWidth(text, LABEL_SIZE) / 2 + 2;
  return { left: x - half, right: x + half, top: y - LABEL_SIZE / 2 - 2, bottom: y + LABEL_SIZE / 2 + 2 };
};

/** Where a figure stands on its line: on the longest piece, free of the other figures. */
export function labelOn(
  lines: readonly (readonly Point[])[],
  text: string,
  plot: Box,
  taken: readonly Box[],
  keepOff: readonly Segment[],
): Point | undefined {
  const longest = [...lines].sort((a, b) => lengthOf(b) - lengthOf(a));
  for (const line of longest.slice(0, 3)) {
    const total = lengthOf(line);
    if (total < 1.5 * textWidth(text, LABEL_SIZE)) return undefined;
    for (const share of ALONG) {
      const at = pointAlong(line, share * total);
      const box = boxOf(at, text);
      if (!inside(box, plot) || taken.some((other) => overlaps(other, box))) continue;
      if (keepOff.every((piece) => lengthInside(piece, box) === 0)) return at;
    }
  }
  return undefined;
}

const lengthOf = (line: readonly Point[]): number =>
  segmentsOf(line, false).reduce((sum, s) => sum + Math.hypot(s.x1 - s.x0, s.y1 - s.y0), 0);

function pointAlong(line: readonly Point[], at: number): Point {
  let left = at;
  for (const s of segmentsOf(line, false)) {
    const long = Math.hypot(s.x1 - s.x0, s.y1 - s.y0);
    if (long >= left && long > 0)
      return { x: s.x0 + (left / long) * (s.x1 - s.x0), y: s.y0 + (left / long) * (s.y1 - s.y0) };
    left -= long;
  }
  return line.at(-1)!;
}

/** A place where the words lie in what is forbidden, the most of it first; undefined where less than half of them would. */
export function regionWords(
  lines: string[],
  field: Field,
  zone: Zone,
  plot: Box,
  taken: readonly Box[],
): ZoneWords | undefined {
  const wide = Math.max(...lines.map((line) => textWidth(line, LABEL_SIZE))) + 4;
  const high = lines.length * WORD_LINE;
  let best: ZoneWords | undefined;
  let most = 0.5;
  for (let r = 0; r < TRIES; r++) {
    for (let c = 0; c < TRIES; c++) {
      const left = plot.left + 3 + ((plot.right - plot.left - 6 - wide) * c) / (TRIES - 1);
      const top = plot.top + 3 + ((plot.bottom - plot.top - 6 - high) * r) / (TRIES - 1);
      const box = { left, right: left + wide, top, bottom: top + high };
      if (left < plot.left || taken.some((other) => overlaps(other, box))) continue;
      const share = shareBeyond(box, field, zone);
      if (share > most + 1e-9) {
        most = share;
        best = { lines, box };
      }
    }
  }
  return best;
}

function shareBeyond({ left, right, top, bottom }: Box, field: Field, { limit, side }: Zone): number {
  let count = 0;
  for (const u of [0, 0.5, 1]) {
    for (const v of [0, 0.5, 1]) {
      const value = fieldAt(field, { x: left + u * (right - left), y: top + v * (bottom - top) });
      if (side === 'above' ? value > limit : value < limit) count++;
    }
  }
  return count / 9;
}
