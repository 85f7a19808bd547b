import { fuelSurface, tankShape } from '../../engine/physics/tank/index';

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

/** Fuel surfaces in a wedge tank a second on one core. */
export function measureSurfaces(): number {
  const tank = tankShape({ length: 0.06, width: 0.028, height: 0.038, edgeHeight: 0.008, taper: 0.014 });
  let volume = 1e-6;
  return rate(500, 8, () => {
    volume = 1e-6 + ((volume + 7e-6) % 4e-5);
    fuelSurface(tank, [1, 30, -9], volume);
  });
}
