import { type Box, LABEL_SIZE, type Point, type Segment, segmentsOf, textWidth, wrapText } from '../../drawing/index';
import { extent } from '../frame/extent';
import type { Family, Spot } from '../frame/family';
import { limitWords, namedLimitWords } from '../frame/limits';
import { type LineStyle, lineStyle } from '../frame/palette';
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
import { ranged } from '../frame/ranged';
import { exact, linear } from '../frame/scales';
import { around, NOW_RADIUS, placeSpots, placesOf } from '../frame/spots';
import { optionTicks } from '../frame/ticks';
import type { Range } from '../frame/y-range';
import { wordsHeight } from '../frame/zone-words';
import { placeZones } from '../frame/zones';
import { END_GAP, type EndLabel, type NamedEnd, placeEarlyNames, placeEndLabels } from './end-labels';
import { type Plot, type PlotLine, type PlotPanel, plotOf } from './plot';

interface DrawnLine {
  readonly line: PlotLine;
  readonly style: LineStyle;
  /** The same in pixels. */
  readonly placed: readonly Point[];
}
/** The line of another design; without an order that of the baseline. */
interface DrawnGhost {
  readonly order?: number;
  readonly points: readonly Point[];
}
export interface LinePanel extends DrawnPanel {
  readonly panel: PlotPanel;
  readonly lines: readonly DrawnLine[];
  /** Lines of the baseline and of variants in pixels. */
  readonly ghosts: readonly DrawnGhost[];
  readonly ends: readonly EndLabel[];
  /** Pixel of a number on the panel's own axis. */
  y(value: number): number;
}
export interface LineLayout extends Laid<LinePanel> {
  x(value: number): number;
}

const HEIGHTS: Heights = { wide: [215, 150, 125], narrow: [190, 140, 120] };
const PANEL_GAP = 14;
const TICK_EVERY = 32;
const WORDS_SHARE = 0.68;
const WORDS_MOST = 0.92;
/** Room that the figures of the upright axis take before they are known. */
const ROOM_LEFT = 38;
const END_SHARE = 0.24;
const LEAST_END = 64;
/** Room at the right where no line has a name: half a figure of the last tick. */
const NO_NAMES = 14;

/** A line that breaks off further than this before the edge, in pixels, has its name in the plot. */
const EARLY = 12;

/** Words for a zone on two lines that leave room beside them, else on lines as wide as the plot. */
function zoneLines(said: string, plotWidth: number): string[] {
  const short = wrapText(said, LABEL_SIZE, plotWidth * WORDS_SHARE);
  return short.length <= 2 ? short : wrapText(said, LABEL_SIZE, plotWidth * WORDS_MOST);
}

/** Lays the chart of a sweep out. */
export const layOutChart = (family: Family, props: SweepChartProps, width: number, before?: LineLayout): LineLayout =>
  layOutPlot(plotOf(family, props), width, props.moving, before);

/** Where a line ends: its answered point furthest to the right. */
const endOf = ({ points }: PlotLine): Spot | undefined =>
  points.reduce<Spot | undefined>(
    (best, each) => (Number.isFinite(each.x + each.y) && !(best && best.x > each.x) ? each : best),
    undefined,
  );

/** Lays lines out: everything that is on them, in pixels. `before` keeps the words beside moving marks on their side. */
export function layOutPlot(plot: Plot, width: number, moving?: boolean, before?: LineLayout): LineLayout {
  const [least, greatest] = extent(plot.across.filter(Number.isFinite)) ?? [0, 0];
  const [xLow, xHigh] = [exact(least), exact(greatest)];
  const xRange: Range = xHigh > xLow ? [xLow, xHigh] : [xLow - 0.5, xHigh + 0.5];
  const height = plotHeight(HEIGHTS, width, plot.panels.length);

  const endWidth = Math.max(LEAST_END, width * END_SHARE);
  const names = plot.panels.map(({ lines }) =>
    lines.map((line) => (line.label === '' ? [] : wrapText(line.label, LABEL_SIZE, endWidth))),
  );
  const widestName = Math.max(0, ...names.flat(2).map((text) => textWidth(text, LABEL_SIZE)));
  const right = width - (widestName > 0 ? END_GAP + widestName + 2 : NO_NAMES);

  const drafts = plot.panels.map((panel, n) => {
    const named = panel.shows.length > 1 ? namedLimitWords : limitWords;
    const numbers = [
      ...[...panel.lines, ...panel.ghosts].flatMap(({ points }) => points.map((p) => p.y)),
      ...panel.marks.map(({ at }) => at.y),
    ];
    // Words under a limit near zero need room, which has no figures where nothing can lie.
    const least = [...numbers, ...panel.zones.map(({ limit }) => limit)].some((y) => y < 0) ? undefined : 0;
    const axis = ranged({
      numbers,
      zones: panel.zones,
      words: (zone) => zoneLines(named(zone), right - ROOM_LEFT),
      room: (lines) => wordsHeight(lines.length) / height,
      held: moving ? before?.panels[n]?.up.range : undefined,
    });
    return { panel, axis, ticks: axis.answered ? ticksUp(axis.range, height, TICK_EVERY, least) : NO_TICKS };
  });
  const left = leftRoom(drafts.map(({ ticks }) => ticks));
  const x = linear(xRange, left, right);
  const xTicks = plot.options
    ? optionTicks(plot.options.names, plot.options.indices)
    : ticksAcross(xRange, { left, right });

  let top = 0;
  const panels = drafts.map(({ panel, axis, ticks }, n): LinePanel => {
    const { title, plotTop } = titleAt([panel.title], top, width);
    const box: Box = { left, right, top: plotTop, bottom: plotTop + height };
    top = box.bottom + PANEL_GAP;
    const y = linear(axis.range, box.bottom, box.top);
    const place = (s: Spot): Point => ({ x: x(s.x), y: y(s.y) });
    const lines = panel.lines.map(
      (line, k): DrawnLine => ({ line, style: lineStyle(k), placed: line.points.map(place) }),
    );
    const ghosts = panel.ghosts.map(({ points, ...ghost }): DrawnGhost => ({ ...ghost, points: points.map(place) }));
    const strokes = [...lines.map((l) => l.placed), ...ghosts.map(({ points }) => points)].flatMap(strokesOf);

    const marked = panel.marks.map((mark) => ({ ...mark, at: place(mark.at) }));
    const taken: Box[] = [];
    const keepOff = marked.map(({ at }) => around(at, NOW_RADIUS));
    const zones = placeZones(axis, { along: 'up', box, at: y, strokes, taken, keepOff });
    const limits = axis.shown.map((z): Segment => ({ x0: left, x1: right, y0: y(z.limit), y1: y(z.limit) }));
    const ends = lines.flatMap(({ line, style }, k): NamedEnd[] => {
      const last = endOf(line);
      if (!last || names[n]![k]!.length === 0) return [];
      return [{ key: line.key, lines: names[n]![k]!, colour: style.text, end: place(last) }];
    });
    const early = ends.filter(({ end }) => right - end.x > EARLY);
    const spots = placeSpots(marked, box, taken, [...strokes, ...limits], placesOf(before?.panels[n]?.spots));
    const labelled = spots.flatMap((s) => [around(s.at, NOW_RADIUS), ...(s.label ? [s.label.box] : [])]);
    const inPlot = placeEarlyNames(early, box, [...taken, ...labelled], [...strokes, ...limits]);
    const atEdge = ends.filter((end) => !early.includes(end) || inPlot.left.includes(end));
    return {
      ...{ key: panel.path, panel, title, box, zones, outside: axis.outside, spots, lines, ghosts, y },
      across: { range: xRange, ticks: n === drafts.length - 1 ? xTicks : undefined },
      up: { range: axis.range, ticks, grid: true },
      ends: [...placeEndLabels(atEdge, right, box.top, box.bottom), ...inPlot.placed],
    };
  });
  return { width, ...underAxis(plot.acrossTitle, panels.at(-1)!.box), panels, x };
}

const NO_TICKS = { values: [], text: String };

/** Pieces of a line between neighbouring points that both have an answer. */
const strokesOf = (placed: readonly Point[]): Segment[] =>
  segmentsOf(placed, false).filter((s) => !Number.isNaN(s.y0 + s.y1));
