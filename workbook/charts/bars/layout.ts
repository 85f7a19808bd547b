import { formatNumber } from '../../../engine/index';
import { type Box, LABEL_SIZE, textWidth, wrapText } from '../../drawing/index';
import { limitWords, zonesOf } from '../frame/limits';
import { type LineStyle, lineStyle } from '../frame/palette';
import { type DrawnPanel, type Laid, ticksAcross, titleAt, X_AXIS } from '../frame/panels';
import type { ChartProps } from '../frame/props';
import { ranged } from '../frame/ranged';
import { exact, linear } from '../frame/scales';
import type { Ticks } from '../frame/ticks';
import type { Range } from '../frame/y-range';
import { WORD_LINE } from '../frame/zone-words';
import { placeZones } from '../frame/zones';
import { shareFigure } from '../shares/figure';
import type { Bar, BarData, BarGroup, BarPanel } from './bars';

interface DrawnBar {
  readonly key: string;
  readonly box: Box;
  /** Its figure stands left of its end. */
  readonly leftward: boolean;
  /** Where its value is: the end away from zero. */
  readonly end: number;
  readonly middle: number;
  readonly style: LineStyle;
  readonly text: string;
  /** Pixels from and to which the number may be off. */
  readonly whisker: readonly [number, number] | undefined;
  readonly si: number;
  readonly label: string;
  readonly present: boolean;
  readonly sample?: number;
}
export interface DrawnGroup {
  readonly key: string;
  readonly name: readonly string[];
  /** The name stands over its bars, which have the whole width. */
  readonly above: boolean;
  readonly label: string;
  readonly top: number;
  readonly bottom: number;
  readonly bars: readonly DrawnBar[];
  /** Pixel of the baseline's value. */
  readonly baseline: number | undefined;
  /** Pixels of the values of variants. */
  readonly others: readonly { readonly order: number; readonly at: number }[];
}
export interface BarPanelDrawn extends DrawnPanel {
  readonly panel: BarPanel;
  readonly groups: readonly DrawnGroup[];
  x(value: number): number;
}
export interface BarLayout extends Laid<BarPanelDrawn> {
  /** Bars that a page has no room for. */
  readonly left: number;
}

const BAR = 14;
const BAR_GAP = 2;
const GROUP_GAP = 7;
/** Between groups whose names stand over them, so that a name goes with its own bars. */
const GAP_ABOVE = 12;
const NAME_LINE = LABEL_SIZE + 2;
/** Below a name that stands over its bars, so that no figure beside them touches it. */
const UNDER_NAME = 4;
const TITLE_GAP = 4;
/** Half a figure of the last tick stands beyond the plot. */
const RIGHT = 14;
const PANEL_GAP = 12;
const NAME_SHARE = 0.34;
const WORDS_SHARE = 0.3;
const WORDS_PAD = 14;
const MOST_GROUPS = 60;
/** From a bar's end to its figure, clear of the ring of the present design. */
export const FIGURE_GAP = 9;

/** Lays bars out that lie from zero to the right and left, one under the other, with their names before them. */
export function layOutBars(data: BarData, props: ChartProps, width: number, before?: BarLayout): BarLayout {
  const above = data.panels.some((panel) => panel.groups.some((group) => group.opposed));
  const nameWidth = above
    ? 0
    : Math.min(
        width * NAME_SHARE,
        Math.max(...data.panels.flatMap((p) => p.groups.map((g) => textWidth(g.label, LABEL_SIZE))), 30),
      );
  let top = 0;
  let notDrawn = 0;
  const panels = data.panels.map((panel, n): BarPanelDrawn => {
    const groups = panel.groups.slice(0, MOST_GROUPS);
    notDrawn += panel.groups.length - groups.length;
    const number = ({ si, error }: Bar): string =>
      error === undefined ? formatNumber(panel.shown(si)) : shareFigure(panel.shown(si), panel.shown(error));
    const figure = (bar: Bar): string => bar.text ?? [number(bar), bar.label].filter((each) => each !== '').join(' ');
    const texts = groups.flatMap((g) => g.bars.map(figure));
    const figureRoom = Math.max(0, ...texts.map((text) => textWidth(text, LABEL_SIZE))) + FIGURE_GAP + 2;
    const { title, plotTop } = titleAt([panel.title], top, width, TITLE_GAP);
    const left = above ? 1 : Math.ceil(nameWidth) + 8;
    const right = width - RIGHT;
    const plotWidth = right - left;
    const numbers = groups.flatMap((g) => [
      ...g.bars.map((bar) => panel.shown(bar.si + (bar.error ?? 0))),
      panel.shown(g.baseline),
      ...(g.others ?? []).map((si) => panel.shown(si)),
    ]);
    const axis = ranged({
      numbers: [0, ...numbers.map(exact)],
      zones: zonesOf(panel, props.checks, props.names, props.values),
      words: (zone) => wrapText(limitWords(zone), LABEL_SIZE, plotWidth * WORDS_SHARE),
      room: (lines) => (Math.max(...lines.map((line) => textWidth(line, LABEL_SIZE))) + WORDS_PAD) / plotWidth,
      held: props.moving ? before?.panels[n]?.across.range : undefined,
    });
    const bare = axis.answered ? fromZero(axis.range, numbers) : axis.range;
    const share = figureRoom / plotWidth;
    // On a narrow page two figures don't fit beside a pair of bars: each bar then has a line of its own, with its figure at the right.
    const narrow = above && share * 2 > MOST_ROOM_ABOVE;
    const range = narrow ? roomedAfter(bare, numbers, share) : roomed(bare, numbers, share, above);
    const x = linear(range, left, right);

    let y = plotTop + GROUP_GAP / 2;
    const drawn = groups.map((group): DrawnGroup => {
      const name = wrapText(group.label, LABEL_SIZE, above ? plotWidth : nameWidth + 1);
      const nameHigh = above ? name.length * NAME_LINE + UNDER_NAME : 0;
      const lanes = lanesOf(group, narrow);
      const barsHigh = Math.max(1, ...lanes.map((lane) => lane + 1)) * (BAR + BAR_GAP) - BAR_GAP;
      const high = above ? nameHigh + barsHigh : Math.max(barsHigh, name.length * NAME_LINE);
      const first = above ? y + nameHigh : y + (high - barsHigh) / 2;
      const bars = group.bars.map((bar, k): DrawnBar => {
        const end = x(panel.shown(bar.si));
        const barTop = first + lanes[k]! * (BAR + BAR_GAP);
        return {
          ...bar,
          box: { left: Math.min(x(0), end), right: Math.max(x(0), end), top: barTop, bottom: barTop + BAR },
          end,
          leftward: !narrow && end < x(0) && end - FIGURE_GAP - textWidth(figure(bar), LABEL_SIZE) >= left,
          middle: barTop + BAR / 2,
          style: lineStyle(bar.style),
          text: figure(bar),
          whisker:
            bar.error === undefined
              ? undefined
              : [x(panel.shown(bar.si - bar.error)), x(panel.shown(bar.si + bar.error))],
        };
      });
      const baseline = Number.isFinite(group.baseline) ? x(panel.shown(group.baseline)) : undefined;
      const others = apart(group).map(([order, si]) => ({ order, at: x(panel.shown(si)) }));
      const of = { key: group.key, name, above, label: group.label, bars, baseline, others };
      const group_ = { ...of, top: y, bottom: y + high };
      y += high + (above ? GAP_ABOVE : GROUP_GAP);
      return group_;
    });
    // The words of limits stand in a strip of their own under the bars.
    const strip = Math.max(0, ...axis.shown.map((zone) => stripHeight(axis.words.get(zone)!)));
    const box: Box = { left, right, top: plotTop, bottom: y + strip };
    const under = { ...box, top: y - GROUP_GAP / 2 };
    top = box.bottom + X_AXIS + PANEL_GAP;
    return {
      ...{ key: panel.path, panel, title, box, groups: drawn, x, spots: [], outside: axis.outside },
      zones: placeZones(axis, { along: 'across', box: under, at: x, strokes: [], taken: [] }),
      across: { range, ticks: upTo(ticksAcross(range, { left, right }), panel.most), grid: true },
      up: { range: [0, 1] },
    };
  });
  const variants = panels.flatMap(({ groups }) => groups.flatMap(({ others }) => others.map(({ order }) => order)));
  return { width, height: top - PANEL_GAP + 2, panels, left: notDrawn, variants };
}

/** Variants that say something else than the bar of the present design, where there is one. */
function apart({ bars, others = [] }: BarGroup): (readonly [order: number, si: number])[] {
  const [only] = bars.length === 1 ? bars : [];
  return [...others.entries()].filter(([, si]) => Number.isFinite(si) && si !== only?.si);
}

const stripHeight = (lines: readonly string[]): number => (lines.join('') === '' ? 0 : lines.length * WORD_LINE + 8);

const upTo = (ticks: Ticks, most = Number.POSITIVE_INFINITY): Ticks => ({
  ...ticks,
  values: ticks.values.filter((value) => value <= most),
});

/** The line on which each bar lies: two that go opposite ways may share one where there is room. */
function lanesOf({ bars, opposed }: BarGroup, narrow: boolean): number[] {
  const used = { below: 0, above: 0 };
  return bars.map(({ si }, k) => (opposed && !narrow ? used[si < 0 ? 'below' : 'above']++ : k));
}

/** Nothing is drawn beyond zero where all bars lie on one side of it. */
function fromZero([low, high]: Range, numbers: readonly number[]): Range {
  const answered = numbers.filter(Number.isFinite);
  return [
    answered.every((v) => v >= 0) ? Math.min(0, low < 0 ? 0 : low) : low,
    answered.every((v) => v <= 0) ? 0 : high,
  ];
}

/** Share of the plot that figures may take at most. */
const MOST_ROOM = 0.8;
const MOST_ROOM_ABOVE = 0.7;

/** Room for the figures behind the longest bars. */
function roomed([low, high]: Range, numbers: readonly number[], share: number, above: boolean): Range {
  const room = above ? MOST_ROOM_ABOVE : MOST_ROOM;
  const most = Math.max(0, ...numbers.filter(Number.isFinite));
  const least = Math.min(0, ...numbers.filter(Number.isFinite));
  const span = (high - low) / (1 - Math.min(room, share * (least < 0 && most > 0 ? 2 : 1)));
  const needed = share * span;
  return [least < 0 ? Math.min(low, least - needed) : low, most > 0 ? Math.max(high, most + needed) : high];
}

/** Room for every figure at the right of its bar, or of zero where its bar lies left of it. */
function roomedAfter([low, high]: Range, numbers: readonly number[], share: number): Range {
  const answered = numbers.filter(Number.isFinite);
  const [least, most] = [Math.min(0, ...answered), Math.max(0, ...answered)];
  const span = (most - least) / (1 - Math.min(MOST_ROOM, share));
  return [Math.min(low, least), Math.max(high, most + share * span)];
}
