import { beforeEach, describe, expect, it } from 'vitest';
import { air } from '../../../engine/blocks/air/index';
import { body } from '../../../engine/blocks/body/index';
import { thrustLaw } from '../../../engine/blocks/engines/thrust-law';
import { gear } from '../../../engine/blocks/gear/index';
import { partsResults } from '../../../engine/blocks/parts/results';
import { tail } from '../../../engine/blocks/tail/index';
import { wing } from '../../../engine/blocks/wing/index';
import { newRig, type Rig } from './rig';

const WEIGHT = 0.85 * 9.80665;
let rig: Rig;
const withCg = (x: number): void => rig.give('parts', partsResults, { mass: 0.85, x, y: 0.01, z: 0 });

beforeEach(() => {
  rig = newRig();
  for (const each of [air, wing, tail, body, thrustLaw]) expect(rig.run(each)).toBeUndefined();
  withCg(0.046);
});

describe('ground and gear', () => {
  it('stands nose up on wheels and tail rest, with the whole weight on the ground', () => {
    expect(rig.run(gear)).toBeUndefined();
    expect(rig.get('gear.rest_pitch')).toBeGreaterThan(0);
    expect(rig.get('gear.main_load') + rig.get('gear.support_load')).toBeCloseTo(WEIGHT, 12);
    expect(rig.get('gear.support_share')).toBeCloseTo(rig.get('gear.support_load') / WEIGHT, 12);
    expect(rig.get('gear.margin_pavement')).toBeCloseTo(rig.get('gear.tip_ratio') / 0.02, 12);
    expect(rig.get('gear.margin_long_grass')).toBeLessThan(rig.get('gear.margin_short_grass'));
  });
  it('noses over the sooner the further aft the wheels stand', () => {
    const at = (wheel_x: number): number => {
      rig.run(body, { wheel_x });
      expect(rig.run(gear)).toBeUndefined();
      expect(rig.get('gear.strap_x')).toBeCloseTo(wheel_x, 14);
      return rig.get('gear.tip_ratio');
    };
    const [ahead, middle, aft] = [-0.04, -0.02, 0] as const;
    expect(at(ahead)).toBeGreaterThan(at(middle));
    expect(at(middle)).toBeGreaterThan(at(aft));
  });
  it('with a nose wheel tips about that, and sits on its tail with the wheels too far ahead', () => {
    rig.run(body, { wheel_x: 0.08 });
    expect(rig.run(gear, { layout: 'nose_wheel' })).toBeUndefined();
    expect(rig.get('gear.rest_pitch')).toBeCloseTo(0, 12);
    expect(rig.get('gear.wheel_angle')).toBeLessThan(0);
    expect(rig.get('gear.tip_ratio')).toBeGreaterThan(1);
    rig.run(body, { wheel_x: 0.03 });
    expect(rig.run(gear, { layout: 'nose_wheel' })).toBe('tips_back');
  });
  it('says why it cannot stand', () => {
    withCg(-0.2);
    expect(rig.run(gear)).toBe('tips_forward');
    withCg(0.046);
    rig.run(body, { wheel_diameter: 0 });
    expect(rig.run(gear)).toBe('no_wheels');
    rig.run(body);
    expect(rig.run(gear, { support_x: -0.02, support_z: -0.13 })).toBe('inside');
    expect(rig.run(gear, { strap_z: -0.13, strap_y: 0.11 })).toBe('no_leg');
    rig.run(body, { wire_diameter: 0.008 });
    expect(rig.run(gear)).toBe('no_such_wire');
    expect(gear.reasons.no_such_wire).toBe(
      'The gear wire of the fuselage is {body.wire_diameter} thick: the strength of music wire is known from 0.1 to 6.5 mm. Type a gear wire diameter between them.',
    );
    expect(rig.run(gear, { wire_diameter: 0.003 })).toBeUndefined();
    rig.run(body);
  });
  it('a thicker wire is stiffer and bends at a higher load; a longer one takes more energy', () => {
    rig.run(gear, { wire_diameter: 0.003 });
    const [stiffness, load, energy] = ['leg_stiffness', 'leg_yield_load', 'leg_energy'].map((n) =>
      rig.get(`gear.${n}`),
    );
    rig.run(gear, { wire_diameter: 0.004 });
    expect(rig.get('gear.leg_stiffness')).toBeGreaterThan(stiffness!);
    expect(rig.get('gear.leg_yield_load')).toBeGreaterThan(load!);
    rig.run(gear, { wire_diameter: 0.003, strap_z: 0.05 });
    expect(rig.get('gear.leg_energy')).toBeGreaterThan(energy!);
  });
  it('a bend in the wire makes it softer, and only when all three of its places are typed', () => {
    rig.run(gear);
    const straight = rig.get('gear.leg_stiffness');
    rig.run(gear, { bend_1_x: 0.02, bend_1_y: 0.02 });
    expect(rig.get('gear.leg_stiffness')).toBe(straight);
    rig.run(gear, { bend_1_x: 0.06, bend_1_y: 0.03, bend_1_z: -0.05 });
    expect(rig.get('gear.leg_stiffness')).toBeLessThan(straight);
  });
  it('drops as far as its sink speed says', () => {
    rig.run(gear);
    const sink = rig.get('gear.sink_speed');
    expect(rig.get('gear.drop_height')).toBeCloseTo(sink ** 2 / (2 * 9.80665), 12);
    expect(sink).toBeGreaterThan(0.3);
    expect(sink).toBeLessThan(10);
  });
  it('draws the ground under wheels and tail rest', () => {
    rig.run(gear);
    expect(rig.draw(gear).map(({ part }) => part)).toEqual(['ground', 'wire']);
  });
});
