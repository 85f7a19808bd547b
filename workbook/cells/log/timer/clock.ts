/** A moment by both clocks of the machine, ms since 1970. */
export interface Moment {
  /** By the clock of the day, which goes on while the machine sleeps, and jumps when somebody sets it. */
  readonly wall: number;
  /** By the clock of the page, which is finer, never jumps, and may stand still while the machine sleeps. */
  readonly page: number;
}

/** The moment of a touch, or now. */
export function momentOf(event?: { readonly timeStamp: number }): Moment {
  const now = performance.now();
  // A touch happened a little before it is handled.
  const late = event ? Math.max(0, now - event.timeStamp) : 0;
  return { wall: Date.now() - late, page: performance.timeOrigin + now - late };
}

/** The two clocks differ by less while nothing is set and nothing sleeps, ms. */
const AGREE = 50;

/** Seconds from one moment to another: by the clock of the page where it agrees with that of the day, which has gone on where it doesn't. */
export function secondsBetween(from: Moment, to: Moment): number {
  const wall = to.wall - from.wall;
  const page = to.page - from.page;
  return (Math.abs(wall - page) <= AGREE ? page : wall) / 1000;
}
