import { type Box, LABEL_SIZE, type Point, textWidth, wrapText } from '../../drawing/index';
import type { FrameAxis } from './frame';
import type { Zone } from './limits';
import type { DrawnSpot } from './spots';
import { roundTicks, type Ticks } from './ticks';
import type { Range } from './y-range';
import type { DrawnZone } from './zones';

/** One plot with its axes, its limits and the designs that are marked on it. */
export interface DrawnPanel {
  readonly key: string;
  readonly title: Title;
  /** The plot itself, inside its axes. */
  readonly box: Box;
  readonly across: FrameAxis;
  readonly up: FrameAxis;
  readonly zones: readonly DrawnZone[];
  /** Limits too far off to be in the picture. */
  readonly outside: readonly Zone[];
  readonly spots: readonly DrawnSpot[];
}
/** Words over a plot, one under another. */
export interface Title {
  readonly lines: readonly string[];
  readonly top: number;
}
/** Words under an axis. */
export interface AxisTitle {
  readonly text: string;
  readonly at: Point;
}
/** A chart that is laid out: its plots one above the other. */
export interface Laid<P extends DrawnPanel = DrawnPanel> {
  readonly width: number;
  readonly height: number;
  readonly panels: readonly P[];
  readonly xTitle?: AxisTitle;
  /** Places of the variants that are drawn without a mark on a panel. */
  readonly variants?: readonly number[];
}

/** Heights of the plots by their number, on a wide and on a narrow place. */
export interface Heights {
  readonly wide: readonly number[];
  readonly narrow: readonly number[];
}

const NARROW = 420;
export const isNarrow = (width: number): boolean => width < NARROW;

/** Height of each of so many plots. */
export function plotHeight({ wide, narrow }: Heights, width: number, count: number): number {
  const heights = isNarrow(width) ? narrow : wide;
  return heights[Math.min(count, heights.length) - 1]!;
}

export const TITLE_LINE = LABEL_SIZE + 3;
/** Between a title and the plot: half a figure of the uppermost tick stands in it. */
const TITLE_GAP = 8;
const TICK_ROOM = 11;
/** Room for the figures of a level axis, and for its title under them. */
export const X_AXIS = 18;
const X_TITLE = 17;

/** A title on as many lines as it needs, and where the plot under it begins. */
export function titleAt(words: readonly string[], top: number, width: number, gap = TITLE_GAP) {
  const lines = words.flatMap((text) => wrapText(text, LABEL_SIZE, width - 4));
  return { title: { lines, top }, plotTop: top + lines.length * TITLE_LINE + gap };
}

const widestOf = (ticks: readonly Ticks[]): number =>
  Math.max(0, ...ticks.flatMap(({ values, text }) => values.map((value) => textWidth(text(value), LABEL_SIZE))));

/** Room at the left for the figures of the upright axes. */
export const leftRoom = (ticks: readonly Ticks[]): number => Math.ceil(widestOf(ticks)) + TICK_ROOM;

/** Figures of a level axis, about one in 70 pixels. */
export const ticksAcross = (range: Range, { left, right }: Pick<Box, 'left' | 'right'>): Ticks =>
  roundTicks(range, Math.max(2, Math.round((right - left) / 70)));

/** Figures of an upright axis, about one in so many pixels. */
export const ticksUp = (range: Range, height: number, every: number, least?: number): Ticks =>
  roundTicks(range, Math.max(3, Math.round(height / every)), least);

/** The title of the level axis under the last plot, and how high the chart is with it. */
export function underAxis(text: string, { left, right, bottom }: Box): { height: number; xTitle: AxisTitle } {
  const height = bottom + X_AXIS + X_TITLE;
  return { height, xTitle: { text, at: { x: (left + right) / 2, y: height - 4 } } };
}
