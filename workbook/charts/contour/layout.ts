import { formatNumber } from '../../../engine/index';
import {
  type Box,
  inside,
  LABEL_SIZE,
  overlaps,
  type Point,
  segmentsOf,
  textWidth,
  wrapText,
} from '../../drawing/index';
import { extent } from '../frame/extent';
import type { Measure } from '../frame/family';
import { type Grid, gridValues } from '../frame/grid';
import { limitsOn } from '../frame/grid-limits';
import type { Zone } from '../frame/limits';
import type { SweepChartProps } from '../frame/props';
import { exact, linear } from '../frame/scales';
import { type DrawnSpot, type Marked, placeSpots, placesOf } from '../frame/spots';
import { roundTicks, type Ticks } from '../frame/ticks';
import { inSentence } from '../frame/words';
import type { Range } from '../frame/y-range';
import { WORD_LINE, type ZoneWords } from '../frame/zone-words';
import { beyond, type Field, fieldAt, isolines } from './isolines';

export interface DrawnLevel {
  readonly level: number;
  readonly text: string;
  readonly lines: readonly (readonly Point[])[];
  /** Middle of its figure on the line. */
  readonly label: Point | undefined;
}
/** What a check forbids of the picture. */
export interface DrawnRegion {
  readonly of: Measure;
  readonly zone: Zone;
  readonly outlines: readonly (readonly Point[])[];
  readonly edge: readonly (readonly Point[])[];
  readonly words: ZoneWords | undefined;
}
export interface ContourLayout {
  readonly width: number;
  readonly height: number;
  readonly head: readonly string[];
  readonly box: Box;
  readonly xRange: Range;
  readonly yRange: Range;
  readonly xTicks: Ticks;
  readonly yTicks: Ticks;
  readonly xTitle: Point;
  readonly levels: readonly DrawnLevel[];
  readonly regions: readonly DrawnRegion[];
  /** Designs without an answer. */
  readonly gaps: readonly Point[];
  readonly spots: readonly DrawnSpot[];
  readonly field: Field;
}

const LINE = LABEL_SIZE + 3;
const NARROW = 420;
const HEIGHT = 300;
const NARROW_HEIGHT = 250;
const X_AXIS = 18;
const X_TITLE = 17;
const LEVELS = 8;
/** Half a figure of the last tick stands beyond the plot. */
const RIGHT = 20;
/** Places along a line that its figure may take, as shares, the best first. */
const ALONG: readonly number[] = [0.5, 0.35, 0.65, 0.22, 0.78, 0.1, 0.9];
const WORDS_SHARE = 0.5;
/** Places for the words of a region, in each direction. */
const TRIES = 9;

/** Lays isolines of one result over two axes out. */
export function layOutContour(
  grid: Grid,
  props: SweepChartProps,
  width: number,
  before?: ContourLayout,
): ContourLayout {
  const { family, columns, rows } = grid;
  const panel = family.panels[0]!;
  const values = gridValues(grid, panel, props);
  const ends = (list: Grid['rows']): Range => {
    const shown = list.map((each) => exact(each.shown));
    const [low, high] = [Math.min(...shown), Math.max(...shown)];
    return high > low ? [low, high] : [low - 0.5, low + 0.5];
  };
  const xRange = ends(columns);
  const yRange = ends(rows);
  const plotHeight = width < NARROW ? NARROW_HEIGHT : HEIGHT;
  const yTicks = roundTicks(yRange, Math.round(plotHeight / 40));
  const left = Math.ceil(Math.max(...yTicks.values.map((t) => textWidth(yTicks.text(t), LABEL_SIZE)), 0)) + 11;
  const head = [
    ...wrapText(`Lines of equal ${inSentence(panel.title)}`, LABEL_SIZE, width - 4),
    ...wrapText(`Upward: ${inSentence(grid.along.title)}`, LABEL_SIZE, width - 4),
  ];
  const top = head.length * LINE + 8;
  const box: Box = { left, right: width - RIGHT, top, bottom: top + plotHeight };
  const x = linear(xRange, box.left, box.right);
  const y = linear(yRange, box.bottom, box.top);
  const field: Field = { x: columns.map((c) => x(c.shown)), y: rows.map((r) => y(r.shown)), values };

  const all = values.flat().filter(Number.isFinite);
  const span: Range = extent(all) ?? [0, 1];
  const ticks = span[1] > span[0] ? roundTicks(span, LEVELS) : { values: [], text: String };
  const taken: Box[] = [];
  const spotsTaken = [grid.now, grid.baseline].flatMap((spot) =>
    spot ? [around({ x: x(spot.x), y: y(spot.y) }, 8)] : [],
  );
  const levels = ticks.values.map((level): DrawnLevel => {
    const lines = isolines(field, level);
    const text = ticks.text(level);
    const label = labelOn(lines, text, box, [...taken, ...spotsTaken]);
    if (label) taken.push(boxOf(label, text));
    return { level, text, lines, label };
  });
  const regions = limitsOn(grid, props).flatMap(({ of, zone, values: own }): DrawnRegion[] => {
    const ownField = { ...field, values: own };
    const outlines = beyond(ownField, zone.limit, zone.side);
    if (outlines.length === 0) return [];
    const words = regionWords(
      wrapText(zone.reason, LABEL_SIZE, (box.right - box.left) * WORDS_SHARE),
      ownField,
      zone,
      box,
      [...taken, ...spotsTaken],
    );
    if (words) taken.push(words.box);
    return [{ of, zone, outlines, edge: isolines(ownField, zone.limit), words }];
  });
  const gaps = rows.flatMap((_, r) =>
    columns.flatMap((_c, c) => (Number.isNaN(values[r]![c]!) ? [{ x: field.x[c]!, y: field.y[r]! }] : [])),
  );
  const strokes = levels.flatMap(({ lines }) => lines.flatMap((line) => segmentsOf(line, false)));
  const marked: Marked[] = [];
  const mark = (kind: Marked['kind'], spot: Grid['now'], value: number | undefined): void => {
    if (!spot) return;
    const text = value === undefined ? kind : `${kind} ${formatNumber(value)}`;
    marked.push({ kind, at: { x: x(spot.x), y: y(spot.y) }, text });
  };
  mark('now', grid.now, panel.now?.y);
  mark('baseline', grid.baseline, panel.baseline?.y);
  const spots = placeSpots(marked, box, taken, strokes, placesOf(before?.spots));
  return {
    ...{
      width,
      height: box.bottom + X_AXIS + X_TITLE,
      head,
      box,
      xRange,
      yRange,
      yTicks,
      levels,
      regions,
      gaps,
      spots,
      field,
    },
    xTicks: roundTicks(xRange, Math.max(2, Math.round((box.right - box.left) / 70))),
    xTitle: { x: (box.left + box.right) / 2, y: box.bottom + X_AXIS + X_TITLE - 4 },
  };
}

const around = ({ x, y }: Point, r: number): Box => ({ left: x - r, right: x + r, top: y - r, bottom: y + r });

const boxOf = ({ x, y }: Point, text: string): Box => {
  const half = textWidth(text, LABEL_SIZE) / 2 + 2;
  return { left: x - half, right: x + half, top: y - LABEL_SIZE / 2 - 2, bottom: y + LABEL_SIZE / 2 + 2 };
};

/** Where a figure stands on its line: on the longest piece, free of the other figures. */
function labelOn(
  lines: readonly (readonly Point[])[],
  text: string,
  plot: Box,
  taken: readonly Box[],
): Point | undefined {
  const longest = [...lines].sort((a, b) => lengthOf(b) - lengthOf(a));
  for (const line of longest.slice(0, 3)) {
    const total = lengthOf(line);
    if (total < 1.5 * textWidth(text, LABEL_SIZE)) return undefined;
    for (const share of ALONG) {
      const at = pointAlong(line, share * total);
      const box = boxOf(at, text);
      if (inside(box, plot) && !taken.some((other) => overlaps(other, box))) return at;
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
function regionWords(
  lines: string[],
  field: Field,
  zone: Zone,
  plot: Box,
  taken: readonly Box[],
): ZoneWords | undefined {
  if (zone.reason === '') return undefined;
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
