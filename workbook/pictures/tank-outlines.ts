import { TANK_PARTS, TANK_VIEWS, type TankPart, type TankView, type TraceAnswer } from '../../engine/index';

/** One outline or mark of a tank; metres, to the right and up. */
export interface TankOutline {
  readonly view: TankView;
  readonly part: TankPart;
  readonly points: readonly { readonly x: number; readonly y: number }[];
  /** Pa; of the head only. */
  readonly head: number;
}
/** A tank as it empties. */
export interface TankOutlines {
  /** What stands whatever is left. */
  readonly still: readonly TankOutline[];
  /** From empty to filled. */
  readonly levels: readonly { readonly left: number; readonly outlines: readonly TankOutline[] }[];
}

/** Gathers the corners that the engine tells into outlines; those of one outline stand behind each other. */
export function readTankOutlines({ columns, present }: TraceAnswer): TankOutlines {
  const column = (name: string): Float64Array => present[columns.findIndex((each) => each.name === name)]!;
  const [left, view, part] = [column('left'), column('view'), column('part')];
  const [along, up, head] = [column('along'), column('up'), column('head')];
  const still: TankOutline[] = [];
  const levels: { left: number; outlines: TankOutline[] }[] = [];
  const begins = (k: number): boolean =>
    k === 0 || !Object.is(left[k], left[k - 1]) || view[k] !== view[k - 1] || part[k] !== part[k - 1];
  let points: { x: number; y: number }[] = [];
  for (let k = 0; k < left.length; k++) {
    if (begins(k)) {
      points = [];
      const outline = { view: TANK_VIEWS[view[k]!]!, part: TANK_PARTS[part[k]!]!, points, head: head[k]! };
      if (Number.isNaN(left[k])) still.push(outline);
      else if (levels.at(-1)?.left === left[k]) levels.at(-1)!.outlines.push(outline);
      else levels.push({ left: left[k]!, outlines: [outline] });
    }
    points.push({ x: along[k]!, y: up[k]! });
  }
  return { still, levels };
}

/** The head in one view with so much left; undefined where the pickup is uncovered. */
export const headIn = (outlines: readonly TankOutline[], view: TankView): number | undefined =>
  outlines.find((each) => each.view === view && each.part === 'head')?.head;
