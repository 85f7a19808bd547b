import { scaleLinear } from 'd3-scale';
import { GUESS_PLACES, type NameInfo } from '../../../engine/index';
import { type Box, LABEL_SIZE, type Point, textWidth } from '../../drawing/index';
import { extent } from '../frame/extent';
import { type Measure, measure } from '../frame/measure';
import { type AxisTitle, leftRoom, type Title, ticksAcross, ticksUp, titleAt, underAxis } from '../frame/panels';
import { linear } from '../frame/scales';
import type { Ticks } from '../frame/ticks';
import type { Range } from '../frame/y-range';
import { END_GAP, type EndLabel, placeEndLabels } from '../line/end-labels';

/** A line that somebody has drawn: heights in SI at GUESS_PLACES places, evenly across. */
interface DrawnGuess {
  readonly by: string;
  readonly heights: readonly number[];
}
/** What is guessed: a result along one number of the design. */
export interface Guessed {
  readonly across: NameInfo;
  readonly up: NameInfo;
  /** The trial series, SI; NaN where a design has no answer. */
  readonly xs: ArrayLike<number>;
  readonly ys: ArrayLike<number>;
  /** The design as it is, SI. */
  readonly now: Point;
  readonly lines: readonly DrawnGuess[];
  /** The answer is drawn too. */
  readonly shown: boolean;
}
export interface GuessLayout {
  readonly height: number;
  readonly box: Box;
  readonly across: { readonly range: Range; readonly ticks: Ticks };
  readonly up: { readonly range: Range; readonly ticks: Ticks };
  readonly title: Title;
  readonly xTitle: AxisTitle;
  readonly measures: { readonly across: Measure; readonly up: Measure };
  readonly now: Point;
  readonly answer: readonly Point[];
  readonly lines: readonly (readonly Point[])[];
  readonly ends: readonly EndLabel[];
  /** Pixels across of the places of a drawn line. */
  readonly places: readonly number[];
  /** Height in pixels of an SI value, and the value at a height, kept within the plot. */
  y(si: number): number;
  valueAt(y: number): number;
}

const HEIGHT = 230;
const TICK_EVERY = 36;
/** Above the present value and the answer, so that the answer doesn't show by where the axis ends. */
const AIR = 1.6;
const MOST_NAME = 12;
const ANSWER = 'answer';

/** An axis from which the answer can't be read: it goes well beyond it and the present value, and has zero in it. */
function guessRange(answers: readonly number[], now: number): Range {
  const [low, high] = extent([...answers, now].filter(Number.isFinite)) ?? [0, 1];
  const most = AIR * Math.max(Math.abs(low), Math.abs(high)) || 1;
  const [from, to] = scaleLinear()
    .domain([low < 0 ? -most : 0, high > 0 ? most : 0])
    .nice(5)
    .domain() as [number, number];
  return [from, to];
}

const short = (by: string): string => (by.length > MOST_NAME ? `${by.slice(0, MOST_NAME - 1)}…` : by);

/** Lays a chart out that is drawn on, and with its answer. */
export function layOutGuess(of: Guessed, width: number): GuessLayout {
  const across = measure(of.across);
  const up = measure(of.up);
  const answers = Array.from(of.ys, (si) => up.shown(si));
  const range = guessRange(answers, up.shown(of.now.y));
  const xs = Array.from(of.xs, (si) => across.shown(si));
  const [first, last] = [xs[0] ?? 0, xs.at(-1) ?? 1];
  const xRange: Range = last > first ? [first, last] : [first - 0.5, first + 0.5];

  const names = of.shown ? [ANSWER, ...of.lines.map(({ by }) => short(by))] : [];
  const widest = Math.max(0, ...names.map((name) => textWidth(name, LABEL_SIZE)));
  const { title, plotTop } = titleAt([up.title], 0, width);
  const ticks = ticksUp(range, HEIGHT, TICK_EVERY);
  const box: Box = {
    ...{ left: leftRoom([ticks]), right: width - (widest > 0 ? END_GAP + widest + 4 : 14) },
    ...{ top: plotTop, bottom: plotTop + HEIGHT },
  };
  const x = linear(xRange, box.left, box.right);
  const y = linear(range, box.bottom, box.top);
  const places = Array.from(
    { length: GUESS_PLACES },
    (_, k) => box.left + ((box.right - box.left) * k) / (GUESS_PLACES - 1),
  );
  const drawnAt = (si: number): number => y(up.shown(si));
  const lines = of.lines.map(({ heights }) => places.map((px, k) => ({ x: px, y: drawnAt(heights[k]!) })));
  const answer = of.shown ? xs.map((value, k) => ({ x: x(value), y: y(answers[k]!) })) : [];
  const ended = [
    { key: ANSWER, name: ANSWER, end: answer.findLast((p) => Number.isFinite(p.y)) },
    ...lines.map((line, k) => ({ key: `${k}`, name: short(of.lines[k]!.by), end: line.at(-1) })),
  ].flatMap(({ key, name, end }) =>
    end && name !== '' ? [{ key, lines: [name], colour: 'currentColor', end: { x: box.right, y: end.y } }] : [],
  );
  const perShown = up.shown(1) - up.shown(0);
  return {
    ...{ box, title, measures: { across, up }, places, lines, answer, y: drawnAt },
    ...underAxis(across.title, box),
    across: { range: xRange, ticks: ticksAcross(xRange, box) },
    up: { range, ticks },
    now: { x: x(across.shown(of.now.x)), y: drawnAt(of.now.y) },
    ends: of.shown ? placeEndLabels(ended, box.right, box.top, box.bottom) : [],
    valueAt(pixel) {
      const share = Math.min(1, Math.max(0, (box.bottom - pixel) / (box.bottom - box.top)));
      return (range[0] + share * (range[1] - range[0]) - up.shown(0)) / perShown;
    },
  };
}
