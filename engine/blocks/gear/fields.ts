import { MUSIC_WIRE_ELASTIC_SHARE, MUSIC_WIRE_RANGE, ROLLING } from '../../physics/index';
import type { Field } from '../block';
import { MILLIMETRES, PLAIN, SHARE } from '../measures';

const place = (symbol: string, title: string, doc: string, basis: string, advanced = false): Field => ({
  ...MILLIMETRES,
  symbol,
  title,
  doc,
  default: Number.NaN,
  range: [-2, 4],
  basis,
  ...(advanced ? { advanced: true } : {}),
});
const BEND_DOC = {
  x: ['aft', 'Aft of the place where the wire is held.'],
  y: ['out', 'Outward from the place where the wire is held.'],
  z: ['up', 'Above the place where the wire is held; below it negative.'],
} as const;
const bend = (n: number, axis: 'x' | 'y' | 'z'): Field =>
  place(
    `${axis}_${n}`,
    `Bend ${n}, ${BEND_DOC[axis][0]}`,
    BEND_DOC[axis][1],
    'No bend there unless all three are typed: the wire runs straight on.',
    true,
  );
const rolling = (symbol: string, ground: string, value: number): Field => ({
  ...PLAIN,
  symbol,
  title: `Rolling drag on ${ground}`,
  doc: 'Force that keeps the wheels rolling over the load on them. A spring scale that pulls the model over the field tells it.',
  default: value,
  range: [0, 2],
  basis:
    'Full-size tyres (course notes on aircraft design, W. H. Mason); small wheels on grass are worse: measure yours.',
});

export const gearFields = {
  layout: {
    option: ['tail_rest', 'nose_wheel'],
    default: 'tail_rest',
    symbol: 'k',
    title: 'Layout',
    doc: 'What carries the model beside the main wheels: a skid or wheel at the tail, or a nose wheel.',
  },
  support_x: place(
    'x_s',
    'Tail rest or nose wheel',
    'Where it touches the ground, aft of the wing root leading edge (ahead of it negative).',
    'Tail rest: 10 mm before the tail end; nose wheel: 20 mm behind the nose.',
  ),
  support_z: place(
    'z_s',
    'Height of its contact',
    'Above the reference line; below it negative.',
    'Tail rest: 15 mm below the fuselage; nose wheel: level with the main wheels.',
  ),
  propeller_x: place(
    'x_p',
    'Propeller station',
    'Of the disc, aft of the wing root leading edge (ahead of it negative).',
    '15 mm ahead of the nose.',
  ),
  pavement: rolling('μ_p', 'pavement', ROLLING.pavement),
  short_grass: rolling('μ_s', 'short grass', ROLLING.shortGrass),
  long_grass: rolling('μ_l', 'long grass', ROLLING.longGrass),
  leg: {
    option: ['one_piece', 'split'],
    default: 'one_piece',
    symbol: 'p',
    title: 'Gear wire',
    doc: 'One piece: a wire bent from wheel to wheel, that may also bend between its straps. Split: each leg held for itself.',
  },
  axle_aft: {
    ...MILLIMETRES,
    symbol: 'x_a',
    title: 'Axle aft of the strap',
    doc: 'How far the axle lies behind the place where the wire is held; ahead of it negative.',
    default: 0,
    range: [-0.3, 0.3],
  } as Field,
  strap_z: place(
    'z_t',
    'Height of the strap',
    'Of the place where the wire is held, above the reference line.',
    'The middle of the fuselage depth.',
  ),
  strap_y: place(
    'y_t',
    'Strap from centreline',
    'Outward distance of the place where each leg leaves its strap.',
    'The side of the fuselage.',
  ),
  bend_1_x: bend(1, 'x'),
  bend_1_y: bend(1, 'y'),
  bend_1_z: bend(1, 'z'),
  bend_2_x: bend(2, 'x'),
  bend_2_y: bend(2, 'y'),
  bend_2_z: bend(2, 'z'),
  bend_3_x: bend(3, 'x'),
  bend_3_y: bend(3, 'y'),
  bend_3_z: bend(3, 'z'),
  bend_radius: {
    ...MILLIMETRES,
    symbol: 'r_b',
    title: 'Inside radius of the bends',
    doc: 'To which the gear wire is bent.',
    default: Number.NaN,
    range: [0.0002, 0.05],
    basis: 'Twice the diameter of the wire: common practice, no source.',
    advanced: true,
  } as Field,
  axle_length: {
    ...MILLIMETRES,
    symbol: 'l_a',
    title: 'Axle of the wire',
    doc: 'How far the wire goes on outward beyond the leg, for wheel and collar; 0 where the axle is a piece of its own.',
    default: 0.02,
    range: [0, 0.2],
    basis: 'Common practice, no source.',
    advanced: true,
  } as Field,
  wire_diameter: {
    ...MILLIMETRES,
    symbol: 'd_g',
    title: 'Gear wire diameter',
    doc: 'Of the music wire of the legs.',
    default: Number.NaN,
    range: [0.0005, MUSIC_WIRE_RANGE[1]],
    basis: 'As the fuselage has it.',
  } as Field,
  yield_share: {
    ...SHARE,
    symbol: 's_y',
    title: 'Yield over tensile strength',
    doc: 'Share of its tensile strength at which the wire stays bent.',
    default: MUSIC_WIRE_ELASTIC_SHARE,
    range: [0.3, 1],
    basis: 'Music wire, the middle of 65 to 75 % (J. E. Shigley, table 10-5).',
    advanced: true,
  } as Field,
  landing_drag: {
    ...PLAIN,
    symbol: 'μ_t',
    title: 'Drag share at touchdown',
    doc: 'Aft force on the wheels over the upward force as the model touches down.',
    default: ROLLING.longGrass,
    range: [0, 2],
    basis: 'Rolling drag on long grass, full-size tyres (course notes on aircraft design, W. H. Mason).',
    advanced: true,
  } as Field,
} as const;
