import { describe, expect, it, vi } from 'vitest';
import type { FlightRoom, FlightSetup, FlightSolution } from '../../../engine/physics/flight/index';
import {
  CALM,
  forces,
  fullStep,
  liftLimitAt,
  linesInCalm,
  newBalance,
  newConstants,
  newStep,
  prepare,
} from '../../../engine/physics/flight/index';
import type * as physics from '../../../engine/physics/index';
import { cases } from '../../cases';
import { bruteRoots } from '../physics/flight/brute';
import { flyRandom, seeded } from './random-designs';
import { newRig } from './rig';

/** What the block handed to physics last, and what it got back. */
let setup: FlightSetup;
let solution: FlightSolution;
vi.mock('../../../engine/physics/index', async (original) => {
  const real = await original<typeof physics>();
  return {
    ...real,
    solveFlight(given: FlightSetup, room: FlightRoom, out: FlightSolution) {
      setup = given;
      solution = out;
      real.solveFlight(given, room, out);
    },
  };
});

const SEEDS = [11, 12, 13, 14, 15, 16, 17, 18, 19, 20];
const EACH = cases(1000);
/** Every so many designs the brute scan looks closely; the others get a coarse look. */
const CLOSE = 50;

describe.each(SEEDS)(`${EACH} random designs over the declared ranges, seed %i`, (seed) => {
  it('settled means balanced on the fast side; a reason means that a brute scan finds nothing', () => {
    const next = seeded(seed);
    const rig = newRig();
    const c = newConstants();
    const b = newBalance();
    const step = newStep();
    const counts: Record<string, number> = {};
    for (let k = 0; k < EACH; k++) {
      // Half of them with everything spread over its whole range, half nearer to the usual.
      const reason = flyRandom(rig, next, k % 2 === 0 ? 1 : 0.25);
      // A whole drag area typed smaller than that of the tail in it leaves the rest pushing: no model.
      if (setup.dragArea < 0) continue;
      counts[reason ?? 'settled'] = (counts[reason ?? 'settled'] ?? 0) + 1;
      if (reason === undefined || reason === 'stalled') {
        expect(prepare(setup, c)).toBe(true);
        const at = {
          speed: solution.speed,
          sideslip: solution.sideslip,
          roll: solution.outboardLow,
          pitch: solution.pitch,
        };
        linesInCalm(c, at, b);
        forces(c, at, CALM, b);
        fullStep(b, step);
        const weight = setup.mass * setup.gravity;
        for (const left of b.residual) expect(Math.abs(left) / weight).toBeLessThan(1e-9);
        expect(b.tensionInward).toBeGreaterThan(0);
        expect(step.slope).toBeLessThan(0);
        expect(step.determinant).toBeGreaterThan(0);
        const over = solution.liftCoefficient > liftLimitAt(setup, solution.speed);
        expect(over).toBe(reason === 'stalled');
        if (k % CLOSE === 0) {
          const faster = bruteRoots(setup, 200, 3).filter(([low]) => low > 1.001 * solution.speed);
          expect(faster, `design ${k}`).toEqual([]);
        }
      } else if (/^(too_little_thrust|lines_slack|never_tight)$/.test(reason)) {
        // Far between, two branches with slack lines between them can look like one: what the coarse look finds is looked at closely.
        const suspect = k % CLOSE === 0 || bruteRoots(setup, 40, 1).length > 0;
        const roots = suspect ? bruteRoots(setup, 250, 5) : [];
        expect(roots, `design ${k}, ${reason}`).toEqual([]);
      }
    }
    expect(counts.settled).toBeGreaterThan(EACH / 10);
  });
});
