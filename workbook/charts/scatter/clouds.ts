import { LABEL_SIZE, type Point, textWidth } from '../../drawing/index';
import { type LineStyle, lineStyle } from '../frame/palette';
import type { SampleColumn } from '../frame/samples';

/** Designs that are told apart by their signs. */
export interface Groups {
  readonly labels: readonly string[];
  /** Sample → which of them it is of. */
  readonly of: readonly number[];
}

export interface Cloud {
  readonly key: string;
  readonly label: string;
  readonly style: LineStyle;
  /** Which sign its points have. */
  readonly sign: number;
  readonly points: readonly (Point & { readonly sample: number })[];
}
/** What a sign stands for. */
export interface KeyEntry {
  readonly label: string;
  readonly sign: number;
  readonly style: LineStyle;
  readonly left: number;
  readonly line: number;
}

/** For the sign before a name, and between names. */
export const SIGN_ROOM = 12;
const NAME_GAP = 14;

/** Signs with their names, on as many lines as they need. */
export function keyOf(groups: Groups | undefined, width: number): KeyEntry[] {
  let left = 0;
  let line = 0;
  return (groups?.labels ?? []).map((label, sign) => {
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

/** Designs that are drawn of a large sweep. They are picked by a scatter of their numbers, which keeps no pattern of the axes. */
export const MOST_DRAWN = 4000;
const isDrawn = (sample: number, share: number): boolean =>
  share >= 1 || (Math.imul(sample + 1, 0x9e3779b1) >>> 0) / 2 ** 32 < share;

export function cloudsOf(
  across: SampleColumn,
  up: SampleColumn,
  groups: Groups | undefined,
  px: (value: number) => number,
  py: (value: number) => number,
): Cloud[] {
  const clouds = (groups?.labels ?? ['']).map((label, sign) => ({
    ...{ key: `${sign}`, label, sign, style: lineStyle(sign) },
    points: [] as (Point & { sample: number })[],
  }));
  const share = MOST_DRAWN / Math.max(1, across.values.length);
  for (const [sample, a] of across.values.entries()) {
    if (!isDrawn(sample, share)) continue;
    const b = up.values[sample] ?? Number.NaN;
    if (Number.isFinite(a + b)) clouds[groups?.of[sample] ?? 0]!.points.push({ x: px(a), y: py(b), sample });
  }
  return clouds;
}
