import { air } from '../../../engine/blocks/air/index';
import { balance } from '../../../engine/blocks/balance/index';
import { body } from '../../../engine/blocks/body/index';
import { tail } from '../../../engine/blocks/tail/index';
import { wing } from '../../../engine/blocks/wing/index';
import { type Numbers, runBlock } from './run-block';

/*
 * The Quern 25, an invented model: panels 0.515 and 0.485 m, root chord 0.23, tip 0.20, unswept leading edge, tail area 0.036 m² with its quarter
 * chord 0.47 m aft of the datum, fin 0.012 m² at 0.52 m, side 0.055 m² from −0.17 to 0.60 m.
 */
const depth = 0.055 / 0.77;
export const quernFields = {
  air: { density: 1.225 },
  wing: {
    inboard_span: 0.515,
    outboard_span: 0.485,
    root_chord: 0.23,
    inboard_tip_chord: 0.2,
    outboard_tip_chord: 0.2,
    section_slope: 5.7,
    profile_drag: 0.012,
    span_efficiency: 0.85,
    lift_station: -0.0085,
    drag_station: -0.0064,
  },
  tail: { lift_slope: 3.8, fin_slope: 2.5 },
  body: {
    nose_depth: depth,
    front_depth: depth,
    rear_depth: depth,
    tail_depth: depth,
    slender_couple: 0,
    drag_area: 0.0035,
  },
} as const;

export const leadouts: Numbers = { guide_x: 0.062, guide_y: -0.515, front_x: 0.05 };
export const lines: Numbers = { guide_radius: 18.9, weight: 2 * 0.0006 * 18.3 * 9.80665 };
export const parts: Numbers = {
  mass: 0.85,
  x: 0.046,
  y: 0.01,
  z: 0,
  x_empty: 0.05,
  x_half: 0.046,
  x_full: 0.042,
};

/** All blocks of the model joined, each with its typed fields. */
export function quern(typed: Partial<Record<keyof typeof quernFields, Numbers>> = quernFields) {
  const airs = runBlock(air, typed.air);
  const wings = runBlock(wing, typed.wing);
  const tails = runBlock(tail, typed.tail, { wing: wings.results });
  const bodies = runBlock(body, typed.body, { air: airs.results, tail: tails.results });
  const balances = runBlock(
    balance,
    {},
    { parts, wing: wings.results, tail: tails.results, body: bodies.results, leadouts },
  );
  return { air: airs, wing: wings, tail: tails, body: bodies, balance: balances };
}
