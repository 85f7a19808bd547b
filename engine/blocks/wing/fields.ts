import { SECTION_FAMILIES } from '../../library/index';
import type { Field, Option } from '../block';
import { AIRSPEED, ANGLE, degrees, MILLIMETRES, PER_RADIAN, PLAIN, SHARE, SURFACE } from '../measures';
import type { OutlineSpec } from '../outline';

const panel = (symbol: string, title: string, doc: string, length: number): Field => ({
  ...MILLIMETRES,
  symbol,
  title,
  doc,
  default: length,
  range: [0.05, 2],
});
const chord = (symbol: string, title: string, doc: string, length: number): Field => ({
  ...MILLIMETRES,
  symbol,
  title,
  doc,
  default: length,
  range: [0.02, 1],
});
const sweep = (symbol: string, title: string): Field => ({
  ...ANGLE,
  symbol,
  title,
  doc: 'Sweep of the leading edge of this panel, tip aft positive.',
  default: 0,
  range: [degrees(-30), degrees(45)],
});

/** What a ruler gives of a wing. */
export const wingShape = {
  inboard_span: panel(
    's_i',
    'Inboard panel',
    'From the fuselage centreline to the inboard tip, along the span.',
    0.515,
  ),
  outboard_span: panel(
    's_o',
    'Outboard panel',
    'From the fuselage centreline to the outboard tip, along the span.',
    0.485,
  ),
  root_chord: chord('c_r', 'Root chord', 'At the fuselage centreline.', 0.23),
  inboard_tip_chord: chord('c_i', 'Inboard tip chord', 'At the inboard tip, before any rounding.', 0.2),
  outboard_tip_chord: chord('c_o', 'Outboard tip chord', 'At the outboard tip, before any rounding.', 0.2),
  inboard_sweep: sweep('Λ_i', 'Inboard sweep'),
  outboard_sweep: sweep('Λ_o', 'Outboard sweep'),
  incidence: {
    ...ANGLE,
    symbol: 'i_w',
    title: 'Incidence',
    doc: 'Of the wing to the reference line, leading edge up positive.',
    default: 0,
    range: [degrees(-10), degrees(10)],
  } as Field,
  thickness_ratio: {
    ...SHARE,
    symbol: 't/c',
    title: 'Thickness over chord',
    doc: 'Greatest thickness of the section over its chord.',
    default: 0.12,
    range: [0.02, 0.25],
  } as Field,
  shape: {
    option: SECTION_FAMILIES,
    default: 'symmetrical',
    symbol: '',
    title: 'Section',
    doc: 'The picture that is nearest: the same above and below, or bulging upward by two or four parts in a hundred of the chord.',
  } as Option,
} as const;

/** Which ribs are wanted at full size. */
export const wingRibs = {
  rib_count: {
    ...PLAIN,
    symbol: 'n_r',
    title: 'Ribs of a panel',
    doc: 'For the templates at full size: how many ribs stand evenly from the root to each tip, both ends counted.',
    default: 2,
    range: [2, 60],
    advanced: true,
  } as Field,
  rib_station: {
    ...MILLIMETRES,
    symbol: 'y_r',
    title: 'Station of one more rib',
    doc: 'For the templates at full size: distance of a rib from the fuselage centreline, outboard positive, inboard negative.',
    default: Number.NaN,
    range: [-2, 2],
    basis: 'No rib beside those that stand evenly.',
    advanced: true,
  } as Field,
} as const;

export const PANEL_OUTLINES = ['inboard_outline', 'outboard_outline'] as const;

const panelCorners = (side: 'inboard' | 'outboard'): OutlineSpec => ({
  title: side === 'inboard' ? 'Inboard outline' : 'Outboard outline',
  doc: `Corners of the ${side} panel from its leading edge round the tip to its trailing edge. Station aft of the wing root leading edge, and distance from the fuselage centreline toward this tip. From the first and the last corner the edges run straight to the ends of the root chord: a few corners about the tip are enough for a straight wing. With corners here the span, tip chord and sweep of this panel are not read.`,
  view: 'plan',
  ...(side === 'inboard' ? { mirrored: true } : {}),
  spanFirst: true,
  corner: [
    { title: 'station', range: [-2, 2] },
    { title: 'from the centreline', range: [0, 2] },
  ],
  unit: 'mm',
  tradeUnit: 'in',
  least: 1,
  closed: false,
  replaces: [`${side}_span`, `${side}_tip_chord`, `${side}_sweep`],
});

/** Panels by their corners, in the place of span, tip chord and sweep. */
export const panelOutlines: Readonly<Record<(typeof PANEL_OUTLINES)[number], OutlineSpec>> = {
  inboard_outline: panelCorners('inboard'),
  outboard_outline: panelCorners('outboard'),
};

const estimated = (field: Omit<Field, 'default' | 'advanced'>): Field => ({
  ...field,
  default: Number.NaN,
  advanced: true,
});
const SECTION_BASIS = 'From the section picture and thickness: NACA Report 824, NACA four-digit sections.';

/** What the wing block estimates from its shape; each can be typed instead. */
export const wingEstimates = {
  section_slope: estimated({
    ...PER_RADIAN,
    symbol: 'a_0',
    title: 'Section lift slope',
    doc: 'Lift coefficient of the section per radian.',
    range: [2, 8],
    basis: SECTION_BASIS,
  }),
  zero_lift_angle: estimated({
    ...ANGLE,
    symbol: 'α_L0',
    title: 'Zero-lift angle',
    doc: 'Angle of the section at which it lifts nothing; negative for a cambered section.',
    range: [degrees(-12), degrees(5)],
    basis: SECTION_BASIS,
  }),
  moment_coefficient: estimated({
    ...PLAIN,
    symbol: 'c_m0',
    title: 'Moment coefficient',
    doc: 'About the quarter chord, nose-up positive.',
    range: [-0.3, 0.1],
    basis: SECTION_BASIS,
  }),
  section_speed: {
    ...AIRSPEED,
    symbol: 'V_0',
    title: 'Airspeed of the section values',
    doc: 'Airspeed near which the model flies. Drag and greatest lift of the section are read at the Reynolds number of the mean chord at it in standard air, and follow the airspeed from there by a power of it.',
    default: 25,
    range: [5, 80],
    basis:
      'A usual one. From 0.7 to 1.4 times it the values are within 5 % of those read at the airspeed itself, from half to twice within 9 %.',
    advanced: true,
  } as Field,
  roughness_factor: {
    ...PLAIN,
    symbol: 'f_r',
    title: 'Drag factor for roughness',
    doc: 'Multiplies the drag of a smooth section. A strip that makes the air turbulent from the nose on measures 1.27 times the smooth drag at a Reynolds number of 6 000 000 (NASA TM 4074 over SAND80-2114); hinge gaps, spars under the covering and the join at the body make the rest.',
    default: 1.5,
    range: [0.5, 5],
    basis: 'An estimate: common practice, no source. One measured lap time tells better.',
    advanced: true,
  } as Field,
  roughness_lift_factor: {
    ...PLAIN,
    symbol: 'f_l',
    title: 'Lift factor for roughness',
    doc: 'Multiplies the greatest lift of a smooth section at the Reynolds number of the model.',
    default: 1,
    range: [0.2, 1.5],
    basis: 'The smooth section as it is: its values at the stall lie rather low already (SAND80-2114).',
    advanced: true,
  } as Field,
  profile_drag: estimated({
    ...PLAIN,
    symbol: 'c_d0',
    title: 'Profile drag coefficient',
    doc: 'Of the wing at no lift, on the wing area. Typed, it holds at every airspeed.',
    range: [0.002, 0.1],
    basis:
      'Drag of the smooth section at its Reynolds number (SAND80-2114), with the camber (NACA Report 824), × drag factor for roughness.',
  }),
  lift_limit: estimated({
    ...PLAIN,
    symbol: 'C_L,max',
    title: 'Greatest lift coefficient',
    doc: 'Of the wing; beyond it the wing stalls. Typed, it holds at every airspeed.',
    range: [0.2, 3],
    basis:
      'Greatest lift of the smooth section at its Reynolds number (SAND80-2114), with camber and a thin nose (NACA Report 824), × lift factor for roughness × 0.9 for a wing of finite span.',
  }),
  lift_slope: estimated({
    ...PER_RADIAN,
    symbol: 'a',
    title: 'Lift slope',
    doc: 'Lift coefficient of the whole wing per radian.',
    range: [1, 8],
    basis: 'Lifting line of the planform with the section lift slope, less what a lifting surface has less, and sweep.',
  }),
  span_efficiency: estimated({
    ...SHARE,
    symbol: 'e',
    title: 'Span efficiency',
    doc: 'e in k = 1/(π A e), the drag due to lift.',
    range: [0.3, 1.2],
    basis: 'Induced drag by lifting line, and growth of section drag with lift at its Reynolds number (SAND80-2114).',
  }),
  lift_station: estimated({
    ...MILLIMETRES,
    symbol: 'y_L',
    title: 'Lift station',
    doc: 'Where the lift of the wing acts, outboard positive. Typed, it holds in the circle as it is, unless the change by circling is typed too.',
    range: [-0.3, 0.3],
    basis: 'Lifting line with the local speed of circular flight.',
  }),
  lift_station_turn: estimated({
    ...SURFACE,
    symbol: 'κ_L',
    title: 'Lift station, change by circling',
    doc: 'Divided by the radius of the circle it is how far the lift moves outboard.',
    range: [-1, 1],
    basis: 'Lifting line with the local speed of circular flight; nothing where the lift station is typed.',
  }),
  drag_station: estimated({
    ...MILLIMETRES,
    symbol: 'y_D',
    title: 'Drag station',
    doc: 'Where the profile drag of the wing acts, outboard positive. Typed, it holds in the circle as it is, unless the change by circling is typed too.',
    range: [-0.3, 0.3],
    basis: 'Chord and the square of the local speed over the span.',
  }),
  drag_station_turn: estimated({
    ...SURFACE,
    symbol: 'κ_D',
    title: 'Drag station, change by circling',
    doc: 'Divided by the radius of the circle it is how far the profile drag moves outboard.',
    range: [-1, 1],
    basis: 'Chord and the square of the local speed over the span; nothing where the drag station is typed.',
  }),
} as const;
