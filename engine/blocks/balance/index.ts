import { type LiftingPiece, neutralPoint } from '../../physics/index';
import { block, type Shape } from '../block';
import { bodyResults } from '../body/results';
import { finiteShapes } from '../finite-shapes';
import { leadoutResults } from '../leadouts/index';
import { MILLIMETRES, OUTBOARD, SHARE } from '../measures';
import { partsResults, partsRole } from '../parts/results';
import { tailResults } from '../tail/results';
import { wingResults } from '../wing/results';
import { balanceTheory } from './theory';

/** Filled anew for every design. */
const ofWing = { x: Number.NaN, strength: Number.NaN };
const ofTail = { x: Number.NaN, strength: Number.NaN };
const pieces: readonly LiftingPiece[] = [ofWing, ofTail];

/** Where the CG lies: on the mean chord, before the neutral point, and by the leadouts. */
export const balance = block({
  kind: 'balance',
  title: 'Balance',
  doc: 'Where the centre of gravity lies on the mean chord, how far before the neutral point, and how it lies to the guide and the front leadout, with the tank empty, half full and full.',
  line: ['cg_x', 'cg_share', 'static_margin'],
  lineTitled: true,
  fields: {
    parts: { link: partsRole, results: partsResults, doc: 'The list of parts: mass and CG.' },
    wing: { link: 'wing', results: wingResults, doc: 'The wing: mean chord and lift slope.' },
    tail: { link: 'tail', results: tailResults, doc: 'The tail: area, distance and lift slope.' },
    body: { link: 'body', results: bodyResults, doc: 'The fuselage, which moves the neutral point a little forward.' },
    leadouts: { link: 'leadouts', results: leadoutResults, doc: 'The leadouts: guide and front leadout.' },
  },
  results: {
    cg_x: { ...MILLIMETRES, symbol: 'x_cg', title: 'CG', doc: 'Aft of the wing root leading edge.' },
    cg_y: { ...MILLIMETRES, symbol: 'y_cg', title: 'CG from centreline', ways: OUTBOARD, doc: 'Of the fuselage.' },
    cg_z: { ...MILLIMETRES, symbol: 'z_cg', title: 'CG height', doc: 'Above the reference line.', detail: true },
    cg_share: {
      ...SHARE,
      symbol: 'h',
      title: 'CG on the mean chord',
      doc: 'Behind the leading edge of the mean aerodynamic chord, as a share of it.',
      usual: [0.15, 0.25],
    },
    cg_share_empty: {
      ...SHARE,
      symbol: 'h_0',
      title: 'CG on the mean chord, tank empty',
      doc: 'As a share of the mean aerodynamic chord.',
      usual: [0.15, 0.25],
    },
    cg_share_half: {
      ...SHARE,
      symbol: 'h_½',
      title: 'CG on the mean chord, tank half full',
      doc: 'As a share of the mean aerodynamic chord.',
      usual: [0.15, 0.25],
      detail: true,
    },
    cg_share_full: {
      ...SHARE,
      symbol: 'h_1',
      title: 'CG on the mean chord, tank full',
      doc: 'As a share of the mean aerodynamic chord.',
      usual: [0.15, 0.25],
    },
    neutral_point: {
      ...MILLIMETRES,
      symbol: 'x_n',
      title: 'Neutral point',
      doc: 'Aft of the wing root leading edge. With the CG here the model has no tendency to hold its attitude.',
    },
    neutral_point_share: {
      ...SHARE,
      symbol: 'h_n',
      title: 'Neutral point on the mean chord',
      doc: 'As a share of the mean aerodynamic chord.',
      detail: true,
    },
    static_margin: {
      ...SHARE,
      symbol: 'SM',
      title: 'Static margin',
      doc: 'How far the CG lies before the neutral point, as a share of the mean chord; the larger, the steadier and the more elevator it takes.',
    },
    static_margin_empty: {
      ...SHARE,
      symbol: 'SM_0',
      title: 'Static margin, tank empty',
      doc: 'As a share of the mean chord.',
      detail: true,
    },
    static_margin_full: {
      ...SHARE,
      symbol: 'SM_1',
      title: 'Static margin, tank full',
      doc: 'As a share of the mean chord.',
      detail: true,
    },
    guide_behind_cg: {
      ...MILLIMETRES,
      symbol: 'Δ',
      title: 'Guide from CG',
      ways: ['behind', 'ahead'],
      doc: 'How far the leadout guide lies behind the CG. It holds the nose out.',
      usual: [0.012, 0.03],
    },
    cg_behind_front_leadout: {
      ...MILLIMETRES,
      symbol: 'Δ_f',
      title: 'CG from front leadout',
      ways: ['behind', 'ahead'],
      doc: 'How far the CG lies behind the front leadout, or ahead of it.',
    },
    cg_behind_front_leadout_empty: {
      ...MILLIMETRES,
      symbol: 'Δ_f0',
      title: 'CG from front leadout, tank empty',
      ways: ['behind', 'ahead'],
      doc: 'How far the CG lies behind the front leadout, or ahead of it.',
      detail: true,
    },
    cg_behind_front_leadout_half: {
      ...MILLIMETRES,
      symbol: 'Δ_f½',
      title: 'CG from front leadout, tank half full',
      ways: ['behind', 'ahead'],
      doc: 'How far the CG lies behind the front leadout, or ahead of it.',
      detail: true,
    },
    cg_behind_front_leadout_full: {
      ...MILLIMETRES,
      symbol: 'Δ_f1',
      title: 'CG from front leadout, tank full',
      ways: ['behind', 'ahead'],
      doc: 'How far the CG lies behind the front leadout, or ahead of it.',
      detail: true,
    },
  },
  reasons: {},
  theory: balanceTheory,
  run(m, f, r, i) {
    const { parts, wing, tail, body, leadouts } = f;
    const x = m[parts.x + i]!;
    const empty = m[parts.x_empty + i]!;
    const half = m[parts.x_half + i]!;
    const full = m[parts.x_full + i]!;
    const chord = m[wing.mean_chord + i]!;
    const edge = m[wing.mean_chord_edge + i]!;
    m[r.cg_x + i] = x;
    m[r.cg_y + i] = m[parts.y + i]!;
    m[r.cg_z + i] = m[parts.z + i]!;
    m[r.cg_share + i] = (x - edge) / chord;
    m[r.cg_share_empty + i] = (empty - edge) / chord;
    m[r.cg_share_half + i] = (half - edge) / chord;
    m[r.cg_share_full + i] = (full - edge) / chord;

    ofWing.x = m[wing.quarter_chord + i]!;
    ofWing.strength = m[wing.area + i]! * m[wing.lift_slope + i]!;
    ofTail.x = m[tail.quarter_chord + i]!;
    ofTail.strength = m[tail.area + i]! * m[tail.lift_slope + i]! * (1 - m[tail.downwash + i]!);
    const neutral = neutralPoint(pieces, m[body.pitch_couple + i]!);
    m[r.neutral_point + i] = neutral;
    m[r.neutral_point_share + i] = (neutral - edge) / chord;
    m[r.static_margin + i] = (neutral - x) / chord;
    m[r.static_margin_empty + i] = (neutral - empty) / chord;
    m[r.static_margin_full + i] = (neutral - full) / chord;

    const front = m[leadouts.front_x + i]!;
    m[r.guide_behind_cg + i] = m[leadouts.guide_x + i]! - x;
    m[r.cg_behind_front_leadout + i] = x - front;
    m[r.cg_behind_front_leadout_empty + i] = empty - front;
    m[r.cg_behind_front_leadout_half + i] = half - front;
    m[r.cg_behind_front_leadout_full + i] = full - front;
    return undefined;
  },
  draw(m, _, r): Shape[] {
    const [x, y, z, neutral] = [m[r.cg_x]!, m[r.cg_y]!, m[r.cg_z]!, m[r.neutral_point]!];
    return finiteShapes([
      { view: 'plan', part: 'cg', points: [x, y], label: 'balance.cg_x' },
      { view: 'side', part: 'cg', points: [x, z], label: 'balance.cg_x' },
      { view: 'plan', part: 'neutral_point', points: [neutral, 0], label: 'balance.neutral_point' },
      { view: 'side', part: 'neutral_point', points: [neutral, 0], label: 'balance.neutral_point' },
    ]);
  },
});
