import { type Box, LABEL_SIZE, type Point, placeLabels, type Segment, textWidth } from '../../drawing/index';
import { spread } from '../frame/spread';

/** A line's name beside its end. */
export interface EndLabel {
  readonly key: string;
  readonly lines: readonly string[];
  /** Left end of the middle of the label. */
  readonly at: Point;
  readonly colour: string;
  readonly leader?: Segment;
}
export interface NamedEnd {
  readonly key: string;
  readonly lines: readonly string[];
  readonly colour: string;
  readonly end: Point;
}

const LINE = LABEL_SIZE + 1;
const GAP = 2;
/** From the plot's edge to the words. */
export const END_GAP = 9;
/** A label further from its line's end than this, in pixels, is joined to it by a leader. */
const NEAR = 3;

/** Sets the names in one column right of the plot, each as near to its line's end as its neighbours allow. */
export function placeEndLabels(ends: readonly NamedEnd[], edge: number, top: number, bottom: number): EndLabel[] {
  const middles = spread(
    ends.map(({ end, lines }) => ({ at: end.y, size: lines.length * LINE + GAP })),
    top - LINE / 2,
    bottom + LINE / 2,
  );
  return ends.map(({ key, lines, colour, end }, k) => {
    const at = { x: edge + END_GAP, y: middles[k]! };
    const apart = Math.abs(at.y - end.y) > NEAR || edge - end.x > NEAR;
    const label = { key, lines, colour, at };
    return apart ? { ...label, leader: { x0: end.x + 2, y0: end.y, x1: at.x - 2, y1: at.y } } : label;
  });
}

export const endLineHeight = LINE;

/** Names of lines that break off inside the plot, each beside its last point; those without room come back to be set at the edge. */
export function placeEarlyNames(
  ends: readonly NamedEnd[],
  plot: Box,
  taken: readonly Box[],
  strokes: readonly Segment[],
): { placed: EndLabel[]; left: NamedEnd[] } {
  const found = placeLabels(
    ends.map(({ key, lines, end }) => ({
      key,
      at: end,
      settings: [
        { width: Math.max(...lines.map((line) => textWidth(line, LABEL_SIZE))) + 4, height: lines.length * LINE + GAP },
      ],
      clear: 1,
    })),
    { frame: plot, taken, strokes },
  );
  const placed: EndLabel[] = [];
  const left: NamedEnd[] = [];
  for (const end of ends) {
    const label = found.find((f) => f.key === end.key);
    if (!label) {
      left.push(end);
      continue;
    }
    const { box, leader } = label;
    const { key, lines, colour } = end;
    const at = { x: box.left + 2, y: (box.top + box.bottom) / 2 };
    placed.push(leader ? { key, lines, colour, at, leader } : { key, lines, colour, at });
  }
  return { placed, left };
}
