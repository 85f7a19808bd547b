import { findRoot } from '../../numerics/index';
import type { FlightSetup, FlightSolution } from '../flight/index';
import { extremeOf } from './extremes';
import { flyWindLap } from './lap';
import type { LineProfile } from './lines-in-wind';
import type { WindRoom } from './room';
import type { WindLap } from './wind-lap';

export interface FloorWind {
  /** Wind at the height of the model, m/s; NaN unless settled. */
  readonly wind: number;
  /** `settled`; `below the floor` in calm air already; `not met` up to the strongest wind. */
  readonly status: 'settled' | 'below the floor' | 'not met';
  /** Laps in wind that were solved. */
  readonly iterations: number;
  /** Least pull less floor at that wind, N. */
  readonly residual: number;
}

/** Strongest wind looked at, m/s: nobody flies in more. */
export const STRONGEST_WIND = 20;
const NEAR = 1e-3;
const QUICK = 6;

/**
 * Wind at which the least pull of the lap comes down to a floor (N): the root of T_least(W) = floor, by the secant rule from W = 0 and `guess`,
 * else by a bracket from calm to the strongest wind; `from` is a lap in some wind to begin with, each later one begins with the one before. A wind in which no lap closes counts as below the floor.
 */
export function windAtFloor(
  setup: FlightSetup,
  still: FlightSolution,
  profile: LineProfile,
  floor: number,
  guess: number,
  room: WindRoom,
  lap: WindLap,
  from?: WindLap,
): FloorWind {
  let iterations = 0;
  let before = from;
  const over = (speed: number): number => {
    iterations += 1;
    flyWindLap(setup, still, { speed, profile }, room, lap, before);
    before = lap;
    return lap.status === 'settled' ? extremeOf(lap.pull, -1).value - floor : -floor - speed;
  };
  const calm = still.pull - floor;
  if (calm <= 0) return { wind: Number.NaN, status: 'below the floor', iterations, residual: calm };
  let [a, fa] = [0, calm];
  let b = Math.min(Math.max(guess, 0.5), STRONGEST_WIND);
  let fb = over(b);
  for (let k = 0; k < QUICK && lap.status === 'settled'; k++) {
    if (Math.abs(fb) < NEAR * floor) return { wind: b, status: 'settled', iterations, residual: fb };
    const next = b - (fb * (b - a)) / (fb - fa);
    if (!(next > 0 && next < STRONGEST_WIND)) break;
    [a, fa] = [b, fb];
    b = next;
    fb = over(b);
  }
  if (over(STRONGEST_WIND) > 0) return { wind: Number.NaN, status: 'not met', iterations, residual: Number.NaN };
  const root = findRoot(over, 0, STRONGEST_WIND, { tolerance: NEAR });
  return { wind: root.value, status: 'settled', iterations, residual: root.residual };
}
