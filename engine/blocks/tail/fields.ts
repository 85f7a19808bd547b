import { FIN_END_PLATE, FLAT_PLATE_SECTION_SLOPE, HINGE_EFFICIENCY } from '../../physics/index';
import { MOMENT } from '../../units/index';
import type { Field } from '../block';
import { ANGLE, degrees, MILLIMETRES, PER_RADIAN, PLAIN, SHARE } from '../measures';

const length = (
  symbol: string,
  title: string,
  doc: string,
  value: number,
  range: readonly [number, number],
): Field => ({
  ...MILLIMETRES,
  symbol,
  title,
  doc,
  default: value,
  range,
});
const angle = (symbol: string, title: string, doc: string, limit: number): Field => ({
  ...ANGLE,
  symbol,
  title,
  doc,
  default: 0,
  range: [degrees(-limit), degrees(limit)],
});
const estimated = (field: Omit<Field, 'default' | 'advanced'>): Field => ({
  ...field,
  default: Number.NaN,
  advanced: true,
});

const SIZE: readonly [number, number] = [0.01, 1];
const STATION: readonly [number, number] = [-1, 3];

/** Stabiliser and elevator, from a ruler. */
export const stabiliserShape = {
  span: length('b_t', 'Stabiliser span', 'Tip to tip.', 0.4, [0.05, 2]),
  root_chord: length('c_tr', 'Stabiliser root chord', 'At the centreline, with the elevator.', 0.09, SIZE),
  tip_chord: length('c_tt', 'Stabiliser tip chord', 'At the tip, with the elevator.', 0.09, SIZE),
  edge: length(
    'x_te',
    'Stabiliser leading edge',
    'At the centreline, aft of the wing root leading edge.',
    0.4475,
    STATION,
  ),
  sweep: angle('Λ_t', 'Stabiliser sweep', 'Of its leading edge, tip aft positive.', 45),
  height: length('z_t', 'Stabiliser height', 'Above the reference line.', 0, [-0.5, 0.5]),
  incidence: angle('i_t', 'Tail incidence', 'Of the stabiliser to the reference line, leading edge up positive.', 10),
  elevator_share: {
    ...SHARE,
    symbol: 'E_e',
    title: 'Elevator chord',
    doc: 'Chord of the elevator over chord of stabiliser and elevator together.',
    default: 0.4,
    range: [0.05, 1],
  } as Field,
} as const;

/** Fin and rudder, from a ruler. */
export const finShape = {
  fin_height: length('h_f', 'Fin height', 'Above the fuselage; 0 where the model has no fin.', 0.12, [0, 1]),
  fin_root_chord: length('c_fr', 'Fin root chord', 'Where it stands on the fuselage, with the rudder.', 0.1, SIZE),
  fin_tip_chord: length('c_ft', 'Fin tip chord', 'At its top, with the rudder.', 0.1, SIZE),
  fin_edge: length(
    'x_fe',
    'Fin leading edge',
    'Where it meets the fuselage, aft of the wing root leading edge.',
    0.495,
    STATION,
  ),
  fin_sweep: angle('Λ_f', 'Fin sweep', 'Of its leading edge, top aft positive.', 60),
  fin_base: length('z_f', 'Fin foot', 'Height of its lower edge above the reference line.', 0.03, [-0.5, 0.5]),
  rudder_share: {
    ...SHARE,
    symbol: 'E_r',
    title: 'Rudder chord',
    doc: 'Chord of the rudder, or of the part that is turned outward, over chord of fin and rudder together. 100 % turns the whole fin.',
    default: 0.35,
    range: [0.05, 1],
  } as Field,
  rudder_angle: angle('δ_r', 'Rudder offset', 'Trailing edge outboard positive; it turns the nose out.', 30),
} as const;

const stiffness = (symbol: string, title: string): Field => ({
  dimension: MOMENT,
  unit: 'N·m',
  tradeUnit: 'lbf·in',
  symbol,
  title,
  doc: 'Bending stiffness E I of the sheet or stack for each metre of chord, bent along the span. A choice of stacks gives it as its stiffness.',
  default: 27,
  range: [0, 1e5],
  basis: 'Medium balsa of 5 mm.',
  advanced: true,
});

/** What the surfaces are made of, as far as it makes them stiff; what they weigh stands in the list of parts. */
export const tailStock = {
  stabiliser_stock: stiffness('D_t', 'Stiffness of the stabiliser stock'),
  elevator_stock: stiffness('D_e', 'Stiffness of the elevator stock'),
  fin_stock: stiffness('D_f', 'Stiffness of the fin stock'),
} as const;

const PLATE_BASIS = `Helmbold and Polhamus form with a section slope of ${FLAT_PLATE_SECTION_SLOPE}, which follows measured flat plates.`;
const HINGE_BASIS = `Thin-aerofoil theory of a flap (Glauert) × ${HINGE_EFFICIENCY} for an open hinge gap (common practice, no source).`;

/** What the tail block estimates from its shape; each can be typed instead. */
export const tailEstimates = {
  lift_slope: estimated({
    ...PER_RADIAN,
    symbol: 'a_t',
    title: 'Tail lift slope',
    doc: 'Lift coefficient of stabiliser and elevator per radian, on their own area.',
    range: [0.5, 8],
    basis: PLATE_BASIS,
  }),
  downwash: estimated({
    ...PLAIN,
    symbol: 'dε/dα',
    title: 'Downwash gradient',
    doc: 'How far the air behind the wing turns down for each degree that the wing turns up.',
    range: [0, 0.95],
    basis: '2 a/(π A) of the wing: lifting-line theory far behind an elliptical wing.',
  }),
  elevator_effect: estimated({
    ...PLAIN,
    symbol: 'τ_e',
    title: 'Elevator effect',
    doc: 'One degree of elevator does as much as so many degrees of the whole tail.',
    range: [0.05, 1],
    basis: HINGE_BASIS,
  }),
  fin_slope: estimated({
    ...PER_RADIAN,
    symbol: 'a_f',
    title: 'Fin slope',
    doc: 'Side-force coefficient of the fin per radian, on its own area.',
    range: [0.2, 8],
    basis: `${PLATE_BASIS} The aspect ratio counts ${FIN_END_PLATE} times, for the fuselage and stabiliser at its foot (DATCOM practice, from memory).`,
  }),
  rudder_effect: estimated({
    ...PLAIN,
    symbol: 'k_r',
    title: 'Rudder effect',
    doc: 'One degree of rudder does as much as so many degrees of the whole fin.',
    range: [0.05, 1],
    basis: HINGE_BASIS,
  }),
} as const;
