import { beforeEach, describe, expect, it } from 'vitest';
import { air } from '../../../engine/blocks/air/index';
import { body } from '../../../engine/blocks/body/index';
import { control } from '../../../engine/blocks/control/index';
import { UP_LINES } from '../../../engine/blocks/control/results';
import { thrustLaw } from '../../../engine/blocks/engines/thrust-law';
import { flight } from '../../../engine/blocks/flight/index';
import { glide } from '../../../engine/blocks/glide/index';
import { leadouts } from '../../../engine/blocks/leadouts/index';
import { lines } from '../../../engine/blocks/lines/index';
import { partsResults } from '../../../engine/blocks/parts/results';
import { tail } from '../../../engine/blocks/tail/index';
import { wing } from '../../../engine/blocks/wing/index';
import { newRig, type Rig } from './rig';

const DEGREE = Math.PI / 180;
let rig: Rig;
const of = (name: string): number => rig.get(`control.${name}`);
const parts = { mass: 0.85, x: 0.046, y: 0.01, z: 0, inertia_yy: 0.02, inertia_zz: 0.038 };
function readied(weights: Partial<typeof parts> = {}): void {
  rig = newRig();
  rig.give('parts', partsResults, { ...parts, ...weights });
  const before = [air, wing, tail, body, thrustLaw, leadouts, lines, flight];
  for (const each of before) expect(rig.run(each)).toBeUndefined();
}
beforeEach(() => readied());

describe('control linkage', () => {
  it('is neutral with a pushrod made to measure, and moves nearly alike both ways', () => {
    expect(rig.run(control)).toBeUndefined();
    expect(of('neutral')).toBeCloseTo(0, 10);
    expect(of('pushrod_change')).toBeCloseTo(0, 10);
    expect(of('line_change')).toBeCloseTo(0, 10);
    expect(of('symmetry')).toBeCloseTo(1, 1);
    expect(of('handle_at_up')).toBeCloseTo(35 * DEGREE, 9);
    expect(of('up_travel')).toBeGreaterThan(25 * DEGREE);
    expect(of('up_travel')).toBeLessThan(40 * DEGREE);
  });
  it('says how to mend a neutral that is not: by the pushrod, or by the lines', () => {
    rig.run(control, { pushrod_length: 0.452, up_line_longer: 0.002 });
    const neutral = of('neutral');
    expect(Math.abs(neutral)).toBeGreaterThan(DEGREE);
    const [rod, lines] = [of('pushrod_change'), of('line_change')];
    rig.run(control, { pushrod_length: 0.452 + rod, up_line_longer: 0.002 });
    expect(of('neutral')).toBeCloseTo(0, 9);
    rig.run(control, { pushrod_length: 0.452, up_line_longer: 0.002 + lines });
    expect(of('neutral')).toBeCloseTo(0, 9);
  });
  it('tells which line is up, from the sides of arm and horn', () => {
    const upLine = (typed: Readonly<Record<string, string>>): string => {
      rig.run(control, typed);
      return UP_LINES[of('up_line')]!;
    };
    expect(upLine({})).toBe('rear');
    expect(upLine({ horn_side: 'above' })).toBe('front');
    expect(upLine({ pushrod_side: 'inboard' })).toBe('front');
    expect(upLine({ pushrod_side: 'inboard', horn_side: 'above' })).toBe('rear');
  });
  it('moves less with a longer horn or a shorter arm, and ends at a stop that comes first', () => {
    rig.run(control);
    const [up, ratio, needed] = [of('up_travel'), of('ratio'), of('pull_needed')];
    rig.run(control, { horn_height: 0.03 });
    expect(of('up_travel')).toBeLessThan(up);
    expect(of('ratio')).toBeCloseTo((ratio * 0.025) / 0.03, 2);
    expect(of('pull_needed')).toBeLessThan(needed);
    rig.run(control, { stop_up: 20 * DEGREE });
    expect(of('up_limit')).toBe(1);
    expect(of('down_limit')).toBe(0);
    expect(of('up_turn')).toBeCloseTo(20 * DEGREE, 12);
    expect(of('symmetry')).toBeCloseTo(1, 1);
  });
  it('holds the pull of level flight, or the least that is typed, against the hinge moment', () => {
    rig.run(control);
    expect(of('least_pull')).toBe(rig.get('flight.pull'));
    const needed = of('pull_needed');
    expect(of('pull_share')).toBeCloseTo(needed / rig.get('flight.pull'), 12);
    rig.run(control, { least_pull: needed / 2 });
    expect(of('pull_margin')).toBeCloseTo(0.5, 12);
    expect(of('pull_needed')).toBeCloseTo(needed, 12);
    // At the pull that just holds it the whole pull is in one line.
    rig.run(control, { least_pull: needed });
    expect(of('line_difference')).toBeCloseTo(needed, 9);
  });
  it('asks for a pull that grows with the square of the speed, but for friction', () => {
    const still = { friction: 0, pivot_friction: 0 };
    rig.run(control, { ...still, greatest_speed: 20 });
    const slow = of('pull_needed');
    rig.run(control, { ...still, greatest_speed: 40 });
    expect(of('pull_needed')).toBeCloseTo(4 * slow, 9);
    rig.run(control, { greatest_speed: 40 });
    expect(of('pull_needed')).toBeGreaterThan(4 * slow);
    rig.run(control, { ...still, greatest_speed: 40, used_up: 5 * DEGREE, used_down: 25 * DEGREE });
    expect(of('most_moment')).toBe(of('moment_down'));
    expect(of('moment_down')).toBeLessThan(0);
    expect(of('line_difference')).toBeGreaterThan(0);
  });
  it('pushes a horn below and pulls one above for up elevator', () => {
    rig.run(control);
    expect(of('pushrod_force')).toBeLessThan(0);
    rig.run(control, { horn_side: 'above' });
    expect(of('pushrod_force')).toBeGreaterThan(0);
  });
  it('takes the elevator of level flight, and that of the glide at its landing speed', () => {
    rig.run(glide);
    rig.run(control);
    expect(of('needed')).toBe(rig.get('flight.elevator'));
    expect(of('margin')).toBeCloseTo(of('up_travel') - of('needed'), 12);
    expect(of('margin_down')).toBeCloseTo(of('down_travel') + of('needed'), 12);
    expect(of('landing_speed')).toBeCloseTo(rig.get('glide.landing_speed'), 12);
    expect(of('needed_landing')).toBeGreaterThan(of('needed'));
    const at = of('needed_landing');
    rig.run(control, { landing_speed: 0.9 * of('landing_speed') });
    expect(of('needed_landing')).toBeGreaterThan(at);
  });
  it('needs more up elevator the further forward the CG stands, by the static margin', () => {
    rig.run(control);
    const [landing, level] = [of('needed_landing'), of('needed')];
    readied({ x: 0.026 });
    rig.run(control);
    expect(of('needed_landing')).toBeGreaterThan(landing);
    // Δδ = W Δx/(q S_t a_t τ l_t), lines and propeller alike: the rule of thumb of the moments within a tenth.
    const speed = of('landing_speed');
    const q = 0.5 * rig.get('air.density') * speed * speed;
    const arm = rig.get('tail.quarter_chord') - rig.get('wing.quarter_chord');
    const strength = rig.get('tail.area') * rig.get('tail.lift_slope') * rig.get('tail.elevator_effect');
    const byMoment = (0.85 * 9.80665 * 0.02) / (q * strength * arm);
    expect((of('needed_landing') - landing) / byMoment).toBeGreaterThan(0.9);
    expect((of('needed_landing') - landing) / byMoment).toBeLessThan(1.5);
    expect(of('needed')).toBeGreaterThan(level);
  });
  it('says why it has no answer, in these words', () => {
    expect(rig.run(control, { pushrod_length: 0.3 })).toBe('open');
    expect(rig.run(control, { horn_height: 0.012 })).toBe('horn_locked');
    expect(rig.run(control, { pushrod_angle: 30 * DEGREE, horn_height: 0.05 })).toBe('crank_locked');
    expect(rig.run(control, { hole_offset: 0.05, stop_up: 80 * DEGREE, stop_down: 80 * DEGREE })).toBe(
      'leadout_locked',
    );
    expect(rig.run(control, { up_line_longer: 0.1 })).toBe('out_of_hand');
    expect(control.reasons).toEqual({
      open: 'The pushrod of {pushrod_length} does not reach from the bellcrank to the horn: they stand {pushrod_measured} apart with the bellcrank square and the elevator neutral. Type a length near that, or leave it open for one made to measure.',
      horn_locked:
        'The pushrod comes in line with the horn when the bellcrank has turned by {fails_at}, before its travel ends: the elevator locks over centre. A longer horn, a shorter pushrod arm or an earlier stop would keep it free.',
      crank_locked:
        'The pushrod comes in line with its arm of the bellcrank at a turn of {fails_at}, before its travel ends: beyond it the elevator goes back. Set the arm square to the pushrod, or the stop earlier.',
      leadout_locked:
        'A leadout comes in line with its arm of the bellcrank at a turn of {fails_at}, before the stop: there its pull turns nothing. Set the stop earlier, or the leadout holes nearer to the line through the pivot.',
      out_of_hand:
        'The up line is {up_line_longer} longer than the down line: the handle upright holds the bellcrank against a stop. Make the lines up alike.',
    });
  });
  it('draws pushrod and horn where they stand', () => {
    rig.run(control);
    const shapes = rig.draw(control);
    expect(shapes.map(({ view, part }) => `${view} ${part}`)).toEqual(['plan pushrod', 'side pushrod', 'side horn']);
    const [x, z] = shapes[2]!.points as [number, number];
    expect(Math.hypot(x - rig.get('tail.hinge_x'), z - rig.get('tail.hinge_z'))).toBeCloseTo(0.025, 12);
  });
});
