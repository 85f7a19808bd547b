import { type Box, LABEL_SIZE, lengthInside, overlaps, type Segment, textWidth } from '../../drawing/index';

/** The reason of a limit, written into its hatched zone. */
export interface ZoneWords {
  readonly lines: readonly string[];
  readonly box: Box;
}

export const WORD_LINE = LABEL_SIZE + 2;
const INSET = 5;
const COLUMNS: readonly number[] = [0, 0.25, 0.5, 0.75, 1];
const ROWS: readonly number[] = [0, 0.5, 1];
/** Against one pixel of covered line: a step along the zone, and a step away from its limit. */
const COLUMN_COST = 4;
const ROW_COST = 6;

/** Height that the words need inside their zone. */
export const wordsHeight = (lines: number): number => lines * WORD_LINE + 2 * INSET;

/** Finds the place in the zone where the words cover least of the lines; undefined when no place is free of other words. */
export function placeWords(
  lines: readonly string[],
  zone: Box,
  nearLimit: 'top' | 'bottom',
  strokes: readonly Segment[],
  taken: readonly Box[],
): ZoneWords | undefined {
  const width = Math.max(...lines.map((line) => textWidth(line, LABEL_SIZE))) + 4;
  const height = lines.length * WORD_LINE;
  const spareX = zone.right - zone.left - 2 * INSET - width;
  const spareY = zone.bottom - zone.top - INSET - height;
  if (spareX < 0 || spareY < 0) return undefined;
  let best: ZoneWords | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const [r, row] of ROWS.entries()) {
    const away = INSET / 2 + row * spareY;
    const top = nearLimit === 'top' ? zone.top + away : zone.bottom - away - height;
    for (const [c, column] of COLUMNS.entries()) {
      const left = zone.left + INSET + column * spareX;
      const box = { left, right: left + width, top, bottom: top + height };
      if (taken.some((t) => overlaps(t, box))) continue;
      let cost = r * ROW_COST + c * COLUMN_COST;
      for (const s of strokes) cost += lengthInside(s, box);
      if (cost < least) {
        least = cost;
        best = { lines, box };
      }
    }
  }
  return best;
}
