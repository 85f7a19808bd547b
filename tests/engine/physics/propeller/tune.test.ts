import { describe, expect, it } from 'vitest';
import { bladeShapes } from '../../../../engine/library/index';
import {
  newPropellerState,
  newTuning,
  type PulledState,
  preparePropeller,
  propellerState,
  shapedPropeller,
  tunedBlade,
  tunePropeller,
} from '../../../../engine/physics/index';

const air = { kinematicViscosity: 1.4607e-5, soundSpeed: 340.29 };
const blade = preparePropeller(shapedPropeller(bladeShapes.find((row) => row.name === 'sport')!, 2, 0.2286, 0.1524));
const state = newPropellerState();
/** What a blade that is turned and broader pulls. */
function pull(shift: number, factor: number, turns: number, advanceRatio: number): PulledState {
  propellerState(tunedBlade(blade, shift, factor), advanceRatio, turns, air, state);
  return { turns, advanceRatio, thrust: state.thrust };
}

describe('tuning', () => {
  it('finds the blade that two measurements were made with', () => {
    for (const [shift, factor] of [
      [0.02, 1.1],
      [-0.025, 0.85],
      [0, 1],
    ] as const) {
      const tuning = newTuning();
      tunePropeller(blade, air, [pull(shift, factor, 170, 0), pull(shift, factor, 190, 0.5)], tuning);
      expect(tuning.status).toBe('settled');
      expect(tuning.shift).toBeCloseTo(shift, 6);
      expect(tuning.chordFactor).toBeCloseTo(factor, 6);
      expect(tuning.residual).toBeLessThan(1e-9);
    }
  });
  it('meets one measurement, with no more of either than it needs', () => {
    const tuning = newTuning();
    const measured = pull(0, 1, 190, 0.5);
    tunePropeller(blade, air, [{ ...measured, thrust: 1.1 * measured.thrust }], tuning);
    expect(tuning.status).toBe('settled');
    expect(pull(tuning.shift, tuning.chordFactor, 190, 0.5).thrust / measured.thrust).toBeCloseTo(1.1, 8);
    expect(tuning.shift).toBeGreaterThan(0);
    expect(tuning.chordFactor).toBeGreaterThan(1);
    // Turning alone would take more than both together.
    const size = Math.hypot(tuning.shift / 0.014, (tuning.chordFactor - 1) / 0.115);
    expect(pull(size * 0.0138, 1, 190, 0.5).thrust).toBeLessThan(1.1 * measured.thrust);
  });
  it('says when no blade near it pulls that', () => {
    const tuning = newTuning();
    const measured = pull(0, 1, 170, 0);
    tunePropeller(blade, air, [{ ...measured, thrust: 4 * measured.thrust }], tuning);
    expect(tuning.status).toBe('out of reach');
    tunePropeller(blade, air, [measured, { ...pull(0, 1, 190, 0.5), thrust: 1 }], tuning);
    expect(tuning.status).toBe('out of reach');
  });
  it('takes one or two measurements of a pull', () => {
    const why = 'measured has 0 states; it must have 1 or 2';
    expect(() => tunePropeller(blade, air, [], newTuning())).toThrow(new RangeError(why));
    expect(() => tunePropeller(blade, air, [{ turns: 100, advanceRatio: 0, thrust: -0.1 }], newTuning())).toThrow(
      new RangeError('measured thrust coefficient is -0.1; it must be greater than 0'),
    );
  });
});
