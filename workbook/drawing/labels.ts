import type { Shape } from '../../engine/index';
import type { DrawnShape } from './drawn-shapes';
import type { Point } from './geometry';
import { LABEL_SIZE, LINE_HEIGHT, MARK_RADIUS } from './ink';
import { partWord } from './parts';
import { type LabelWish, type PlacedLabel, placeLabels, type Surroundings } from './place-labels';
import { textWidth, wrapText } from './text-width';
import { type Names, valueAt, valueText } from './values';

/** What a mark says, line by line, and the same on more lines where room is short. */
export interface LabelText {
  readonly settings: readonly (readonly string[])[];
  readonly bold: boolean;
}

/** Marks in the order of their claim on a place. */
const RANK: readonly string[] = ['cg', 'guide', 'neutral_point', 'engine_station', 'motor_station'];
const rankOf = (part: string): number => {
  const rank = RANK.indexOf(part);
  return rank < 0 ? RANK.length : rank;
};

const stationOf = (shapes: readonly Shape[], part: string): number | undefined =>
  shapes.find((s) => s.part === part && s.points.length === 2)?.points[0];

/** Width in pixels for labels that are set on more lines. */
const NARROW = 92;

/** Name and value of a labelled shape; undefined where its value has no answer. The guide also says how it lies to the CG. */
function labelText(shape: Shape, shapes: readonly Shape[], names: Names, values: Float64Array): LabelText | undefined {
  if (shape.label === undefined) return undefined;
  const info = names.get(shape.label);
  const value = valueAt(shape.label, names, values);
  if (!info || value === undefined) return undefined;
  const word = partWord(shape.part);
  const shown = valueText(info, value);
  const further: string[] = [];
  const cg = stationOf(shapes, 'cg');
  if (shape.part === 'guide' && cg !== undefined) {
    const behind = shape.points[0]! - cg;
    further.push(`${valueText(info, Math.abs(behind))} ${behind < 0 ? 'ahead of' : 'behind'} the CG`);
  }
  return {
    settings: [
      [`${word} ${shown}`, ...further],
      further.length > 0
        ? [`${word} ${shown}`, ...further.flatMap((line) => wrapText(line, LABEL_SIZE, NARROW))]
        : [word, shown],
    ],
    bold: shape.part === 'cg',
  };
}

export interface DrawnLabel {
  /** The label in one sentence part, as it is read aloud. */
  readonly said: string;
  readonly lines: readonly string[];
  readonly bold: boolean;
  readonly placed: PlacedLabel;
  /** The side of the label that its point is on: the text is set against it. */
  readonly anchor: 'start' | 'middle' | 'end';
}

export interface TextWish extends LabelWish {
  readonly text: LabelText;
  readonly rank: number;
}

const middleOf = (points: readonly Point[]): Point => {
  const a = points[Math.floor((points.length - 1) / 2)]!;
  const b = points[Math.ceil((points.length - 1) / 2)]!;
  return points.length % 2 === 1 ? a : { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
};

/** A wish for each labelled shape with an answer, the most important first; a label that stands in both views is wished for in the plan only. */
export function labelWishes(
  shapes: readonly Shape[],
  drawn: readonly DrawnShape[],
  names: Names,
  values: Float64Array,
): TextWish[] {
  const wishes = new Map<string, TextWish>();
  const planFirst = [...drawn.filter((d) => d.view === 'plan'), ...drawn.filter((d) => d.view === 'side')];
  for (const on of planFirst) {
    const key = on.shape.label;
    const text = key === undefined || wishes.has(key) ? undefined : labelText(on.shape, shapes, names, values);
    if (key === undefined || !text) continue;
    wishes.set(key, {
      key,
      at: middleOf(on.points),
      settings: text.settings.map((lines) => ({
        width: Math.max(...lines.map((line) => textWidth(line, LABEL_SIZE))) + 4,
        height: lines.length * LINE_HEIGHT,
      })),
      clear: on.kind === 'mark' ? MARK_RADIUS : on.radius,
      text,
      rank: rankOf(on.part),
    });
  }
  return [...wishes.values()].sort((a, b) => a.rank - b.rank);
}

export const saidOf = (text: LabelText): string => text.settings[0]!.join(', ');

/** Places the labels, each near where it stood before. */
export function placeWishes(
  wishes: readonly TextWish[],
  surroundings: Surroundings,
  before: readonly DrawnLabel[],
): DrawnLabel[] {
  const places = new Map(before.map((l) => [l.placed.key, l.placed.place]));
  return placeLabels(wishes, surroundings, places).map((placed): DrawnLabel => {
    const { at, text } = wishes.find((w) => w.key === placed.key)!;
    const anchor = placed.box.left > at.x ? 'start' : placed.box.right < at.x ? 'end' : 'middle';
    return { said: saidOf(text), lines: text.settings[placed.setting]!, bold: text.bold, placed, anchor };
  });
}
