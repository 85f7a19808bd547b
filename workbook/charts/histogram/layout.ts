import { bin, nice, ticks } from 'd3-array';
import { formatNumber, type SpreadOfResult } from '../../../engine/index';
import { type Box, LABEL_SIZE, segmentsOf, textWidth, wrapText } from '../../drawing/index';
import { extent } from '../frame/extent';
import type { Zone } from '../frame/limits';
import type { SweepChartProps } from '../frame/props';
import type { SampleColumn } from '../frame/samples';
import { exact, linear } from '../frame/scales';
import { type DrawnSpot, type Marked, placeSpots, placesOf } from '../frame/spots';
import { roundTicks, type Ticks } from '../frame/ticks';
import { inSentence } from '../frame/words';
import type { Range } from '../frame/y-range';
import { placeWords, type ZoneWords } from '../frame/zone-words';
import { ranged } from '../scatter/layout';

export interface Bin {
  readonly from: number;
  readonly to: number;
  readonly count: number;
}
export interface DrawnHistogram {
  readonly column: SampleColumn;
  readonly titleLines: readonly string[];
  readonly titleTop: number;
  readonly box: Box;
  readonly xRange: Range;
  readonly xTicks: Ticks;
  readonly yRange: Range;
  readonly yTicks: Ticks;
  readonly bins: readonly (Bin & { readonly bar: Box })[];
  readonly zones: readonly { readonly zone: Zone; readonly words: ZoneWords | undefined }[];
  readonly outside: readonly Zone[];
  /** Of a spread: below which so many of the designs lie. */
  readonly percentiles: readonly { readonly text: string; readonly x: number; readonly label: Box }[];
  /** The present design and the baseline stand on the axis. */
  readonly spots: readonly DrawnSpot[];
}
export interface HistogramLayout {
  readonly width: number;
  readonly height: number;
  readonly panels: readonly DrawnHistogram[];
}

const LINE = LABEL_SIZE + 3;
const NARROW = 420;
const HEIGHT = 170;
const NARROW_HEIGHT = 150;
const X_AXIS = 20;
const PANEL_GAP = 14;
const WORDS_SHARE = 0.28;
const FEWEST_BINS = 5;
const MOST_BINS = 30;
const NARROW_BINS = 14;
/** Room above the highest bar, as a share of its height. */
const ABOVE = 0.18;

/** Bins of one width between round numbers, about as many as the square root of the samples. */
export function binned(values: readonly number[], most: number): Bin[] {
  const answered = values.filter(Number.isFinite);
  const ends = extent(answered);
  if (!ends) return [];
  const [low, high] = ends;
  const wanted = Math.min(most, Math.max(FEWEST_BINS, Math.ceil(Math.sqrt(answered.length))));
  const half = Math.abs(low) * 0.01 || 0.5;
  const [first, last] = high > low ? nice(low, high, wanted) : [low - half, low + half];
  const edges = high > low ? ticks(first, last, wanted).filter((edge) => edge > first && edge < last) : [];
  const bins = bin().domain([first, last]).thresholds(edges)(answered);
  return bins.map(({ x0, x1, length }) => ({ from: exact(x0!), to: exact(x1!), count: length }));
}

/** Marks of 5 %, half and 95 % along the top of a plot, one under another where they would touch. */
function placePercentiles(
  told: SpreadOfResult | undefined,
  x: (si: number) => number,
  box: Box,
): DrawnHistogram['percentiles'] {
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
    while (placed.some(({ label }) => label.top === top && label.right > middle - half)) top += LINE;
    placed.push({ text, x: at, label: { left: middle - half, right: middle + half, top, bottom: top + LINE } });
  }
  return placed;
}

export function layOutHistogram(
  columns: readonly SampleColumn[],
  props: SweepChartProps,
  width: number,
  before?: HistogramLayout,
): HistogramLayout {
  const plotHeight = width < NARROW ? NARROW_HEIGHT : HEIGHT;
  let top = 0;
  const panels = columns.map((column, n): DrawnHistogram => {
    const bins = binned(column.values, width < NARROW ? NARROW_BINS : MOST_BINS);
    const most = Math.max(1, ...bins.map((bin) => bin.count));
    const yRange: Range = [0, most * (1 + ABOVE)];
    const wholes = roundTicks(yRange, 5);
    const yTicks = { ...wholes, values: wholes.values.filter(Number.isInteger) };
    const left = Math.ceil(Math.max(...yTicks.values.map((value) => textWidth(yTicks.text(value), LABEL_SIZE)))) + 11;
    const titleLines = wrapText(`Designs by ${inSentence(column.title)}`, LABEL_SIZE, width - 4);
    const titleTop = top;
    const plotTop = top + titleLines.length * LINE + 8;
    const box: Box = { left, right: width - 12, top: plotTop, bottom: plotTop + plotHeight };
    top = box.bottom + X_AXIS + PANEL_GAP;
    const plotWidth = box.right - box.left;
    const edges = bins.flatMap((bin) => [bin.from, bin.to]);
    const { range, shown, outside, words } = ranged(
      { ...column, values: edges },
      props,
      (lines) => (Math.max(...lines.map((line) => textWidth(line, LABEL_SIZE))) + 14) / plotWidth,
      plotWidth * WORDS_SHARE,
      before?.panels[n]?.xRange,
    );
    const x = linear(range, box.left, box.right);
    const y = linear(yRange, box.bottom, box.top);
    const bars = bins.map((bin) => ({
      ...bin,
      bar: { left: x(bin.from), right: x(bin.to), top: y(bin.count), bottom: box.bottom },
    }));
    const tops = bars.flatMap(({ bar }) =>
      segmentsOf(
        [
          { x: bar.left, y: bar.top },
          { x: bar.right, y: bar.top },
        ],
        false,
      ),
    );
    const taken: Box[] = [];
    const told = props.progress.spread?.results.find((each) => each.path === column.path);
    const percentiles = placePercentiles(told, (si) => x(column.shown(si)), box);
    taken.push(...percentiles.map(({ label }) => label));
    const zones = shown.map((zone) => {
      const area = zone.side === 'below' ? { ...box, right: x(zone.limit) } : { ...box, left: x(zone.limit) };
      const found = zone.reason === '' ? undefined : placeWords(words.get(zone)!, area, 'top', tops, taken);
      if (found) taken.push(found.box);
      return { zone, words: found };
    });
    const marked = (
      [
        ['now', column.now],
        ['baseline', column.baseline],
      ] as const
    ).flatMap(([kind, value]): Marked[] =>
      Number.isFinite(value)
        ? [{ kind, at: { x: x(value), y: box.bottom }, text: `${kind} ${formatNumber(value)}` }]
        : [],
    );
    const spots = placeSpots(marked, box, taken, tops, placesOf(before?.panels[n]?.spots));
    return {
      ...{ column, titleLines, titleTop, box, xRange: range, yRange, yTicks, bins: bars, zones, outside },
      ...{ percentiles, spots },
      xTicks: roundTicks(range, Math.max(2, Math.round(plotWidth / 70))),
    };
  });
  return { width, height: top - PANEL_GAP + 2, panels };
}
