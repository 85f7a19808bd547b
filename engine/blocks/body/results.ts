import { VOLUME } from '../../units/index';
import type { Result } from '../block';
import { MILLIMETRES, PER_RADIAN, PLAIN, SMALL_AREA, SURFACE } from '../measures';

/** Products of area and length, and couples as q × volume. */
const CUBIC = { dimension: VOLUME, unit: 'dm³', tradeUnit: 'in³' } as const;
const FOURTH = { dimension: { length: 4, mass: 0, time: 0, temperature: 0, current: 0 }, unit: 'm⁴' } as const;

const place = (symbol: string, title: string, doc: string): Result => ({
  ...MILLIMETRES,
  symbol,
  title,
  doc,
  detail: true,
});
const row = (symbol: string, title: string, doc: string): Result => ({ ...SMALL_AREA, symbol, title, doc });

/** What fuselage and exposed items tell the other blocks. */
export const bodyResults = {
  side_area: { ...SURFACE, symbol: 'S_b', title: 'Side area', doc: 'Of the fuselage seen from the side.' },
  side_moment: {
    ...CUBIC,
    symbol: 'M_b',
    title: 'Side area × station',
    doc: 'Sum over the side area of its distance aft of the wing root leading edge.',
    detail: true,
  },
  side_second_moment: {
    ...FOURTH,
    symbol: 'J_b',
    title: 'Side area × station squared',
    doc: 'Sum over the side area of the square of its distance from the wing root leading edge.',
    detail: true,
  },
  side_centroid: {
    ...MILLIMETRES,
    symbol: 'x_b',
    title: 'Centre of the side area',
    doc: 'Aft of the wing root leading edge.',
    detail: true,
  },
  side_slope: {
    ...PER_RADIAN,
    symbol: 'a_b',
    title: 'Side slope',
    doc: 'Side-force coefficient of the fuselage per radian, on its side area.',
    detail: true,
  },
  slender_couple: {
    ...CUBIC,
    symbol: 'C_b',
    title: 'Slender-body couple',
    doc: 'Times dynamic pressure and nose-out angle it is the couple that turns the nose further out.',
    detail: true,
  },
  pitch_couple: {
    ...CUBIC,
    symbol: 'C_p',
    title: 'Slender-body couple in pitch',
    doc: 'The same for the width of the fuselage and the angle of attack; it moves the neutral point forward.',
    detail: true,
  },
  cross_flow_drag: {
    ...PLAIN,
    symbol: 'C_c',
    title: 'Cross-flow drag coefficient',
    doc: 'Of the side area in air that comes square from the side; counts at large nose-out angles.',
    detail: true,
  },
  nose_x: place('x_1', 'Nose', 'Front end, aft of the wing root leading edge (ahead of it negative).'),
  tail_x: place('x_4', 'Tail end', 'Rear end, aft of the wing root leading edge.'),
  tail_bottom: place('z_4', 'Bottom at the tail end', 'Above the reference line; below it negative.'),
  middle_height: place(
    'z_b',
    'Height of the middle',
    'Of the middle of the fuselage depth above the reference line, as typed; of a side outline the height of the centre of its area.',
  ),
  width: place('w', 'Width', 'Of the fuselage.'),
  wheel_x: place('x_w', 'Axle station', 'Aft of the wing root leading edge.'),
  wheel_z: place('z_w', 'Wheel height', 'Of the axle above the reference line; below it negative.'),
  wheel_diameter: place('d_w', 'Wheel diameter', 'Of each wheel.'),
  wheel_track: place('t_w', 'Track', 'Between the wheels.'),
  wire_diameter: place('d_g', 'Gear wire diameter', 'Of the legs.'),
  tank_x: place('x_k', 'Tank station', 'Of its middle, aft of the wing root leading edge.'),
  tank_z: place('z_k', 'Tank height above the line', 'Of its middle above the reference line.'),
  tank_length: place('l_k', 'Tank length', 'Seen from the side.'),
  tank_height: place('h_k', 'Tank height', 'Seen from the front.'),
  drag_area: {
    ...SMALL_AREA,
    symbol: 'C_D A',
    title: 'Drag area without the wing',
    doc: 'Sum of the rows below: dynamic pressure times this is the drag of everything but wing and lines.',
  },
  drag_area_body: row('A_b', 'Drag area of the fuselage', 'Friction on its sides, top and bottom.'),
  drag_area_tail: row('A_t', 'Drag area of the tail surfaces', 'Friction on stabiliser, elevator, fin and rudder.'),
  drag_area_wheels: row('A_wh', 'Drag area of the wheels', 'What fairing the wheels can save at most.'),
  drag_area_wire: row('A_wi', 'Drag area of the gear wire', 'What fairing the legs can save at most.'),
  drag_area_head: row('A_h', 'Drag area of the cylinder head', 'What cowling the engine can save at most.'),
  drag_area_silencer: row('A_s', 'Drag area of the silencer', 'Its front, end-on.'),
  drag_area_tank: row('A_k', 'Drag area of the tank', 'Its front, behind the engine.'),
  drag_area_other: row(
    'A_o',
    'Drag area of anything else',
    'As typed; where the whole drag area is typed, its difference from the other rows.',
  ),
} as const satisfies Readonly<Record<string, Result>>;
