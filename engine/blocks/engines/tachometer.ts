import { bladeShapes } from '../../library/index';
import {
  preparePropeller,
  readRunning,
  shapedPropeller,
  soundSpeed,
  stillTorque,
  tachometerTorque,
  tellSlope,
} from '../../physics/index';
import { RATE } from '../../units/index';
import { air } from '../air/index';
import { block, type Field, type Option } from '../block';
import { MILLIMETRES, TORQUE, typedOr } from '../measures';
import { propellerResults } from '../propeller/results';
import { densityExponent, densityOf, powerInAir } from './breathing';
import { engineCautions } from './cautions';
import { fuelFields, fuelReasons } from './fuel-use';
import { drawPlace, mountTemplates, propellerMount } from './mount';
import { powerFactor } from './power-factor';
import { propelledReasons, propelledResults, writeDrive, writeFuelled } from './propelled';
import { engineResults } from './results';
import { tachometerTheory } from './theory-propeller';

const RPM = (2 * Math.PI) / 60;
const SHAPES = bladeShapes.map((row) => row.name);
const BLADES = 2;

const reading = (symbol: string, title: string, doc: string, value: number, basis?: string): Field => ({
  dimension: RATE,
  unit: 'rpm',
  symbol,
  title,
  doc,
  default: value,
  range: [1000 * RPM, 60000 * RPM],
  ...(basis ? { basis, advanced: true } : {}),
});
const size = (symbol: string, title: string, doc: string, inches: number, advanced?: true): Field => ({
  ...MILLIMETRES,
  symbol,
  title,
  doc,
  default: inches * 0.0254,
  range: [0.01, 0.6],
  ...(advanced ? { advanced } : {}),
});
const shape = (title: string): Option => ({
  option: SHAPES,
  default: 'sport',
  symbol: '',
  title,
  doc: 'Outline that looks most like that propeller.',
});

/** Engine known by its rpm on one or two propellers. */
export const tachometer = block({
  kind: 'tachometer',
  role: 'engine',
  title: 'Engine by tachometer',
  doc: 'Rpm on the ground with one known propeller, better with two, tell the torque of the engine near there; it is held while the propeller and the design are changed. Keep hands, clothes and heads behind the propeller’s plane while reading.',
  line: ['station', 'propeller_diameter', 'pitch'],
  fields: {
    air: { link: 'air', results: air.results, doc: 'The air of the day: power goes with its density.' },
    propeller: { link: 'propeller', results: propellerResults, doc: 'The propeller that it turns.' },
    reading_1: reading('n_1', 'Rpm read', 'On the ground, model held, mixture as flown.', 11400 * RPM),
    diameter_1: size('D_1', 'Diameter of that propeller', 'Tip to tip, as marked, of the propeller read.', 9),
    pitch_1: size('p_1', 'Pitch of that propeller', 'As marked, of the propeller read.', 6),
    shape_1: shape('Blade shape of that propeller'),
    reading_2: reading(
      'n_2',
      'Rpm read on a second propeller',
      'On the ground, with a larger or smaller propeller.',
      Number.NaN,
      'One propeller alone: power is taken to have its peak at the rpm read.',
    ),
    diameter_2: size('D_2', 'Diameter of the second', 'Tip to tip, as marked.', 8, true),
    pitch_2: size('p_2', 'Pitch of the second', 'As marked.', 6, true),
    shape_2: { ...shape('Blade shape of the second') },
    read_density: densityOf('ρ_1', 'reading', 'On the day of the reading.'),
    ...densityExponent,
    ...powerFactor,
    ...fuelFields,
    ...propellerMount,
  },
  results: {
    ...engineResults,
    ...propelledResults,
    read_torque: {
      ...TORQUE,
      symbol: 'Q_1',
      title: 'Torque at the reading',
      doc: 'What the propeller read asks for at that rpm.',
    },
    second_torque: {
      ...TORQUE,
      symbol: 'Q_2',
      title: 'Torque at the second reading',
      doc: 'What the second propeller asks for at that rpm.',
      detail: true,
    },
  },
  reasons: {
    too_near:
      'The two readings, {reading_1} and {reading_2}, lie so near that they tell no slope. Read a propeller of clearly other size, or take the second reading out.',
    ...propelledReasons,
    ...fuelReasons,
  },
  theory: tachometerTheory,
  cautions: engineCautions,
  run(m, f, r, i, stride) {
    const density = m[f.air.density + i]!;
    const known = m[f.read_density + i]!;
    const around = {
      kinematicViscosity: (m[f.air.kinematic_viscosity + i]! * density) / known,
      soundSpeed: soundSpeed(m[f.air.pressure + i]!, density),
    };
    const torqueOf = (speed: number, diameter: number, pitch: number, outline: number): number => {
      const read = preparePropeller(shapedPropeller(bladeShapes[outline]!, BLADES, diameter, pitch));
      return stillTorque(read, speed, known, around);
    };
    const [first, second] = [m[f.reading_1 + i]!, m[f.reading_2 + i]!];
    const one = {
      shaftSpeed: first,
      torque: torqueOf(first, m[f.diameter_1 + i]!, m[f.pitch_1 + i]!, m[f.shape_1 + i]!),
    };
    m[r.read_torque + i] = one.torque;
    m[r.second_torque + i] = Number.NaN;
    let read = tachometerTorque(one);
    if (!Number.isNaN(second)) {
      if (!tellSlope(first, second)) return 'too_near';
      const torque = torqueOf(second, m[f.diameter_2 + i]!, m[f.pitch_2 + i]!, m[f.shape_2 + i]!);
      m[r.second_torque + i] = torque;
      read = tachometerTorque(one, { shaftSpeed: second, torque });
    }
    const share = m[f.power_factor + i]! * powerInAir(m, f, i, known);
    const drive = {
      torque: (speed: number): number => share * read(speed),
      ...readRunning(first, typedOr(second, first)),
    };
    const wrong = writeDrive(m, f.propeller, r, i, stride, density, drive);
    if (wrong) return wrong;
    return writeFuelled(m, f, r, i, stride);
  },
  templates: mountTemplates,
  draw: (m, f) => drawPlace(m, f, m[f.propeller.diameter]!),
});
