import { formatNumber } from '../../../engine/index';
import { type Box, LABEL_SIZE, textWidth, wrapText } from '../../drawing/index';
import { limitWords, namedLimitWords, zonesOf } from '../frame/limits';
import {
  type DrawnPanel,
  type Heights,
  type Laid,
  leftRoom,
  plotHeight,
  TITLE_LINE,
  ticksAcross,
  ticksUp,
  titleAt,
  underAxis,
} from '../frame/panels';
import type { SweepChartProps } from '../frame/props';
import { type Ranged, ranged } from '../frame/ranged';
import type { SampleColumn } from '../frame/samples';
import { linear } from '../frame/scales';
import { around, type Marked, placeSpots, placesOf, variantText } from '../frame/spots';
import type { Range } from '../frame/y-range';
import { wordsHeight } from '../frame/zone-words';
import { placeZones } from '../frame/zones';
import { type Cloud, cloudsOf, type Groups, type KeyEntry, keyOf } from './clouds';

/** Results against a result. */
export interface ScatterData {
  readonly across: SampleColumn;
  readonly ups: readonly SampleColumn[];
  readonly groups?: Groups | undefined;
}
export interface ScatterPanel extends DrawnPanel {
  readonly column: SampleColumn;
  readonly clouds: readonly Cloud[];
}
export interface ScatterLayout extends Laid<ScatterPanel> {
  readonly key: readonly KeyEntry[];
}

const HEIGHTS: Heights = { wide: [250, 180, 150], narrow: [220, 170, 140] };
const TICK_EVERY = 36;
const PANEL_GAP = 14;
const ROOM_LEFT = 38;
const RIGHT = 12;
const WORDS_SHARE = 0.62;
const SIDE_WORDS_SHARE = 0.22;
/** Marks that labels keep off; more would take long and leave no place anyway. */
const MOST_KEPT_OFF = 250;

export function layOutScatter(
  { across, ups, groups }: ScatterData,
  props: SweepChartProps,
  width: number,
  before?: ScatterLayout,
): ScatterLayout {
  const height = plotHeight(HEIGHTS, width, ups.length);
  const plotWidth = width - ROOM_LEFT - RIGHT;
  const xAxis = rangedColumn(
    across,
    props,
    (lines) => wordsWidth(lines) / plotWidth,
    plotWidth * SIDE_WORDS_SHARE,
    before?.panels[0]?.across.range,
    namedLimitWords,
  );
  const yAxes = ups.map((column, n) =>
    rangedColumn(
      column,
      props,
      (lines) => wordsHeight(lines.length) / height,
      plotWidth * WORDS_SHARE,
      before?.panels[n]?.up.range,
    ),
  );
  const ticks = yAxes.map(({ range }) => ticksUp(range, height, TICK_EVERY));
  const left = leftRoom(ticks);
  const right = width - RIGHT;
  const px = linear(xAxis.range, left, right);
  const xTicks = ticksAcross(xAxis.range, { left, right });

  const key = keyOf(groups, width);
  let top = key.length === 0 ? 0 : (Math.max(...key.map((each) => each.line)) + 1) * TITLE_LINE + 5;
  const panels = ups.map((column, n): ScatterPanel => {
    const yAxis = yAxes[n]!;
    const { title, plotTop } = titleAt([column.title], top, width);
    const box: Box = { left, right, top: plotTop, bottom: plotTop + height };
    top = box.bottom + PANEL_GAP;
    const py = linear(yAxis.range, box.bottom, box.top);
    const clouds = cloudsOf(across, column, groups, px, py);
    const keepOff = clouds
      .flatMap((cloud) => cloud.points)
      .slice(0, MOST_KEPT_OFF)
      .map((point) => around(point, 3));
    const taken: Box[] = [];
    const place = { box, strokes: [], taken, keepOff };
    const zones = [
      ...placeZones(yAxis, { ...place, along: 'up', at: py }),
      ...placeZones(xAxis, { ...place, along: 'across', at: px }),
    ];
    const marked = (['now', 'baseline'] as const).flatMap((kind): Marked[] => {
      const [a, b] = [across[kind], column[kind]];
      const text = `${kind} ${formatNumber(a)}, ${formatNumber(b)}`;
      return Number.isFinite(a + b) ? [{ kind, at: { x: px(a), y: py(b) }, text }] : [];
    });
    for (const [order, { name }] of (props.others ?? []).entries()) {
      const [a, b] = [across.others[order]!, column.others[order]!];
      const at = { x: px(a), y: py(b) };
      if (Number.isFinite(a + b)) marked.push({ kind: 'variant', order, at, text: variantText(name, a, b) });
    }
    return {
      ...{ key: column.path, column, title, box, zones, clouds },
      outside: [...yAxis.outside, ...(n === 0 ? xAxis.outside : [])],
      across: { range: xAxis.range, ticks: n === ups.length - 1 ? xTicks : undefined, grid: true },
      up: { range: yAxis.range, ticks: ticks[n]!, grid: true },
      spots: placeSpots(marked, box, [...taken, ...keepOff], [], placesOf(before?.panels[n]?.spots)),
    };
  });
  return { width, ...underAxis(across.title, panels.at(-1)!.box), panels, key };
}

/** Width that words beside an upright limit need. */
export const wordsWidth = (lines: readonly string[]): number =>
  Math.max(...lines.map((line) => textWidth(line, LABEL_SIZE))) + 14;

/** Range of one direction with its limits. */
export const rangedColumn = (
  column: SampleColumn,
  { checks, names, values, moving }: SweepChartProps,
  room: (lines: readonly string[]) => number,
  wide: number,
  before: Range | undefined,
  words: typeof limitWords = limitWords,
): Ranged =>
  ranged({
    numbers: [...column.values, column.now, column.baseline, ...column.others],
    zones: zonesOf(column, checks, names, values),
    words: (zone) => wrapText(words(zone), LABEL_SIZE, wide),
    room,
    held: moving ? before : undefined,
  });
