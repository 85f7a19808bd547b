import { formatNumber } from '../../../engine/index';
import { type Box, LABEL_SIZE, type Point, segmentsOf, wrapText } from '../../drawing/index';
import { extent } from '../frame/extent';
import { type Grid, type GridLine, gridValues } from '../frame/grid';
import { limitsOn } from '../frame/grid-limits';
import { namedLimitWords, type Zone } from '../frame/limits';
import type { Measure } from '../frame/measure';
import {
  type DrawnPanel,
  type Heights,
  type Laid,
  leftRoom,
  plotHeight,
  ticksAcross,
  ticksUp,
  titleAt,
  underAxis,
} from '../frame/panels';
import type { SweepChartProps } from '../frame/props';
import { exact, linear } from '../frame/scales';
import { around, type Marked, placeSpots, placesOf, variantText } from '../frame/spots';
import { roundTicks } from '../frame/ticks';
import { inSentence } from '../frame/words';
import type { Range } from '../frame/y-range';
import type { ZoneWords } from '../frame/zone-words';
import { beyond, type Field, isolines } from './isolines';
import { boxOf, labelOn, regionWords } from './labels';

interface DrawnLevel {
  readonly level: number;
  readonly text: string;
  readonly lines: readonly (readonly Point[])[];
  /** Middle of its figure on the line. */
  readonly label: Point | undefined;
}
/** What a check forbids of the picture. */
interface DrawnRegion {
  readonly of: Measure;
  readonly zone: Zone;
  readonly outlines: readonly (readonly Point[])[];
  readonly edge: readonly (readonly Point[])[];
  readonly words: ZoneWords | undefined;
}
export interface ContourPanel extends DrawnPanel {
  readonly levels: readonly DrawnLevel[];
  readonly regions: readonly DrawnRegion[];
  /** Designs without an answer. */
  readonly gaps: readonly Point[];
  readonly field: Field;
}
export type ContourLayout = Laid<ContourPanel>;

const HEIGHTS: Heights = { wide: [300], narrow: [250] };
const TICK_EVERY = 40;
const LEVELS = 8;
/** Half a figure of the last tick stands beyond the plot. */
const RIGHT = 20;
const WORDS_SHARE = 0.5;

/** Lays isolines of one result over two axes out. */
export function layOutContour(
  grid: Grid,
  props: SweepChartProps,
  width: number,
  before?: ContourLayout,
): ContourLayout {
  const { family, columns, rows } = grid;
  const result = family.panels[0]!;
  const values = gridValues(grid, result, props);
  const xRange = endsOf(columns);
  const yRange = endsOf(rows);
  const height = plotHeight(HEIGHTS, width, 1);
  const yTicks = ticksUp(yRange, height, TICK_EVERY);
  const head = [`Lines of equal ${inSentence(result.title)}`, `Upward: ${inSentence(grid.along.title)}`];
  const { title, plotTop } = titleAt(head, 0, width);
  const box: Box = { left: leftRoom([yTicks]), right: width - RIGHT, top: plotTop, bottom: plotTop + height };
  const x = linear(xRange, box.left, box.right);
  const y = linear(yRange, box.bottom, box.top);
  const field: Field = { x: columns.map((c) => x(c.shown)), y: rows.map((r) => y(r.shown)), values };

  const span: Range = extent(values.flat()) ?? [0, 1];
  const ticks = span[1] > span[0] ? roundTicks(span, LEVELS) : { values: [], text: String };
  const taken: Box[] = [];
  const marks = [grid.now, grid.baseline, ...grid.others].flatMap((spot) =>
    spot ? [around({ x: x(spot.x), y: y(spot.y) }, MARK)] : [],
  );
  const limits = limitsOn(grid, props).flatMap(({ of, zone, values: own }) => {
    const ownField = { ...field, values: own };
    const outlines = beyond(ownField, zone.limit, zone.side);
    return outlines.length === 0 ? [] : [{ of, zone, ownField, outlines, edge: isolines(ownField, zone.limit) }];
  });
  const edges = limits.flatMap(({ edge }) => edge.flatMap((line) => segmentsOf(line, false)));
  const levels = ticks.values.map((level): DrawnLevel => {
    const lines = isolines(field, level);
    const text = ticks.text(level);
    const label = labelOn(lines, text, box, [...taken, ...marks], edges);
    if (label) taken.push(boxOf(label, text));
    return { level, text, lines, label };
  });
  const regions = limits.map(({ ownField, ...limit }): DrawnRegion => {
    const { zone } = limit;
    const lines = wrapText(namedLimitWords(zone), LABEL_SIZE, (box.right - box.left) * WORDS_SHARE);
    const words = regionWords(lines, ownField, zone, box, [...taken, ...marks]);
    if (words) taken.push(words.box);
    return { ...limit, words };
  });
  const gaps = rows.flatMap((_, r) =>
    columns.flatMap((_c, c) => (Number.isNaN(values[r]![c]!) ? [{ x: field.x[c]!, y: field.y[r]! }] : [])),
  );
  const strokes = levels.flatMap(({ lines }) => lines.flatMap((line) => segmentsOf(line, false)));
  const marked = (['now', 'baseline'] as const).flatMap((kind): Marked[] => {
    const spot = grid[kind];
    const value = result[kind]?.y;
    const text = value === undefined ? kind : `${kind} ${formatNumber(value)}`;
    return spot ? [{ kind, at: { x: x(spot.x), y: y(spot.y) }, text }] : [];
  });
  for (const [order, { name, spot }] of result.others.entries()) {
    const at = grid.others[order];
    if (spot && at)
      marked.push({ kind: 'variant', order, at: { x: x(at.x), y: y(at.y) }, text: variantText(name, spot.y) });
  }
  const panel: ContourPanel = {
    ...{ key: result.path, title, box, zones: [], outside: [], levels, regions, gaps, field },
    across: { range: xRange, ticks: ticksAcross(xRange, box), grid: true },
    up: { range: yRange, ticks: yTicks, grid: true },
    spots: placeSpots(marked, box, taken, strokes, placesOf(before?.panels[0]?.spots)),
  };
  return { width, ...underAxis(family.across.title, box), panels: [panel] };
}

/** Room of the mark of a design. */
const MARK = 8;

function endsOf(list: readonly GridLine[]): Range {
  const [low, high] = extent(list.map((each) => exact(each.shown))) ?? [0, 0];
  return high > low ? [low, high] : [low - 0.5, low + 0.5];
}
