import { prepare } from './constants';
import { imbalance, trimAfresh } from './newton';
import type { FlightRoom } from './room';
import type { FlightSetup } from './setup';
import { type FlightSolution, readSolution } from './solution';

/**
 * The balance of yaw, roll, pitch and lift at a speed that is given (m/s), whatever that does to the speed: a model that slows down. Fills
 * `out`, whose residual then says how strongly; false where it doesn't balance there with tight lines. Equations: those of `balance`, its row 0 left out.
 */
export function trimAtSpeed(setup: FlightSetup, speed: number, room: FlightRoom, out: FlightSolution): boolean {
  const { c, state, b, at } = room;
  if (!prepare(setup, c)) return false;
  state.speed = speed;
  if (!trimAfresh(c, state, b, at, true)) return false;
  readSolution(c, state, b, out);
  out.residual = imbalance(c, b);
  return true;
}
