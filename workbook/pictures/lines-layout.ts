import { fromSI, type TraceAnswer } from '../../engine/index';
import { LABEL_SIZE, type Point, wrapText } from '../drawing/index';

/** Results of the block that stand in the picture: SI. */
export interface LinesNumbers {
  readonly handle_trail: number;
  readonly line_trail: number;
  readonly bow_back: number;
  readonly bow_down: number;
  readonly pull_at_handle: number;
}

/** What the picture of the lines is drawn from: SI. */
export interface LinesShown {
  readonly trace: TraceAnswer;
  readonly now: LinesNumbers;
  /** Of the baseline, where there is one. */
  readonly baseline?: LinesNumbers | undefined;
  /** Of the present design: radius to the CG along the slant, how far the guide trails behind the radius through it. */
  readonly cgRadius: number;
  readonly guideTrail: number;
  readonly clockwise: boolean;
}

export interface LinesView {
  readonly kind: 'plan' | 'side';
  readonly heading: readonly string[];
  readonly top: number;
  /** How many times the distances from the radius are drawn. */
  readonly times: number;
  /** Where the pilot's axis stands. */
  readonly axis: Point;
  readonly handle: Point;
  readonly guide: Point;
  readonly cg: Point;
  /** From axis to guide: straight, against which everything is drawn. */
  readonly line: readonly Point[];
  readonly baseline: readonly Point[];
  /** The place where the line stands furthest from the straight line between its ends, and the point of that line beside it. */
  readonly bow: { readonly at: Point; readonly from: Point };
  /** Words at the guide and at the pilot stand on this side of the line: −1 above, 1 below. */
  readonly guideSide: -1 | 1;
  readonly pilotSide: -1 | 1;
}

export interface LinesLayout {
  readonly width: number;
  readonly height: number;
  readonly plan: LinesView;
  readonly side: LinesView;
}

const LINE = LABEL_SIZE + 3;
const LEFT = 12;
const RIGHT = 34;
/** Room for words beyond the lines, and between both views. */
const WORDS = 2 * LINE + 10;
const GAP = 10;
/** How far the words at the pilot reach. */
const PILOT_WORDS = 72;
/** No view is higher than this in its own scale. */
const MOST_HEIGHT = 250;
/** The bow takes about so much of the width: the largest round factor that keeps within it. */
const BOW_SHARE = 0.12;
/** A factor is held while the bow stays within these shares, so that the picture doesn't jump under a slide. */
const HELD: readonly [number, number] = [0.03, 0.15];
const TIMES: readonly number[] = [1, 2, 5, 10, 20, 50, 100, 200, 500];

/** One column of the trace by its name. */
export const columnOf = (trace: TraceAnswer, arrays: TraceAnswer['present'], name: string): Float64Array =>
  arrays[trace.columns.findIndex((each) => each.name === name)] ?? new Float64Array(0);

/** In the unit that the column is shown in. */
export const shownValue = (trace: TraceAnswer, name: string, value: number): number =>
  fromSI(value, trace.columns.find((each) => each.name === name)?.unit ?? '');

interface Way {
  /** Level distance from the axis, or height, of the straight radius; and the distance from it in the view. */
  readonly across: number;
  readonly up: number;
  readonly off: number;
}

/** Places of a trace in one view: where they are along the radius through the guide, and how far beside it. */
function waysOf(kind: 'plan' | 'side', trace: TraceAnswer, arrays: TraceAnswer['present']): Way[] {
  const [radius, height, behind] = ['radius', 'height', 'behind'].map((name) => columnOf(trace, arrays, name)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const last = radius.length - 1;
  const slope = Math.atan2(height[last]!, radius[last]!);
  return Array.from(radius, (r, k) => {
    const along = r * Math.cos(slope) + height[k]! * Math.sin(slope);
    const below = r * Math.sin(slope) - height[k]! * Math.cos(slope);
    const straight = { across: along * Math.cos(slope), up: kind === 'side' ? along * Math.sin(slope) : 0 };
    return { ...straight, off: kind === 'plan' ? behind[k]! : below };
  });
}

function timesFor(bow: number, scale: number, width: number, before: number | undefined): number {
  const share = (times: number): number => (bow * scale * times) / width;
  if (before !== undefined && share(before) >= HELD[0] && share(before) <= HELD[1]) return before;
  return TIMES.findLast((times) => share(times) <= BOW_SHARE) ?? 1;
}

/** Lays out plan and side view in one scale, with what lies beside the radius drawn many times. */
export function layOutLines(shown: LinesShown, width: number, before?: LinesLayout): LinesLayout {
  const { trace, cgRadius } = shown;
  const end = waysOf('side', trace, trace.present).at(-1)!;
  const then = trace.baseline && waysOf('side', trace, trace.baseline).at(-1);
  const slope = Math.atan2(end.up, end.across);
  const level = Math.max(cgRadius * Math.cos(slope), then?.across ?? 0);
  const upright = Math.max(Math.abs(cgRadius * Math.sin(slope)), Math.abs(then?.up ?? 0), 1e-9);
  const scale = Math.min((width - LEFT - RIGHT) / level, MOST_HEIGHT / upright);
  const plan = viewOf('plan', shown, { width, scale, slope, top: 0 }, before?.plan.times);
  const planEnd = lowest(plan) + (plan.guideSide < 0 ? LINE + 6 : WORDS);
  const side = viewOf('side', shown, { width, scale, slope, top: planEnd + GAP }, before?.side.times);
  return { width, height: Math.ceil(lowest(side) + WORDS), plan, side };
}

interface Sheet {
  readonly width: number;
  readonly scale: number;
  readonly slope: number;
  readonly top: number;
}

function viewOf(kind: LinesView['kind'], shown: LinesShown, sheet: Sheet, before: number | undefined): LinesView {
  const { trace, cgRadius, guideTrail, clockwise } = shown;
  const { width, scale, slope, top } = sheet;
  const bows = columnOf(trace, trace.present, kind === 'plan' ? 'back' : 'down');
  let index = 0;
  for (const [k, value] of bows.entries()) if (Math.abs(value) > Math.abs(bows[index]!)) index = k;
  const times = timesFor(Math.abs(bows[index] ?? 0), scale, width, before);
  const heading = wrapText(headingOf(kind, times), LABEL_SIZE, width - 4);

  // Off is drawn square to the straight radius: down the sheet in plan for counter-clockwise flight, which runs up it.
  const way = kind === 'plan' && clockwise ? -1 : 1;
  const tilt = kind === 'side' ? slope : 0;
  const raw = ({ across, up, off }: Way): Point => ({
    x: LEFT + scale * across + way * times * scale * off * Math.sin(tilt),
    y: -scale * up + way * times * scale * off * Math.cos(tilt),
  });
  const ways = waysOf(kind, trace, trace.present);
  const ghost = trace.baseline ? waysOf(kind, trace, trace.baseline) : [];
  const out = {
    across: cgRadius * Math.cos(slope),
    up: kind === 'side' ? cgRadius * Math.sin(slope) : 0,
    off: kind === 'plan' ? -guideTrail : 0,
  };
  // The straight line between both ends, beside the furthest place.
  const [first, last] = [ways[0]!, ways.at(-1)!];
  const share = (ways[index]!.across - first.across) / (last.across - first.across || 1);
  const onChord = { ...ways[index]!, off: first.off * (1 - share) + last.off * share };

  const drawn = [...ways, ...ghost, out, { across: 0, up: 0, off: 0 }].map(raw);
  const highest = Math.min(...drawn.map(({ y }) => y));
  const guideSide = kind === 'plan' ? (clockwise ? 1 : -1) : slope < 0 ? 1 : -1;
  const shift = top + heading.length * LINE + (guideSide < 0 ? WORDS : LINE + 8) - highest;
  const place = (each: Way): Point => {
    const { x, y } = raw(each);
    return { x, y: y + shift };
  };
  const axis = place({ across: 0, up: 0, off: 0 });
  const line = ways.map(place);
  // A line that climbs past the words at the pilot leaves them room below.
  const climbs = line.some(({ x, y }) => x < axis.x + PILOT_WORDS && y < axis.y - 8);
  return {
    ...{ kind, heading, top, times, axis, guideSide },
    pilotSide: kind === 'plan' ? guideSide : climbs ? 1 : -1,
    handle: place(first),
    guide: place(last),
    cg: place(out),
    line,
    baseline: ghost.map(place),
    bow: { at: place(ways[index]!), from: place(onChord) },
  };
}

const headingOf = (kind: LinesView['kind'], times: number): string =>
  `${kind === 'plan' ? 'Plan, from above' : 'Side view'}: lengths to scale, ${
    times === 1 ? 'the bow as well' : `the bow drawn ${times} times`
  }`;

const lowest = (view: LinesView): number =>
  Math.max(...[...view.line, ...view.baseline, view.cg, view.axis].map(({ y }) => y));
