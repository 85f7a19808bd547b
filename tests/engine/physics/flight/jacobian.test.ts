import { describe, expect, it } from 'vitest';
import { balance, type FlightSetup, newBalance, newConstants, prepare } from '../../../../engine/physics/flight/index';
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

describe('balance', () => {
  it.each(states)('has the derivatives of its own residuals at V %f, sideslip %f, roll %f, pitch %f', (...state) => {
    const c = newConstants();
    expect(prepare(busy, c)).toBe(true);
    const at = (x: readonly number[]) => {
      const b = newBalance();
      balance(c, { speed: x[0]!, sideslip: x[1]!, roll: x[2]!, pitch: x[3]! }, b);
      return b;
    };
    const { jacobian } = at(state);
    for (let column = 0; column < 4; column++) {
      const step = column === 0 ? 1e-4 : 1e-6;
      const up = at(state.map((x, k) => (k === column ? x + step : x))).residual;
      const down = at(state.map((x, k) => (k === column ? x - step : x))).residual;
      for (let row = 0; row < 4; row++) {
        const measured = (up[row]! - down[row]!) / (2 * step);
        expect(jacobian[4 * row + column]).toBeCloseTo(measured, 5);
      }
    }
  });
});
