import { type Box, LABEL_SIZE, type Point, type Segment, segmentsOf, textWidth, wrapText } from '../drawing/index';
import { END_GAP, type EndLabel, type NamedEnd, placeEarlyNames, placeEndLabels } from './end-labels';
import { type Family, type FamilyLine, linePoints, type Panel, type Spot } from './family';
import { holdRange } from './hold-range';
import { type Zone, zonesOf } from './limits';
import { type LineStyle, lineStyle } from './palette';
import type { SweepChartProps } from './props';
import { exact, linear } from './scales';
import { type DrawnSpot, markedOn, NOW_RADIUS, placeSpots, placesOf } from './spots';
import { optionTicks, roundTicks, type Ticks } from './ticks';
import { type Range, yRange } from './y-range';
import { placeWords, wordsHeight, type ZoneWords } from './zone-words';

export interface DrawnLine {
  readonly line: FamilyLine;
  readonly style: LineStyle;
  readonly points: readonly Spot[];
  /** The same in pixels. */
  readonly placed: readonly Point[];
}
export interface DrawnZone {
  readonly zone: Zone;
  readonly words: ZoneWords | undefined;
}
export interface DrawnPanel {
  readonly panel: Panel;
  readonly titleLines: readonly string[];
  readonly titleTop: number;
  /** The plot itself, inside its axes. */
  readonly box: Box;
  readonly range: Range;
  readonly ticks: Ticks;
  readonly lines: readonly DrawnLine[];
  /** The baseline's line in pixels. */
  readonly ghost: readonly Point[];
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

/** Lays a chart of lines out: everything that is on it, in pixels. `before` keeps the words beside moving marks on their side. */
export function layOutChart(family: Family, props: SweepChartProps, width: number, before?: ChartLayout): ChartLayout {
  const across = Array.from(family.acrossValues, (v) => family.across.shown(v));
  const xLow = exact(Math.min(...across));
  const xHigh = exact(Math.max(...across));
  const xRange: Range = xHigh > xLow ? [xLow, xHigh] : [xLow - 0.5, xHigh + 0.5];
  const heights = width < NARROW ? NARROW_HEIGHTS : HEIGHTS;
  const plotHeight = heights[Math.min(family.panels.length, heights.length) - 1]!;

  const endWidth = Math.max(LEAST_END, width * END_SHARE);
  const names = family.lines.map((line) => (line.label === '' ? [] : wrapText(line.label, LABEL_SIZE, endWidth)));
  const widestName = Math.max(0, ...names.flat().map((text) => textWidth(text, LABEL_SIZE)));
  const right = width - (widestName > 0 ? END_GAP + widestName + 2 : 14);

  const drafts = family.panels.map((panel, n) => {
    const lines = family.lines.map((line, k) => ({
      line,
      style: lineStyle(k),
      points: linePoints(family, panel, line, props.progress),
    }));
    const words = new Map<Zone, string[]>();
    const zones = zonesOf(panel, props.checks, props.names, props.values);
    for (const zone of zones) words.set(zone, zoneLines(zone.reason, right - ROOM_LEFT));
    const numbers = [
      ...[...lines.map((l) => l.points), panel.ghost].flatMap((points) => points.map((p) => p.y)),
      panel.now?.y ?? Number.NaN,
      panel.baseline?.y ?? Number.NaN,
    ];
    const ranged = yRange(numbers, zones, (zone) => wordsHeight(words.get(zone)!.length) / plotHeight);
    const { shown, outside } = ranged ?? { shown: [], outside: zones };
    const held = props.moving ? before?.panels[n]?.range : undefined;
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
    const plot = { ...box, bottom: box.top + plotHeight };
    top = plot.bottom + PANEL_GAP;
    const y = linear(range, plot.bottom, plot.top);
    const place = (s: Spot): Point => ({ x: x(s.x), y: y(s.y) });
    const drawn = lines.map((l): DrawnLine => ({ ...l, placed: l.points.map(place) }));
    const ghost = panel.ghost.map(place);
    const strokes = [...drawn.map((l) => l.placed), ghost].flatMap(strokesOf);

    const zones: DrawnZone[] = [];
    const taken: Box[] = [];
    for (const zone of shown) {
      const edge = y(zone.limit);
      const area = zone.side === 'below' ? { ...plot, top: edge } : { ...plot, bottom: edge };
      const near = zone.side === 'below' ? 'top' : 'bottom';
      const placed = placeWords(words.get(zone)!, area, near, strokes, taken);
      if (placed) taken.push(placed.box);
      zones.push({ zone, words: placed });
    }
    const limits = shown.map((z): Segment => ({ x0: left, x1: right, y0: y(z.limit), y1: y(z.limit) }));
    const ends = lines.flatMap((l, k): NamedEnd[] => {
      const last = l.points.findLast((p) => !Number.isNaN(p.y));
      if (!last || names[k]!.length === 0) return [];
      return [{ key: l.line.key, lines: names[k]!, colour: l.style.text, end: { x: x(last.x), y: y(last.y) } }];
    });
    const early = ends.filter(({ end }) => right - end.x > EARLY);
    const places = placesOf(before?.panels[n]?.spots);
    const spots = placeSpots(markedOn(panel, place), plot, taken, [...strokes, ...limits], places);
    const labelled = spots.flatMap((s) => [around(s.at), ...(s.label ? [s.label.box] : [])]);
    const inPlot = placeEarlyNames(early, plot, [...taken, ...labelled], [...strokes, ...limits]);
    const atEdge = ends.filter((end) => !early.includes(end) || inPlot.left.includes(end));
    return {
      panel,
      titleLines,
      titleTop,
      box: plot,
      range,
      ticks,
      lines: drawn,
      ghost,
      zones,
      outside,
      ends: [...placeEndLabels(atEdge, right, plot.top, plot.bottom), ...inPlot.placed],
      spots,
      y,
    };
  });

  const bottom = panels.at(-1)!.box.bottom;
  return {
    width,
    height: bottom + X_AXIS + X_TITLE,
    xRange,
    xTicks: family.options
      ? optionTicks(family.options, family.acrossValues)
      : roundTicks(xRange, Math.max(2, Math.round((right - left) / 70))),
    xTitle: { text: family.across.title, at: { x: (left + right) / 2, y: bottom + X_AXIS + X_TITLE - 4 } },
    panels,
    x,
  };
}

/** Pieces of a line between neighbouring points that both have an answer. */
const strokesOf = (placed: readonly Point[]): Segment[] =>
  segmentsOf(placed, false).filter((s) => !Number.isNaN(s.y0 + s.y1));
