import { beforeEach, describe, expect, it } from 'vitest';
import { air } from '../../../engine/blocks/air/index';
import {
  type AnyBlock,
  type Field,
  isCurve,
  isLink,
  isNeeded,
  isOption,
  type Result,
} from '../../../engine/blocks/block';
import { body } from '../../../engine/blocks/body/index';
import { control } from '../../../engine/blocks/control/index';
import { AIRSPEED_KNOTS } from '../../../engine/blocks/curve';
import { electric } from '../../../engine/blocks/engines/electric';
import { measuredLap } from '../../../engine/blocks/engines/measured-lap';
import { engineResults } from '../../../engine/blocks/engines/results';
import { tachometer } from '../../../engine/blocks/engines/tachometer';
import { thrustLaw } from '../../../engine/blocks/engines/thrust-law';
import { twoStroke } from '../../../engine/blocks/engines/two-stroke';
import { flight } from '../../../engine/blocks/flight/index';
import { gear } from '../../../engine/blocks/gear/index';
import { glide } from '../../../engine/blocks/glide/index';
import { lap } from '../../../engine/blocks/lap/index';
import { launch } from '../../../engine/blocks/launch/index';
import { leadouts } from '../../../engine/blocks/leadouts/index';
import { lineShape } from '../../../engine/blocks/line-shape/index';
import { lines } from '../../../engine/blocks/lines/index';
import { propeller } from '../../../engine/blocks/propeller/calculated';
import { measuredPropeller } from '../../../engine/blocks/propeller/measured';
import { race } from '../../../engine/blocks/race/index';
import { shutoff } from '../../../engine/blocks/shutoff/index';
import { strength } from '../../../engine/blocks/strength/index';
import { tail } from '../../../engine/blocks/tail/index';
import { tank } from '../../../engine/blocks/tank/index';
import { wing } from '../../../engine/blocks/wing/index';
import { ratedBreakingLoad } from '../../../engine/blocks/wire';
import { sameDimension, unitNamed } from '../../../engine/units/index';
import { newRig, type Rig } from './rig';

const blocks: readonly AnyBlock[] = [
  thrustLaw,
  measuredLap,
  tachometer,
  twoStroke,
  electric,
  propeller,
  measuredPropeller,
  leadouts,
  lines,
  flight,
  lineShape,
  gear,
  strength,
  control,
  shutoff,
  lap,
  launch,
  glide,
  tank,
  race,
];
const givers: readonly AnyBlock[] = [air, wing, tail, body, ...blocks];

describe.each(blocks.map((block) => [block.kind, block] as const))('the declaration of %s', (_, block) => {
  it('shows every number in a unit of its dimension, with symbol, title and doc', () => {
    for (const [name, spec] of [...Object.entries(block.fields), ...Object.entries(block.results)]) {
      if (isLink(spec) || isOption(spec)) continue;
      const { title, doc, unit } = spec;
      expect(title, name).toMatch(/^\p{Lu}/u);
      expect(doc, name).toMatch(/\.$/);
      expect(spec.symbol, name).not.toBe('');
      const tradeUnit = isCurve(spec) ? unit : ((spec as Result).tradeUnit ?? unit);
      for (const each of [unit, tradeUnit]) {
        const known = unitNamed(each);
        expect(known, `${name}: ${each}`).toBeDefined();
        expect(sameDimension(known!.dimension, spec.dimension), `${name}: ${each}`).toBe(true);
      }
    }
  });

  it('has every default in its range, and says the basis of what it estimates', () => {
    for (const [name, spec] of Object.entries(block.fields)) {
      if (isLink(spec)) continue;
      if (isOption(spec)) {
        expect(spec.option, name).toContain(spec.default);
        continue;
      }
      const field = spec as Field;
      if (Number.isNaN(field.default)) expect(field.basis, name).toMatch(/\.$/);
      else {
        expect(field.default, name).toBeGreaterThanOrEqual(field.range[0]);
        expect(field.default, name).toBeLessThanOrEqual(field.range[1]);
      }
    }
  });

  it('speaks in its reasons only of numbers that it has', () => {
    for (const [reason, sentence] of Object.entries(block.reasons)) {
      for (const [, hole] of sentence.matchAll(/\{([\w.]+)\}/g)) {
        const [first, second] = hole!.split('.') as [string, string | undefined];
        const link = block.fields[first];
        if (second === undefined)
          expect(first in block.fields || first in block.results, `${reason}: ${hole}`).toBe(true);
        else expect(link && isNeeded(link) && second in link.results, `${reason}: ${hole}`).toBe(true);
      }
    }
  });

  it('reads of other blocks only what they give', () => {
    for (const spec of Object.values(block.fields)) {
      if (!isNeeded(spec) || spec.link === 'parts') continue;
      const roles = givers.filter((giver) => (giver.role ?? giver.kind) === spec.link);
      expect(roles, spec.link).not.toEqual([]);
      for (const giver of roles) {
        for (const name of Object.keys(spec.results)) expect(name in giver.results, `${giver.kind}.${name}`).toBe(true);
      }
    }
  });

  it('has sentences, not shouts or orders to fly', () => {
    expect(JSON.stringify(block)).not.toMatch(/!|\bGo\b/);
  });
});

let rig: Rig;
beforeEach(() => {
  rig = newRig();
  for (const block of [air, wing, tail, body, leadouts]) expect(rig.run(block)).toBeUndefined();
});

describe('engine by thrust law', () => {
  const here = () => ({ read_density: rig.get('air.density') });
  it('gives straight thrust, and torque and power at all knots', () => {
    rig.run(thrustLaw, { static_thrust: 8, zero_thrust_speed: 40, torque: 0.2, shaft_speed: 1000, ...here() });
    expect(rig.curve('engine.thrust')).toEqual(AIRSPEED_KNOTS.map((V) => expect.closeTo(8 - 0.2 * V, 12)));
    expect(new Set(rig.curve('engine.torque'))).toEqual(new Set([0.2]));
    expect(new Set(rig.curve('engine.power'))).toEqual(new Set([200]));
    expect(new Set(rig.curve('engine.shaft_speed'))).toEqual(new Set([1000]));
  });

  it('takes 1.15 × rpm × pitch where no speed of zero thrust is typed', () => {
    rig.run(thrustLaw, { static_thrust: 8, shaft_speed: 2 * Math.PI * 200, pitch: 0.15, ...here() });
    const [rest, , , , fast] = rig.curve('engine.thrust');
    expect(rest).toBe(8);
    expect(fast).toBeCloseTo(8 * (1 - 20 / (1.15 * 200 * 0.15)), 12);
  });

  it('passes on how it stands, and draws itself there', () => {
    rig.run(thrustLaw, { station: -0.13, side_thrust: 0.05 });
    expect(rig.get('engine.station')).toBe(-0.13);
    expect(rig.get('engine.side_thrust')).toBe(0.05);
    const shapes = rig.draw(thrustLaw);
    expect(shapes.map((shape) => `${shape.view} ${shape.part}`)).toEqual([
      'plan bearers',
      'plan bearers',
      'side bearers',
      'plan engine',
      'side engine',
      'plan propeller',
      'side propeller',
      'plan engine_station',
    ]);
    const propeller = shapes[5]!.points as [number, number, number, number];
    expect(Math.hypot(propeller[2] - propeller[0], propeller[3] - propeller[1])).toBeCloseTo(9 * 0.0254, 12);
    // Turned out, its outboard blade lies further aft.
    expect(propeller[2]).toBeGreaterThan(propeller[0]);
  });
});

describe('engine by measured lap', () => {
  it('gives every result of an engine, and what the lap says', () => {
    expect(rig.run(measuredLap)).toBeUndefined();
    for (const name of Object.keys(engineResults)) expect(Number.isFinite(rig.get(`engine.${name}`)), name).toBe(true);
    expect(rig.get('engine.lap_speed')).toBeCloseTo(
      (2 * Math.PI * 19.425 * Math.cos(Math.asin(1.5 / 19.425))) / 4.9,
      10,
    );
    expect(rig.get('engine.useful_power')).toBeCloseTo(rig.get('engine.lap_thrust') * rig.get('engine.lap_speed'), 12);
  });

  it('has thrust that falls with airspeed and meets the lap', () => {
    rig.run(measuredLap);
    const thrust = rig.curve('engine.thrust');
    for (const [k, here] of thrust.slice(1).entries()) expect(here).toBeLessThanOrEqual(thrust[k]!);
    // At rest it is held down, as measured propellers do.
    expect(thrust.at(-1)).toBeLessThan(thrust[0]!);
    const V = rig.get('engine.lap_speed');
    const k = Math.floor(V / 5);
    expect(rig.get('engine.lap_thrust')).toBeLessThan(thrust[k]!);
    expect(rig.get('engine.lap_thrust')).toBeGreaterThan(thrust[k + 1]!);
  });

  it('holds the power while the design is changed once the drag of the lap is typed', () => {
    rig.run(measuredLap);
    const [area, induced, power] = ['drag_area_then', 'induced_area_then', 'useful_power'].map((name) =>
      rig.get(`engine.${name}`),
    ) as [number, number, number];
    rig.run(wing, { root_chord: 0.3, profile_drag: 0.02 });
    rig.run(body, { other_drag_area: 0.002 });
    rig.run(measuredLap);
    expect(rig.get('engine.useful_power')).toBeGreaterThan(1.2 * power);
    rig.run(measuredLap, { known_drag_area: area, known_induced_area: induced });
    expect(rig.get('engine.useful_power')).toBeCloseTo(power, 12);
  });

  it('refuses a lap out of reach', () => {
    expect(rig.run(measuredLap, { known_height: 14, known_radius: 12 })).toBe('too_high');
    expect(measuredLap.reasons.too_high).toBe(
      'The timed lap was {known_height} above the handle: that is out of reach of {known_radius}. Type the height of the model above the handle.',
    );
  });
});

describe('leadouts', () => {
  it('stand at the inboard tip unless typed, and are drawn from bellcrank to guide', () => {
    expect(rig.get('leadouts.guide_y')).toBe(-0.515);
    expect(rig.get('leadouts.front_x')).toBeCloseTo(0.062 - 0.011, 12);
    rig.run(leadouts, { y: -0.3, x: 0.07, spacing: 0.03 });
    expect(rig.get('leadouts.guide_y')).toBe(-0.3);
    expect(rig.draw(leadouts).map((shape) => shape.part)).toEqual([
      'bellcrank',
      'leadout',
      'leadout',
      'guide',
      'guide',
    ]);
    expect(rig.draw(leadouts)[1]!.points.slice(0, 2)).toEqual([expect.closeTo(0.055, 12), -0.3]);
  });
});

describe('lines', () => {
  it('make the radius from the reach of the hand and the length, as measured', () => {
    rig.run(lines);
    expect(rig.get('lines.guide_radius')).toBeCloseTo(18.9, 12);
    rig.run(lines, { measure: 'grip_to_centreline' });
    expect(rig.get('lines.guide_radius')).toBeCloseTo(18.9 - 0.515, 12);
    rig.run(lines, { measure: 'eyelet_to_eyelet' });
    expect(rig.get('lines.guide_radius')).toBeCloseTo(18.9 + 0.1 + 0.03 + 0.08, 12);
  });

  it('believe the scale before the table', () => {
    rig.run(lines, { set_mass: 0.03 });
    expect(rig.get('lines.linear_mass')).toBeCloseTo(0.03 / (2 * rig.get('lines.eyelet_length')), 12);
    rig.run(lines, { linear_mass: 0.0006 });
    expect(rig.get('lines.mass')).toBeCloseTo(2 * 0.0006 * 18.3, 12);
    expect(rig.get('lines.weight')).toBeCloseTo(2 * 0.0006 * 18.3 * 9.80665, 12);
  });

  it('have the drag of their kind: a solid wire by the local Reynolds number', () => {
    rig.run(lines);
    expect(rig.get('lines.drag_coefficient')).toBe(1.1);
    rig.run(lines, { kind: 'solid_steel' });
    expect(rig.get('lines.drag_coefficient')).toBeNaN();
    rig.run(lines, { kind: 'solid_steel', drag_coefficient: 1.2 });
    expect(rig.get('lines.drag_coefficient')).toBe(1.2);
  });

  it('stretch and break as their kind and diameter say, where nothing is typed', () => {
    rig.run(lines, { diameter: 0.00038 });
    // E f π d²/4 of seven wires of stainless 302, each a third of the diameter.
    expect(rig.get('lines.stiffness') / (193e9 * (7 / 9) * (Math.PI / 4) * 0.00038 ** 2)).toBeCloseTo(1, 12);
    expect(rig.get('lines.breaking_load')).toBe(ratedBreakingLoad(0, 0.00038));
    rig.run(lines, { kind: 'polyethylene_braid', diameter: 0.00076 });
    expect(rig.get('lines.stiffness') / (60e9 * 0.7 * (Math.PI / 4) * 0.00076 ** 2)).toBeCloseTo(1, 12);
    expect(rig.get('lines.breaking_load')).toBe(ratedBreakingLoad(2, 0.00076));
    rig.run(lines, { stiffness: 5000, breaking_load: 120 });
    expect([rig.get('lines.stiffness'), rig.get('lines.breaking_load')]).toEqual([5000, 120]);
  });
  it('refuse fittings longer than the lines', () => {
    expect(rig.run(lines, { length: 3, handle_cable: 2, connectors: 1, exposed_leadout: 0.5 })).toBe('too_short');
    expect(lines.reasons.too_short).toBe(
      'The lines are {length} long, measured as typed; what stands between grip and guide beside them is longer. Type a longer length, or shorter handle cable, connectors and leadout.',
    );
  });
});
