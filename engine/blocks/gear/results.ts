import { dimension, MOMENT } from '../../units/index';
import type { Result } from '../block';
import { AIRSPEED, ANGLE, degrees, MILLIMETRES, NEWTONS, PLAIN, PRESSURES, SHARE } from '../measures';

const ratio = (symbol: string, title: string, doc: string, detail = false): Result => ({
  ...PLAIN,
  symbol,
  title,
  doc,
  ...(detail ? { detail: true } : {}),
});
const margin = (symbol: string, ground: string): Result => ({
  ...ratio(
    symbol,
    `Nose-over margin on ${ground}`,
    `Rolling drag at which the model just tips on its nose, at full thrust and level, over the rolling drag on ${ground}. Below 1 it noses over at release, at 0 by the thrust alone.`,
  ),
  least: { at: 1, because: 'it noses over at release' },
});

export const gearResults = {
  rest_pitch: {
    ...ANGLE,
    symbol: 'β',
    title: 'Pitch at rest',
    ways: ['nose up', 'nose down'],
    doc: 'Of the reference line.',
  },
  wheel_angle: {
    ...ANGLE,
    symbol: 'α_w',
    title: 'Angle from wheel contact to CG',
    ways: ['ahead', 'behind'],
    doc: 'From the upright, with the model level: how far the wheels stand ahead of the CG, or behind it.',
    usual: [degrees(16), degrees(25)],
  },
  main_load: {
    ...NEWTONS,
    symbol: 'N_m',
    title: 'Load on the main wheels',
    doc: 'Of all main wheels together, at rest.',
  },
  support_load: { ...NEWTONS, symbol: 'N_s', title: 'Load on tail rest or nose wheel', doc: 'At rest.' },
  support_share: {
    ...SHARE,
    symbol: 'w_s',
    title: 'Share on tail rest or nose wheel',
    doc: 'Share of the weight that it carries at rest.',
  },
  tip_ratio: ratio(
    'μ_t',
    'Rolling drag that tips it',
    'Rolling drag over load at which the model just tips on its nose, at full thrust and level. Not positive: the thrust alone tips it.',
  ),
  tip_ratio_at_rest: ratio(
    'μ_r',
    'Rolling drag that tips it from rest',
    'The same at the pitch at which the model stands, as at release.',
    true,
  ),
  tip_ratio_engine_off: ratio(
    'μ_o',
    'Rolling drag that tips it, engine off',
    'The same level and without thrust, as at the end of a landing.',
    true,
  ),
  margin_pavement: margin('M_p', 'pavement'),
  margin_short_grass: margin('M_s', 'short grass'),
  margin_long_grass: margin('M_l', 'long grass'),
  step: {
    ...MILLIMETRES,
    symbol: 's',
    title: 'Step that stops it',
    doc: 'Height of a stone or tuft that slow wheels just climb before the model tips over it, level and without thrust.',
  },
  clearance_level: {
    ...MILLIMETRES,
    symbol: 'c_l',
    title: 'Propeller clearance, level',
    doc: 'From the propeller tip to the ground with the reference line level. Negative: it strikes.',
  },
  clearance_rest: {
    ...MILLIMETRES,
    symbol: 'c_r',
    title: 'Propeller clearance at rest',
    doc: 'From the propeller tip to the ground as the model stands.',
    detail: true,
  },
  strap_x: {
    ...MILLIMETRES,
    symbol: 'x_t',
    title: 'Strap station',
    doc: 'Where the wire is held, aft of the wing root leading edge.',
  },
  wire_length: {
    ...MILLIMETRES,
    symbol: 'l_c',
    title: 'Gear wire to cut',
    doc: 'With its bends and axles: of both legs in one piece, or of one leg to where it is held. No answer where a run is too short for its bends.',
    detail: true,
  },
  leg_stiffness: {
    dimension: dimension(0, 1, -2),
    unit: 'N/mm',
    tradeUnit: 'lbf/in',
    symbol: 'k_g',
    title: 'Stiffness of a leg',
    doc: 'Force at one wheel over its movement along that force.',
  },
  leg_yield_load: {
    ...NEWTONS,
    symbol: 'F_y',
    title: 'Load that bends a leg',
    doc: 'Force at one wheel at which the wire stays bent.',
  },
  leg_yield_travel: {
    ...MILLIMETRES,
    symbol: 'u_y',
    title: 'Travel before a leg bends',
    doc: 'Movement of the wheel along the force until the wire stays bent.',
  },
  leg_energy: {
    dimension: MOMENT,
    unit: 'J',
    tradeUnit: 'lbf·ft',
    symbol: 'U',
    title: 'Energy a leg takes',
    doc: 'Until its wire stays bent.',
    detail: true,
  },
  leg_stress: {
    ...PRESSURES,
    symbol: 'σ_w',
    title: 'Stress at rest',
    doc: 'Greatest in a leg, with the model standing on it.',
    detail: true,
  },
  sink_speed: {
    ...AIRSPEED,
    symbol: 'v_s',
    title: 'Sink speed that bends the gear',
    doc: 'On both wheels at once; on one wheel alone it is 0.71 of it.',
  },
  drop_height: {
    ...MILLIMETRES,
    symbol: 'h_s',
    title: 'Drop that bends the gear',
    doc: 'Height of fall that gives this sink speed.',
    detail: true,
  },
} as const satisfies Readonly<Record<string, Result>>;
