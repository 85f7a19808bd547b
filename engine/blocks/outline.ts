import type { Outline, OutlineCrossing } from '../physics/index';
import type { OutlineDescription } from '../terms/index';

/** An outline that a person gives by its corners, in the place of fields of the block; it is named where the block declares it. */
export interface OutlineSpec extends Omit<OutlineDescription, 'name'> {
  /** The equations take the lengths of a corner the other way about: of a panel, which is cut along its span. */
  readonly spanFirst?: true;
}

/** Corners of an outline at most: more than a hand would draw. */
export const MOST_CORNERS = 200;

/** Where the corners of each outline lie: both lengths of one after another, and a NaN behind the last. */
export type OutlineColumns = Readonly<Record<string, number>>;

/** The corners of sample i; undefined where the outline has none. */
export function cornersAt(m: Float64Array, column: number, i: number, stride: number): number[] | undefined {
  const corners: number[] = [];
  for (let at = column + i; Number.isFinite(m[at]); at += stride) corners.push(m[at]!);
  return corners.length === 0 ? undefined : corners;
}

/** The two lengths of each corner the other way about. */
export const turned = (outline: Outline): number[] => outline.map((_, k) => outline[k % 2 === 0 ? k + 1 : k - 1]!);

/** What an outline of a block can't be: refused by its equations, told at the outline. */
export class OutlineRefusal extends RangeError {
  /** The two sides that meet where they may not. */
  readonly crossing: Pick<OutlineCrossing, 'first' | 'second'> | undefined;

  constructor(
    readonly outline: string,
    refusal: RangeError,
  ) {
    super(refusal.message);
    // The page knows these messages too, and carries no physics.
    const { first, second } = refusal as Partial<OutlineCrossing>;
    this.crossing = first && second && { first, second };
  }
}

/** What the physics refuses of an outline is told at the outline. */
export function ofOutline<T>(outline: string, measure: () => T): T {
  try {
    return measure();
  } catch (error) {
    throw error instanceof RangeError ? new OutlineRefusal(outline, error) : error;
  }
}
