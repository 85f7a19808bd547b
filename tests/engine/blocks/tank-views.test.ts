import { beforeEach, describe, expect, it } from 'vitest';
import { air } from '../../../engine/blocks/air/index';
import { engineResults } from '../../../engine/blocks/engines/results';
import { flightResults } from '../../../engine/blocks/flight/results';
import { partsResults } from '../../../engine/blocks/parts/results';
import { tank } from '../../../engine/blocks/tank/index';
import { TANK_PARTS, TANK_VIEWS } from '../../../engine/blocks/tank/parts';
import { newRig, type Rig } from './rig';

let rig: Rig;
const box = { shape: 'box', length: 0.06, width: 0.03, height: 0.04, vent: 'open', faces: 'across', spray_z: 0.03 };
const level = { speed: 25, radius: 18, elevation: 0, outboard_low: 0, sideslip: 0, pitch: 0, gravity: 9.80665 };

beforeEach(() => {
  rig = newRig();
  rig.run(air, { density: 1.225 });
  rig.give('parts', partsResults, { mass_empty: 0.8, x_empty: 0.05, y_empty: 0.01 });
  rig.give('engine', engineResults, { station: -0.15, offset_y: 0, height: 0 });
  rig.give('flight', flightResults, { ...level, lap_time: 4.5, fuel_per_lap: 1e-6 });
});

interface Corner {
  readonly left: number;
  readonly view: string;
  readonly part: string;
  readonly along: number;
  readonly up: number;
  readonly head: number;
}
function corners(typed: Readonly<Record<string, number | string>>): Corner[] {
  expect(rig.run(tank, typed)).toBeUndefined();
  const { left, view, part, along, up, head } = rig.trace(tank, 'views')!;
  return Array.from(left!, (_, k) => ({
    ...{ left: left![k]!, along: along![k]!, up: up![k]!, head: head![k]! },
    ...{ view: TANK_VIEWS[view![k]!]!, part: TANK_PARTS[part![k]!]! },
  }));
}
const areaOf = (points: readonly Corner[]): number =>
  Math.abs(
    points.reduce((sum, p, k) => {
      const q = points[(k + 1) % points.length]!;
      return sum + p.along * q.up - q.along * p.up;
    }, 0),
  ) / 2;

describe('the outlines of a tank', () => {
  it('show in the end view as much fuel as is left, with its surface square to the load', () => {
    const all = corners(box);
    const whole = rig.get('tank.volume');
    const fuel = all.filter(({ view, part, left }) => view === 'end' && part === 'fuel' && left === whole / 2);
    expect(areaOf(fuel) * 0.06).toBeCloseTo(whole / 2, 12);
    const out = 25 ** 2 / 18;
    const depths = fuel.map(({ along, up }) => out * along - 9.80665 * up).sort((a, b) => a - b);
    expect(depths[1]!).toBeCloseTo(depths[0]!, 6);
    expect(depths[2]!).toBeGreaterThan(depths[0]! + 0.01);
  });
  it('lie level on the ground whatever the pitch', () => {
    const all = corners({ ...box, rest_pitch: 0.25 });
    const whole = rig.get('tank.volume');
    const fuel = all.filter(({ view, part, left }) => view === 'rest' && part === 'fuel' && left === whole / 2);
    const [first, second] = fuel.map(({ up }) => up).sort((a, b) => b - a);
    expect(second).toBeCloseTo(first!, 9);
    expect(areaOf(fuel) * 0.03).toBeCloseTo(whole / 2, 12);
  });
  it('draw the head from the surface to the spray bar, as long as its pressure says, and as the results have it', () => {
    const all = corners(box);
    const whole = rig.get('tank.volume');
    const heads = (view: string): Corner[] =>
      all.filter((each) => each.view === view && each.part === 'head' && each.left === whole);
    const [foot, spray] = heads('rest');
    expect(foot!.head).toBeCloseTo(rig.get('tank.head_rest'), 9);
    expect(foot!.up - spray!.up).toBeCloseTo(foot!.head / 860 / 9.80665, 12);
    expect(foot!.along).toBeCloseTo(spray!.along, 12);
    expect(heads('end')[0]!.head).toBeCloseTo(rig.get('tank.head_start'), 9);
  });
  it('tell the pickup that is uncovered, below what is unusable and there without a head', () => {
    const all = corners(box);
    const unusable = rig.get('tank.unusable');
    const flying = all.filter(({ view }) => view === 'end');
    const bare = flying.filter(({ part }) => part === 'uncovered').map(({ left }) => left);
    expect(Math.max(...bare)).toBeLessThanOrEqual(unusable);
    expect(flying.filter(({ part }) => part === 'pickup').every(({ left }) => left > unusable)).toBe(true);
    expect(flying.some(({ part, left }) => part === 'head' && bare.includes(left))).toBe(false);
  });
});
