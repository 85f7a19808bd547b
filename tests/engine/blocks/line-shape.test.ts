import { beforeEach, describe, expect, it } from 'vitest';
import { air } from '../../../engine/blocks/air/index';
import type { AnyBlock } from '../../../engine/blocks/block';
import { body } from '../../../engine/blocks/body/index';
import { thrustLaw } from '../../../engine/blocks/engines/thrust-law';
import { flight } from '../../../engine/blocks/flight/index';
import { flightResults } from '../../../engine/blocks/flight/results';
import { leadouts } from '../../../engine/blocks/leadouts/index';
import { lineShape } from '../../../engine/blocks/line-shape/index';
import { lines } from '../../../engine/blocks/lines/index';
import { partsResults } from '../../../engine/blocks/parts/results';
import { tail } from '../../../engine/blocks/tail/index';
import { wing } from '../../../engine/blocks/wing/index';
import { newRig, type Rig } from './rig';

const parts = { mass: 0.85, x: 0.046, y: 0.01, z: 0, inertia_yy: 0.02, inertia_zz: 0.038 };
type Typed = Readonly<Record<string, number | string>>;
let rig: Rig;
const get = (path: string): number => rig.get(path.includes('.') ? path : `line_shape.${path}`);

function flown(typed: { readonly lines?: Typed; readonly flight?: Typed } = {}): void {
  rig = newRig();
  rig.give('parts', partsResults, parts);
  const each: readonly (readonly [AnyBlock, Typed?])[] = [
    [air],
    [wing],
    [tail],
    [body],
    [thrustLaw],
    [leadouts],
    [lines, typed.lines],
    [flight, typed.flight],
  ];
  for (const [block, fields] of each) expect(rig.run(block, fields)).toBeUndefined();
}
beforeEach(() => flown());

describe('lines in full', () => {
  it('agrees with level flight on what both tell', () => {
    expect(rig.run(lineShape)).toBeUndefined();
    expect(get('line_trail') / get('flight.line_trail')).toBeCloseTo(1, 2);
    expect(Math.abs(get('drag_change'))).toBeLessThan(0.005);
    expect(Math.abs(get('handle_pull_change'))).toBeLessThan(1e-4);
    expect(Math.abs(get('press_change'))).toBeLessThan(0.012);
    expect(get('stretch') / get('flight.line_stretch')).toBeCloseTo(1, 1);
    expect(get('handle_trail') / (get('flight.line_trail') / 3)).toBeCloseTo(1, 1);
    expect(get('residual')).toBeLessThan(1e-10);
  });

  it('gives numbers of the right size', () => {
    rig.run(lineShape);
    expect(get('bow_back')).toBeGreaterThan(0.1);
    expect(get('bow_back')).toBeLessThan(0.2);
    expect(get('bow_down')).toBeGreaterThan(0.015);
    expect(get('bow_down')).toBeLessThan(0.035);
    expect(get('reach_change')).toBeCloseTo(get('stretch') - get('bow_length'), 12);
    expect(get('length')).toBeCloseTo(18.3, 1);
    expect(get('difference')).toBeCloseTo(0.1 * get('flight.pull'), 12);
    expect(get('harder_pull') - get('easier_pull')).toBeCloseTo(get('difference'), 12);
    expect(get('harder_pull') + get('easier_pull')).toBeCloseTo(get('flight.pull'), 12);
    expect(get('handle_angle')).toBeCloseTo(Math.atan((get('stretch_difference') + get('bow_difference')) / 0.09), 12);
  });

  it('hangs at rest by the pull typed', () => {
    rig.run(lineShape, { rest_pull: 10 });
    const weight = get('lines.weight') / 18.3;
    expect(get('rest_sag') / ((weight * 18.3 ** 2) / 80)).toBeCloseTo(1, 4);
    rig.run(lineShape);
    expect(get('rest_sag') / ((weight * 18.3 ** 2) / (8 * get('flight.pull')))).toBeCloseTo(1, 4);
  });

  it('loses more handle angle the more unevenly the lines pull, and none where they pull alike', () => {
    const angles = [0, 0.1, 0.3, 0.6].map((difference_share) => {
      expect(rig.run(lineShape, { difference_share })).toBeUndefined();
      return get('handle_angle');
    });
    expect(angles[0]).toBe(0);
    for (const [k, angle] of angles.slice(1).entries()) expect(angle).toBeGreaterThan(angles[k]!);
    rig.run(lineShape, { difference: 0.3 * get('flight.pull') });
    expect(get('handle_angle')).toBeCloseTo(angles[2]!, 12);
  });

  it('stretches as level flight tells, where one line takes over the whole pull from an even share', () => {
    rig.run(lineShape, { difference_share: 0.3 });
    const half = Math.tan(get('flight.stretch_angle')) * 0.09;
    expect(get('stretch_difference') / (0.3 * 2 * half)).toBeCloseTo(1, 1);
  });

  it('has no difference with a single line', () => {
    flown({ lines: { count: 1 } });
    expect(rig.run(lineShape, { difference: 4 })).toBeUndefined();
    expect([get('difference'), get('handle_angle')]).toEqual([0, 0]);
    expect(get('harder_pull')).toBe(get('flight.pull'));
  });

  it('bows as much the other way round', () => {
    rig.run(lineShape);
    const [back, trail] = [get('bow_back'), get('handle_trail')];
    flown({ flight: { direction: 'clockwise', rotation: 'counter-clockwise' } });
    rig.run(lineShape);
    expect(get('bow_back')).toBeCloseTo(back, 9);
    expect(get('handle_trail')).toBeCloseTo(trail, 9);
  });

  it('gives a reason where a line has no shape', () => {
    expect(rig.run(lineShape, { difference: 500 })).toBe('line_slack');
    expect(lineShape.reasons.line_slack).toBe(
      'The easier pulled line would have {easier_pull} at the model, with {difference} between both lines: too little to hold a shape. A smaller difference of pull, or more pull, would keep it tight.',
    );
    expect(get('easier_pull')).toBeLessThan(0);
    expect(rig.run(lineShape, { difference_share: 0.99 })).toBe('line_slack');
    expect(get('easier_pull')).toBeGreaterThan(0);
    // A pull that cannot hold the lines against their own drag.
    const level = { lap_time: 5, elevation: 0.05, gravity: 9.80665, direction: 0 };
    rig.give('flight', flightResults, { ...level, pull: 0.3 });
    expect(rig.run(lineShape)).toBe('no_shape');
    expect(lineShape.reasons.no_shape).toBe(
      'No shape of the lines joins handle and guide with the pull of {flight.pull}: the drag of the lines would carry them too far back. More pull, or thinner or fewer lines, would hold them.',
    );
    rig.give('flight', flightResults, { ...level, pull: 3 });
    expect(rig.run(lineShape)).toBeUndefined();
  });

  it('runs along the lines', () => {
    rig.run(lineShape);
    const trace = rig.trace(lineShape, 'line')!;
    expect(Object.keys(trace)).toEqual(Object.keys(lineShape.traces!.line!.columns));
    const [distance, back, tension, trail, radius, height] = [
      'distance',
      'back',
      'tension',
      'trail',
      'radius',
      'height',
    ].map((name) => Array.from(trace[name]!)) as [number[], number[], number[], number[], number[], number[]];
    expect(distance[0]).toBe(0);
    expect(distance.at(-1)).toBeCloseTo(get('length'), 12);
    expect([back[0], back.at(-1)]).toEqual([0, expect.closeTo(0, 8)]);
    expect(Math.max(...back) / get('bow_back')).toBeCloseTo(1, 2);
    expect(tension[0]).toBeCloseTo(get('pull_at_handle'), 9);
    expect(tension.at(-1)).toBeCloseTo(get('flight.pull'), 8);
    // The arm points along the lines, so they leave it along its radius.
    expect(trail[0]).toBeCloseTo(0, 9);
    expect(trail.at(-1)).toBeCloseTo(get('line_trail'), 9);
    expect(Math.hypot(radius.at(-1)!, height.at(-1)!)).toBeCloseTo(18.9, 7);
  });
});
