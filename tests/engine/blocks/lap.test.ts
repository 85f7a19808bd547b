import { beforeEach, describe, expect, it } from 'vitest';
import { air } from '../../../engine/blocks/air/index';
import { body } from '../../../engine/blocks/body/index';
import { thrustLaw } from '../../../engine/blocks/engines/thrust-law';
import { flight } from '../../../engine/blocks/flight/index';
import { lap } from '../../../engine/blocks/lap/index';
import { leadouts } from '../../../engine/blocks/leadouts/index';
import { lines } from '../../../engine/blocks/lines/index';
import { partsResults } from '../../../engine/blocks/parts/results';
import { tail } from '../../../engine/blocks/tail/index';
import { wing } from '../../../engine/blocks/wing/index';
import { newRig, type Rig } from './rig';

const DEGREE = Math.PI / 180;
let rig: Rig;
const parts = { mass: 0.85, x: 0.046, y: 0.01, z: 0, inertia_yy: 0.02, inertia_zz: 0.038 };
/** Runs the lap in a wind. */
function inWind(typed: Readonly<Record<string, number>>, floor = Number.NaN): string | undefined {
  expect(rig.run(air, typed)).toBeUndefined();
  return rig.run(lap, { floor });
}
function readied(flown: Readonly<Record<string, number | string>> = {}, weights: Partial<typeof parts> = {}): void {
  rig = newRig();
  rig.give('parts', partsResults, { ...parts, ...weights });
  for (const each of [air, wing, tail, body, thrustLaw, leadouts, lines]) expect(rig.run(each)).toBeUndefined();
  expect(rig.run(flight, flown)).toBeUndefined();
}
beforeEach(() => readied());

describe('lap in wind', () => {
  it('without wind is level flight', () => {
    expect(inWind({ wind: 0 })).toBeUndefined();
    expect(rig.get('lap.least_pull') / rig.get('flight.pull')).toBeCloseTo(1, 9);
    expect(rig.get('lap.greatest_pull_at_handle') / rig.get('flight.pull_at_handle')).toBeCloseTo(1, 9);
    expect(rig.get('lap.lap_time_change')).toBe(0);
    expect(rig.get('lap.least_pull_in_gust')).toBe(rig.get('lap.least_pull'));
  });
  it('pulls less and more than in calm air, and more so in a gust', () => {
    expect(inWind({ wind: 5, gust: 1.4 })).toBeUndefined();
    const [calm, least, most] = ['flight.pull', 'lap.least_pull', 'lap.greatest_pull'].map((path) => rig.get(path));
    expect(least).toBeLessThan(calm! - 5);
    expect(most).toBeGreaterThan(calm! + 5);
    expect(rig.get('lap.least_pull_in_gust')).toBeLessThan(least!);
    expect(rig.get('lap.greatest_pull_in_gust')).toBeGreaterThan(rig.get('lap.greatest_pull_at_handle'));
    expect(rig.get('lap.floor')).toBeCloseTo(0.85 * 9.80665, 9);
    expect(rig.get('lap.floor_margin')).toBeCloseTo(least! / rig.get('lap.floor'), 12);
    expect(rig.get('lap.slowest')).toBeLessThan(rig.get('flight.speed'));
    expect(rig.get('lap.fastest')).toBeGreaterThan(rig.get('flight.speed'));
  });
  it('meets the floor at the wind that it tells', () => {
    rig.run(lap, { floor: 14 });
    const wind = rig.get('lap.wind_at_floor');
    expect(rig.get('lap.tight_up_to')).toBe(wind);
    inWind({ wind }, 14);
    expect(rig.get('lap.least_pull')).toBeCloseTo(14, 1);
    rig.run(lap, { floor: 100 });
    expect(rig.get('lap.wind_at_floor')).toBeNaN();
    expect(rig.get('lap.tight_up_to')).toBe(0);
    rig.run(lap, { floor: 0.001 });
    expect(rig.get('lap.tight_up_to')).toBeGreaterThan(wind!);
  });
  it('tells bearings by wind and direction of flight', () => {
    inWind({ wind: 5, wind_from: 0 });
    const azimuth = rig.get('lap.least_azimuth') / DEGREE;
    // Wind from the north: downwind is 180°; counter-clockwise flight turns against the compass.
    expect(rig.get('lap.least_bearing') / DEGREE).toBeCloseTo(180 - azimuth, 6);
    readied({ direction: 'clockwise', rotation: 'counter-clockwise' });
    inWind({ wind: 5, wind_from: 0 });
    expect(rig.get('lap.least_azimuth') / DEGREE).toBeCloseTo(azimuth, 9);
    expect(rig.get('lap.least_bearing') / DEGREE).toBeCloseTo(180 + azimuth, 6);
  });
  it('takes the wind at its height', () => {
    inWind({ wind: 5, wind_measured_at: 2, wind_profile: 0.2 });
    expect(rig.get('lap.wind_there')).toBeCloseTo(5 * (2.7 / 2) ** 0.2, 12);
  });
  it('gives up with a reason and the place', () => {
    readied({ height: 9 }, { mass: 0.5 });
    expect(inWind({ wind: 14 })).toBe('slack');
    expect(rig.get('lap.reason_azimuth') / DEGREE).toBeGreaterThan(30);
  });
});
