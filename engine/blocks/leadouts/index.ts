import type { Field, Result } from '../block';
import { block, type Shape } from '../block';
import { finiteShapes } from '../finite-shapes';
import { MILLIMETRES, typedOr } from '../measures';
import { wingResults } from '../wing/results';
import { guideTemplate } from './template';
import { leadoutsTheory } from './theory';

const length = (
  symbol: string,
  title: string,
  doc: string,
  value: number,
  range: readonly [number, number],
): Field => ({ ...MILLIMETRES, symbol, title, doc, default: value, range });

/** Where the leadouts leave the wing. */
export const leadoutResults = {
  guide_x: {
    ...MILLIMETRES,
    symbol: 'x_g',
    title: 'Leadout guide',
    doc: 'Middle between both leadouts at the guide, aft of the wing root leading edge.',
  },
  guide_y: {
    ...MILLIMETRES,
    symbol: 'y_g',
    title: 'Guide from centreline',
    doc: 'Outboard positive, so negative at the inboard tip.',
    detail: true,
  },
  guide_z: { ...MILLIMETRES, symbol: 'z_g', title: 'Guide height', doc: 'Above the reference line.', detail: true },
  spacing: {
    ...MILLIMETRES,
    symbol: 'b_g',
    title: 'Leadout spacing',
    doc: 'Between both leadouts at the guide.',
    detail: true,
  },
  front_x: {
    ...MILLIMETRES,
    symbol: 'x_g1',
    title: 'Front leadout',
    doc: 'At the guide, aft of the wing root leading edge.',
  },
  bellcrank: {
    ...MILLIMETRES,
    symbol: 'b_p',
    title: 'Bellcrank size',
    doc: 'Between the holes of both leadouts.',
    detail: true,
  },
  pivot_x: { ...MILLIMETRES, symbol: 'x_p', title: 'Bellcrank pivot', doc: 'As typed.', detail: true },
  pivot_y: { ...MILLIMETRES, symbol: 'y_p', title: 'Pivot from centreline', doc: 'As typed.', detail: true },
} as const satisfies Readonly<Record<string, Result>>;

/** Leadouts with their guide and the bellcrank. */
export const leadouts = block({
  kind: 'leadouts',
  title: 'Leadouts',
  doc: 'Where the leadouts leave the inboard wing, and the bellcrank they come from. The guide sets how far the nose points out.',
  line: ['guide_x', 'pivot_x'],
  fields: {
    wing: { link: 'wing', results: wingResults, doc: 'The wing at whose inboard tip the guide stands.' },
    x: length(
      'x_g',
      'Leadout guide',
      'Middle between both leadouts at the guide, aft of the wing root leading edge.',
      0.062,
      [-0.5, 1],
    ),
    y: {
      ...length(
        'y_g',
        'Guide from centreline',
        'Outboard positive, so negative at the inboard tip.',
        Number.NaN,
        [-2, -0.02],
      ),
      basis: 'At the inboard tip.',
    },
    z: length('z_g', 'Guide height', 'Above the reference line.', 0, [-0.3, 0.3]),
    spacing: length('b_g', 'Leadout spacing', 'Between both leadouts at the guide.', 0.022, [0, 0.2]),
    hole: {
      ...length(
        'd_h',
        'Holes of the guide',
        'Diameter of the holes or tubes that the leadouts run through.',
        0.003,
        [0.0005, 0.02],
      ),
      basis: 'Common practice, no source.',
      advanced: true,
    },
    pivot_x: length('x_p', 'Bellcrank pivot', 'Aft of the wing root leading edge.', 0.06, [-0.5, 1]),
    pivot_y: length('y_p', 'Pivot from centreline', 'Outboard positive.', -0.03, [-1, 0.5]),
    bellcrank: length('b_p', 'Bellcrank size', 'Between the holes of both leadouts.', 0.076, [0.01, 0.3]),
  },
  results: leadoutResults,
  reasons: {},
  theory: leadoutsTheory,
  run(m, f, r, i) {
    const x = m[f.x + i]!;
    const spacing = m[f.spacing + i]!;
    m[r.guide_x + i] = x;
    m[r.guide_y + i] = typedOr(m[f.y + i]!, -m[f.wing.inboard_span + i]!);
    m[r.guide_z + i] = m[f.z + i]!;
    m[r.spacing + i] = spacing;
    m[r.front_x + i] = x - spacing / 2;
    m[r.bellcrank + i] = m[f.bellcrank + i]!;
    m[r.pivot_x + i] = m[f.pivot_x + i]!;
    m[r.pivot_y + i] = m[f.pivot_y + i]!;
    return undefined;
  },
  templates(m, f, r) {
    const [x, z, spacing] = [m[r.guide_x]!, m[r.guide_z]!, m[r.spacing]!];
    return guideTemplate({ x, z, spacing, diameter: m[f.hole]! });
  },
  draw(m, f, r): Shape[] {
    const [x, y, z] = [m[r.guide_x]!, m[r.guide_y]!, m[r.guide_z]!];
    const half = m[r.spacing]! / 2;
    const [pivotX, pivotY, arm] = [m[f.pivot_x]!, m[f.pivot_y]!, m[f.bellcrank]! / 2];
    return finiteShapes([
      { view: 'plan', part: 'bellcrank', points: [pivotX, pivotY], radius: arm },
      { view: 'plan', part: 'leadout', points: [x - half, y, pivotX - arm, pivotY] },
      { view: 'plan', part: 'leadout', points: [x + half, y, pivotX + arm, pivotY] },
      { view: 'plan', part: 'guide', points: [x, y], label: 'leadouts.guide_x' },
      { view: 'side', part: 'guide', points: [x, z], label: 'leadouts.guide_x' },
    ]);
  },
});
