import { LANDING_OVER_STALL } from '../../physics/index';
import type { Field, Option } from '../block';
import { AIRSPEED, ANGLE, degrees, MILLIMETRES, NEWTONS, PER_RADIAN, PLAIN, TORQUE } from '../measures';

const PRACTICE = 'Common practice, no source.';
const angle = (
  symbol: string,
  title: string,
  doc: string,
  value: number,
  range: readonly [number, number],
  basis = PRACTICE,
): Field => ({
  ...ANGLE,
  symbol,
  title,
  doc,
  default: degrees(value),
  range: [degrees(range[0]), degrees(range[1])],
  basis,
});
const length = (
  symbol: string,
  title: string,
  doc: string,
  value: number,
  range: readonly [number, number],
  basis = PRACTICE,
): Field => ({ ...MILLIMETRES, symbol, title, doc, default: value, range, basis });
const advanced = (field: Field): Field => ({ ...field, advanced: true });

/** Handle, bellcrank, pushrod and horn as a ruler and a protractor tell them. */
export const linkageFields = {
  handle_up: angle('κ_u', 'Handle, most up', 'How far the wrist tilts the handle back, from upright.', 35, [1, 80]),
  handle_down: angle('κ_d', 'Handle, most down', 'How far the wrist tilts the handle forward.', 35, [1, 80]),
  overhang: advanced(
    length(
      'e_h',
      'Overhang of the handle',
      'How far the lines are attached in front of the grip. It changes no elevator angle; the pull on it turns the handle upright.',
      0.05,
      [-0.05, 0.2],
    ),
  ),
  up_line_longer: length(
    'λ',
    'Up line longer by',
    'Than the down line, against lines that hold the bellcrank square with the handle upright; shorter is negative.',
    0,
    [-0.1, 0.1],
    'Lines made up alike.',
  ),
  front_arm: advanced(
    length(
      'r_1',
      'Arm of the front leadout',
      'From the pivot to its hole, along the line through both holes.',
      Number.NaN,
      [0.005, 0.15],
      'Half of the bellcrank size of the leadouts.',
    ),
  ),
  rear_arm: advanced(
    length(
      'r_2',
      'Arm of the rear leadout',
      'From the pivot to its hole, along the line through both holes.',
      Number.NaN,
      [0.005, 0.15],
      'Half of the bellcrank size of the leadouts.',
    ),
  ),
  hole_offset: advanced(
    length(
      'o_p',
      'Leadout holes inboard of the pivot',
      'How far the line through both holes lies inboard of the pivot; outboard negative.',
      0,
      [-0.05, 0.05],
      'Holes in line with the pivot.',
    ),
  ),
  pushrod_arm: length(
    'p',
    'Pushrod arm',
    'From the pivot of the bellcrank to the hole of the pushrod.',
    0.019,
    [0.003, 0.1],
  ),
  pushrod_side: {
    option: ['outboard', 'inboard'],
    default: 'outboard',
    symbol: '',
    title: 'Pushrod arm points',
    doc: 'To which side of the pivot. Which line gives up elevator follows from it and from the horn.',
  } as Option,
  pushrod_angle: advanced(
    angle(
      'ν',
      'Angle between the arms',
      'From the arm of the front leadout to that of the pushrod, with the bellcrank square.',
      90,
      [20, 160],
    ),
  ),
  bellcrank_z: advanced(
    length(
      'z_p',
      'Height of the bellcrank',
      'Of the hole of the pushrod, above the reference line.',
      Number.NaN,
      [-0.3, 0.3],
      'As the leadout guide.',
    ),
  ),
  stop_up: angle('β_u', 'Bellcrank stop, up', 'Turn from square at which the bellcrank strikes its stop.', 45, [1, 80]),
  stop_down: angle('β_d', 'Bellcrank stop, down', 'The same the other way.', 45, [1, 80]),
  pushrod_length: length(
    'l_p',
    'Pushrod length',
    'Eye to eye.',
    Number.NaN,
    [0.02, 3],
    'Made to measure: the elevator is neutral with the bellcrank square.',
  ),
  horn_height: length('h', 'Horn height', 'From the hinge line to the hole of the pushrod.', 0.025, [0.003, 0.1]),
  horn_side: {
    option: ['below', 'above'],
    default: 'below',
    symbol: '',
    title: 'Horn stands',
    doc: 'On which side of the elevator.',
  } as Option,
  horn_angle: advanced(
    angle(
      'η',
      'Angle of the horn',
      'From the elevator, seen aft from its hinge, to the line from hinge to hole. More than 90° leans forward.',
      90,
      [20, 160],
    ),
  ),
  horn_y: advanced(
    length(
      'y_h',
      'Horn from centreline',
      'Outboard positive.',
      Number.NaN,
      [-0.5, 0.5],
      'Straight behind the hole of the pushrod, with the bellcrank square.',
    ),
  ),
} as const;

/** What the air, friction and the pilot ask of it. */
export const controlLoadFields = {
  used_up: angle('δ_1', 'Most up used in flight', 'Elevator of the hardest manoeuvre, trailing edge up.', 20, [0, 60]),
  used_down: angle('δ_2', 'Most down used in flight', 'Elevator, trailing edge down.', 15, [0, 60]),
  greatest_speed: {
    ...AIRSPEED,
    symbol: 'V_m',
    title: 'Greatest speed of a manoeuvre',
    doc: 'At which the most elevator is used.',
    default: Number.NaN,
    range: [1, 100],
    basis: '1.1 times level flight: a guess without a source.',
  } as Field,
  least_pull: {
    ...NEWTONS,
    symbol: 'T_1',
    title: 'Least pull in the lap',
    doc: 'Of all lines at the model.',
    default: Number.NaN,
    range: [0, 5000],
    taken: 'lap.least_pull',
    basis: 'The pull of level flight in calm air. Wind, a high flight and the glide pull less: type theirs.',
  } as Field,
  landing_speed: {
    ...AIRSPEED,
    symbol: 'V_l',
    title: 'Landing speed',
    doc: 'Airspeed at touchdown.',
    default: Number.NaN,
    range: [1, 60],
    basis: `${LANDING_OVER_STALL} times the stall speed: common practice, no source.`,
  } as Field,
  friction: advanced({
    ...TORQUE,
    symbol: 'M_f',
    title: 'Friction at the elevator',
    doc: 'Torque that just moves elevator, horn and pushrod, without pull on the lines.',
    default: 0.0015,
    range: [0, 0.5],
    basis:
      'An elevator of 10 g that just falls by its own weight, 15 mm behind its hinge (common practice, no source).',
  }),
  pivot_friction: advanced({
    ...PLAIN,
    symbol: 'μ_p',
    title: 'Friction coefficient of the pivot',
    doc: 'Of the bellcrank on its bolt; its torque goes with the pull.',
    default: 0.2,
    range: [0, 0.6],
    basis: 'Dry plastic on steel (common practice, no source).',
  }),
  pivot_diameter: advanced(length('d_p', 'Pivot diameter', 'Of the bolt in the bellcrank.', 0.004, [0.0005, 0.02])),
  hinge_incidence: advanced({
    ...PER_RADIAN,
    symbol: 'b_1',
    title: 'Hinge moment by incidence',
    doc: 'Coefficient of the section, on the elevator’s own area and chord, trailing edge down positive: so it is negative.',
    default: Number.NaN,
    range: [-3, 0],
    basis:
      'Thin-aerofoil theory (Glauert). Measured moments are a fifth or more smaller (from memory): it errs to the safe side.',
  }),
  hinge_deflection: advanced({
    ...PER_RADIAN,
    symbol: 'b_2',
    title: 'Hinge moment by deflection',
    doc: 'The same for a radian of elevator. A horn or an overhang of area ahead of the hinge makes it smaller: type it then.',
    default: Number.NaN,
    range: [-3, 0],
    basis: 'Thin-aerofoil theory (Glauert) of a plain flap.',
  }),
} as const;
