import type { Shape } from '../../engine/index';
import { LABEL_SIZE } from './ink';
import { partStyle } from './parts';
import { wrapText } from './text-width';
import { type Names, valueAt, valueText } from './values';

/** What a mark says, line by line, and the same on more lines where room is short. */
export interface LabelText {
  readonly settings: readonly (readonly string[])[];
  readonly bold: boolean;
}

/** Marks in the order of their claim on a place. */
const RANK: readonly string[] = ['cg', 'guide', 'neutral_point', 'engine_station'];
export const rankOf = (part: string): number => {
  const rank = RANK.indexOf(part);
  return rank < 0 ? RANK.length : rank;
};

const stationOf = (shapes: readonly Shape[], part: string): number | undefined =>
  shapes.find((s) => s.part === part && s.points.length === 2)?.points[0];

/** Width in pixels for labels that are set on more lines. */
const NARROW = 92;

/** Name and value of a labelled shape; undefined where its value has no answer. The guide also says how it lies to the CG. */
export function labelText(
  shape: Shape,
  shapes: readonly Shape[],
  names: Names,
  values: Float64Array,
): LabelText | undefined {
  if (shape.label === undefined) return undefined;
  const info = names.get(shape.label);
  const value = valueAt(shape.label, names, values);
  if (!info || value === undefined) return undefined;
  const word = partStyle(shape.part).word;
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
