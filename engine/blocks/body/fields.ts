import { ITEM_DRAG, LEAST_CORNERS } from '../../physics/index';
import { VOLUME } from '../../units/index';
import type { Field } from '../block';
import { AIRSPEED, MILLIMETRES, PER_RADIAN, PLAIN, SMALL_AREA } from '../measures';
import type { OutlineSpec } from '../outline';

const station = (symbol: string, title: string, doc: string, value: number): Field => ({
  ...MILLIMETRES,
  symbol,
  title,
  doc,
  default: value,
  range: [-2, 4],
});
const size = (symbol: string, title: string, doc: string, value: number, high = 1): Field => ({
  ...MILLIMETRES,
  symbol,
  title,
  doc,
  default: value,
  range: [0, high],
});
const coefficient = (symbol: string, title: string, value: number, basis: string): Field => ({
  ...PLAIN,
  symbol,
  title,
  doc: 'Drag over dynamic pressure and frontal area.',
  default: value,
  range: [0, 3],
  basis,
  advanced: true,
});

/** Side outline and width of the fuselage, from a ruler at four places. */
export const outline = {
  nose_x: station('x_1', 'Nose', 'Front end, aft of the wing root leading edge (ahead of it negative).', -0.17),
  nose_depth: size('d_1', 'Depth at the nose', 'Seen from the side.', 0.055),
  front_x: station('x_2', 'Front', 'Where the outline bends, usually near the wing leading edge.', 0),
  front_depth: size('d_2', 'Depth at the front', 'Seen from the side.', 0.085),
  rear_x: station('x_3', 'Rear', 'Where the outline bends again, usually near the wing trailing edge.', 0.24),
  rear_depth: size('d_3', 'Depth at the rear', 'Seen from the side.', 0.085),
  tail_x: station('x_4', 'Tail end', 'Rear end.', 0.6),
  tail_depth: size('d_4', 'Depth at the tail end', 'Seen from the side.', 0.049),
  width: size('w', 'Width', 'Of the fuselage: the thickness of a profile, else the mean width.', 0.012),
  middle_height: {
    ...MILLIMETRES,
    symbol: 'z_b',
    title: 'Height of the middle',
    doc: 'Of the middle of the fuselage depth above the reference line.',
    default: 0,
    range: [-0.5, 0.5],
  } as Field,
} as const;

/** The side of the fuselage by its corners, in the place of the four places. */
export const sideOutlines = {
  side_outline: {
    title: 'Side outline',
    doc: 'Corners of the fuselage seen from the side, in order round it, either way; the last joins the first. Station aft of the wing root leading edge (ahead of it negative), height above the reference line. With corners here the four places of the ruler are not read: side area, its centre and its height come from the outline.',
    view: 'side',
    corner: [
      { title: 'station', range: [-2, 4] },
      { title: 'height', range: [-1, 1] },
    ],
    unit: 'mm',
    tradeUnit: 'in',
    least: LEAST_CORNERS,
    closed: true,
    replaces: [
      'nose_x',
      'nose_depth',
      'front_x',
      'front_depth',
      'rear_x',
      'rear_depth',
      'tail_x',
      'tail_depth',
      'middle_height',
    ],
  },
} as const satisfies Readonly<Record<string, OutlineSpec>>;

/** Wheels, gear, engine parts and tank that stand in the air, from a ruler. */
export const items = {
  wheel_count: {
    ...PLAIN,
    symbol: 'n_w',
    title: 'Wheels',
    doc: 'How many stand in the air.',
    default: 2,
    range: [0, 4],
  } as Field,
  wheel_diameter: size('d_w', 'Wheel diameter', 'Of each wheel.', 0.05, 0.3),
  wheel_width: size('w_w', 'Wheel width', 'Of each tyre.', 0.012, 0.1),
  wheel_x: station('x_w', 'Axle station', 'Aft of the wing root leading edge.', -0.02),
  wheel_z: {
    ...MILLIMETRES,
    symbol: 'z_w',
    title: 'Wheel height',
    doc: 'Of the axle above the reference line; below it negative.',
    default: -0.13,
    range: [-1, 0.5],
  } as Field,
  wheel_track: size('t_w', 'Track', 'Between the wheels; nothing for a single wheel or wheels in line.', 0.22),
  wire_length: size('l_w', 'Gear wire in the air', 'Length of all legs together.', 0.24, 3),
  wire_diameter: size('d_g', 'Gear wire diameter', 'Of the legs.', 0.003, 0.02),
  head_width: size(
    'w_h',
    'Cylinder head width',
    'Of the part that stands in the air, seen from the front.',
    0.025,
    0.2,
  ),
  head_height: size(
    'h_h',
    'Cylinder head height',
    'Of the part that stands in the air, seen from the front.',
    0.03,
    0.2,
  ),
  silencer_diameter: size('d_s', 'Silencer diameter', 'Seen from the front.', 0.022, 0.2),
  tank_width: size('w_k', 'Tank width', 'Of the part beside the fuselage, seen from the front.', 0.02, 0.2),
  tank_height: size('h_k', 'Tank height', 'Seen from the front.', 0.032, 0.2),
  tank_length: size('l_k', 'Tank length', 'Seen from the side.', 0.07, 0.4),
  tank_x: station('x_k', 'Tank station', 'Of its middle, aft of the wing root leading edge.', -0.06),
  tank_y: {
    ...MILLIMETRES,
    symbol: 'y_k',
    title: 'Tank from centreline',
    doc: 'Of its middle, outboard positive.',
    default: 0.016,
    range: [-0.3, 0.3],
  } as Field,
  tank_z: {
    ...MILLIMETRES,
    symbol: 'z_k',
    title: 'Tank height above the line',
    doc: 'Of its middle above the reference line.',
    default: 0,
    range: [-0.3, 0.3],
  } as Field,
} as const;

/** What the body block estimates or takes from tables; each can be typed instead. */
export const bodyEstimates = {
  side_slope: {
    ...PER_RADIAN,
    symbol: 'a_b',
    title: 'Side slope',
    doc: 'Side-force coefficient of the fuselage per radian, on its side area. Uncertain for thin fuselages, and with it the sign of small rudder effects.',
    default: 0.6,
    range: [0, 4],
    basis: 'An estimate for flat-sided fuselages (common practice, no source).',
    advanced: true,
  } as Field,
  slender_couple: {
    dimension: VOLUME,
    unit: 'dm³',
    tradeUnit: 'in³',
    symbol: 'C_b',
    title: 'Slender-body couple',
    doc: 'Times dynamic pressure and nose-out angle it is the couple that turns the nose further out. 0 leaves it out.',
    default: Number.NaN,
    range: [0, 1],
    basis:
      'Slender-body theory for the side depth (Munk, NACA Report 184); uncertain by about a tenth of the stiffness in yaw.',
    advanced: true,
  } as Field,
  cross_flow_drag: {
    ...PLAIN,
    symbol: 'C_c',
    title: 'Cross-flow drag coefficient',
    doc: 'Of the side area in air that comes square from the side.',
    default: 1.2,
    range: [0, 3],
    basis: 'Flat plate square to the air, 1.2 to 2 by its proportions (Hoerner, Fluid-Dynamic Drag, from memory).',
    advanced: true,
  } as Field,
  friction_speed: {
    ...AIRSPEED,
    symbol: 'V_f',
    title: 'Speed for friction',
    doc: 'Airspeed at which friction is worked out; it changes friction little.',
    default: 25,
    range: [1, 100],
    basis: 'Near the speed of a club racer.',
    advanced: true,
  } as Field,
  wheel_drag: coefficient(
    'C_w',
    'Wheel drag coefficient',
    ITEM_DRAG.wheel,
    'Unfaired wheel (Sadraey, Aircraft Performance Analysis, second-hand). Wheel with fairing about 0.13 (Raymer, from memory).',
  ),
  wire_drag: coefficient(
    'C_g',
    'Gear wire drag coefficient',
    ITEM_DRAG.wire,
    'Cylinder square to the air (Sadraey, second-hand; Hoerner). A streamlined strut about 0.05 (Raymer, from memory).',
  ),
  head_drag: coefficient(
    'C_h',
    'Cylinder head drag coefficient',
    ITEM_DRAG.cylinderHead,
    'Irregular fitting, 1.0 to 1.4 (Raymer, from memory).',
  ),
  silencer_drag: coefficient('C_s', 'Silencer drag coefficient', ITEM_DRAG.silencer, 'Common practice, no source.'),
  tank_drag: coefficient('C_k', 'Tank drag coefficient', ITEM_DRAG.tank, 'Common practice, no source.'),
  other_drag_area: {
    ...SMALL_AREA,
    symbol: 'A_o',
    title: 'Drag area of anything else',
    doc: 'What the other rows do not hold: a pilot figure, exposed horns and pushrods.',
    default: 0,
    range: [0, 0.05],
    basis: 'Nothing unless typed.',
    advanced: true,
  } as Field,
  drag_area: {
    ...SMALL_AREA,
    symbol: 'C_D A',
    title: 'Drag area without the wing',
    doc: 'Dynamic pressure times this is the drag of everything but wing and lines. Typed, it stands in place of the sum of the rows.',
    default: Number.NaN,
    range: [0, 0.1],
    basis: 'Sum of friction by Reynolds number with form factors, and of exposed items.',
    advanced: true,
  } as Field,
} as const;
