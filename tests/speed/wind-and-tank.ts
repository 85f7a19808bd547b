import { newFlightRoom, newSolution, solveFlight } from '../../engine/physics/flight/index';
import { fuelSurface, tankShape } from '../../engine/physics/tank/index';
import { flyWindLap, newWindLap, newWindRoom } from '../../engine/physics/wind/index';
import { quern } from '../engine/physics/flight/quern';

const room = newFlightRoom();
const windRoom = newWindRoom();

/** How often a second, best of some rounds. */
function rate(each: number, rounds: number, act: () => void): number {
  let best = 0;
  for (let round = 0; round < rounds; round++) {
    const before = performance.now();
    for (let k = 0; k < each; k++) act();
    best = Math.max(best, (1000 * each) / (performance.now() - before));
  }
  return best;
}

/** Laps in 5 m/s of wind, each from calm air, and fuel surfaces in a wedge tank, a second on one core. */
export function measureWindAndTank(): { laps: number; surfaces: number } {
  const still = newSolution();
  solveFlight(quern, room, still);
  const lap = newWindLap(48);
  const wind = { speed: 5, profile: { handleHeight: 1.2, height: 2.7, exponent: 0 } };
  const tank = tankShape({ length: 0.06, width: 0.028, height: 0.038, edgeHeight: 0.008, taper: 0.014 });
  let volume = 1e-6;
  return {
    laps: rate(50, 8, () => flyWindLap(quern, still, wind, windRoom, lap)),
    surfaces: rate(500, 8, () => {
      volume = 1e-6 + ((volume + 7e-6) % 4e-5);
      fuelSurface(tank, [1, 30, -9], volume);
    }),
  };
}
