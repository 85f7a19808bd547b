import { expect, it } from 'vitest';
import { bladeShapes } from '../../../engine/library/index';
import {
  motorRunning,
  newPropellerState,
  preparePropeller,
  propellerState,
  readRunning,
  runsTooFast,
  shaftSpeedOfLap,
  shapedPropeller,
  stillTorque,
  tellSlope,
  twoStrokeRunning,
} from '../../../engine/physics/index';

const peaks = { peakTorque: 0.25, torqueSpeed: 1000, peakPower: 300, powerSpeed: 1400 };
const motor = { speedPerVolt: 100, resistance: 0.1, idleCurrent: 1, voltage: 12, packResistance: 0.02 };

it('looks at a two-stroke from half its speed of peak torque to three times that of peak power', () => {
  expect(twoStrokeRunning(peaks)).toEqual({ slowest: 500, fastest: 4200 });
  expect(() => twoStrokeRunning({ ...peaks, torqueSpeed: 0 })).toThrow(
    new RangeError('speed of peak torque is 0; it must be greater than 0'),
  );
});

it('lets an engine at rest run up to one and a half times its speed of peak power', () => {
  expect(runsTooFast(2100, 1400)).toBe(false);
  expect(runsTooFast(2100.1, 1400)).toBe(true);
});

it('looks near what was read, one reading or two', () => {
  expect(readRunning(1000)).toEqual({ slowest: 400, fastest: 4000 });
  expect(readRunning(1000, 800)).toEqual({ slowest: 320, fastest: 4000 });
  expect(readRunning(1000, 1200)).toEqual({ slowest: 400, fastest: 4000 });
});

it('takes a slope from readings that lie 3 % apart, either way', () => {
  expect([960, 969, 971, 1029, 1031].map((second) => tellSlope(1000, second))).toEqual([
    true,
    true,
    false,
    false,
    true,
  ]);
});

it('looks at a motor from a twentieth to one and a half times its idling without loss', () => {
  expect(motorRunning(motor)).toEqual({ slowest: 60, fastest: 1800 });
});

it('takes 0.85 of rpm × pitch for the speed of a lap', () => {
  expect((0.85 * shaftSpeedOfLap(25, 0.15) * 0.15) / (2 * Math.PI)).toBeCloseTo(25, 12);
});

it('asks at rest for the torque by which blade elements take their power', () => {
  const p = preparePropeller(shapedPropeller(bladeShapes[0]!, 2, 0.2286, 0.1524));
  const air = { kinematicViscosity: 1.46e-5, soundSpeed: 340.3 };
  const state = newPropellerState();
  propellerState(p, 0, 180, air, state);
  const power = state.power * 1.2 * 180 ** 3 * 0.2286 ** 5;
  expect(stillTorque(p, 2 * Math.PI * 180, 1.2, air) * 2 * Math.PI * 180).toBeCloseTo(power, 9);
  expect(power).toBeGreaterThan(50);
});
