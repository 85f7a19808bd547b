import type { LeverRow, LeverWay } from '../../../engine/index';

/** How a number is changed, and what is typed for it. */
export const wayTitles: Readonly<Record<LeverWay, string>> = {
  both: 'up and down',
  up: 'up only',
  down: 'down only',
  to: 'to another value',
};

/** By an amount that is still to be typed; a choice to each of its other options. */
export const newLever = (of: string): LeverRow => ({ of, way: 'both', text: '' });
