import { describe, expect, it } from 'vitest';
import {
  advanceRatio,
  lapRate,
  lapsPerFilling,
  lapTimeAt,
  marginOver,
  shareOfPitchSpeed,
  thrustCoefficient,
  tipMach,
} from '../../../engine/physics/index';

describe('figures of a lap', () => {
  it('turn a circle at its speed', () => {
    expect(lapTimeAt(25, 20, 0)).toBeCloseTo((2 * Math.PI * 20) / 25, 14);
    expect(lapTimeAt(25, 20, Math.PI / 3)).toBeCloseTo((Math.PI * 20) / 25, 14);
    expect(lapRate(5)).toBeCloseTo((12 * 2 * Math.PI) / 60, 14); // twelve laps a minute
    expect(() => lapTimeAt(0, 20, 0)).toThrow('speed is 0; it must be greater than 0');
    expect(() => lapTimeAt(25, 0, 0)).toThrow('radius is 0; it must be greater than 0');
    expect(() => lapRate(0)).toThrow('lap time is 0; it must be greater than 0');
  });
  it('set a load against a pull', () => {
    expect([marginOver(80, 20), marginOver(10, 20), marginOver(80, -20)]).toEqual([4, 0.5, -4]);
  });
  it('last as long as fuel, or charge where none is burned', () => {
    expect(lapsPerFilling(60e-6, 1.2e-6, 0, 0)).toBeCloseTo(50, 12);
    expect(lapsPerFilling(0, 0, 6336, 40)).toBeCloseTo(158.4, 12);
    expect(lapsPerFilling(60e-6, 0, 0, 0)).toBeNaN();
    expect(() => lapsPerFilling(1, -1, 1, 1)).toThrow('fuel a lap is -1; it must be 0 or greater');
  });
});

describe('figures of a propeller', () => {
  // A 9×6 at 11 400 rpm and 25 m/s: 190 turns a second, tips at 136.4 m/s.
  const [turns, diameter] = [190, 0.2286];
  it('are told by how far it goes in a turn', () => {
    expect(advanceRatio(25, turns, diameter)).toBeCloseTo(0.57557, 4);
    expect(shareOfPitchSpeed(25, 2 * Math.PI * turns, 0.1524)).toBeCloseTo(25 / (190 * 0.1524), 14);
    expect(() => advanceRatio(25, turns, 0)).toThrow('propeller diameter is 0; it must be greater than 0');
    expect(() => shareOfPitchSpeed(25, 1200, 0)).toThrow('pitch is 0; it must be greater than 0');
  });
  it('set its thrust against the air that it screws through', () => {
    expect(thrustCoefficient(3, 1.2, turns, diameter)).toBeCloseTo(3 / (1.2 * turns ** 2 * diameter ** 4), 14);
    expect(() => thrustCoefficient(3, 0, turns, diameter)).toThrow('air density is 0; it must be greater than 0');
  });
  it('set the tips against sound', () => {
    expect(tipMach(0, turns, diameter, 340.3)).toBeCloseTo((Math.PI * turns * diameter) / 340.3, 14);
    expect(tipMach(25, turns, diameter, 340.3)).toBeCloseTo(Math.hypot(Math.PI * turns * diameter, 25) / 340.3, 14);
    expect(() => tipMach(25, turns, diameter, 0)).toThrow('speed of sound is 0; it must be greater than 0');
  });
});
