import type { HeardFlight } from '../../engine/index';
import { lapWords, rpmWords, shaftSpeedOf } from './words';

/** What of a flight that was heard goes into a log: single laps where all are sure, else all of them as one time. */
export function readingsOf({ turns, lap, laps }: HeardFlight) {
  if (typeof turns === 'string') return undefined;
  const single = laps.every(({ sure }) => sure);
  const errors = [rpmWords(turns), ...(typeof lap === 'string' ? [] : [`lap ${lapWords(lap)}`])];
  return {
    shaftSpeed: shaftSpeedOf(turns.value),
    note: `heard: ${errors.join(', ')}`,
    ...(typeof lap === 'string'
      ? {}
      : single
        ? { splits: laps.map(({ time }) => time.value) }
        : { timed: { laps: laps.length, time: lap.value * laps.length } }),
  };
}
