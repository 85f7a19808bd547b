import type { State } from '../flight/index';
import type { LineProfile } from './lines-in-wind';

/** A lap is closed where it misses its own start by less, or a step of its speeds is less (m/s). */
export const CLOSED = 1e-7;
/** Places of a lap: a far finer solution changes the pull by less than 1e-6 in a common wind (tested). */
export const LAP_PLACES = 48;
/** Places of the lap that starts one at twice as many or more. */
export const COARSE = 16;

/** The wind of the day. */
export interface Wind {
  /** At the height of the model, m/s. */
  readonly speed: number;
  readonly profile: LineProfile;
}

/**
 * `settled`; or why there is no lap: lines slack, more lift needed than the wing gives, the model slower than the wind that follows it, no
 * balance in yaw and roll, or no lap that comes back to its own speed.
 */
export type WindLapStatus = 'settled' | 'slack' | 'stalled' | 'overtaken' | 'no balance' | 'not periodic';

/** One lap, at equal steps of azimuth from straight downwind of the pilot, in the direction of flight. SI and radians. */
export interface WindLap {
  status: WindLapStatus;
  /** Rounds of the lap computed to find the one that closes, those at few places too; what the last one misses its own start by, m/s. */
  laps: number;
  residual: number;
  /** Where the reason was met. */
  azimuthOfReason: number;
  lapTime: number;
  readonly azimuth: Float64Array;
  readonly speed: Float64Array;
  readonly pull: Float64Array;
  readonly noseOut: Float64Array;
  readonly outboardLow: Float64Array;
  /** Another lap can start from it where it is settled: in what wind it was flown (m/s; not a number where it was flown lap after lap), and the rest of its state. */
  wind: number;
  readonly sideslip: Float64Array;
  readonly pitch: Float64Array;
  readonly drag: Float64Array;
}

export const newWindLap = (places: number): WindLap => ({
  status: 'settled',
  laps: 0,
  residual: Number.NaN,
  azimuthOfReason: Number.NaN,
  lapTime: Number.NaN,
  azimuth: new Float64Array(places),
  speed: new Float64Array(places),
  pull: new Float64Array(places),
  noseOut: new Float64Array(places),
  outboardLow: new Float64Array(places),
  wind: Number.NaN,
  sideslip: new Float64Array(places),
  pitch: new Float64Array(places),
  drag: new Float64Array(places),
});

/** ψ as in steady flight, from β, δ and θ. */
export function noseOutOf({ sideslip, roll, pitch }: State): number {
  return Math.atan2(
    Math.cos(pitch) * Math.sin(sideslip) * Math.cos(roll) + Math.sin(pitch) * Math.sin(roll),
    Math.cos(pitch) * Math.cos(sideslip),
  );
}
