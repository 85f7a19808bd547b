import type { Result } from '../block';
import { ANGLE, METRES, MILLIMETRES, NEWTONS, PLAIN, SHARE } from '../measures';
import { solverResults } from '../solver';

const difference = (symbol: string, title: string, doc: string): Result => ({
  ...SHARE,
  symbol,
  title,
  doc,
  detail: true,
});

/** What the shape of the lines gives. */
export const lineShapeResults = {
  handle_trail: {
    ...ANGLE,
    symbol: 'ε_h',
    title: 'Trail at the handle',
    doc: 'How far the lines, and with them the arm, point behind the model, seen from above: about a third of the trail at the guide.',
  },
  bow_back: {
    ...MILLIMETRES,
    symbol: 'b_b',
    title: 'Bow back',
    doc: 'Greatest distance of the lines behind the straight line from handle to guide.',
  },
  bow_down: {
    ...MILLIMETRES,
    symbol: 'b_d',
    title: 'Bow of the lines',
    ways: ['down', 'up'],
    doc: 'Greatest distance of the lines below the straight line from handle to guide, or above it.',
  },
  bow_length: {
    ...MILLIMETRES,
    symbol: 'Δl_b',
    title: 'Length in the bow',
    doc: 'Length along the lines less the straight distance from handle to guide: what the bow takes from the radius.',
  },
  stretch: {
    ...MILLIMETRES,
    symbol: 'Δl_s',
    title: 'Stretch',
    doc: 'Of each line under an even share of the pull, which grows toward the handle.',
  },
  reach_change: {
    ...MILLIMETRES,
    symbol: 'Δl',
    title: 'Gain of radius',
    doc: 'Stretch less what the bow takes; negative where the bow takes more.',
  },
  handle_angle: {
    ...ANGLE,
    symbol: 'κ_h',
    title: 'Handle angle lost to uneven pull',
    doc: 'How far the handle has to turn only to take up what the harder pulled line stretches and straightens more than the other.',
  },
  stretch_difference: {
    ...MILLIMETRES,
    symbol: 'Δl_s2',
    title: 'Difference of stretch',
    doc: 'Harder pulled line over the other.',
    detail: true,
  },
  bow_difference: {
    ...MILLIMETRES,
    symbol: 'Δl_b2',
    title: 'Difference of bow',
    doc: 'How much less of its length the harder pulled line spends on its bow.',
    detail: true,
  },
  difference: {
    ...NEWTONS,
    symbol: 'ΔT',
    title: 'Difference of pull',
    doc: 'Between both lines at the model.',
    detail: true,
  },
  harder_pull: {
    ...NEWTONS,
    symbol: 'T_1',
    title: 'Pull of the harder pulled line',
    doc: 'At the model.',
    detail: true,
  },
  easier_pull: { ...NEWTONS, symbol: 'T_2', title: 'Pull of the other line', doc: 'At the model.', detail: true },
  length: { ...METRES, symbol: 'l', title: 'Length along the lines', doc: 'From handle to guide.', detail: true },
  handle_sag: {
    ...ANGLE,
    symbol: 'σ_h',
    title: 'Sag at the handle',
    doc: 'How far the lines point below the guide, as they leave the handle.',
    detail: true,
  },
  pull_at_handle: {
    ...NEWTONS,
    symbol: 'T_h',
    title: 'Pull at the handle',
    doc: 'Of all lines, by their full shape.',
    detail: true,
  },
  line_trail: {
    ...ANGLE,
    symbol: 'ε',
    title: 'Line trail',
    doc: 'From the radius through the guide, at the guide, by their full shape.',
    detail: true,
  },
  line_sag: {
    ...ANGLE,
    symbol: 'σ',
    title: 'Line sag',
    doc: 'How far the lines leave the guide downward, by their full shape.',
    detail: true,
  },
  line_drag: {
    ...NEWTONS,
    symbol: 'F_l',
    title: 'Line drag at the guide',
    doc: 'By their full shape.',
    detail: true,
  },
  press: { ...NEWTONS, symbol: 'F_d', title: 'Press on the guide', doc: 'By their full shape.', detail: true },
  handle_pull_change: difference(
    'ΔT_h/T_h',
    'Pull at the handle over that of level flight',
    'How much more the full shape gives than the straight line of level flight.',
  ),
  drag_change: difference(
    'ΔF_l/F_l',
    'Line drag over that of level flight',
    'How much more the full shape gives than the straight line of level flight.',
  ),
  press_change: difference(
    'ΔF_d/F_d',
    'Press on the guide over that of level flight',
    'How much more the full shape gives than the straight line of level flight.',
  ),
  rest_sag: {
    ...MILLIMETRES,
    symbol: 'b_0',
    title: 'Sag at rest',
    doc: 'Greatest distance of the lines below the straight line, drawn out level on the ground by the pull typed: an exact catenary.',
    detail: true,
  },
  ...solverResults({
    of: 'Of the shape of all lines together',
    steps: 'Of Newton’s method.',
    residual: {
      ...PLAIN,
      doc: 'Largest distance from the guide over its radius, or of the pull from its own over it.',
    },
  }),
} as const satisfies Readonly<Record<string, Result>>;
