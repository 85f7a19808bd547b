import type { FlightSetup, FlightSolution } from '../flight/index';
import { closeLap } from './closed-lap';
import { marchLap } from './marched-lap';
import type { WindRoom } from './room';
import type { Wind, WindLap } from './wind-lap';

/**
 * The lap in a steady wind that comes back to its own speed: fills `lap`.
 *
 *   dV/dθ_a = F_t R cos φ/(m_eff V),  m_eff = m + m_lines/3;  w_t = −W sin θ_a,  w_r = W cos θ_a
 *
 * θ_a azimuth from straight downwind of the pilot in the direction of flight, F_t force left along the path, the model turned at every place
 * until yaw and roll balance (quasi-steady). Solved at all places at once (`closeLap`); where no lap closes that way, or lines go slack or the
 * wing stalls on it, flown lap after lap (`marchLap`), which says where it gives way. It equals the steady flight `still` exactly at W = 0.
 * `from`: a lap of the same model in another wind to begin with; `lap` itself will do.
 * Derivation: the path's equation of motion with the lines' inertia by moments about the pilot.
 */
export function flyWindLap(
  setup: FlightSetup,
  still: FlightSolution,
  wind: Wind,
  room: WindRoom,
  lap: WindLap,
  from?: WindLap,
): void {
  if (closeLap(setup, still, wind, room, lap, from)) return;
  const rounds = lap.laps;
  marchLap(setup, still, wind, room, lap);
  lap.laps += rounds;
}
