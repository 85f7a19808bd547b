import { beforeEach, describe, expect, it } from 'vitest';
import { air } from '../../../engine/blocks/air/index';
import { engineResults } from '../../../engine/blocks/engines/results';
import { flightResults } from '../../../engine/blocks/flight/results';
import { partsResults } from '../../../engine/blocks/parts/results';
import { tank } from '../../../engine/blocks/tank/index';
import { newRig, type Rig } from './rig';

const G = 9.80665;
let rig: Rig;
const box = { shape: 'box', length: 0.06, width: 0.03, height: 0.04 } as const;
const level = { speed: 25, radius: 18, elevation: 0, outboard_low: 0, sideslip: 0, pitch: 0, gravity: G };

beforeEach(() => {
  rig = newRig();
  rig.run(air, { density: 1.225 });
  rig.give('parts', partsResults, { mass_empty: 0.8, x_empty: 0.05, y_empty: 0.01 });
  rig.give('engine', engineResults, { station: -0.15, offset_y: 0, height: 0 });
  rig.give('flight', flightResults, { ...level, lap_time: 4.5, fuel_per_lap: 1e-6 });
});
const get = (name: string): number => rig.get(`tank.${name}`);

describe('the tank', () => {
  it('shares its fuel into usable and unusable, and counts laps and minutes', () => {
    expect(rig.run(tank, box)).toBeUndefined();
    expect(get('volume')).toBeCloseTo(0.06 * 0.03 * 0.04, 12);
    expect(get('usable') + get('unusable')).toBeCloseTo(get('volume'), 15);
    expect(get('laps')).toBeCloseTo(get('usable') / 1e-6, 9);
    expect(get('time')).toBeCloseTo(get('laps') * 4.5, 9);
    expect((get('surface_angle') * 180) / Math.PI).toBeCloseTo(74.2, 1);
  });
  it('holds less by what its cuts take off, and keeps its pickup clear of them', () => {
    rig.run(tank, box);
    const whole = get('volume');
    expect(rig.run(tank, { ...box, cut1_x: -0.06, cut1_y: 0.01 })).toBeUndefined();
    expect(get('volume')).toBeCloseTo(whole - (0.06 * 0.01 * 0.04) / 2, 12);
    expect(get('usable') + get('unusable')).toBeCloseTo(get('volume'), 15);
    expect(rig.run(tank, { ...box, cut1_x: 0.02, cut1_y: 0.01 })).toBe('pickup');
    expect(rig.run(tank, { ...box, cut1_z: 0.05 })).toBe('cut_away');
    expect(tank.reasons.cut_away).toBe(
      'The cuts leave nothing of the tank: type shorter cuts, or leave some of them blank.',
    );
  });
  it('has the closed form of an open box at rest: head by the height of the surface', () => {
    rig.run(tank, { ...box, vent: 'open', faces: 'across', rest_pitch: 0, spray_z: 0.005, fill: 0.5 });
    // Half full: the surface lies at the middle of the tank, 5 mm below the spray bar.
    expect(get('head_rest')).toBeCloseTo(860 * G * -0.005, 6);
    expect(get('level_rest')).toBeCloseTo(-0.005, 9);
    rig.run(tank, { ...box, vent: 'open', faces: 'across', rest_pitch: 0, spray_z: -0.005, fill: 0.5 });
    expect(get('head_rest')).toBeGreaterThan(0);
  });
  it('leans out as it empties with an open vent; a uniflow vent holds the head until its inner end uncovers', () => {
    rig.run(tank, { ...box, vent: 'open' });
    expect(get('head_change')).toBeLessThan(0);
    const open = get('head_change');
    rig.run(tank, { ...box, vent: 'uniflow' });
    expect(get('head_half')).toBeCloseTo(get('head_start'), 9);
    expect(get('head_change')).toBeGreaterThan(open);
  });
  it('adds the pressure of the silencer, or of the air ahead', () => {
    const vents: Readonly<Record<string, number | string>>[] = [
      { vent: 'open', faces: 'across' },
      { vent: 'open', faces: 'forward' },
      { vent: 'pressurised', pressure: 2000 },
    ];
    const heads = vents.map((vent) => {
      rig.run(tank, { ...box, ...vent });
      return get('head_start');
    });
    expect(heads[1]! - heads[0]!).toBeCloseTo(0.5 * 1.225 * 625, 6);
    expect(heads[2]! - heads[0]!).toBeCloseTo(2000, 6);
  });
  it('leaves more behind the further in its pickup lies', () => {
    rig.run(tank, box);
    const out = get('unusable');
    rig.run(tank, { ...box, pickup_y: 0 });
    expect(get('unusable')).toBeGreaterThan(out);
  });
  it('spills where the outer end of the vent lies deep', () => {
    rig.run(tank, { ...box, rest_pitch: 0, vent_z: 0, outlet_z: -0.05 });
    expect(get('spills_at_rest')).toBe(1);
    rig.run(tank, { ...box, rest_pitch: 0, vent_z: 0, outlet_z: 0.05 });
    expect(get('spills_at_rest')).toBe(0);
    expect(get('spills_in_flight')).toBe(0);
  });
  it('moves the CG aft as fuel ahead of it is drawn', () => {
    rig.run(tank, { ...box, x: -0.06 });
    expect(get('cg_shift')).toBeGreaterThan(0);
    rig.run(tank, { ...box, x: 0.2 });
    expect(get('cg_shift')).toBeLessThan(0);
  });
  it('turns with yaw, roll, station and height without losing fuel', () => {
    rig.run(tank, {});
    const volume = get('volume');
    rig.run(tank, { yaw: 0.1, roll: -0.2, x: -0.1, z: 0.02 });
    expect(get('volume')).toBeCloseTo(volume, 15);
  });
  it('says what is wrong with it', () => {
    expect(rig.run(tank, { pickup_y: 0.5 })).toBe('pickup');
    expect(rig.run(tank, { pickup_y: -0.0139, fill: 0.05 })).toBe('dry');
    expect(rig.run(tank, { taper: 0.1 })).toBe('too_narrow');
    expect(rig.run(tank, { edge_height: 0.1 })).toBe('edge');
    expect(rig.run(tank, { pickup_z: 0.01 })).toBe('pickup');
  });
  it('draws tank and fuel, in plan as in the lap and from the side as at rest', () => {
    rig.run(tank, {});
    expect(rig.draw(tank).map(({ view, part }) => `${view} ${part}`)).toEqual([
      'plan tank',
      'side tank',
      'plan fuel',
      'side fuel',
    ]);
  });
});
