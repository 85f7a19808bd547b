import type { Shape } from '../../engine/index';
import { type Frame, project, type View } from './frame';
import type { Point } from './geometry';
import type { Spot } from './spot';

/** A part of a table where it stands in the design. */
export interface PlacedPart {
  readonly path: string;
  readonly title: string;
  /** Its centre of gravity, m. */
  readonly at: Spot;
  /** Lengths along, across and up, m, 0 where it is thin; undefined where nothing says how large it is. */
  readonly size: Spot | undefined;
  /** It is as round as it is thick: a wire, a rod, a tube. */
  readonly round: boolean;
  /** Its moment about the CG over all tail-heavy moments, with its sign; NaN where that has no answer. */
  readonly share: number;
}

/** A part as it is drawn in one view, px. */
export type PartMark =
  | { readonly is: 'box'; readonly at: Point; readonly width: number; readonly height: number }
  | { readonly is: 'round' | 'disc'; readonly at: Point; readonly radius: number };

/** Radius of the disc of a part that has the whole moment, and of the least one, px. */
const WHOLE = 40;
const LEAST = 3;
/** A part that is thin is drawn so wide, px. */
const THIN = 1.5;

/** Its box as that is seen, the circle of a rod seen end on, or, without sizes, a disc whose area goes with its share of the moment. */
export function markOf(frame: Frame, view: View, part: PlacedPart): PartMark {
  const { at: spot, size } = part;
  const at = project(frame, view, spot.x, view === 'plan' ? spot.y : spot.z);
  if (!size) {
    const share = Number.isNaN(part.share) ? 0 : Math.min(1, Math.abs(part.share));
    return { is: 'disc', at, radius: Math.max(LEAST, WHOLE * Math.sqrt(share)) };
  }
  const wide = (metres: number): number => Math.max(THIN, metres * frame.scale);
  if (part.round && view === 'side' && size.x === size.z) return { is: 'round', at, radius: wide(size.x) / 2 };
  return view === 'plan'
    ? { is: 'box', at, width: wide(size.y), height: wide(size.x) }
    : { is: 'box', at, width: wide(size.x), height: wide(size.z) };
}

export function areaOf(mark: PartMark): number {
  return mark.is === 'box' ? mark.width * mark.height : Math.PI * mark.radius ** 2;
}

/** Corners that the frame of the drawing has to hold. */
export const roomOf = (parts: readonly PlacedPart[]): Shape[] =>
  parts.flatMap(({ at, size }) => {
    const half = { x: (size?.x ?? 0) / 2, y: (size?.y ?? 0) / 2, z: (size?.z ?? 0) / 2 };
    const ends = (a: number, b: number, da: number, db: number): number[] => [a - da, b - db, a + da, b + db];
    return [
      { view: 'plan' as const, part: 'room', points: ends(at.x, at.y, half.x, half.y) },
      { view: 'side' as const, part: 'room', points: ends(at.x, at.z, half.x, half.z) },
    ];
  });

/** Parts in the order in which keys go through them: from the nose aft. */
export const alongBody = (parts: readonly PlacedPart[]): readonly PlacedPart[] =>
  parts.toSorted((a, b) => a.at.x - b.at.x || a.at.y - b.at.y || a.path.localeCompare(b.path));
