import { describe, expect, it } from 'vitest';
import { ballastAt, cgShiftByAdding, firstCg, levelWingsCg, shiftOf } from '../../../engine/physics/index';

describe('ballast at a station', () => {
  it('brings the CG where it is wanted', () => {
    const { value, status } = ballastAt(0.85, 0.04, 0.05, 0.58);
    expect(status).toBe('settled');
    expect((0.85 * 0.04 + value * 0.58) / (0.85 + value)).toBeCloseTo(0.05, 15);
  });
  it('serves nose weight as it serves tail weight', () => {
    const { value, status } = ballastAt(0.85, 0.06, 0.05, -0.18);
    expect(status).toBe('settled');
    expect((0.85 * 0.06 - value * 0.18) / (0.85 + value)).toBeCloseTo(0.05, 15);
  });
  it('in an outboard tip moves the CG outboard', () => {
    const { value } = ballastAt(0.85, -0.005, 0.01, 0.48);
    expect((0.85 * -0.005 + value * 0.48) / (0.85 + value)).toBeCloseTo(0.01, 15);
  });
  it('is negative where weight must come off: the other end needs it', () => {
    const { value, status } = ballastAt(0.85, 0.06, 0.05, 0.58);
    expect(status).toBe('take away');
    expect((0.85 * 0.06 + value * 0.58) / (0.85 + value)).toBeCloseTo(0.05, 15);
  });
  it('is nothing when the CG is there already', () => {
    expect(ballastAt(0.85, 0.05, 0.05, 0.58)).toEqual({ value: 0, status: 'settled' });
  });
  it('has no answer at the wanted CG itself', () => {
    const { value, status } = ballastAt(0.85, 0.04, 0.05, 0.0505);
    expect(status).toBe('no arm');
    expect(value).toBeNaN();
  });
  it('refuses a model without mass', () => {
    expect(() => ballastAt(0, 0.04, 0.05, 0.58)).toThrow(new RangeError('mass is 0; it must be greater than 0'));
  });
});

describe('adding a piece', () => {
  it('moves the CG as the moments of both together say', () => {
    const shift = cgShiftByAdding(0.85, 0.046, 0.003, 0.507);
    expect(shift).toBeCloseTo((0.85 * 0.046 + 0.003 * 0.507) / 0.853 - 0.046, 15);
  });
  it('moves nothing at the CG, and undoes what ballast asks for', () => {
    expect(cgShiftByAdding(0.85, 0.046, 0.1, 0.046)).toBe(0);
    const { value } = ballastAt(0.85, 0.04, 0.05, 0.58);
    expect(0.04 + cgShiftByAdding(0.85, 0.04, value, 0.58)).toBeCloseTo(0.05, 15);
  });
  it('has no answer where nothing is left', () => {
    expect(cgShiftByAdding(0.003, 0, -0.003, 0.5)).toBeNaN();
  });
});

describe('moving a piece', () => {
  it('brings the CG where it is wanted', () => {
    const [mass, engine, at] = [0.85, 0.26, -0.15];
    const { value, status } = shiftOf(mass, 0.05, 0.046, engine);
    expect(status).toBe('settled');
    expect((mass * 0.05 - engine * at + engine * (at + value)) / mass).toBeCloseTo(0.046, 15);
    expect(value).toBeLessThan(0);
  });
  it('has no answer for a piece that weighs nothing', () => {
    expect(shiftOf(0.85, 0.05, 0.046, 0).status).toBe('no arm');
  });
});

describe('the CG that holds the wings level', () => {
  const rolled = {
    cg: 0.004,
    liftStation: -0.0085,
    guideY: -0.515,
    press: 0.21,
    torque: 0.14,
    lift: 8.6,
    station: 0.47,
  };
  it('balances lift, weight, torque and the press of the lines in roll once the weight is in', () => {
    const y = levelWingsCg(rolled);
    const mass = (rolled.lift - rolled.press) / 9.81;
    const added = ballastAt(mass, rolled.cg, y, rolled.station).value;
    const lift = (mass + added) * 9.81 + rolled.press;
    // Moments about the CG, outboard down positive: lift at y_L, the lines at the guide, torque raising the outboard wing.
    const left = -lift * (rolled.liftStation - y) - rolled.press * (y - rolled.guideY) - rolled.torque;
    expect(left).toBeCloseTo(0, 14);
    expect(added).toBeGreaterThan(0.02);
  });
  it('is the same whatever part of the weight is in already', () => {
    const y = levelWingsCg(rolled);
    const [mass, half] = [(rolled.lift - rolled.press) / 9.81, 0.01];
    const cg = rolled.cg + cgShiftByAdding(mass, rolled.cg, half, rolled.station);
    expect(levelWingsCg({ ...rolled, cg, lift: rolled.lift + half * 9.81 })).toBeCloseTo(y, 15);
  });
  it('is the lift station without lines and torque', () => {
    expect(levelWingsCg({ ...rolled, press: 0, torque: 0 })).toBeCloseTo(-0.0085, 16);
  });
  it('refuses a model without lift', () => {
    expect(() => levelWingsCg({ ...rolled, lift: 0 })).toThrow('lift is 0; it must be greater than 0');
  });
});

describe('what ballast starts from', () => {
  it('puts the first CG a fifth of the mean chord behind its leading edge', () => {
    expect(firstCg(0.01, 0.2)).toBeCloseTo(0.05, 12);
  });
});
