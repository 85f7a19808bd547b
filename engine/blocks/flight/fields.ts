import { STANDARD_GRAVITY } from '../../physics/index';
import { ACCELERATION } from '../../units/index';
import { air } from '../air/index';
import type { Field, Option } from '../block';
import { bodyResults } from '../body/results';
import { engineResults } from '../engines/results';
import { leadoutResults } from '../leadouts/index';
import { linesResults } from '../lines/results';
import { METRES, NEWTONS, PLAIN } from '../measures';
import { partsResults, partsRole } from '../parts/results';
import { tailResults } from '../tail/results';
import { wingResults } from '../wing/results';
import { DIRECTIONS, ROTATIONS } from './directions';

/** The blocks that a flight is made of. */
export const flightLinks = {
  air: { link: 'air', results: air.results, doc: 'The air of the day.' },
  parts: { link: partsRole, results: partsResults, doc: 'Weight, CG and inertia.' },
  wing: { link: 'wing', results: wingResults, doc: 'The wing.' },
  tail: { link: 'tail', results: tailResults, doc: 'Stabiliser, elevator, fin and rudder.' },
  body: { link: 'body', results: bodyResults, doc: 'Fuselage and exposed items.' },
  engine: { link: 'engine', results: engineResults, doc: 'Engine or motor with its propeller.' },
  leadouts: { link: 'leadouts', results: leadoutResults, doc: 'Where the lines pull on the wing.' },
  lines: { link: 'lines', results: linesResults, doc: 'The lines.' },
} as const;

/** How the model is flown. */
export const flightFields = {
  height: {
    ...METRES,
    symbol: 'H',
    title: 'Flying height',
    doc: 'Of the model above the ground.',
    default: 2.7,
    range: [0, 30],
  } as Field,
  handle_height: {
    ...METRES,
    symbol: 'H_h',
    title: 'Handle height',
    doc: 'Of the handle above the ground.',
    default: 1.2,
    range: [0, 3],
  } as Field,
  direction: {
    option: DIRECTIONS,
    default: 'counter-clockwise',
    symbol: '',
    title: 'Direction of flight',
    doc: 'Seen from above. With the usual propeller, clockwise flight makes the torque press the outboard wing down.',
  } as Option,
  rotation: {
    option: ROTATIONS,
    default: 'clockwise',
    symbol: '',
    title: 'Rotation of the propeller',
    doc: 'Seen from behind the model; clockwise is the usual one.',
  } as Option,
  drag_factor: {
    ...PLAIN,
    symbol: 'k_D',
    title: 'Drag factor',
    doc: 'What the drag of the model is multiplied by, but for the drag of its lift and of its lines. A fit to flown laps can find it.',
    default: 1,
    range: [0.1, 5],
    basis: '1 until flown laps say otherwise.',
    advanced: true,
  } as Field,
  test_factor: {
    ...PLAIN,
    symbol: 'k_t',
    title: 'Pull test over weight',
    doc: 'The pull test of your class as a multiple of the weight of the model, from the current rule book. The whole system is pulled: handle, lines, connectors, leadouts and bellcrank.',
    default: 10,
    range: [1, 100],
    basis:
      'Ten times the weight is printed in AMA control line general rule 5.3.5.1 for braid and in club rules; other classes ask for much more.',
  } as Field,
  test_load: {
    ...NEWTONS,
    symbol: 'F_t',
    title: 'Pull-test load',
    doc: 'Where your class says a load instead of a multiple of the weight. From the current rule book; it is pulled on the whole system.',
    default: Number.NaN,
    range: [1, 5000],
    basis: 'Pull test over weight × weight of the model.',
  } as Field,
  gravity: {
    dimension: ACCELERATION,
    unit: 'm/s²',
    tradeUnit: 'ft/s²',
    symbol: 'g',
    title: 'Gravity',
    doc: 'Acceleration of free fall.',
    default: STANDARD_GRAVITY,
    range: [9.7, 9.9],
    basis: 'Standard acceleration of free fall.',
    advanced: true,
  } as Field,
} as const;
