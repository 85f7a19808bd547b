import { type Box, LABEL_SIZE, type Point, type Segment, segmentsOf, textWidth, wrapText } from '../../drawing/index';
import { END_GAP, type EndLabel, type NamedEnd, placeEarlyNames, placeEndLabels } from '../frame/end-labels';
import { extent } from '../frame/extent';
import type { Family, Spot } from '../frame/family';
import { holdRange } from '../frame/hold-range';
import type { Zone } from '../frame/limits';
import { type LineStyle, lineStyle } from '../frame/palette';
import { type Plot, type PlotLine, type PlotPanel, plotOf } from '../frame/plot';
import type { SweepChartProps } from '../frame/props';
import { exact, linear } from '../frame/scales';
import { type DrawnSpot, NOW_RADIUS, placeSpots, placesOf } from '../frame/spots';
import { optionTicks, roundTicks, type Ticks } from '../frame/ticks';
import { type Range, yRange } from '../frame/y-range';
import { placeWords, wordsHeight, type ZoneWords } from '../frame/zone-words';

export interface DrawnLine {
  readonly line: PlotLine;
  readonly style: LineStyle;
  /** The same in pixels. */
  readonly placed: readonly Point[];
}
export interface DrawnZone {
  readonly zone: Zone;
  readonly words: ZoneWords | undefined;
}
export interface DrawnPanel {
  readonly panel: PlotPanel;
  readonly titleLines: readonly string[];
  readonly titleTop: number;
  /** The plot itself, inside its axes. */
  readonly box: Box;
  readonly range: Range;
  readonly ticks: Ticks;
  readonly lines: readonly DrawnLine[];
  /** The baseline's lines in pixels. */
  readonly ghosts: readonly (readonly Point[])[];
  readonly zones: readonly DrawnZone[];
  /** Limits too far off to be in the picture. */
  readonly outside: readonly Zone[];
  readonly ends: readonly EndLabel[];
  readonly spots: readonly DrawnSpot[];
  /** Pixel of a number on the panel's own axis. */
  y(value: number): number;
}
export interface ChartLayout {
  readonly width: number;
  readonly height: number;
  readonly xRange: Range;
  readonly xTicks: Ticks;
  readonly xTitle: { readonly text: string; readonly at: Point };
  readonly panels: readonly DrawnPanel[];
  x(value: number): number;
}

export const TITLE_LINE = LABEL_SIZE + 3;
/** Between a title and the plot: half a figure of the uppermost tick stands in it. */
const TITLE_GAP = 8;
const TICK_ROOM = 9;
const NO_RANGE: Range = [0, 1];
const X_AXIS = 18;
const X_TITLE = 17;
const PANEL_GAP = 14;
const NARROW = 420;
/** Heights of the plots by their number, on a wide and on a narrow place. */
const HEIGHTS: readonly number[] = [215, 150, 125];
const NARROW_HEIGHTS: readonly number[] = [190, 140, 120];
const WORDS_SHARE = 0.68;
const WORDS_MOST = 0.92;
/** Room that the figures of the upright axis take before they are known. */
const ROOM_LEFT = 38;
const END_SHARE = 0.24;
const LEAST_END = 64;

/** A line that breaks off further than this before the edge, in pixels, has its name in the plot. */
const EARLY = 12;

const around = (p: Point): Box => ({
  left: p.x - NOW_RADIUS,
  right: p.x + NOW_RADIUS,
  top: p.y - NOW_RADIUS,
  bottom: p.y + NOW_RADIUS,
});

/** Words for a zone on two lines that leave room beside them, else on lines as wide as the plot. */
function zoneLines(reason: string, plotWidth: number): string[] {
  const short = wrapText(reason, LABEL_SIZE, plotWidth * WORDS_SHARE);
  return short.length <= 2 ? short : wrapText(reason, LABEL_SIZE, plotWidth * WORDS_MOST);
}

/** Lays the chart of a sweep out. */
export const layOutChart = (family: Family, props: SweepChartProps, width: number, before?: ChartLayout): ChartLayout =>
  layOutPlot(plotOf(family, props), width, props.moving, before);

/** Where a line ends: its answered point furthest to the right. */
const endOf = ({ points }: PlotLine): Spot | undefined =>
  points.reduce<Spot | undefined>(
    (best, each) => (Number.isFinite(each.x + each.y) && !(best && best.x > each.x) ? each : best),
    undefined,
  );

/** Lays lines out: everything that is on them, in pixels. `before` keeps the words beside moving marks on their side. */
export function layOutPlot(plot: Plot, width: number, moving?: boolean, before?: ChartLayout): ChartLayout {
  const [least, greatest] = extent(plot.across.filter(Number.isFinite)) ?? [0, 0];
  const [xLow, xHigh] = [exact(least), exact(greatest)];
  const xRange: Range = xHigh > xLow ? [xLow, xHigh] : [xLow - 0.5, xHigh + 0.5];
  const heights = width < NARROW ? NARROW_HEIGHTS : HEIGHTS;
  const plotHeight = heights[Math.min(plot.panels.length, heights.length) - 1]!;

  const endWidth = Math.max(LEAST_END, width * END_SHARE);
  const names = plot.panels.map(({ lines }) =>
    lines.map((line) => (line.label === '' ? [] : wrapText(line.label, LABEL_SIZE, endWidth))),
  );
  const widestName = Math.max(0, ...names.flat(2).map((text) => textWidth(text, LABEL_SIZE)));
  const right = width - (widestName > 0 ? END_GAP + widestName + 2 : 14);

  const drafts = plot.panels.map((panel, n) => {
    const { zones } = panel;
    const lines = panel.lines.map((line, k) => ({ line, style: lineStyle(k) }));
    const words = new Map<Zone, string[]>();
    for (const zone of zones) words.set(zone, zoneLines(zone.reason, right - ROOM_LEFT));
    const numbers = [
      ...[...panel.lines.map((line) => line.points), ...panel.ghosts].flatMap((points) => points.map((p) => p.y)),
      ...panel.marks.map(({ at }) => at.y),
    ];
    const ranged = yRange(numbers, zones, (zone) => wordsHeight(words.get(zone)!.length) / plotHeight);
    const { shown, outside } = ranged ?? { shown: [], outside: zones };
    const held = moving ? before?.panels[n]?.range : undefined;
    const range = ranged ? holdRange(ranged.range, ranged.needed, held) : NO_RANGE;
    const ticks = ranged ? roundTicks(range, Math.max(3, Math.round(plotHeight / 32))) : { values: [], text: String };
    return { panel, lines, words, range, shown, outside, ticks };
  });
  const widestTick = Math.max(
    0,
    ...drafts.flatMap((d) => d.ticks.values.map((t) => textWidth(d.ticks.text(t), LABEL_SIZE))),
  );
  const left = Math.ceil(TICK_ROOM + widestTick + 2);
  const x = linear(xRange, left, right);

  let top = 0;
  const panels = drafts.map((draft, n): DrawnPanel => {
    const { panel, lines, words, range, shown, outside, ticks } = draft;
    const titleLines = wrapText(panel.title, LABEL_SIZE, width - 4);
    const titleTop = top;
    const box: Box = { left, right, top: top + titleLines.length * TITLE_LINE + TITLE_GAP, bottom: 0 };
    const field = { ...box, bottom: box.top + plotHeight };
    top = field.bottom + PANEL_GAP;
    const y = linear(range, field.bottom, field.top);
    const place = (s: Spot): Point => ({ x: x(s.x), y: y(s.y) });
    const drawn = lines.map((l): DrawnLine => ({ ...l, placed: l.line.points.map(place) }));
    const ghosts = panel.ghosts.map((ghost) => ghost.map(place));
    const strokes = [...drawn.map((l) => l.placed), ...ghosts].flatMap(strokesOf);

    const zones: DrawnZone[] = [];
    const taken: Box[] = [];
    for (const zone of shown) {
      const edge = y(zone.limit);
      const area = zone.side === 'below' ? { ...field, top: edge } : { ...field, bottom: edge };
      const near = zone.side === 'below' ? 'top' : 'bottom';
      const placed = placeWords(words.get(zone)!, area, near, strokes, taken);
      if (placed) taken.push(placed.box);
      zones.push({ zone, words: placed });
    }
    const limits = shown.map((z): Segment => ({ x0: left, x1: right, y0: y(z.limit), y1: y(z.limit) }));
    const ends = lines.flatMap((l, k): NamedEnd[] => {
      const last = endOf(l.line);
      if (!last || names[n]![k]!.length === 0) return [];
      return [{ key: l.line.key, lines: names[n]![k]!, colour: l.style.text, end: { x: x(last.x), y: y(last.y) } }];
    });
    const early = ends.filter(({ end }) => right - end.x > EARLY);
    const places = placesOf(before?.panels[n]?.spots);
    const marked = panel.marks.map((mark) => ({ ...mark, at: place(mark.at) }));
    const spots = placeSpots(marked, field, taken, [...strokes, ...limits], places);
    const labelled = spots.flatMap((s) => [around(s.at), ...(s.label ? [s.label.box] : [])]);
    const inPlot = placeEarlyNames(early, field, [...taken, ...labelled], [...strokes, ...limits]);
    const atEdge = ends.filter((end) => !early.includes(end) || inPlot.left.includes(end));
    return {
      panel,
      titleLines,
      titleTop,
      box: field,
      range,
      ticks,
      lines: drawn,
      ghosts,
      zones,
      outside,
      ends: [...placeEndLabels(atEdge, right, field.top, field.bottom), ...inPlot.placed],
      spots,
      y,
    };
  });

  const bottom = panels.at(-1)!.box.bottom;
  return {
    width,
    height: bottom + X_AXIS + X_TITLE,
    xRange,
    xTicks: plot.options
      ? optionTicks(plot.options.names, plot.options.indices)
      : roundTicks(xRange, Math.max(2, Math.round((right - left) / 70))),
    xTitle: { text: plot.acrossTitle, at: { x: (left + right) / 2, y: bottom + X_AXIS + X_TITLE - 4 } },
    panels,
    x,
  };
}

/** Pieces of a line between neighbouring points that both have an answer. */
const strokesOf = (placed: readonly Point[]): Segment[] =>
  segmentsOf(placed, false).filter((s) => !Number.isNaN(s.y0 + s.y1));
