import type { Box, Segment } from '../../drawing/index';
import type { Zone } from './limits';
import type { Ranged } from './ranged';
import { placeWords, type ZoneWords } from './zone-words';

/** A limit in a plot: on what runs across it or on what runs up. */
export interface DrawnZone {
  readonly zone: Zone;
  readonly along: 'across' | 'up';
  readonly words: ZoneWords | undefined;
}

export interface ZonePlace {
  readonly along: DrawnZone['along'];
  /** The plot, as far as words may stand in it. */
  readonly box: Box;
  /** Pixel of a number along the axis. */
  at(value: number): number;
  /** Words cover these only where there is no free place, and never those that are taken; their own places are added. */
  readonly strokes: readonly Segment[];
  readonly taken: Box[];
  readonly keepOff?: readonly Box[];
}

/** The words of every limit where they cover least. */
export function placeZones({ shown, words }: Pick<Ranged, 'shown' | 'words'>, place: ZonePlace): DrawnZone[] {
  const { along, box, at, strokes, taken, keepOff = [] } = place;
  return shown.map((zone) => {
    const edge = at(zone.limit);
    const below = zone.side === 'below';
    const upright = below ? { ...box, top: edge } : { ...box, bottom: edge };
    const area = along === 'up' ? upright : below ? { ...box, right: edge } : { ...box, left: edge };
    const near = along === 'up' && !below ? 'bottom' : 'top';
    const lines = words.get(zone)!;
    const found = lines.join('') === '' ? undefined : placeWords(lines, area, near, strokes, [...taken, ...keepOff]);
    if (found) taken.push(found.box);
    return { zone, along, words: found };
  });
}
