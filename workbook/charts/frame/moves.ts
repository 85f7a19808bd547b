import { fractionOf, slideText, stepOf } from '../../controls/slide';
import { type Point, valueAt } from '../../drawing/index';
import type { Measure } from './measure';
import type { DrawnPanel } from './panels';
import type { ChartProps } from './props';
import type { Range } from './y-range';

/** Quantities along which the present design can be moved in a plot. */
export interface Movable {
  readonly across?: Measure;
  readonly up?: Measure;
}
/** One direction in which a mark can be moved. */
export interface Way {
  readonly path: string;
  readonly title: string;
  readonly along: 'across' | 'up';
  /** Number on the axis now, and how much a key moves it. */
  readonly now: number;
  readonly step: number;
  /** What is typed for a place in the picture, and for a number on the axis. */
  textAt(place: Point): string;
  text(value: number): string;
}
/** The mark of the present design with the ways in which it goes. */
export interface Handle {
  readonly key: string;
  readonly at: Point;
  readonly ways: readonly Way[];
}

/** A press of a key goes this share of the axis where the variable has no step of its own that is larger. */
const KEY_STEPS = 100;

function wayOf(
  along: Way['along'],
  of: Measure | undefined,
  range: Range,
  [from, to]: readonly [number, number],
  { hand, names, values }: ChartProps,
): Way[] {
  const si = of && valueAt(of.path, names, values);
  if (!of || si === undefined || !hand?.takes(of.path)) return [];
  const typed = valueAt(`${of.path}.step`, names, values);
  // A step is a difference: what a scale begins with is taken off.
  const own = typed === undefined ? 0 : of.shown(typed) - of.shown(0);
  const fine = own > 0 ? own : stepOf(range[0], range[1]);
  const text = (value: number): string => {
    const kept = Math.min(Math.max(value, range[0]), range[1]);
    return slideText(Math.round(kept / fine) * fine, fine, of.info.unit);
  };
  return [
    {
      ...{ path: of.path, title: of.info.title, along, now: of.shown(si), text },
      step: Math.max(fine, stepOf(range[0], range[1]) * (1000 / KEY_STEPS)),
      textAt: ({ x, y }) => text(range[0] + fractionOf(along === 'across' ? x : y, from, to) * (range[1] - range[0])),
    },
  ];
}

/** Every mark of the present design that can be moved. */
export function handlesOf(movable: Movable, panels: readonly DrawnPanel[], props: ChartProps): Handle[] {
  return panels.flatMap(({ key, box, across, up, spots }) => {
    const ways = [
      ...wayOf('across', movable.across, across.range, [box.left, box.right], props),
      ...wayOf('up', movable.up, up.range, [box.bottom, box.top], props),
    ];
    if (ways.length === 0) return [];
    return spots.flatMap((spot) =>
      spot.kind === 'now' ? [{ key: `${key} ${spot.of ?? ''}`, at: spot.at, ways }] : [],
    );
  });
}

/** What an arrow key does with Shift held: the text that it types, undefined where there is no such way. */
export function textByKey(ways: readonly Way[], key: string): { way: Way; text: string } | undefined {
  const along = key === 'ArrowLeft' || key === 'ArrowRight' ? 'across' : 'up';
  const sense = key === 'ArrowRight' || key === 'ArrowUp' ? 1 : key === 'ArrowLeft' || key === 'ArrowDown' ? -1 : 0;
  const way = ways.find((each) => each.along === along);
  return way && sense !== 0 ? { way, text: way.text(way.now + sense * way.step) } : undefined;
}
