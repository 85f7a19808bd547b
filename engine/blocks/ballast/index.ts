import { ballastAt, FIRST_CG_SHARE, firstCg, levelWingsCg, STANDARD_GRAVITY, shiftOf } from '../../physics/index';
import { formatNumber } from '../../units/index';
import { block } from '../block';
import { leadoutResults } from '../leadouts/index';
import { linesResults } from '../lines/results';
import { GRAMS, MILLIMETRES, NEWTONS, TORQUE, typedOr } from '../measures';
import { partsResults, partsRole } from '../parts/results';
import { wingResults } from '../wing/results';
import { ballastTheory } from './theory';

const wantedX = {
  ...MILLIMETRES,
  range: [-1, 2],
} as const;

/** What puts the CG where it is wanted. */
export const ballast = block({
  kind: 'ballast',
  title: 'Ballast',
  doc: 'What puts the centre of gravity where it is wanted, each way alone: weight at the tail, weight at the nose, the engine moved, weight in the outboard tip. A lighter fin beats lead in the nose.',
  line: ['engine_shift', 'nose_weight', 'tip_weight'],
  lineTitled: true,
  fields: {
    parts: { link: partsRole, results: partsResults, doc: 'The list of parts: mass and CG.' },
    wing: { link: 'wing', results: wingResults, doc: 'The wing: where its lift acts, and its outboard tip.' },
    lines: { link: 'lines', results: linesResults, doc: 'The lines, whose press on the guide the tip weight carries.' },
    leadouts: { link: 'leadouts', results: leadoutResults, doc: 'The guide, where the lines hang.' },
    wanted_x: {
      ...wantedX,
      symbol: 'x_0',
      title: 'Wanted CG',
      doc: 'Where the CG should lie, aft of the wing root leading edge.',
      default: Number.NaN,
      basis: `${formatNumber(100 * FIRST_CG_SHARE)} % of the mean chord behind its leading edge (common practice, no source).`,
    },
    wanted_y: {
      ...wantedX,
      range: [-0.5, 0.5],
      symbol: 'y_0',
      title: 'Wanted CG from centreline',
      doc: 'Where the CG should lie across the span, outboard positive.',
      default: Number.NaN,
      basis:
        'Wings level, once the tip weight is in, under the press of the lines and the torque of the propeller. Guide height is left out.',
    },
    line_press: {
      ...NEWTONS,
      symbol: 'F',
      title: 'Press of the lines on the guide',
      doc: 'Downward. Type that of the flight, which knows the centrifugal load of the lines too.',
      default: Number.NaN,
      range: [-10, 50],
      basis: 'Half the weight of the lines.',
      advanced: true,
    },
    torque: {
      ...TORQUE,
      symbol: 'Q',
      title: 'Torque of the propeller',
      doc: 'Raising the outboard wing. Type that of the flight; it can ask for more tip weight than the lines do.',
      default: 0,
      range: [-5, 5],
      basis: 'Left out.',
      advanced: true,
    },
    lift: {
      ...NEWTONS,
      symbol: 'L',
      title: 'Lift',
      doc: 'Of the model in level flight. Type that of the flight.',
      default: Number.NaN,
      range: [0.01, 500],
      basis: 'All-up weight and the press of the lines.',
      advanced: true,
    },
    tail_station: {
      ...wantedX,
      symbol: 'x_t',
      title: 'Tail weight station',
      doc: 'Where tail weight would go, aft of the wing root leading edge.',
      default: 0.58,
    },
    nose_station: {
      ...wantedX,
      symbol: 'x_n',
      title: 'Nose weight station',
      doc: 'Where nose weight would go, aft of the wing root leading edge (ahead of it negative).',
      default: -0.16,
    },
    tip_station: {
      ...wantedX,
      symbol: 'y_t',
      title: 'Tip weight from centreline',
      doc: 'Where tip weight goes, outboard positive.',
      default: Number.NaN,
      basis: '10 mm inside the outboard tip.',
    },
    engine_mass: {
      ...GRAMS,
      symbol: 'm_e',
      title: 'Mass that moves with the engine',
      doc: 'Engine, propeller, spinner and silencer together; a formula may add their parts.',
      default: 0.3,
      range: [0.001, 5],
      basis: 'An engine of 4 cm³ with silencer and propeller (common practice, no source).',
    },
  },
  results: {
    wanted_x: { ...MILLIMETRES, symbol: 'x_0', title: 'Wanted CG', doc: 'As typed, or its estimate.', detail: true },
    wanted_y: {
      ...MILLIMETRES,
      symbol: 'y_0',
      title: 'Wanted CG from centreline',
      doc: 'As typed, or its estimate.',
      detail: true,
    },
    tail_weight: {
      ...GRAMS,
      symbol: 'm_t',
      title: 'Tail weight for the wanted CG',
      ways: ['to add', 'to remove', 'nothing to add'],
      doc: 'At the tail weight station.',
    },
    nose_weight: {
      ...GRAMS,
      symbol: 'm_n',
      title: 'Nose weight for the wanted CG',
      ways: ['to add', 'to remove', 'nothing to add'],
      doc: 'At the nose weight station.',
    },
    engine_shift: {
      ...MILLIMETRES,
      symbol: 'Δx_e',
      title: 'Engine to move',
      ways: ['aft', 'forward', 'not at all'],
      doc: 'For the wanted CG.',
    },
    tip_weight: {
      ...GRAMS,
      symbol: 'm_w',
      title: 'Tip weight for the wanted CG',
      ways: ['to add', 'to remove', 'nothing to add'],
      doc: 'In the outboard tip, for the wanted CG from centreline.',
    },
  },
  reasons: {
    tail_arm: 'Tail weight at {tail_station} cannot move the CG to {wanted_x}: type a station further away.',
    nose_arm: 'Nose weight at {nose_station} cannot move the CG to {wanted_x}: type a station further away.',
    tip_arm: 'Tip weight that near to {wanted_y} cannot move the CG there: type a place further out.',
  },
  theory: ballastTheory,
  run(m, f, r, i) {
    const { parts, wing, lines, leadouts } = f;
    const mass = m[parts.mass + i]!;
    const x = m[parts.x + i]!;
    const y = m[parts.y + i]!;
    const guideY = m[leadouts.guide_y + i]!;
    const radius = m[lines.guide_radius + i]! - guideY;
    const liftStation = m[wing.lift_station + i]! + m[wing.lift_station_turn + i]! / radius;
    const wantedX = typedOr(m[f.wanted_x + i]!, firstCg(m[wing.mean_chord_edge + i]!, m[wing.mean_chord + i]!));
    const tipStation = typedOr(m[f.tip_station + i]!, m[wing.outboard_span + i]! - 0.01);
    const press = typedOr(m[f.line_press + i]!, m[lines.weight + i]! / 2);
    const lift = typedOr(m[f.lift + i]!, mass * STANDARD_GRAVITY + press);
    const torque = m[f.torque + i]!;
    const wantedY = typedOr(
      m[f.wanted_y + i]!,
      levelWingsCg({ cg: y, liftStation, guideY, press, torque, lift, station: tipStation }),
    );
    m[r.wanted_x + i] = wantedX;
    m[r.wanted_y + i] = wantedY;

    const tail = ballastAt(mass, x, wantedX, m[f.tail_station + i]!);
    if (tail.status === 'no arm') return 'tail_arm';
    const nose = ballastAt(mass, x, wantedX, m[f.nose_station + i]!);
    if (nose.status === 'no arm') return 'nose_arm';
    const tip = ballastAt(mass, y, wantedY, tipStation);
    if (tip.status === 'no arm') return 'tip_arm';
    m[r.tail_weight + i] = tail.value;
    m[r.nose_weight + i] = nose.value;
    m[r.engine_shift + i] = shiftOf(mass, x, wantedX, m[f.engine_mass + i]!).value;
    m[r.tip_weight + i] = tip.value;
    return undefined;
  },
});
