import { holdRange } from './hold-range';
import type { Zone } from './limits';
import { type Range, yRange } from './y-range';

export interface RangeWish {
  readonly numbers: readonly number[];
  readonly zones: readonly Zone[];
  /** A limit's words as lines, and the share of the axis that they need beyond the limit. */
  words(zone: Zone): readonly string[];
  room(lines: readonly string[]): number;
  /** The range that was there, while a hand moves the design. */
  readonly held?: Range | undefined;
  /** Room that the picture needs beside the numbers. */
  aired?(range: Range): Range;
}
export interface Ranged {
  readonly range: Range;
  readonly shown: readonly Zone[];
  readonly outside: readonly Zone[];
  readonly words: ReadonlyMap<Zone, readonly string[]>;
  /** There is a number on it. */
  readonly answered: boolean;
}

/** Range of one direction of a plot with its limits; 0 to 1 where there is no number. */
export function ranged({ numbers, zones, words, room, held, aired = (range) => range }: RangeWish): Ranged {
  const lines = new Map(zones.map((zone) => [zone, words(zone)]));
  const found = yRange(numbers, zones, (zone) => room(lines.get(zone)!));
  if (!found) return { range: [0, 1], shown: [], outside: zones, words: lines, answered: false };
  const range = holdRange(aired(found.range), found.needed, held);
  return { range, shown: found.shown, outside: found.outside, words: lines, answered: true };
}
