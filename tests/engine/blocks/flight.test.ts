import { beforeEach, describe, expect, it } from 'vitest';
import { air } from '../../../engine/blocks/air/index';
import { body } from '../../../engine/blocks/body/index';
import { thrustLaw } from '../../../engine/blocks/engines/thrust-law';
import { flight } from '../../../engine/blocks/flight/index';
import { leadouts } from '../../../engine/blocks/leadouts/index';
import { lines } from '../../../engine/blocks/lines/index';
import { partsResults } from '../../../engine/blocks/parts/results';
import { tail } from '../../../engine/blocks/tail/index';
import { wing } from '../../../engine/blocks/wing/index';
import { newRig, type Rig } from './rig';

const degree = Math.PI / 180;
/** Mass, CG and inertia of the invented Quern 25. */
const parts = { mass: 0.85, x: 0.046, y: 0.01, z: 0, inertia_yy: 0.02, inertia_zz: 0.038 };
type Typed = Readonly<Record<string, Readonly<Record<string, number | string>>>>;

/** Coefficients of the computed check, typed over the estimates. */
const checked: Typed = {
  air: { density: 1.225 },
  wing: {
    section_slope: 5.7,
    profile_drag: 0.012,
    span_efficiency: 0.85,
    lift_station: -0.0085,
    drag_station: -0.0064,
    moment_coefficient: 0,
    zero_lift_angle: 0,
  },
  // The check has the middle of the fin at the height of the CG.
  tail: { lift_slope: 3.8, fin_slope: 2.5, fin_base: -0.06 },
  body: { slender_couple: 0, drag_area: 0.0035 },
  engine: { static_thrust: 8, zero_thrust_speed: 8 / 0.17, torque: 0.25, rotor_inertia: 0 },
  lines: { drag_coefficient: 1.15, linear_mass: 0.0006 },
};

let rig: Rig;
beforeEach(() => {
  rig = newRig();
});

function fly(typed: Typed = {}, weights: Partial<typeof parts> = {}): string | undefined {
  const all = (name: string) => ({ ...checked[name], ...typed[name] });
  rig.give('parts', partsResults, { ...parts, ...weights });
  for (const [name, block] of Object.entries({ air, wing, tail, body, engine: thrustLaw, leadouts, lines })) {
    expect(rig.run(block, all(name))).toBeUndefined();
  }
  return rig.run(flight, all('flight'));
}

describe('flight block', () => {
  it('rolls by the side force of the fin at its height, and flies without a fin', () => {
    expect(fly()).toBeUndefined();
    const low = rig.get('flight.outboard_low');
    expect(fly({ tail: { ...checked['tail'], fin_base: 0.03 } })).toBeUndefined();
    const q = 0.5 * rig.get('air.density') * rig.get('flight.speed') ** 2;
    const slip = rig.get('flight.sideslip') - (rig.get('tail.fin_quarter_chord') - parts.x) / rig.get('flight.radius');
    const moment = q * rig.get('tail.fin_area') * rig.get('tail.fin_slope') * slip * 0.09;
    const stiffness = rig.get('flight.pull') * (parts.y - rig.get('leadouts.guide_y'));
    expect((rig.get('flight.outboard_low') - low) / (moment / stiffness)).toBeCloseTo(1, 1);
    expect(fly({ tail: { ...checked['tail'], fin_height: 0 } })).toBeUndefined();
    expect(rig.get('tail.fin_area')).toBe(0);
    expect(rig.get('flight.nose_out')).toBeLessThan(0.1);
  });

  it('gives the computed check of the Quern 25 from its fields', () => {
    expect(fly()).toBeUndefined();
    const near = (path: string, wanted: number, share = 0.005) =>
      expect(Math.abs(rig.get(path) / wanted - 1), `${path} ${rig.get(path)}`).toBeLessThan(share);
    near('flight.speed', 24.66);
    near('flight.lap_time', 4.93);
    near('flight.pull', 25.5);
    near('flight.pull_per_weight', 3.06);
    near('flight.pull_at_handle', 25.8);
    near('flight.lift', 10.4);
    near('flight.drag', 2.37);
    near('flight.line_drag', 1.46);
    expect(Math.abs(rig.get('flight.nose_out') / degree + 0.4)).toBeLessThan(0.1);
    expect(Math.abs(rig.get('flight.outboard_low') / degree + 0.4)).toBeLessThan(0.1);
    expect(Math.abs(rig.get('flight.line_trail') / degree - 3.3)).toBeLessThan(0.1);
    expect(rig.get('flight.residual')).toBeLessThan(1e-9);
  });

  it('takes the pull test of a class that says a load', () => {
    fly({ flight: { test_load: 196, test_factor: 50 } });
    expect(rig.get('flight.test_load')).toBe(196);
    expect(rig.get('flight.test_margin')).toBeCloseTo(196 / rig.get('flight.pull_at_handle'), 10);
  });

  it('adds its drag table up, and its margins from the loads', () => {
    fly();
    const rows = ['wing', 'induced', 'body', 'tail', 'items', 'trim'].map((row) => rig.get(`flight.drag_${row}`));
    expect(rows.reduce((a, b) => a + b)).toBeCloseTo(rig.get('flight.drag'), 10);
    const weight = 0.85 * 9.80665;
    expect(rig.get('flight.test_load')).toBeCloseTo(10 * weight, 10);
    expect(rig.get('flight.test_margin')).toBeCloseTo((10 * weight) / rig.get('flight.pull_at_handle'), 10);
    expect(rig.get('flight.breaking_margin')).toBeCloseTo(
      (2 * rig.get('lines.breaking_load')) / rig.get('flight.pull_at_handle'),
      10,
    );
    expect(rig.get('flight.laps_per_minute') * rig.get('flight.lap_time')).toBeCloseTo(2 * Math.PI, 12);
    expect(rig.get('flight.shaft_power')).toBeCloseTo(0.25 * rig.get('flight.shaft_speed'), 10);
  });

  it('turns the torque over with the direction of flight or the rotation, and back with both', () => {
    const low = (typed: Readonly<Record<string, string>>) => {
      fly({ flight: typed });
      return rig.get('flight.outboard_low');
    };
    const usual = low({});
    expect(low({ direction: 'clockwise' })).toBeGreaterThan(usual + degree);
    expect(low({ rotation: 'counter-clockwise' })).toBe(low({ direction: 'clockwise' }));
    expect(low({ direction: 'clockwise', rotation: 'counter-clockwise' })).toBe(usual);
  });

  it('takes height from the ground, less the height of the handle', () => {
    fly({ flight: { height: 3.2, handle_height: 1.7 } });
    const pull = rig.get('flight.pull');
    fly();
    expect(pull).toBeCloseTo(rig.get('flight.pull'), 12);
  });

  it('says why there is no flight', () => {
    expect(fly({ engine: { static_thrust: 1, zero_thrust_speed: 20, torque: 0.02 } })).toBe('too_little_thrust');
    expect(rig.get('flight.shortfall')).toBeGreaterThan(0.1);
    const untipped = { flight: { height: 16 }, engine: { static_thrust: 4, zero_thrust_speed: 24, side_thrust: 0 } };
    expect(fly(untipped, { y: -0.01 })).toBe('lines_slack');
    expect(rig.get('flight.slack_speed')).toBeGreaterThan(10);
    expect(fly({ wing: { lift_limit: 0.1 } })).toBe('stalled');
    expect(rig.get('flight.lift_coefficient')).toBeGreaterThan(0.1);
    expect(fly({ flight: { height: 25 } })).toBe('out_of_reach');
    expect(fly({ tail: { edge: 0.04 } })).toBe('no_tail_arm');
  });

  it('has these sentences for its reasons', () => {
    expect(flight.reasons).toEqual({
      too_little_thrust:
        'Too little thrust to fly level: at {shortfall_speed}, the best speed, {shortfall} are missing. More thrust or less drag of model and lines would do it.',
      lines_slack:
        'The lines go slack: they are tight only above {slack_speed}, and there is not enough thrust for that speed. A lower flight, more thrust, a little more tip weight or the guide further aft would keep them tight.',
      never_tight:
        'The lines are not tight at any speed that the propeller can reach. A lower flight, more thrust, more tip weight or the guide further aft would help.',
      stalled:
        'The wing would have to lift with a coefficient of {lift_coefficient} at {speed}; it stalls at {wing.lift_limit}. Less weight, a lower flight, more wing or more speed would do.',
      out_of_reach:
        'A flying height of {height} with the handle at {handle_height} is more than 80° up on lines of this radius ({lines.guide_radius} to the guide). Fly lower or use longer lines.',
      no_tail_arm:
        'The quarter chords of wing ({wing.quarter_chord}) and tail ({tail.quarter_chord}) stand too close together to balance each other. Move the tail.',
    });
  });

  it('draws both lines from the leadouts with their true trail', () => {
    fly();
    const drawn = rig.draw(flight);
    expect(drawn.map((shape) => [shape.view, shape.part])).toEqual([
      ['plan', 'line'],
      ['plan', 'line'],
    ]);
    const [x0, y0, x1, y1] = drawn[0]!.points as [number, number, number, number];
    expect([x0, y0]).toEqual([expect.closeTo(0.062 - 0.011, 12), -0.515]);
    expect(Math.hypot(x1 - x0, y1 - y0)).toBeCloseTo(18.3, 1);
    // 3.3° behind the radius, of which the guide itself trails 0.05° and the nose points in by 0.4°.
    expect(Math.atan2(x1 - x0, y0 - y1) / degree).toBeCloseTo(3.28 - 0.05 - 0.37 - 0.11, 1);
  });

  it('leaves out what it cannot draw', () => {
    fly({ flight: { height: 25 } });
    expect(rig.draw(flight)).toEqual([]);
  });
});
