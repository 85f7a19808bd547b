import { beforeEach, describe, expect, it } from 'vitest';
import { flightResults } from '../../../engine/blocks/flight/results';
import { leadoutResults } from '../../../engine/blocks/leadouts/index';
import { linesResults } from '../../../engine/blocks/lines/results';
import { partsResults } from '../../../engine/blocks/parts/results';
import { strength } from '../../../engine/blocks/strength/index';
import { SYSTEM } from '../../../engine/blocks/strength/results';
import { newRig, type Rig } from './rig';

let rig: Rig;
const weakest = (): string => SYSTEM[rig.get('strength.weakest')]!;

beforeEach(() => {
  rig = newRig();
  rig.give('parts', partsResults, { mass: 0.85 });
  rig.give('lines', linesResults, { count: 2, breaking_load: 190 });
  rig.give('leadouts', leadoutResults, { bellcrank: 0.076 });
  rig.give('flight', flightResults, { test_load: 83.4, pull_at_handle: 26, speed: 24.7, lap_time: 4.9 });
});

describe('strength and pull test', () => {
  it('finds the weakest part and keeps the two ratios apart', () => {
    expect(rig.run(strength)).toBeUndefined();
    const least = rig.get('strength.weakest_load');
    expect(rig.get('strength.strength_over_test')).toBeCloseTo(least / 83.4, 12);
    expect(rig.get('strength.test_over_pull')).toBeCloseTo(83.4 / 26, 12);
    expect(rig.get('strength.lines_hold')).toBeCloseTo(2 * 0.85 * 190, 9);
    expect(rig.get('strength.uncounted')).toBe(2);
  });
  it('names each part when it is the weakest', () => {
    const typed: Readonly<Record<string, Readonly<Record<string, number>>>> = {
      handle: { handle: 2 },
      handle_cable: { cable_breaking_load: 2 },
      connectors: { connectors: 2 },
      leadouts: { leadout_breaking_load: 2 },
      bellcrank: { bellcrank_strength: 1e5 },
      pivot_bolt: { pivot_strength: 1e6 },
      platform_bearing: { platform_strength: 1e5 },
      platform_glue: { glue_strength: 1e5, platform_glue: 1e-5 },
    };
    for (const [part, fields] of Object.entries(typed)) {
      expect(rig.run(strength, fields), part).toBeUndefined();
      expect(weakest()).toBe(part);
    }
    rig.give('lines', linesResults, { count: 2, breaking_load: 3 });
    rig.run(strength);
    expect(weakest()).toBe('lines');
  });
  it('counts handle and connectors once they are typed', () => {
    rig.run(strength, { handle: 900, connectors: 180 });
    expect(rig.get('strength.uncounted')).toBe(0);
    expect(rig.get('strength.handle_holds')).toBe(900);
    expect(rig.get('strength.connectors_hold')).toBe(360);
  });
  it('takes the pull of the day where it is typed', () => {
    rig.run(strength, { greatest_pull: 40 });
    expect(rig.get('strength.test_over_pull')).toBeCloseTo(83.4 / 40, 12);
  });
  it('holds half where one line carries all', () => {
    rig.run(strength);
    const even = rig.get('strength.lines_hold');
    rig.run(strength, { unevenness: 2 });
    expect(rig.get('strength.lines_hold')).toBeCloseTo(even / 2, 9);
  });
  it('weighs the screws of the engine: tighter clamps harder, until wood or screw gives', () => {
    rig.run(strength, { screw_torque: 0.3 });
    const [wood, screw, clamp] = ['bearer_margin', 'screw_margin', 'clamp_over_pull'].map((n) =>
      rig.get(`strength.${n}`),
    );
    rig.run(strength, { screw_torque: 0.6 });
    expect(rig.get('strength.bearer_margin')).toBeCloseTo(wood! / 2, 12);
    expect(rig.get('strength.screw_margin')).toBeCloseTo(screw! / 2, 12);
    expect(rig.get('strength.clamp_over_pull')).toBeCloseTo(2 * clamp!, 9);
  });
  it('says why it has no answer', () => {
    expect(rig.run(strength, { bellcrank_hole: 0.016 })).toBe('hole');
    expect(rig.run(strength, { screw_diameter: 0.01, bearer_width: 0.009 })).toBe('edge');
  });
});
