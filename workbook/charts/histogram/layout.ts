import { formatNumber, type SpreadOfResult } from '../../../engine/index';
import { type Box, LABEL_SIZE, type Segment, textWidth } from '../../drawing/index';
import {
  type DrawnPanel,
  type Heights,
  isNarrow,
  type Laid,
  leftRoom,
  plotHeight,
  TITLE_LINE,
  ticksAcross,
  titleAt,
} from '../frame/panels';
import type { SweepChartProps } from '../frame/props';
import type { SampleColumn } from '../frame/samples';
import { linear } from '../frame/scales';
import { type Marked, placeSpots, placesOf, variantText } from '../frame/spots';
import { roundTicks } from '../frame/ticks';
import { inSentence } from '../frame/words';
import type { Range } from '../frame/y-range';
import { placeZones } from '../frame/zones';
import { rangedColumn, wordsWidth } from '../scatter/layout';
import { type Bin, binned } from './bins';

/** The present design and the baseline stand on the axis. */
export interface HistogramPanel extends DrawnPanel {
  readonly column: SampleColumn;
  readonly bins: readonly (Bin & { readonly bar: Box })[];
  /** Of a spread: below which so many of the designs lie. */
  readonly percentiles: readonly { readonly text: string; readonly x: number; readonly label: Box }[];
}
export type HistogramLayout = Laid<HistogramPanel>;

const HEIGHTS: Heights = { wide: [170], narrow: [150] };
const X_AXIS = 20;
const PANEL_GAP = 14;
const RIGHT = 12;
const WORDS_SHARE = 0.22;
const MOST_BINS = 30;
const NARROW_BINS = 14;
/** Room above the highest bar, as a share of its height. */
const ABOVE = 0.18;

/** Marks of 5 %, half and 95 % along the top of a plot, one under another where they would touch. */
function placePercentiles(
  told: SpreadOfResult | undefined,
  x: (si: number) => number,
  box: Box,
): HistogramPanel['percentiles'] {
  if (!told || Number.isNaN(told.middle)) return [];
  const placed: { readonly text: string; readonly x: number; readonly label: Box }[] = [];
  for (const [text, si] of [
    ['5 %', told.low],
    ['50 %', told.middle],
    ['95 %', told.high],
  ] as const) {
    const at = x(si);
    const half = textWidth(text, LABEL_SIZE) / 2 + 2;
    const middle = Math.min(Math.max(at, box.left + half), box.right - half);
    let top = box.top + 1;
    while (placed.some(({ label }) => label.top === top && label.right > middle - half)) top += TITLE_LINE;
    placed.push({ text, x: at, label: { left: middle - half, right: middle + half, top, bottom: top + TITLE_LINE } });
  }
  return placed;
}

export function layOutHistogram(
  columns: readonly SampleColumn[],
  props: SweepChartProps,
  width: number,
  before?: HistogramLayout,
): HistogramLayout {
  const height = plotHeight(HEIGHTS, width, 1);
  let top = 0;
  const panels = columns.map((column, n): HistogramPanel => {
    const bins = binned(column.values, isNarrow(width) ? NARROW_BINS : MOST_BINS);
    const most = Math.max(1, ...bins.map((bin) => bin.count));
    const yRange: Range = [0, most * (1 + ABOVE)];
    const wholes = roundTicks(yRange, 5);
    const yTicks = { ...wholes, values: wholes.values.filter(Number.isInteger) };
    const { title, plotTop } = titleAt([`Designs by ${inSentence(column.title)}`], top, width);
    const box: Box = { left: leftRoom([yTicks]), right: width - RIGHT, top: plotTop, bottom: plotTop + height };
    top = box.bottom + X_AXIS + PANEL_GAP;
    const plotWidth = box.right - box.left;
    const edges = bins.flatMap((bin) => [bin.from, bin.to]);
    const xAxis = rangedColumn(
      { ...column, values: edges },
      props,
      (lines) => wordsWidth(lines) / plotWidth,
      plotWidth * WORDS_SHARE,
      before?.panels[n]?.across.range,
    );
    const x = linear(xAxis.range, box.left, box.right);
    const y = linear(yRange, box.bottom, box.top);
    const bars = bins.map((bin) => ({
      ...bin,
      bar: { left: x(bin.from), right: x(bin.to), top: y(bin.count), bottom: box.bottom },
    }));
    const strokes = bars.map(({ bar }): Segment => ({ x0: bar.left, x1: bar.right, y0: bar.top, y1: bar.top }));
    const told = props.progress.spread?.results.find((each) => each.path === column.path);
    const percentiles = placePercentiles(told, (si) => x(column.shown(si)), box);
    const taken: Box[] = percentiles.map(({ label }) => label);
    const zones = placeZones(xAxis, { along: 'across', box, at: x, strokes, taken });
    const marked = (['now', 'baseline'] as const).flatMap((kind): Marked[] => {
      const value = column[kind];
      const text = `${kind} ${formatNumber(value)}`;
      return Number.isFinite(value) ? [{ kind, at: { x: x(value), y: box.bottom }, text }] : [];
    });
    for (const [order, { name }] of (props.others ?? []).entries()) {
      const value = column.others[order]!;
      const at = { x: x(value), y: box.bottom };
      if (Number.isFinite(value)) marked.push({ kind: 'variant', order, at, text: variantText(name, value) });
    }
    return {
      ...{ key: column.path, column, title, box, bins: bars, zones, outside: xAxis.outside, percentiles },
      across: { range: xAxis.range, ticks: ticksAcross(xAxis.range, box) },
      up: { range: yRange, ticks: yTicks, grid: true },
      spots: placeSpots(marked, box, taken, strokes, placesOf(before?.panels[n]?.spots)),
    };
  });
  return { width, height: top - PANEL_GAP + 2, panels };
}
