import { fromSI } from '../../../engine/index';
import { LABEL_SIZE, textWidth, wrapText } from '../../drawing/index';
import type { Laid } from '../frame/panels';
import type { PartsChartProps } from '../frame/props';
import { linear } from '../frame/scales';
import { spread } from '../frame/spread';
import { roundTicks, type Ticks } from '../frame/ticks';
import type { Range } from '../frame/y-range';

/** One part's moment about the CG, in the unit in which it is shown. */
interface Moment {
  readonly key: string;
  readonly title: string;
  readonly size: number;
  /** Of all moments on its side. */
  readonly share: number;
  /** Parts that are gathered here because each is small. */
  readonly gathered: number;
}
export interface Side {
  readonly name: string;
  readonly total: number;
  /** What all moments of this side came to in the baseline; NaN without one. */
  readonly baseline: number;
  /** And in the variants on the chart, in their order. */
  readonly others: readonly number[];
  /** The greatest first. */
  readonly moments: readonly Moment[];
}
export interface Moments {
  readonly unit: string;
  readonly nose: Side;
  readonly tail: Side;
  /** Parts without an answer. */
  readonly missing: number;
  readonly total: number;
}

/** A part that holds less than this share of its side is gathered with the other small ones. */
const SMALL = 0.025;

/** The moments of all parts about the CG, by the side on which they lie. */
export function readMoments({ parts, names, values, baseline, others = [] }: PartsChartProps): Moments | string {
  const infos = parts.rows.map((row) => names.get(`${parts.name}.${row.name}.moment`));
  const unit = infos.find((info) => info !== undefined)?.unit ?? '';
  const shown = (column: Float64Array | undefined): number[] =>
    infos.map((info) => (info && column ? fromSI(column[info.slot]!, info.unit) : Number.NaN));
  const now = shown(values);
  const then = shown(baseline);
  const elsewhere = others.map((other) => shown(other.values));
  const side = (name: string, sign: 1 | -1): Side => {
    const on = parts.rows.flatMap((row, k) => {
      const size = sign * now[k]!;
      return size > 0 ? [{ key: row.name, title: row.title, size }] : [];
    });
    const total = on.reduce((sum, each) => sum + each.size, 0);
    const totalOf = (sizes: readonly number[]): number => {
      const known = sizes.filter(Number.isFinite);
      return known.length === 0 ? Number.NaN : known.reduce((sum, size) => sum + Math.max(0, sign * size), 0);
    };
    return {
      name,
      total,
      baseline: totalOf(then),
      others: elsewhere.map(totalOf),
      moments: gather(on, total),
    };
  };
  const [nose, tail] = [side('nose-heavy', -1), side('tail-heavy', 1)];
  if (nose.moments.length + tail.moments.length === 0)
    return `${parts.title} has no part with a moment yet. Give its parts a mass and a place.`;
  return {
    ...{ unit, nose, tail },
    missing: now.filter((value) => !Number.isFinite(value)).length,
    total: parts.rows.length,
  };
}

function gather(on: readonly { key: string; title: string; size: number }[], total: number): Moment[] {
  const moments = on
    .map((each): Moment => ({ ...each, share: each.size / total, gathered: 0 }))
    .sort((a, b) => b.size - a.size);
  const small = moments.filter((each) => each.share < SMALL);
  if (small.length < 2) return moments;
  const size = small.reduce((sum, each) => sum + each.size, 0);
  const rest = { key: 'rest', title: `${small.length} others`, size, share: size / total, gathered: small.length };
  return [...moments.filter((each) => each.share >= SMALL), rest];
}

interface DrawnMoment extends Moment {
  readonly top: number;
  readonly bottom: number;
  readonly lines: readonly string[];
  /** Middle of its name. */
  readonly at: number;
}
export interface DrawnSide {
  readonly side: Side;
  readonly left: number;
  readonly right: number;
  /** Where its names begin (right side) or end (left side). */
  readonly names: number;
  readonly moments: readonly DrawnMoment[];
  readonly baseline: number | undefined;
  /** Heights of what variants come to. */
  readonly others: readonly { readonly order: number; readonly at: number }[];
}
export interface MomentLayout extends Laid {
  readonly top: number;
  readonly bottom: number;
  readonly ticks: Ticks;
  readonly nose: DrawnSide;
  readonly tail: DrawnSide;
  y(value: number): number;
}

const TOP = 40;
const LEAST_HEIGHT = 220;
const NAME_LINE = LABEL_SIZE + 2;
const NAME_GAP = 4;
const NAME_OFF = 14;
const AXIS_PAD = 7;

/** Two stacks back to back with the scale between them and the names outside. */
export function layOutMoments(moments: Moments, _of: PartsChartProps, width: number): MomentLayout {
  const { nose, tail } = moments;
  const all = [nose, tail].flatMap(({ total, baseline, others }) => [total, baseline, ...others]);
  const most = Math.max(...all.filter(Number.isFinite)) || 1;
  const range: Range = [0, most];
  const bar = Math.round(Math.min(64, Math.max(34, width * 0.1)));
  const first = roundTicks(range, 6);
  const axis = Math.max(...first.values.map((value) => textWidth(first.text(value), LABEL_SIZE))) + 2 * AXIS_PAD + 6;
  const middle = width / 2;
  const nameWidth = middle - axis / 2 - bar - NAME_OFF - 2;
  const named = (side: Side) =>
    side.moments.map((each) => wrapText(`${each.title} ${percent(each.share)}`, LABEL_SIZE, nameWidth));
  const names = [named(nose), named(tail)];
  const needed = Math.max(
    ...names.map((all) => all.reduce((sum, lines) => sum + lines.length * NAME_LINE + NAME_GAP, 0)),
  );
  const bottom = TOP + Math.max(LEAST_HEIGHT, needed);
  const y = linear(range, bottom, TOP);

  const drawn = (side: Side, lines: readonly (readonly string[])[], left: number, at: number): DrawnSide => {
    let from = 0;
    const stack = side.moments.map((each) => {
      const low = y(from);
      from += each.size;
      return { top: y(from), bottom: low };
    });
    const middles = spread(
      stack.map((each, k) => ({ at: (each.top + each.bottom) / 2, size: lines[k]!.length * NAME_LINE + NAME_GAP })),
      TOP - 4,
      bottom + 4,
    );
    return {
      side,
      left,
      right: left + bar,
      names: at,
      moments: side.moments.map((each, k) => ({ ...each, ...stack[k]!, lines: lines[k]!, at: middles[k]! })),
      baseline: Number.isFinite(side.baseline) ? y(side.baseline) : undefined,
      others: [...side.others.entries()].flatMap(([order, total]) =>
        Number.isFinite(total) && total !== side.total ? [{ order, at: y(total) }] : [],
      ),
    };
  };
  const noseLeft = Math.round(middle - axis / 2 - bar);
  const tailLeft = Math.round(middle + axis / 2);
  const [noseDrawn, tailDrawn] = [
    drawn(nose, names[0]!, noseLeft, noseLeft - NAME_OFF),
    drawn(tail, names[1]!, tailLeft, tailLeft + bar + NAME_OFF),
  ];
  return {
    ...{ width, height: bottom + 8, panels: [], top: TOP, bottom, ticks: roundTicks(range, 6), y },
    ...{ nose: noseDrawn, tail: tailDrawn },
    variants: [noseDrawn, tailDrawn].flatMap(({ others }) => others.map(({ order }) => order)),
  };
}

export const percent = (share: number): string => `${Math.round(100 * share)} %`;
export const momentLine = NAME_LINE;
