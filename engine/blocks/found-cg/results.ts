import type { Result } from '../block';
import { GRAMS, MILLIMETRES, OUTBOARD } from '../measures';

const AFT = ['aft', 'forward', 'nowhere else'] as const;

const station = (symbol: string, title: string, doc: string): Result => ({ ...MILLIMETRES, symbol, title, doc });
const across = (symbol: string, title: string, doc: string): Result => ({
  ...station(symbol, title, doc),
  ways: OUTBOARD,
});
const detail = (result: Result): Result => ({ ...result, detail: true });

export const foundCgResults = {
  x: station('x', 'CG station, found', 'Aft of the wing root leading edge, by everything that was measured together.'),
  x_error: station('s_x', 'Uncertainty of the CG found', 'One standard deviation, from what was measured alone.'),
  difference_x: {
    ...station('Δx', 'CG found from the table', 'How far the CG lies from where the table of parts has it.'),
    ways: AFT,
  } as Result,
  unsure_x: station(
    's_Δ',
    'Uncertainty of that',
    'One standard deviation, of what was measured and of the table together. A difference of less than twice this says nothing.',
  ),
  y: across('y', 'CG from centreline, found', 'By two or three scales and a scale under the tip together.'),
  difference_y: across(
    'Δy',
    'CG found from the table, across',
    'How far the CG lies from where the table of parts has it.',
  ),
  mass: { ...GRAMS, symbol: 'M', title: 'Weight, found', doc: 'Of the whole model as it was measured.' } as Result,
  difference_mass: {
    ...{ ...GRAMS, symbol: 'ΔM', title: 'Weight found from the table', ways: ['more', 'less', 'none'] },
    doc: 'What the model weighs beside the sum of the table.',
  } as Result,
  lacking_mass: {
    ...{ ...GRAMS, symbol: 'm_x', title: 'What explains it: mass', ways: ['missing', 'too much', 'none'] },
    doc: 'Missing in the table, or too much there. Where the whole was weighed it is the difference, else what explains the CG at the station typed.',
  } as Result,
  lacking_x: station(
    'x_x',
    'What explains it: station',
    'Where that mass has to be for the table to have the CG found; no value where the weight is the same, since then something stands elsewhere.',
  ),
  finger_x: detail(station('x_d', 'CG by the fingertips', 'Aft of the wing root leading edge.')),
  scales_x: detail(station('x_R', 'CG by the scales', 'Aft of the wing root leading edge.')),
  hanging_x: detail(station('x_φ', 'CG by hanging', 'Aft of the wing root leading edge.')),
  scales_y: detail(
    across('y_R', 'CG from centreline by the scales', 'Of two or three scales that stand apart across.'),
  ),
  tip_y: detail(across('y_t', 'CG from centreline by the tip', 'Of the scale under one tip.')),
  y_error: detail(
    station('s_y', 'Uncertainty of the CG from centreline', 'One standard deviation, from what was measured.'),
  ),
  table_x: detail(station('x_T', 'CG station of the table', 'With the same fuel.')),
  table_y: detail(across('y_T', 'CG from centreline of the table', 'With the same fuel.')),
  table_mass: detail({ ...GRAMS, symbol: 'M_T', title: 'Weight of the table', doc: 'With the same fuel.' }),
} as const satisfies Readonly<Record<string, Result>>;
