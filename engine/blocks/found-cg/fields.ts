import { MOST_DROOP } from '../../physics/index';
import type { Field } from '../block';
import { ANGLE, degrees, GRAMS, MILLIMETRES } from '../measures';

/** Where the fuel stands while it is measured, in the order of the table's own sums. */
const FUELS = ['empty', 'half', 'full', 'as_listed'] as const;

const NOT_MEASURED = 'Not measured.';
const PRACTICE = 'Common practice, no source.';

const reading = (symbol: string, title: string, doc: string, basis = NOT_MEASURED): Field => ({
  ...{ ...GRAMS, symbol, title, doc, basis },
  default: Number.NaN,
  range: [0, 20],
});
const place = (symbol: string, title: string, doc: string, rest: Partial<Field> = {}): Field => ({
  ...{ ...MILLIMETRES, symbol, title, doc },
  default: Number.NaN,
  basis: NOT_MEASURED,
  range: [-2, 3],
  ...rest,
});
const OUT = { default: 0, basis: 'On the centreline.', range: [-1, 1] } as const;

/** One scale of two or three under the model. */
const support = <K extends 1 | 2 | 3>(k: K, name: string) =>
  ({
    [`scale_${k}`]: reading(
      `R_${k}`,
      `${name} scale`,
      'What it reads under the model; what props the model up on it is not counted.',
    ),
    [`scale_${k}_x`]: place(
      `x_${k}`,
      `Station of the ${name.toLowerCase()} support`,
      'Aft of the wing root leading edge.',
    ),
    [`scale_${k}_y`]: place(`y_${k}`, `${name} support from centreline`, 'Outboard positive.', {
      ...OUT,
      advanced: true,
    }),
  }) as { readonly [N in `scale_${K}` | `scale_${K}_x` | `scale_${K}_y`]: Field };

const error = (symbol: string, title: string, doc: string, value: number): Field => ({
  ...{ ...MILLIMETRES, symbol, title, doc, default: value, basis: PRACTICE },
  range: [0, 0.1],
  advanced: true,
});

export const foundCgFields = {
  fuel: {
    option: FUELS,
    default: 'empty',
    symbol: 'f',
    title: 'Fuel on board',
    doc: 'While it is measured. The table is read for the same tank.',
  },
  whole: reading(
    'M',
    'Whole model on the scale',
    'All of it in one weighing, with the fuel that is said above.',
    'The sum of two or three scales where they are read, else not measured.',
  ),
  finger: place('d', 'Fingertips behind the leading edge', 'Where it balances on two fingertips, both as far out.', {
    range: [-0.5, 1],
  }),
  finger_edge: place('x_e', 'Leading edge at the fingers', 'Aft of the wing root leading edge.', {
    ...{ default: 0, basis: 'A straight leading edge.', range: [-1, 1], advanced: true },
  }),
  ...support(1, 'First'),
  ...support(2, 'Second'),
  ...support(3, 'Third'),
  droop: {
    ...ANGLE,
    symbol: 'φ',
    title: 'Nose droop, hung by the leadouts',
    doc: 'Held up by both leadouts, inboard tip up: how far the nose hangs below level. Nose down positive; level 0.',
    default: Number.NaN,
    basis: NOT_MEASURED,
    range: [-MOST_DROOP, MOST_DROOP],
  } as Field,
  tip_scale: reading(
    'R_t',
    'Scale under the tip',
    'The model rests on an edge along the fuselage and on the scale under one tip.',
  ),
  tip_place: place('y_t', 'Place of that scale', 'From the centreline; under the inboard tip negative.', {
    ...{ basis: 'The outboard tip.', range: [-2, 2] },
  }),
  tip_edge: place('y_e', 'Edge under the fuselage', 'From the centreline, outboard positive.', {
    ...OUT,
    advanced: true,
  }),
  station: place(
    'x_s',
    'Station of what may be missing',
    'Aft of the wing root leading edge: for how much would explain it there, as long as the whole model was not on the scale.',
    {
      ...{
        default: 0.5,
        basis: 'The tail end of the fuselage, else half a metre aft.',
        taken: 'body.tail_x',
        advanced: true,
      },
    },
  ),
  finger_error: error('s_d', 'Uncertainty of the fingertips', 'One standard deviation.', 0.002),
  reading_error: {
    ...GRAMS,
    symbol: 's_R',
    title: 'Uncertainty of a scale',
    doc: 'One standard deviation.',
    default: 0.001,
    basis: PRACTICE,
    range: [0, 0.1],
    advanced: true,
  } as Field,
  place_error: error(
    's_i',
    'Uncertainty of a place',
    'Of a support, the guide or the tip; one standard deviation.',
    0.001,
  ),
  droop_error: {
    ...ANGLE,
    symbol: 's_φ',
    title: 'Uncertainty of the droop',
    doc: 'One standard deviation.',
    default: degrees(0.5),
    basis: PRACTICE,
    range: [0, degrees(20)],
    advanced: true,
  } as Field,
} as const;
