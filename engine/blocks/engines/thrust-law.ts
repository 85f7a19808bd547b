import {
  PITCH_SPEED_FACTOR,
  propellerShare,
  shaftShare,
  staticTorque,
  thrustLaw as straightLaw,
  zeroThrustSpeed,
} from '../../physics/index';
import { MOMENT, RATE } from '../../units/index';
import { air } from '../air/index';
import { block, type Columns } from '../block';
import { AIRSPEED_KNOTS } from '../curve';
import { AIRSPEED, NEWTONS, typedOr } from '../measures';
import { densityExponent, densityOf, powerInAir } from './breathing';
import { engineCautions } from './cautions';
import { fuelFields, fuelReasons, writeFuel } from './fuel-use';
import { drawMount, engineMount, mountTemplates, writeMount } from './mount';
import { powerFactor } from './power-factor';
import { engineResults } from './results';
import { thrustLawTheory } from './theory';

const links = {
  air: { link: 'air', results: air.results, doc: 'The air of the day: power, thrust and torque go with it.' },
} as const;
const fields = {
  static_thrust: {
    ...NEWTONS,
    symbol: 'P_0',
    title: 'Static thrust',
    doc: 'Pull of the model on a spring scale, engine running, model held on the ground.',
    default: 8,
    range: [0.1, 200],
  },
  shaft_speed: {
    dimension: RATE,
    unit: 'rpm',
    symbol: 'n',
    title: 'Rpm in flight',
    doc: 'Of the propeller, by ear or tachometer; in the air it runs faster than on the ground.',
    default: (16000 * 2 * Math.PI) / 60,
    range: [(1000 * 2 * Math.PI) / 60, (60000 * 2 * Math.PI) / 60],
  },
  zero_thrust_speed: {
    ...AIRSPEED,
    symbol: 'V_0',
    title: 'Speed of zero thrust',
    doc: 'Airspeed at which the propeller stops pulling.',
    default: Number.NaN,
    range: [3, 200],
    basis: `${PITCH_SPEED_FACTOR} × rpm × pitch (common practice, no source).`,
    advanced: true,
  },
  torque: {
    dimension: MOMENT,
    unit: 'N·m',
    tradeUnit: 'ozf·in',
    symbol: 'Q',
    title: 'Torque',
    doc: 'Of the propeller; taken as the same at all airspeeds.',
    default: Number.NaN,
    range: [0, 20],
    basis: 'Ideal power for the static thrust (momentum theory), doubled, over rpm: a guess without a source.',
    advanced: true,
  },
  read_density: densityOf('ρ_1', 'pull', 'On the day when the pull was read, or for which it is estimated.'),
  ...densityExponent,
  power_factor: {
    ...powerFactor.power_factor,
    doc: 'What thrust and torque are multiplied by at every airspeed. A fit to flown laps can find it.',
  },
  ...engineMount,
  ...fuelFields,
} as const;

type Fields = Columns<typeof links & typeof fields>;

/** Torque (N·m) on the day when the pull was read. */
function torqueOf(m: Float64Array, f: Fields, i: number): number {
  const typed = m[f.torque + i]!;
  if (!Number.isNaN(typed)) return typed;
  return staticTorque(
    m[f.static_thrust + i]!,
    m[f.propeller_diameter + i]!,
    m[f.read_density + i]!,
    m[f.shaft_speed + i]!,
  );
}

/** Thrust, torque, power and shaft speed at every airspeed. */
function writeLaw(m: Float64Array, f: Fields, r: Columns<typeof engineResults>, i: number, stride: number): void {
  const known = m[f.read_density + i]!;
  const density = m[f.air.density + i]!;
  const turns = shaftShare(powerInAir(m, f, i, known), density, known);
  const readSpeed = m[f.shaft_speed + i]!;
  const shaftSpeed = readSpeed * turns;
  const vanishing = turns * typedOr(m[f.zero_thrust_speed + i]!, zeroThrustSpeed(readSpeed, m[f.pitch + i]!));
  const factor = m[f.power_factor + i]! * propellerShare(turns, density, known);
  const torque = factor * torqueOf(m, f, i);
  for (let k = 0; k < AIRSPEED_KNOTS.length; k++) {
    const at = k * stride + i;
    m[r.thrust + at] = factor * straightLaw(m[f.static_thrust + i]!, vanishing, AIRSPEED_KNOTS[k]!);
    m[r.torque + at] = torque;
    m[r.power + at] = torque * shaftSpeed;
    m[r.shaft_speed + at] = shaftSpeed;
  }
}

/** Engine or motor known by its pull at rest and its rpm. */
export const thrustLaw = block({
  kind: 'thrust_law',
  role: 'engine',
  title: 'Engine by its pull at rest',
  doc: 'Thrust falls in a straight line from what a spring scale reads at rest to nothing at the speed that the propeller screws itself forward. For a model that has not flown yet; a timed lap is better.',
  line: ['station', 'propeller_diameter', 'pitch'],
  fields: { ...links, ...fields },
  results: engineResults,
  reasons: fuelReasons,
  theory: thrustLawTheory,
  cautions: engineCautions,
  run(m, f, r, i, stride) {
    writeLaw(m, f, r, i, stride);
    writeMount(m, f, r, i);
    return writeFuel(m, f, r, i, stride);
  },
  templates: mountTemplates,
  draw: drawMount,
});
