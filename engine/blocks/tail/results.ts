import { BENDING_STIFFNESS } from '../../units/index';
import type { Result } from '../block';
import { ANGLE, MILLIMETRES, PER_RADIAN, PLAIN, SHARE, SURFACE } from '../measures';

const bending = (symbol: string, title: string, doc: string): Result => ({
  dimension: BENDING_STIFFNESS,
  unit: 'N·m²',
  tradeUnit: 'lbf·in²',
  symbol,
  title,
  doc,
  detail: true,
});

/** What the tail tells the other blocks. */
export const tailResults = {
  area: { ...SURFACE, symbol: 'S_t', title: 'Tail area', doc: 'Of stabiliser and elevator together.' },
  quarter_chord: {
    ...MILLIMETRES,
    symbol: 'x_t',
    title: 'Quarter chord of the tail',
    doc: 'Aft of the wing root leading edge: where the lift of the tail acts.',
  },
  mean_chord: {
    ...MILLIMETRES,
    symbol: 'c_t',
    title: 'Mean chord of the tail',
    doc: 'Stabiliser and elevator.',
    detail: true,
  },
  lift_slope: {
    ...PER_RADIAN,
    symbol: 'a_t',
    title: 'Tail lift slope',
    doc: 'Lift coefficient of stabiliser and elevator per radian, on their own area.',
  },
  induced_factor: {
    ...PLAIN,
    symbol: 'k_t',
    title: 'Drag due to tail lift',
    doc: 'k in C_D = k C_L² of stabiliser and elevator, on their own area.',
    detail: true,
  },
  downwash: {
    ...PLAIN,
    symbol: 'dε/dα',
    title: 'Downwash gradient',
    doc: 'How far the air behind the wing turns down for each degree that the wing turns up.',
  },
  incidence: {
    ...ANGLE,
    symbol: 'i_t',
    title: 'Tail incidence',
    doc: 'Of the stabiliser to the reference line, as typed.',
    detail: true,
  },
  elevator_effect: {
    ...PLAIN,
    symbol: 'τ_e',
    title: 'Elevator effect',
    doc: 'One degree of elevator does as much as so many degrees of the whole tail.',
  },
  elevator_share: {
    ...SHARE,
    symbol: 'E_e',
    title: 'Elevator chord',
    doc: 'Over the chord of stabiliser and elevator together, as typed.',
    detail: true,
  },
  hinge_x: {
    ...MILLIMETRES,
    symbol: 'x_h',
    title: 'Elevator hinge',
    doc: 'At the centreline, aft of the wing root leading edge.',
    detail: true,
  },
  hinge_z: {
    ...MILLIMETRES,
    symbol: 'z_h',
    title: 'Height of the elevator hinge',
    doc: 'Above the reference line: that of the stabiliser.',
    detail: true,
  },
  fin_area: { ...SURFACE, symbol: 'S_f', title: 'Fin area', doc: 'Of fin and rudder together, above the fuselage.' },
  fin_quarter_chord: {
    ...MILLIMETRES,
    symbol: 'x_f',
    title: 'Quarter chord of the fin',
    doc: 'Aft of the wing root leading edge: where the side force of the fin acts.',
  },
  fin_centre: {
    ...MILLIMETRES,
    symbol: 'z_fc',
    title: 'Height of the fin’s side force',
    doc: 'Above the reference line, at the middle of the fin’s area: what its side force rolls the model by.',
    detail: true,
  },
  fin_mean_chord: {
    ...MILLIMETRES,
    symbol: 'c_f',
    title: 'Mean chord of the fin',
    doc: 'Fin and rudder.',
    detail: true,
  },
  fin_slope: {
    ...PER_RADIAN,
    symbol: 'a_f',
    title: 'Fin slope',
    doc: 'Side-force coefficient of the fin per radian, on its own area.',
  },
  rudder_angle: {
    ...ANGLE,
    symbol: 'δ_r',
    title: 'Rudder offset',
    doc: 'Trailing edge outboard positive, as typed.',
    detail: true,
  },
  rudder_effect: {
    ...PLAIN,
    symbol: 'k_r',
    title: 'Rudder effect',
    doc: 'One degree of rudder does as much as so many degrees of the whole fin.',
    detail: true,
  },
  stabiliser_bending: bending('EI_t', 'Bending stiffness of the stabiliser', 'E I at its root, elevator not counted.'),
  elevator_bending: bending('EI_e', 'Bending stiffness of the elevator', 'E I at its root.'),
  fin_bending: bending('EI_f', 'Bending stiffness of the fin', 'E I at its foot, rudder counted as of the same stock.'),
  volume: {
    ...PLAIN,
    symbol: 'V_H',
    title: 'Tail volume',
    doc: 'Tail area × its distance behind the wing over wing area × mean chord, quarter chord to quarter chord.',
    usual: [0.3, 0.6],
  },
} as const satisfies Readonly<Record<string, Result>>;
