import { beforeEach, describe, expect, it } from 'vitest';
import { air } from '../../../engine/blocks/air/index';
import { body } from '../../../engine/blocks/body/index';
import { thrustLaw } from '../../../engine/blocks/engines/thrust-law';
import { flight } from '../../../engine/blocks/flight/index';
import { glide } from '../../../engine/blocks/glide/index';
import { launch } from '../../../engine/blocks/launch/index';
import { leadouts } from '../../../engine/blocks/leadouts/index';
import { lines } from '../../../engine/blocks/lines/index';
import { partsResults } from '../../../engine/blocks/parts/results';
import { tail } from '../../../engine/blocks/tail/index';
import { wing } from '../../../engine/blocks/wing/index';
import { newRig, type Rig } from './rig';

const DEGREE = Math.PI / 180;
let rig: Rig;
beforeEach(() => {
  rig = newRig();
  rig.give('parts', partsResults, { mass: 0.85, x: 0.046, y: 0.01, z: 0, inertia_yy: 0.02, inertia_zz: 0.038 });
  for (const each of [air, wing, tail, body, thrustLaw, leadouts, lines, flight]) expect(rig.run(each)).toBeUndefined();
});
const turnsApart = (a: number, b: number): number => Math.abs(Math.sin((a - b) / 2));

describe('engine-off glide', () => {
  it('shuts off so much before the pit as it flies and rolls', () => {
    rig.run(air, { wind: 0 });
    expect(rig.run(glide, { pit: 200 * DEGREE })).toBeUndefined();
    const whole = rig.get('glide.shut_off_before');
    expect(whole).toBeGreaterThan(rig.get('glide.laps'));
    // Counter-clockwise flight: the bearing falls on the way.
    expect(turnsApart(rig.get('glide.shut_off_bearing') - 2 * Math.PI * whole, 200 * DEGREE)).toBeLessThan(1e-3);
  });
  it('flies further with less drag, and lands slower where the wing lifts more', () => {
    rig.run(air, { wind: 0 });
    rig.run(glide, { propeller_drag_area: 0.006 });
    const laps = rig.get('glide.laps');
    rig.run(glide, { propeller_drag_area: 0 });
    expect(rig.get('glide.laps')).toBeGreaterThan(laps);
  });
  it('says when there is nothing to glide away', () => {
    expect(rig.run(glide, { landing_factor: 2.5, pit: 0 })).toBeUndefined();
    rig.run(wing, { lift_limit: 0.3 });
    expect(rig.run(glide, { landing_factor: 2.5 })).toBe('already_slow');
  });
});

describe('launch', () => {
  it('pulls most at its least when released downwind, near where it tells', () => {
    rig.run(air, { wind: 5, wind_from: 270 * DEGREE });
    expect(rig.run(launch, { release: 270 * DEGREE })).toBeUndefined();
    expect(rig.get('launch.least_pull')).toBeLessThan(0);
    const [best, least] = [rig.get('launch.best_release'), rig.get('launch.best_least_pull')];
    expect(turnsApart(best, 90 * DEGREE)).toBeLessThan(0.4);
    rig.run(launch, { release: best });
    expect(rig.get('launch.least_pull')).toBeCloseTo(least, 9);
  });
  it('says when the ground holds it', () => {
    expect(rig.run(launch, { rolling: 2 })).toBe('does_not_lift');
  });
});
