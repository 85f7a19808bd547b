import { positive } from '../domain';
import type { Motor } from './motor';
import type { TwoStrokePoints } from './torque';

/** Shaft speeds (rad/s) between which an engine is looked at: below the first it doesn't run, beyond the second its torque is long gone. */
export interface Running {
  readonly slowest: number;
  readonly fastest: number;
}

const SLOWEST_OVER_PEAK = 0.5;
const FASTEST_OVER_PEAK = 3;
const TOO_FAST = 1.5;
const SLOWEST_OVER_READING = 0.4;
const FASTEST_OVER_READING = 4;
const APART = 0.03;
const SLOWEST_OVER_IDLE = 0.05;
const FASTEST_OVER_IDLE = 1.5;

/** From half the speed of peak torque to three times that of peak power. Guesses. */
export const twoStrokeRunning = ({ torqueSpeed, powerSpeed }: TwoStrokePoints): Running => ({
  slowest: SLOWEST_OVER_PEAK * positive('speed of peak torque', torqueSpeed),
  fastest: FASTEST_OVER_PEAK * positive('speed of peak power', powerSpeed),
});

/** Whether an engine at rest would run beyond one and a half times its speed of peak power (both rad/s), where nobody lets it run. A guess. */
export const runsTooFast = (still: number, powerSpeed: number): boolean =>
  still > TOO_FAST * positive('speed of peak power', powerSpeed);

/** From 0.4 of the slower to four times the first of the shaft speeds (rad/s) that were read on the ground. Guesses. */
export const readRunning = (first: number, second = first): Running => ({
  slowest: SLOWEST_OVER_READING * positive('shaft speed', Math.min(first, second)),
  fastest: FASTEST_OVER_READING * first,
});

/** Whether two shaft speeds lie at least 3 % apart: nearer ones tell no slope of the torque. A guess. */
export const tellSlope = (first: number, second: number): boolean =>
  Math.abs(second / positive('shaft speed', first) - 1) >= APART;

/** From a twentieth to one and a half times the shaft speed K_v U (rad/s) at which a motor without loss would idle; a stalled one burns. Guesses. */
export function motorRunning({ speedPerVolt, voltage }: Motor): Running {
  const idle = positive('speed per volt', speedPerVolt) * positive('voltage', voltage);
  return { slowest: SLOWEST_OVER_IDLE * idle, fastest: FASTEST_OVER_IDLE * idle };
}
