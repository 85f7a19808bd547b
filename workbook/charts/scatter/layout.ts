import { formatNumber } from '../../../engine/index';
import { type Box, LABEL_SIZE, type Point, textWidth, wrapText } from '../../drawing/index';
import { type Measure, readLines } from '../frame/family';
import { holdRange } from '../frame/hold-range';
import { type Zone, zonesOf } from '../frame/limits';
import { type LineStyle, lineStyle } from '../frame/palette';
import type { SweepChartProps } from '../frame/props';
import { placesAlong, type SampleColumn } from '../frame/samples';
import { linear } from '../frame/scales';
import { type DrawnSpot, type Marked, placeSpots, placesOf } from '../frame/spots';
import { roundTicks, type Ticks } from '../frame/ticks';
import { type Range, type RangedZones, yRange } from '../frame/y-range';
import { placeWords, wordsHeight, type ZoneWords } from '../frame/zone-words';

export interface Cloud {
  readonly key: string;
  readonly label: string;
  readonly style: LineStyle;
  /** Which sign its points have. */
  readonly sign: number;
  readonly points: readonly (Point & { readonly sample: number })[];
}
export interface ScatterZone {
  readonly of: Measure;
  readonly zone: Zone;
  readonly along: 'across' | 'up';
  readonly words: ZoneWords | undefined;
}
export interface DrawnScatter {
  readonly column: SampleColumn;
  readonly titleLines: readonly string[];
  readonly titleTop: number;
  readonly box: Box;
  readonly range: Range;
  readonly ticks: Ticks;
  readonly clouds: readonly Cloud[];
  readonly zones: readonly ScatterZone[];
  readonly outside: readonly {
    readonly panel: Measure;
    readonly zones: readonly never[];
    readonly outside: readonly Zone[];
  }[];
  readonly spots: readonly DrawnSpot[];
}
/** What a sign stands for. */
export interface KeyEntry {
  readonly label: string;
  readonly sign: number;
  readonly style: LineStyle;
  readonly left: number;
  readonly line: number;
}
export interface ScatterLayout {
  readonly key: readonly KeyEntry[];
  readonly width: number;
  readonly height: number;
  readonly xRange: Range;
  readonly xTicks: Ticks;
  readonly xTitle: { readonly text: string; readonly at: Point };
  readonly panels: readonly DrawnScatter[];
}

const LINE = LABEL_SIZE + 3;
const NARROW = 420;
const HEIGHTS: readonly number[] = [250, 180, 150];
const NARROW_HEIGHTS: readonly number[] = [220, 170, 140];
const X_AXIS = 18;
const X_TITLE = 17;
const PANEL_GAP = 14;
const ROOM_LEFT = 38;
const WORDS_SHARE = 0.62;
const SIDE_WORDS_SHARE = 0.28;
/** For the sign before a name, and between names. */
export const SIGN_ROOM = 12;
const NAME_GAP = 14;
/** Marks that labels keep off; more would take long and leave no place anyway. */
const MOST_KEPT_OFF = 250;

export function layOutScatter(
  across: SampleColumn,
  ups: readonly SampleColumn[],
  props: SweepChartProps,
  width: number,
  before?: ScatterLayout,
): ScatterLayout {
  const plotHeight = (width < NARROW ? NARROW_HEIGHTS : HEIGHTS)[Math.min(ups.length, HEIGHTS.length) - 1]!;
  const plotWidth = width - ROOM_LEFT - 12;
  const x = ranged(
    across,
    props,
    (lines) => (widest(lines) + 14) / plotWidth,
    plotWidth * SIDE_WORDS_SHARE,
    before?.xRange,
  );
  const drafts = ups.map((column, n) => ({
    column,
    ...ranged(
      column,
      props,
      (lines) => wordsHeight(lines.length) / plotHeight,
      plotWidth * WORDS_SHARE,
      before?.panels[n]?.range,
    ),
  }));
  const ticks = drafts.map(({ range }) => roundTicks(range, Math.max(3, Math.round(plotHeight / 36))));
  const left =
    Math.ceil(Math.max(0, ...ticks.flatMap((t) => t.values.map((value) => textWidth(t.text(value), LABEL_SIZE))))) + 11;
  const right = width - 12;
  const px = linear(x.range, left, right);

  const key = keyOf(props, width);
  let top = key.length === 0 ? 0 : (Math.max(...key.map((each) => each.line)) + 1) * LINE + 5;
  const panels = drafts.map(({ column, range, words, shown, outside }, n): DrawnScatter => {
    const titleLines = wrapText(column.title, LABEL_SIZE, width - 4);
    const titleTop = top;
    const box: Box = { left, right, top: top + titleLines.length * LINE + 8, bottom: 0 };
    const plot = { ...box, bottom: box.top + plotHeight };
    top = plot.bottom + PANEL_GAP;
    const py = linear(range, plot.bottom, plot.top);
    const clouds = cloudsOf(across, column, props, px, py);
    const dots = clouds
      .flatMap((cloud) => cloud.points)
      .slice(0, MOST_KEPT_OFF)
      .map((point) => around(point, 3));
    const taken: Box[] = [];
    const place = (zone: Zone, lines: readonly string[], area: Box, near: 'top' | 'bottom'): ZoneWords | undefined => {
      const found = zone.reason === '' ? undefined : placeWords(lines, area, near, [], [...taken, ...dots]);
      if (found) taken.push(found.box);
      return found;
    };
    const zones: ScatterZone[] = [
      ...shown.map((zone): ScatterZone => {
        const area = zone.side === 'below' ? { ...plot, top: py(zone.limit) } : { ...plot, bottom: py(zone.limit) };
        const near = zone.side === 'below' ? 'top' : 'bottom';
        return { of: column, zone, along: 'up', words: place(zone, words.get(zone)!, area, near) };
      }),
      ...x.shown.map((zone): ScatterZone => {
        const area = zone.side === 'below' ? { ...plot, right: px(zone.limit) } : { ...plot, left: px(zone.limit) };
        return { of: across, zone, along: 'across', words: place(zone, x.words.get(zone)!, area, 'top') };
      }),
    ];
    const marked = (
      [
        ['now', across.now, column.now],
        ['baseline', across.baseline, column.baseline],
      ] as const
    ).flatMap(([kind, a, b]): Marked[] =>
      Number.isFinite(a + b)
        ? [{ kind, at: { x: px(a), y: py(b) }, text: `${kind} ${formatNumber(a)}, ${formatNumber(b)}` }]
        : [],
    );
    const spots = placeSpots(marked, plot, [...taken, ...dots], [], placesOf(before?.panels[n]?.spots));
    return {
      ...{ column, titleLines, titleTop, box: plot, range, ticks: ticks[n]!, zones, spots, clouds },
      outside: [
        { panel: column, zones: [], outside },
        ...(n === 0 ? [{ panel: across, zones: [] as const, outside: x.outside }] : []),
      ],
    };
  });
  const bottom = panels.at(-1)!.box.bottom;
  return {
    ...{ width, height: bottom + X_AXIS + X_TITLE, xRange: x.range, panels, key },
    xTicks: roundTicks(x.range, Math.max(2, Math.round((right - left) / 70))),
    xTitle: { text: across.title, at: { x: (left + right) / 2, y: bottom + X_AXIS + X_TITLE - 4 } },
  };
}

/** Signs with their names, on as many lines as they need. */
function keyOf(props: SweepChartProps, width: number): KeyEntry[] {
  if (props.cell.lines === '') return [];
  let left = 0;
  let line = 0;
  return readLines(props, props.cell.lines).map((label, sign) => {
    const room = SIGN_ROOM + textWidth(label, LABEL_SIZE);
    if (left > 0 && left + room > width) {
      left = 0;
      line++;
    }
    const entry = { label, sign, style: lineStyle(sign), left, line };
    left += room + NAME_GAP;
    return entry;
  });
}

const widest = (lines: readonly string[]): number => Math.max(...lines.map((line) => textWidth(line, LABEL_SIZE)));
const around = ({ x, y }: Point, r: number): Box => ({ left: x - r, right: x + r, top: y - r, bottom: y + r });

/** Range of one direction with its limits. */
export function ranged(
  column: SampleColumn,
  props: SweepChartProps,
  room: (lines: readonly string[]) => number,
  wordsWidth: number,
  before: Range | undefined,
): Omit<RangedZones, 'needed'> & { readonly words: ReadonlyMap<Zone, readonly string[]> } {
  const zones = zonesOf(column, props.checks, props.names, props.values);
  const words = new Map(zones.map((zone) => [zone, wrapText(zone.reason, LABEL_SIZE, wordsWidth)]));
  const found = yRange([...column.values, column.now, column.baseline], zones, (zone) => room(words.get(zone)!));
  if (!found) return { range: [0, 1], shown: [], outside: zones, words };
  return { ...found, range: holdRange(found.range, found.needed, props.moving ? before : undefined), words };
}

/** Designs that are drawn of a large sweep. They are picked by a scatter of their numbers, which keeps no pattern of the axes. */
export const MOST_DRAWN = 4000;
const isDrawn = (sample: number, share: number): boolean =>
  share >= 1 || (Math.imul(sample + 1, 0x9e3779b1) >>> 0) / 2 ** 32 < share;

function cloudsOf(
  across: SampleColumn,
  up: SampleColumn,
  props: SweepChartProps,
  px: (value: number) => number,
  py: (value: number) => number,
): Cloud[] {
  const places = props.cell.lines === '' ? undefined : placesAlong(props, props.cell.lines);
  const labels = places ? readLines(props, props.cell.lines) : [''];
  const clouds = labels.map((label, sign) => ({
    ...{ key: `${sign}`, label, sign, style: lineStyle(sign) },
    points: [] as (Point & { sample: number })[],
  }));
  const share = MOST_DRAWN / Math.max(1, across.values.length);
  for (const [sample, a] of across.values.entries()) {
    if (!isDrawn(sample, share)) continue;
    const b = up.values[sample] ?? Number.NaN;
    if (Number.isFinite(a + b)) clouds[places?.[sample] ?? 0]!.points.push({ x: px(a), y: py(b), sample });
  }
  return clouds;
}
