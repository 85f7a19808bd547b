import { type FlightSetup, newFlightRoom, newSolution, solveFlight } from '../../engine/physics/index';
import { quern } from '../engine/physics/flight/quern';

const room = newFlightRoom();

/** How long one measurement lasts, ms, and how many are made. */
const LASTS = 400;
const ROUNDS = 7;

export interface FlightRate {
  /** Median over the rounds, solutions a second on one core. */
  readonly perSecond: number;
  /** Highest of the rounds: what the machine does when nothing else runs on it. */
  readonly best: number;
  /** Mean steps of Newton's method a solution. */
  readonly steps: number;
}

/**
 * Solves invented Querns that differ in guide, lines, weight and height, each from a cold start, with the drag of the
 * lines by local Reynolds number (the dearer law), and counts. None settles anything for the next.
 */
export function measureFlights(): FlightRate {
  const designs: FlightSetup[] = Array.from({ length: 512 }, (_, k) => ({
    ...quern,
    lineDragCoefficient: Number.NaN,
    guideX: 0.04 + 0.0001 * (k % 301),
    guideRadius: 15.5 + 0.013 * (k % 457),
    mass: 0.7 + 0.0007 * (k % 401),
    height: 0.5 + 0.02 * (k % 293),
  }));
  const x = newSolution();
  const rates: number[] = [];
  for (let round = 0; round <= ROUNDS; round++) {
    const start = performance.now();
    let solved = 0;
    let passed = 0;
    while (passed < LASTS) {
      for (const design of designs) {
        solveFlight(design, room, x);
        if (x.status !== 'settled') throw new Error(`a design of the measurement doesn't fly: ${x.status}`);
      }
      solved += designs.length;
      passed = performance.now() - start;
    }
    // The first round warms the code up.
    if (round > 0) rates.push((1000 * solved) / passed);
  }
  let steps = 0;
  for (const design of designs) {
    solveFlight(design, room, x);
    steps += x.iterations / designs.length;
  }
  rates.sort((a, b) => a - b);
  return { perSecond: rates[Math.floor(rates.length / 2)]!, best: rates.at(-1)!, steps };
}
