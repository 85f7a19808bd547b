import { beforeEach, describe, expect, it } from 'vitest';
import { air } from '../../../engine/blocks/air/index';
import { body } from '../../../engine/blocks/body/index';
import { control } from '../../../engine/blocks/control/index';
import { thrustLaw } from '../../../engine/blocks/engines/thrust-law';
import { flight } from '../../../engine/blocks/flight/index';
import { leadouts } from '../../../engine/blocks/leadouts/index';
import { lines } from '../../../engine/blocks/lines/index';
import { partsResults } from '../../../engine/blocks/parts/results';
import { shutoff } from '../../../engine/blocks/shutoff/index';
import { tail } from '../../../engine/blocks/tail/index';
import { wing } from '../../../engine/blocks/wing/index';
import { newRig, type Rig } from './rig';

const DEGREE = Math.PI / 180;
let rig: Rig;
const of = (name: string): number => rig.get(`shutoff.${name}`);
beforeEach(() => {
  rig = newRig();
  rig.give('parts', partsResults, { mass: 0.85, x: 0.046, y: 0.01, z: 0, inertia_yy: 0.02, inertia_zz: 0.038 });
  const before = [air, wing, tail, body, thrustLaw, leadouts, lines, flight, control];
  for (const each of before) expect(rig.run(each)).toBeUndefined();
});

describe('fuel shutoff', () => {
  it('trips beyond the most down used and before full down, as it comes', () => {
    expect(rig.run(shutoff)).toBeUndefined();
    expect(of('trip_down')).toBeGreaterThan(of('taut_down'));
    expect(of('used_margin')).toBeCloseTo(of('trip_down') - 15 * DEGREE, 12);
    expect(of('stop_margin')).toBeCloseTo(rig.get('control.down_travel') - of('trip_down'), 12);
    expect(of('used_margin')).toBeGreaterThan(0);
    expect(of('stop_margin')).toBeGreaterThan(0);
    expect(of('cable_needed')).toBeCloseTo(0.01, 12);
    expect(of('overtravel')).toBeCloseTo(of('cable_travel') - 0.01, 12);
  });
  it('trips later with more slack, and in a manoeuvre with too little', () => {
    rig.run(shutoff);
    const at = of('trip_down');
    rig.run(shutoff, { slack: 0.0085 });
    expect(of('trip_down')).toBeGreaterThan(at);
    rig.run(shutoff, { slack: 0, trip_way: 0.002 });
    expect(of('used_margin')).toBeLessThan(0);
  });
  it('has the force that the pull gives beside the elevator', () => {
    rig.run(shutoff);
    const [needed, margin] = [of('pull_needed'), of('force_margin')];
    expect(margin).toBeCloseTo(of('cable_force') / 3, 12);
    // At the pull that just trips it the bellcrank gives just the trip force.
    rig.run(shutoff, { least_pull: needed });
    expect(of('force_margin')).toBeCloseTo(1, 9);
    rig.run(shutoff, { trip_force: 6 });
    expect(of('force_margin')).toBeCloseTo(margin / 2, 9);
    expect(of('pull_needed')).toBeGreaterThan(needed);
    rig.run(shutoff, { least_pull: 0.1 });
    expect(of('force_margin')).toBeLessThan(0);
  });
  it('says why it does not trip, in these words', () => {
    expect(rig.run(shutoff, { slack: 0.05 })).toBe('never_trips');
    expect(of('cable_travel')).toBeLessThan(of('cable_needed'));
    expect(rig.run(shutoff, { cable_angle: 30 * DEGREE })).toBe('no_pull');
    expect(shutoff.reasons).toEqual({
      no_pull:
        'Down elevator does not pull the cable: its arm comes in line with it before full down. Type a wider angle between arm and cable.',
      never_trips:
        'It does not trip: full down pulls {cable_travel} of the cable, and slack and way to the trip take {cable_needed}. Less slack, a longer arm, or more down travel would trip it.',
    });
  });
});
