import { newFlightRoom, newSetup, newSolution, solveFlight } from '../../engine/physics/flight/index';
import { flyWindLap, newWindLap, newWindRoom } from '../../engine/physics/wind/index';
import { quern } from '../engine/physics/flight/quern';

const ROUNDS = 15;
const LAPS = 40;
const FLIGHTS = 2000;

const room = newFlightRoom();
const windRoom = newWindRoom();
const still = newSolution();
const lap = newWindLap(48);
const wind = { speed: 5, profile: { handleHeight: 1.2, height: 2.7, exponent: 0 } };

/** Time of the processor for one of many runs of `act`, µs. */
function timeOf(count: number, act: () => void): number {
  const before = process.cpuUsage().user;
  for (let k = 0; k < count; k++) act();
  return (process.cpuUsage().user - before) / count;
}

const middle = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1]!;

/** Times of a lap in 5 m/s of wind from calm air on cables and on solid lines, µs, and how many steady flights one takes: middle of some rounds after the first. */
export function measureLap(): readonly { lines: string; lap: number; flights: number }[] {
  return [
    { lines: 'cables', setup: Object.assign(newSetup(), quern) },
    { lines: 'solid lines', setup: Object.assign(newSetup(), quern, { lineDragCoefficient: Number.NaN }) },
  ].map(({ lines, setup }) => {
    const laps: number[] = [];
    const ratios: number[] = [];
    for (let round = 0; round <= ROUNDS; round++) {
      const flight = timeOf(FLIGHTS, () => solveFlight(setup, room, still));
      const each = timeOf(LAPS, () => flyWindLap(setup, still, wind, windRoom, lap));
      if (round === 0) continue;
      laps.push(each);
      ratios.push(each / flight);
    }
    return { lines, lap: middle(laps), flights: middle(ratios) };
  });
}
