import { describe, expect, it } from 'vitest';
import {
  type Air,
  CALM,
  type FlightSetup,
  forces,
  linesInCalm,
  newBalance,
  newConstants,
  prepare,
} from '../../../../engine/physics/flight/index';
import { degree, quern } from './quern';

/** A set-up in which every term is alive. */
const busy: FlightSetup = {
  ...quern,
  cgZ: -0.012,
  height: 11,
  lineDragCoefficient: Number.NaN,
  guideZ: 0.03,
  wingIncidence: 0.5 * degree,
  zeroLiftAngle: -1.2 * degree,
  momentCoefficient: -0.03,
  tailDragArea: 0.0004,
  rudderAngle: 3 * degree,
  slenderCouple: 0.001,
  engineY: 0.004,
  engineZ: 0.02,
  finZ: 0.06,
  downThrust: 1 * degree,
  rotorInertia: 3e-5,
  turning: -1,
  curves: Float64Array.from(quern.curves, (y, k) => y * (1 + 0.002 * (k % 21) ** 2)),
};

const states = [
  [24, 0.01, 0.02, 0.03],
  [17.3, -0.31, 0.22, 0.11],
  [42, 0.24, -0.35, -0.06],
] as const;

/** Along the path, outward, upward. */
const winds: Readonly<Record<string, Air>> = {
  'calm air': CALM,
  'a wind from ahead and outside': { along: -3, out: -4, up: 2, still: false },
  'a wind from behind and inside': { along: 4, out: 5, up: -3, still: false },
};

describe.each(Object.entries(winds))('forces in %s', (_, air) => {
  it.each(states)('have the slopes of their own residuals at V %f, sideslip %f, roll %f, pitch %f', (...state) => {
    const c = newConstants();
    expect(prepare(busy, c)).toBe(true);
    // The inflow along the shaft follows the angles, which slopes leave out in wind: a thrust and torque that don't change show the rest.
    const flat = Float64Array.from(busy.curves, (_y, k) => busy.curves[Math.floor(k / 21) * 21]!);
    if (!air.still) expect(prepare({ ...busy, curves: flat }, c)).toBe(true);
    const at = (x: readonly number[]) => {
      const b = newBalance();
      const here = { speed: x[0]!, sideslip: x[1]!, roll: x[2]!, pitch: x[3]! };
      linesInCalm(c, here, b);
      // What drag and lift were the visit before does not move with the state.
      b.drag = 2.5;
      b.lift = 12;
      forces(c, here, air, b);
      return b;
    };
    const { jacobian } = at(state);
    for (let column = 0; column < 4; column++) {
      const step = column === 0 ? 1e-4 : 1e-6;
      const up = at(state.map((x, k) => (k === column ? x + step : x))).residual;
      const down = at(state.map((x, k) => (k === column ? x - step : x))).residual;
      for (let row = 0; row < 4; row++) {
        const measured = (up[row]! - down[row]!) / (2 * step);
        expect(jacobian[4 * row + column], `row ${row}, column ${column}`).toBeCloseTo(measured, 5);
      }
    }
  });
});
