import {
  alongLeg,
  energyToYield,
  gearLeg,
  greatestStep,
  MUSIC_WIRE_RANGE,
  mainWheelShare,
  noseOverRatio,
  restPitch,
  type SidePlace,
  STANDARD_GRAVITY,
  type Stand,
  sinkSpeedToYield,
  standAt,
  type Vector,
} from '../../physics/index';
import { block, type Columns, type Shape } from '../block';
import { bodyResults } from '../body/results';
import { engineResults } from '../engines/results';
import { finiteShapes } from '../finite-shapes';
import { MILLIMETRES, PRESSURES, TORQUE, typedOr } from '../measures';
import { partsResults, partsRole } from '../parts/results';
import { leastWireStrength } from '../wire';
import { gearCautions } from './cautions';
import { gearFields } from './fields';
import { placeLeg } from './leg';
import { gearResults } from './results';
import { type Bending, gearTemplate, gearWire } from './template';
import { gearTheory } from './theory';

const gearLinks = {
  parts: { link: partsRole, results: partsResults, doc: 'Weight and CG.' },
  body: { link: 'body', results: bodyResults, doc: 'The fuselage with its wheels: their station is that of the gear.' },
  engine: { link: 'engine', results: engineResults, doc: 'Thrust at rest and height of the thrust line.' },
} as const;

type Fields = Columns<typeof gearLinks> & Columns<typeof gearFields>;

/** Where the model touches the ground beside its main wheels. */
function supportOf(m: Float64Array, f: Fields, i: number): SidePlace {
  const at = (column: number): number => m[column + i]!;
  const tailRest = at(f.layout) === 0;
  return {
    x: typedOr(at(f.support_x), tailRest ? at(f.body.tail_x) - 0.01 : at(f.body.nose_x) + 0.02),
    z: typedOr(
      at(f.support_z),
      tailRest ? at(f.body.tail_bottom) - 0.015 : at(f.body.wheel_z) - at(f.body.wheel_diameter) / 2,
    ),
  };
}

/** Inside radius of a bend over the diameter of its wire, where none is typed (common practice, no source). */
const BEND_OVER_WIRE = 2;

const bendingOf = (m: Float64Array, f: Fields, diameter: number, i: number): Bending => ({
  radius: typedOr(m[f.bend_radius + i]!, BEND_OVER_WIRE * diameter),
  axle: m[f.axle_length + i]!,
  legs: m[f.body.wheel_track + i]! > 0 ? 2 : 1,
});

/** Landing gear: how the model stands, when it noses over, and what its wire takes. */
export const gear = block({
  kind: 'gear',
  title: 'Ground and gear',
  doc: 'How the model stands on its wheels, which rolling drag tips it on its nose, how far the propeller clears the ground, and what landing bends the gear wire. The wheels are those of the fuselage: move their station to move the strap.',
  line: ['wire_diameter', 'sink_speed'],
  lineTitled: true,
  fields: { ...gearLinks, ...gearFields },
  results: gearResults,
  reasons: {
    no_wheels: 'The fuselage has no wheels to stand on: type their diameter there.',
    inside: 'Tail rest or nose wheel lies inside the wheels: type a place further away.',
    tips_forward:
      'The CG at {parts.x} lies ahead of the wheels: the model stands on its nose. Move the wheels forward.',
    tips_back: 'The CG at {parts.x} lies behind the wheels: the model sits on its tail. Move the wheels aft.',
    no_such_wire:
      'The gear wire of the fuselage is {body.wire_diameter} thick: the strength of music wire is known from 0.1 to 6.5 mm. Type a gear wire diameter between them.',
    no_leg: 'The gear wire has no length: its strap lies at the axle. Type the height of the strap.',
  },
  theory: gearTheory,
  cautions: gearCautions,
  run(m, f, r, i) {
    const at = (column: number): number => m[column + i]!;
    const { parts, body, engine } = f;
    const radius = at(body.wheel_diameter) / 2;
    if (!(radius > 0)) return 'no_wheels';
    const axle: SidePlace = { x: at(body.wheel_x), z: at(body.wheel_z) };
    const cg: SidePlace = { x: at(parts.x), z: at(parts.z) };
    const support = supportOf(m, f, i);
    const tailRest = at(f.layout) === 0;
    const pitch = restPitch(axle, radius, support);
    if (pitch === undefined) return 'inside';
    const rest = standAt(axle, radius, pitch);
    const level = standAt(axle, radius, 0);
    const [supported, carried] = [rest.along(support), rest.along(cg)];
    if (tailRest ? carried <= 0 : supported >= 0 || carried < supported) return 'tips_forward';
    if (tailRest ? carried >= supported : carried >= 0) return 'tips_back';

    const weight = at(parts.mass) * STANDARD_GRAVITY;
    const share = 1 - mainWheelShare(carried, supported);
    m[r.rest_pitch + i] = pitch;
    m[r.wheel_angle + i] = Math.atan2(level.along(cg), level.height(cg));
    m[r.support_share + i] = share;
    m[r.support_load + i] = share * weight;
    m[r.main_load + i] = (1 - share) * weight;

    const propeller: SidePlace = { x: typedOr(at(f.propeller_x), at(body.nose_x) - 0.015), z: at(engine.height) };
    const tip = (thrust: number, stand: Stand): number => {
      // With a nose wheel the model would tip about that, else about the main wheels.
      const pivot = tailRest ? 0 : stand.along(support);
      return noseOverRatio({
        mass: at(parts.mass),
        arm: stand.along(cg) - pivot,
        height: stand.height(cg),
        thrust,
        thrustHeight: stand.height(propeller),
        thrustAlong: stand.along(propeller) - pivot,
        pitch: stand.pitch,
      });
    };
    const thrust = Math.max(0, at(engine.thrust));
    const full = tip(thrust, level);
    m[r.tip_ratio + i] = full;
    m[r.tip_ratio_at_rest + i] = tip(thrust, rest);
    m[r.tip_ratio_engine_off + i] = tip(0, level);
    const held = Math.max(0, full);
    m[r.margin_pavement + i] = held / at(f.pavement);
    m[r.margin_short_grass + i] = held / at(f.short_grass);
    m[r.margin_long_grass + i] = held / at(f.long_grass);
    const arm = level.along(cg) - (tailRest ? 0 : level.along(support));
    m[r.step + i] = greatestStep(radius, arm, level.height(cg));
    const disc = at(engine.propeller_diameter) / 2;
    m[r.clearance_level + i] = level.height(propeller) - disc;
    m[r.clearance_rest + i] = rest.height(propeller) - disc * Math.cos(pitch);

    const { leg, strap } = placeLeg(m, f, body, i);
    if (leg.diameter < MUSIC_WIRE_RANGE[0] || leg.diameter > MUSIC_WIRE_RANGE[1]) return 'no_such_wire';
    m[r.strap_x + i] = strap[0];
    m[r.wire_length + i] = gearWire({ leg, strap }, bendingOf(m, f, leg.diameter, i))?.length ?? Number.NaN;
    const blow: Vector = [at(f.landing_drag), 0, 1];
    const landing = gearLeg(leg, blow);
    if (!(landing.stress > 0)) return 'no_leg';
    const strength = at(f.yield_share) * leastWireStrength(leg.diameter);
    const energy = energyToYield(landing, strength);
    m[r.leg_stiffness + i] = 1 / landing.compliance;
    m[r.leg_yield_load + i] = strength / landing.stress;
    m[r.leg_yield_travel + i] = (strength / landing.stress) * landing.compliance;
    m[r.leg_energy + i] = energy;
    const legs = at(body.wheel_track) > 0 ? 2 : 1;
    m[r.leg_stress + i] = (gearLeg(leg, [0, 0, 1]).stress * (1 - share) * weight) / legs;
    const sink = sinkSpeedToYield(energy, legs, at(parts.mass));
    m[r.sink_speed + i] = sink;
    m[r.drop_height + i] = (sink * sink) / (2 * STANDARD_GRAVITY);
    return undefined;
  },
  traces: {
    leg: {
      title: 'Gear leg',
      doc: 'Bending, torsion and stress along one leg, from where it is held to its axle, under the load that bends it.',
      columns: {
        distance: {
          ...MILLIMETRES,
          symbol: 's',
          title: 'Along the wire',
          doc: 'From where the wire is held.',
        },
        bending: {
          ...TORQUE,
          symbol: 'M_b',
          title: 'Bending moment',
          doc: 'Of the wire.',
        },
        torsion: {
          ...TORQUE,
          symbol: 'M_t',
          title: 'Torsion',
          doc: 'Moment about the wire.',
        },
        stress: {
          ...PRESSURES,
          symbol: 'σ',
          title: 'Stress',
          doc: 'By von Mises, at the skin of the wire.',
        },
      },
      run(m, f, r) {
        const load = m[r.leg_yield_load]!;
        if (Number.isNaN(load)) return undefined;
        const direction = m[f.landing_drag]!;
        const size = Math.hypot(direction, 1);
        return alongLeg(placeLeg(m, f, f.body, 0).leg, [(direction * load) / size, 0, load / size]);
      },
    },
  },
  templates(m, f) {
    const placed = placeLeg(m, f, f.body, 0);
    return gearTemplate(placed, bendingOf(m, f, placed.leg.diameter, 0));
  },
  draw(m, f, r): Shape[] {
    const pitch = m[r.rest_pitch]!;
    const radius = m[f.body.wheel_diameter]! / 2;
    const support = supportOf(m, f, 0);
    const [cos, sin] = [Math.cos(pitch), Math.sin(pitch)];
    // The ground as it lies under the resting model, drawn in the model's own axes.
    const contact = { x: m[f.body.wheel_x]! + radius * sin, z: m[f.body.wheel_z]! - radius * cos };
    const ahead = m[f.layout] === 0 ? contact : support;
    const behind = m[f.layout] === 0 ? support : contact;
    const reach = 0.05;
    const { leg, strap } = placeLeg(m, f, f.body, 0);
    const side = leg.points.flatMap(([x, , z]) => [strap[0] + x, strap[2] + z]);
    return finiteShapes([
      {
        view: 'side',
        part: 'ground',
        points: [ahead.x - reach * cos, ahead.z - reach * sin, behind.x + reach * cos, behind.z + reach * sin],
      },
      { view: 'side', part: 'wire', points: side },
    ]);
  },
});
