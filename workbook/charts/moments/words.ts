import { bound, formatNumber } from '../../../engine/index';
import type { TableData } from '../frame/figures';
import type { Drawn } from '../frame/kind';
import type { PartsChartProps } from '../frame/props';
import type { ReadSeries } from '../frame/readings';
import { inSentence, leftOut, listed } from '../frame/words';
import { type MomentLayout, type Moments, percent, type Side } from './layout';

type Drawing = Drawn<PartsChartProps, Moments, MomentLayout>;

export const momentReadings = ({ data: { unit }, chart }: Drawing): ReadSeries[] =>
  [chart.nose, chart.tail].map((drawn) => ({
    name: drawn.side.name,
    points: drawn.moments.map((each) => ({
      at: { x: (drawn.left + drawn.right) / 2, y: (each.top + each.bottom) / 2 },
      lines: [each.title, bound(formatNumber(each.size), unit), `${percent(each.share)} of its side`],
    })),
  }));

export const momentTable = ({ data: { nose, tail, unit } }: Drawing): TableData => ({
  head: [[{ text: 'Part' }, { text: 'Side' }, { text: `Moment about the CG, ${unit}` }, { text: 'Share of its side' }]],
  rows: [nose, tail].flatMap((side) =>
    side.moments.map((each) => ({
      head: each.title,
      cells: [side.name, formatNumber(each.size), percent(each.share)],
    })),
  ),
});

/** About the CG both sides hold the same, unless a part is left out. */
const balanced = (a: number, b: number): boolean => Math.abs(a - b) <= 0.005 * Math.max(a, b);
const rounded = (value: number): string => formatNumber(Number(value.toPrecision(3)));

/** Parts that the sentence names on each side. */
const NAMED = 2;

export function momentSentences({ data: { nose, tail, unit, missing, total } }: Drawing): string[] {
  const first = (side: Side): string =>
    listed(side.moments.slice(0, NAMED).map((each) => `${inSentence(each.title)} ${percent(each.share)}`));
  const sentences = [
    balanced(nose.total, tail.total)
      ? `Each side holds ${bound(rounded(nose.total), unit)}.`
      : `The nose-heavy side holds ${bound(rounded(nose.total), unit)}, the tail-heavy side ${bound(rounded(tail.total), unit)}.`,
    ...(nose.moments.length > 0 && tail.moments.length > 0
      ? [`Most of the nose-heavy side: ${first(nose)}; of the tail-heavy side: ${first(tail)}.`]
      : []),
  ];
  const then = Math.max(nose.baseline || 0, tail.baseline || 0);
  if (then > 0) sentences.push(`Dotted: the baseline, ${bound(rounded(then), unit)}.`);
  sentences.push(leftOut(missing, total, 'parts'));
  return sentences;
}
