import { extent } from './extent';
import type { Zone } from './limits';

/** Numbers at the lower and upper edge of a panel. */
export type Range = readonly [low: number, high: number];

/** Share of the panel's height that its lines keep at least; a limit so far off that it would take more stays out of the picture. */
const LINES_SHARE = 0.4;
/** Room above and below the lines, and the most of the height that one forbidden zone is given for its words. */
const PAD = 0.05;
const MOST_ZONE = 0.35;

export interface RangedZones {
  readonly range: Range;
  /** The range without the room around the lines that is only for looks. */
  readonly needed: Range;
  /** Zones that lie in the picture, and those that don't. */
  readonly shown: readonly Zone[];
  readonly outside: readonly Zone[];
}

/**
 * Range of a panel: every number that it shows, the limits that are near, and behind each limit room for its reason.
 * `room(zone)` is the share of the height that a zone's words need.
 */
export function yRange(
  numbers: readonly number[],
  zones: readonly Zone[],
  room: (zone: Zone) => number,
): RangedZones | undefined {
  const finite = numbers.filter(Number.isFinite);
  const ends = extent(finite);
  if (!ends) return undefined;
  const [low, high] = ends;
  const span = high - low || Math.abs(high) * 0.1 || 1;

  const shown: Zone[] = [];
  const outside: Zone[] = [];
  let bottom = low;
  let top = high;
  const reach = (zone: Zone): number => Math.max(low - zone.limit, zone.limit - high, 0);
  for (const zone of [...zones].sort((a, b) => reach(a) - reach(b))) {
    const wider = Math.max(top, zone.limit) - Math.min(bottom, zone.limit);
    if (wider > span / LINES_SHARE) outside.push(zone);
    else {
      shown.push(zone);
      bottom = Math.min(bottom, zone.limit);
      top = Math.max(top, zone.limit);
    }
  }

  const share = (zone: Zone): number => Math.min(MOST_ZONE, room(zone));
  const below = shown.filter((z) => z.side === 'below');
  const above = shown.filter((z) => z.side === 'above');
  const floor = below.length > 0 ? Math.max(...below.map((z) => z.limit)) : bottom - PAD * span;
  const ceiling = above.length > 0 ? Math.min(...above.map((z) => z.limit)) : top + PAD * span;
  const between = Math.max(ceiling - floor, span * LINES_SHARE);
  const belowShare = Math.max(0, ...below.map(share));
  const aboveShare = Math.max(0, ...above.map(share));
  const total = between / (1 - belowShare - aboveShare);
  const wordsBelow = below.map((z) => z.limit - belowShare * total);
  const wordsAbove = above.map((z) => z.limit + aboveShare * total);
  const around = (pad: number): Range => [Math.min(bottom - pad, ...wordsBelow), Math.max(top + pad, ...wordsAbove)];
  return { range: around(PAD * span), needed: around(0), shown, outside };
}
