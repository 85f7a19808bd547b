import type { Range } from './y-range';

/** A range that is held needs this share of itself to be used. */
const USED = 0.6;
/** Room that is added at a side where what moves has come out of the picture, as a share of the new range. */
const AHEAD = 0.08;

const span = ([low, high]: Range): number => high - low;

/**
 * Range of an axis while a hand moves the design: the one that was there, as long as everything needed is in it and it is not
 * too large, so that the scale stands still and need not be painted for every place of the hand.
 */
export function holdRange(now: Range, needed: Range, before: Range | undefined): Range {
  if (!before) return now;
  const slack = 1e-9 * span(before);
  const fits = needed[0] >= before[0] - slack && needed[1] <= before[1] + slack;
  if (fits && span(needed) >= USED * span(before)) return before;
  const room = AHEAD * span(now);
  return [now[0] < before[0] ? now[0] - room : now[0], now[1] > before[1] ? now[1] + room : now[1]];
}
