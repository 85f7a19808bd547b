import { describe, expect, it } from 'vitest';
import { air } from '../../../engine/blocks/air/index';
import { balance } from '../../../engine/blocks/balance/index';
import { ballast } from '../../../engine/blocks/ballast/index';
import type { AnyBlock, Shape } from '../../../engine/blocks/block';
import { body } from '../../../engine/blocks/body/index';
import { tail } from '../../../engine/blocks/tail/index';
import { wing } from '../../../engine/blocks/wing/index';
import { leadouts, lines, parts, quern } from './quern';
import { drawNothing, type Numbers, runBlock } from './run-block';

/** k_v of NACA 0012 at the Reynolds number of the Quern's chord at 25 m/s, about 3.6e5: (0.0098 − 0.0079)/0.44². */
const GROWTH = 0.0098;
const RADIUS = 0.6 + 18.3 + 0.525;

function areaOf(points: readonly number[]): number {
  let twice = 0;
  for (let k = 0; k < points.length; k += 2) {
    const next = (k + 2) % points.length;
    twice += points[k]! * points[next + 1]! - points[next]! * points[k + 1]!;
  }
  return Math.abs(twice) / 2;
}
const outlines = (shapes: readonly Shape[], view: Shape['view'], part: string): readonly Shape[] =>
  shapes.filter((shape) => shape.view === view && shape.part === part);

describe('the Quern as typed', () => {
  const model = quern();
  it('has the geometry and coefficients of its description exactly', () => {
    const w = model.wing.results;
    expect(w.span).toBe(1);
    expect(w.area).toBeCloseTo(0.215, 15);
    expect(w.aspect_ratio).toBeCloseTo(1 / 0.215, 13);
    expect(w.induced_factor).toBeCloseTo(1 / (Math.PI * (1 / 0.215) * 0.85), 15);
    expect([w.lift_station, w.lift_station_turn]).toEqual([-0.0085, 0]);
    expect([w.drag_station, w.drag_station_turn]).toEqual([-0.0064, 0]);
    expect([w.section_slope, w.profile_drag]).toEqual([5.7, 0.012]);
    const t = model.tail.results;
    expect(t.area).toBeCloseTo(0.036, 15);
    expect(t.quarter_chord).toBeCloseTo(0.47, 15);
    expect(t.fin_area).toBeCloseTo(0.012, 15);
    expect(t.fin_quarter_chord).toBeCloseTo(0.52, 15);
    expect([t.lift_slope, t.fin_slope]).toEqual([3.8, 2.5]);
    const b = model.body.results;
    expect(b.side_area).toBeCloseTo(0.055, 15);
    expect(b.side_centroid).toBeCloseTo(0.215, 15);
    expect([b.side_slope, b.slender_couple, b.drag_area]).toEqual([0.6, 0, 0.0035]);
    expect(model.air.results.density).toBe(1.225);
  });
});

describe('the Quern by ruler and scale alone', () => {
  const model = quern({});
  it('has estimates near what is known of it: tail and fin slope, span efficiency, profile drag, drag of items', () => {
    expect(Math.abs(model.tail.results.lift_slope! / 3.8 - 1)).toBeLessThan(0.02);
    expect(Math.abs(model.tail.results.fin_slope! / 2.5 - 1)).toBeLessThan(0.06);
    expect(Math.abs(model.wing.results.span_efficiency! / 0.85 - 1)).toBeLessThan(0.02);
    expect(Math.abs(model.wing.results.profile_drag! / 0.012 - 1)).toBeLessThan(0.05);
    expect(Math.abs(model.body.results.drag_area! / 0.0035 - 1)).toBeLessThan(0.15);
  });
  it('lifts at −8.5 mm and drags at −6.4 mm in its circle, within a tenth of a millimetre', () => {
    const w = model.wing.results;
    expect(Math.abs(w.lift_station! + w.lift_station_turn! / RADIUS + 0.0085)).toBeLessThan(1e-4);
    expect(Math.abs(w.drag_station! + w.drag_station_turn! / RADIUS + 0.0064)).toBeLessThan(1e-4);
  });
  it('has every result as a number', () => {
    for (const { results, why } of Object.values(model)) {
      expect(why).toBeUndefined();
      for (const [name, value] of Object.entries(results)) expect(value, name).not.toBeNaN();
    }
  });
});

describe('air', () => {
  it('takes pressure from the elevation until it is typed', () => {
    expect(runBlock(air, { elevation: 1000 }).results.pressure! / 89880).toBeCloseTo(1, 3);
    expect(runBlock(air, { elevation: 1000, pressure: 95000 }).results.pressure).toBe(95000);
  });
  it('reaches the highest fields: 4500 m, where the standard pressure is 577 hPa', () => {
    expect(air.fields.elevation.range[1]).toBe(4500);
    const { pressure, density } = runBlock(air, { elevation: 4500 }).results;
    // ISO 2533 at 4500 m of geometric height, dry and at 15 °C by the gas law.
    expect(Math.abs(pressure! / 57752 - 1)).toBeLessThan(1e-3);
    expect(Math.abs(density! / (57752 / (287.05287 * 288.15)) - 1)).toBeLessThan(0.006);
    expect(air.fields.pressure.range[0]).toBeLessThan(pressure!);
  });
  it('is thinner when warm, moist or high', () => {
    const standard = runBlock(air).results.density!;
    expect(standard).toBeCloseTo(1.222, 3);
    for (const other of [{ temperature: 303.15 }, { humidity: 1 }, { elevation: 500 }] as Numbers[]) {
      expect(runBlock(air, other).results.density!).toBeLessThan(standard);
    }
  });
});

describe('wing', () => {
  it('reads the section from picture and thickness', () => {
    const thick = runBlock(wing, { thickness_ratio: 0.18 }).results;
    const thin = runBlock(wing, { thickness_ratio: 0.09 }).results;
    expect(thick.profile_drag!).toBeGreaterThan(thin.profile_drag!);
    const cambered = runBlock(wing, { shape: 2 }).results;
    expect(cambered.zero_lift_angle!).toBeLessThan(-0.06);
    expect(cambered.moment_coefficient!).toBeLessThan(-0.08);
  });
  it('multiplies drag and greatest lift by the factors for roughness', () => {
    const one = runBlock(wing, { roughness_factor: 1, roughness_lift_factor: 1 }).results;
    const other = runBlock(wing, { roughness_factor: 3, roughness_lift_factor: 0.5 }).results;
    expect(other.profile_drag! / one.profile_drag!).toBeCloseTo(3, 12);
    expect(other.lift_limit! / one.lift_limit!).toBeCloseTo(0.5, 12);
  });
  it('reads the section at the Reynolds number of its mean chord, so that a small wing drags more and stalls sooner', () => {
    const large = runBlock(wing).results;
    expect(large.section_reynolds! / ((25 * large.mean_chord!) / 1.4607e-5)).toBeCloseTo(1, 4);
    const halves = { inboard_span: 0.2575, outboard_span: 0.2425, root_chord: 0.115 };
    const small = runBlock(wing, { ...halves, inboard_tip_chord: 0.1, outboard_tip_chord: 0.1 }).results;
    expect(small.section_reynolds! / large.section_reynolds!).toBeCloseTo(0.5, 12);
    expect(small.profile_drag! / large.profile_drag!).toBeGreaterThan(1.2);
    expect(small.lift_limit! / large.lift_limit!).toBeLessThan(0.92);
    const slow = runBlock(wing, { section_speed: 12.5 }).results;
    expect(slow.profile_drag).toBeCloseTo(small.profile_drag!, 14);
    expect([large.drag_power! < -0.2, large.lift_power! > 0.1]).toEqual([true, true]);
  });
  it('holds a typed drag and greatest lift at every airspeed', () => {
    const { results } = runBlock(wing, { profile_drag: 0.012, lift_limit: 1 });
    expect([results.drag_power, results.lift_power]).toEqual([0, 0]);
  });
  it('puts the least drag of a cambered section at a lift of its own', () => {
    const { drag_slope, induced_factor, profile_drag, aspect_ratio, span_efficiency } = runBlock(wing, {
      shape: 2,
    }).results;
    // Without the induced part the least drag lies where c_d = c_d0 + j c_l + k_v c_l² has its bottom: at 0.51.
    const plain = runBlock(wing).results;
    expect(plain.drag_slope).toBeCloseTo(0, 15);
    expect(induced_factor).toBeCloseTo(1 / (Math.PI * aspect_ratio! * span_efficiency!), 14);
    expect(drag_slope!).toBeCloseTo(-2 * GROWTH * 0.51, 4);
    const rough = (runBlock(wing, { shape: 2, roughness_factor: 1 }).results.profile_drag! - profile_drag!) / -0.5;
    expect(profile_drag! - 1.5 * rough).toBeCloseTo(GROWTH * 0.51 ** 2, 4);
  });
  it('lets the change by circling be typed beside a typed station', () => {
    const { results } = runBlock(wing, { lift_station: -0.01, lift_station_turn: 0.1, drag_station_turn: 0.2 });
    expect([results.lift_station, results.lift_station_turn]).toEqual([-0.01, 0.1]);
    expect(results.drag_station_turn).toBe(0.2);
    expect(results.drag_station).toBeCloseTo(-0.01465, 5);
  });
  it('draws its plan with the area it computes with, swept or not', () => {
    for (const typed of [{}, { inboard_sweep: 0.3, outboard_sweep: -0.1, outboard_tip_chord: 0.12 }] as Numbers[]) {
      const { results, shapes } = runBlock(wing, typed);
      expect(areaOf(outlines(shapes, 'plan', 'wing')[0]!.points)).toBeCloseTo(results.area!, 12);
    }
  });
  it('draws its section as thick as it is, and turned by its incidence', () => {
    const section = outlines(runBlock(wing, { thickness_ratio: 0.1 }).shapes, 'side', 'wing')[0]!.points;
    const heights = section.filter((_, k) => k % 2 === 1);
    expect(Math.max(...heights) - Math.min(...heights)).toBeCloseTo(0.1 * 0.23, 3);
    const turned = outlines(runBlock(wing, { incidence: 0.05 }).shapes, 'side', 'wing')[0]!.points;
    expect(turned[1]!).toBeCloseTo(-0.23 * Math.sin(0.05), 12);
  });
});

describe('tail', () => {
  const wings = runBlock(wing).results;
  const run = (typed: Numbers = {}) => runBlock(tail, typed, { wing: wings });
  it('flies in the downwash of the wing until a gradient is typed', () => {
    const expected = (2 * wings.lift_slope!) / (Math.PI * wings.aspect_ratio!);
    expect(run().results.downwash).toBeCloseTo(expected, 14);
    expect(run({ downwash: 0.4 }).results.downwash).toBe(0.4);
  });
  it('acts more strongly with a wider elevator or rudder', () => {
    expect(run({ elevator_share: 0.5 }).results.elevator_effect!).toBeGreaterThan(run().results.elevator_effect!);
    expect(run({ rudder_share: 1 }).results.rudder_effect).toBe(1);
  });
  it('is as stiff as the stock of each surface and its chord', () => {
    const { results } = run({ stabiliser_stock: 50, elevator_stock: 20, fin_stock: 10, elevator_share: 0.4 });
    expect(results.stabiliser_bending).toBeCloseTo(50 * 0.054, 12);
    expect(results.elevator_bending).toBeCloseTo(20 * 0.036, 12);
    expect(results.fin_bending).toBeCloseTo(10 * 0.1, 12);
  });
  it('draws stabiliser and elevator with the area it computes with, and fin with rudder', () => {
    const { results, shapes } = run({ sweep: 0.2, tip_chord: 0.06, fin_sweep: 0.3, fin_tip_chord: 0.07 });
    const plan = (part: string): number => areaOf(outlines(shapes, 'plan', part)[0]!.points);
    const side = (part: string): number => areaOf(outlines(shapes, 'side', part)[0]!.points);
    expect(plan('stabiliser') + plan('elevator')).toBeCloseTo(results.area!, 12);
    expect(side('fin') + side('rudder')).toBeCloseTo(results.fin_area!, 12);
  });
  it('draws a rudder that is turned outward with its trailing edge outboard', () => {
    const rudder = outlines(run({ rudder_angle: 0.2 }).shapes, 'plan', 'rudder')[0]!.points;
    expect(rudder[3]!).toBeGreaterThan(0);
  });
});

describe('body', () => {
  const airs = runBlock(air).results;
  const tails = runBlock(tail, {}, { wing: runBlock(wing).results }).results;
  const run = (typed: Numbers = {}) => runBlock(body, typed, { air: airs, tail: tails });
  const rows = ['body', 'tail', 'wheels', 'wire', 'head', 'silencer', 'tank', 'other'].map((row) => `drag_area_${row}`);
  it('has a drag table whose rows add up, typed or not', () => {
    for (const typed of [{}, { other_drag_area: 0.0004 }, { drag_area: 0.0035 }] as Numbers[]) {
      const { results } = run(typed);
      expect(rows.reduce((sum, row) => sum + results[row]!, 0)).toBeCloseTo(results.drag_area!, 15);
    }
  });
  it('shows what fairing the gear buys: the row goes down with its coefficient, and nothing else', () => {
    const [bare, faired] = [run().results, run({ wheel_drag: 0.13 }).results];
    expect(faired.drag_area_wheels! / bare.drag_area_wheels!).toBeCloseTo(0.13 / 0.3, 12);
    for (const row of rows) if (row !== 'drag_area_wheels') expect(faired[row]).toBe(bare[row]);
  });
  it('says when its places run backward', () => {
    expect(run({ front_x: 0.3 }).why).toBe('outline');
    expect(run({ nose_x: 0, front_x: 0, rear_x: 0, tail_x: 0 }).why).toBe('outline');
  });
  it('draws the side it computes with', () => {
    const { results, shapes } = run({ middle_height: 0.01 });
    expect(areaOf(outlines(shapes, 'side', 'body')[0]!.points)).toBeCloseTo(results.side_area!, 12);
  });
  it('draws wheels on both sides of their track, one in the middle without, none where there are none', () => {
    expect(outlines(run().shapes, 'plan', 'wheel').length).toBe(2);
    expect(outlines(run({ wheel_track: 0 }).shapes, 'plan', 'wheel').length).toBe(1);
    expect(outlines(run({ wheel_count: 0 }).shapes, 'side', 'wheel').length).toBe(0);
    const wheel = outlines(run().shapes, 'plan', 'wheel')[0]!.points;
    expect(areaOf(wheel)).toBeCloseTo(0.05 * 0.012, 12);
  });
});

describe('balance', () => {
  const model = quern();
  it('has CG, guide and static margin of the Quern', () => {
    const r = model.balance.results;
    expect(r.cg_share).toBeCloseTo(0.046 / 0.21535, 4);
    expect(r.guide_behind_cg).toBeCloseTo(0.016, 14);
    expect(r.cg_behind_front_leadout).toBeCloseTo(-0.004, 14);
    expect(r.cg_behind_front_leadout_full).toBeCloseTo(-0.008, 14);
    const w = model.wing.results;
    const t = model.tail.results;
    const k = (t.area! * 3.8 * (1 - t.downwash!)) / (w.area! * w.lift_slope!);
    expect(r.neutral_point).toBeCloseTo((w.quarter_chord! + k * 0.47) / (1 + k), 3);
    expect(r.static_margin).toBeCloseTo((r.neutral_point! - 0.046) / w.mean_chord!, 14);
    expect(r.static_margin_full!).toBeGreaterThan(r.static_margin_empty!);
  });
  it('marks CG and neutral point in both views', () => {
    expect(model.balance.shapes.map((shape) => `${shape.view} ${shape.part}`)).toEqual([
      'plan cg',
      'side cg',
      'plan neutral_point',
      'side neutral_point',
    ]);
  });
});

describe('ballast', () => {
  const wings = runBlock(wing).results;
  const run = (typed: Numbers = {}) => runBlock(ballast, typed, { parts, wing: wings, lines, leadouts });
  it('puts the CG where it is wanted, each way alone', () => {
    const { results, why } = run({ wanted_x: 0.05, wanted_y: 0.012, tail_station: 0.58, tip_station: 0.475 });
    expect(why).toBeUndefined();
    const [m, x, y] = [0.85, 0.046, 0.01];
    expect((m * x + results.tail_weight! * 0.58) / (m + results.tail_weight!)).toBeCloseTo(0.05, 14);
    expect((m * x - results.nose_weight! * 0.16) / (m + results.nose_weight!)).toBeCloseTo(0.05, 14);
    expect(results.nose_weight!).toBeLessThan(0);
    expect(results.engine_shift! * 0.3).toBeCloseTo(m * (0.05 - x), 14);
    expect((m * y + results.tip_weight! * 0.475) / (m + results.tip_weight!)).toBeCloseTo(0.012, 14);
  });
  it('by itself wants a fifth of the mean chord, and wings level under half of the lines with the tip weight in', () => {
    const { results } = run();
    expect(results.wanted_x).toBeCloseTo(0.2 * wings.mean_chord!, 14);
    const station = wings.lift_station! + wings.lift_station_turn! / (18.9 + 0.515);
    const lift = (0.85 + results.tip_weight!) * 9.80665 + lines.weight! / 2;
    expect(lift * (results.wanted_y! - station)).toBeCloseTo(0.5 * lines.weight! * (results.wanted_y! + 0.515), 12);
  });
  it('takes press of the lines, torque and lift from the flight where they are typed', () => {
    const { results } = run({ line_press: 0.3, torque: 0.12, lift: 9.5 });
    const station = wings.lift_station! + wings.lift_station_turn! / (18.9 + 0.515);
    const lift = 9.5 + (results.tip_weight! / 0.85) * (9.5 - 0.3);
    expect(lift * (results.wanted_y! - station)).toBeCloseTo(0.3 * (results.wanted_y! + 0.515) + 0.12, 12);
  });
  it('says which place is too near to move the CG', () => {
    expect(run({ wanted_x: 0.05, tail_station: 0.0505 }).why).toBe('tail_arm');
    expect(run({ wanted_x: -0.16 }).why).toBe('nose_arm');
    expect(run({ wanted_y: 0.1, tip_station: 0.1 }).why).toBe('tip_arm');
  });
});

describe('every block', () => {
  const { wing: w, tail: t, body: b, air: a } = quern();
  const cases: readonly [AnyBlock, Readonly<Record<string, Numbers>>][] = [
    [air, {}],
    [wing, {}],
    [tail, { wing: w.results }],
    [body, { air: a.results, tail: t.results }],
    [balance, { parts, wing: w.results, tail: t.results, body: b.results, leadouts }],
    [ballast, { parts, wing: w.results, lines, leadouts }],
  ];
  it.each(cases.map(([block, links]) => [block.kind, block, links] as const))(
    '%s gives the same numbers as any sample of any stride',
    (_, block, links) => {
      const alone = runBlock(block, {}, links).results;
      for (const place of [
        { stride: 64, i: 0 },
        { stride: 64, i: 63 },
        { stride: 7, i: 3 },
      ]) {
        expect(runBlock(block, {}, links, place).results).toEqual(alone);
      }
    },
  );
  it.each(cases.map(([block, links]) => [block.kind, block, links] as const))(
    '%s draws only finite points, in pairs, and nothing where nothing is known',
    (_, block, links) => {
      for (const { points, radius } of runBlock(block, {}, links).shapes) {
        expect(points.length % 2).toBe(0);
        for (const value of [...points, radius ?? 0]) expect(Number.isFinite(value)).toBe(true);
      }
      expect(drawNothing(block)).toEqual([]);
    },
  );
});
