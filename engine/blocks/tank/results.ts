import { PRESSURE, TIME } from '../../units/index';
import type { Result } from '../block';
import { ANGLE, FLUID, MILLIMETRES, PLAIN, SHARE } from '../measures';
import { solverResults } from '../solver';

const HEAD = { dimension: PRESSURE, unit: 'Pa' } as const;
const head = (symbol: string, title: string, doc: string): Result => ({ ...HEAD, symbol, title, doc });
const detail = (result: Result): Result => ({ ...result, detail: true });
const NO_YES = ['no', 'yes'] as const;

/** How a search for the fuel surface may end. */
const SURFACE_ENDS = ['settled', 'nearly'] as const;

export const tankResults = {
  volume: { ...FLUID, symbol: 'V_k', title: 'Tank holds', doc: 'When filled as said.' },
  unusable: {
    ...FLUID,
    symbol: 'V_u',
    title: 'Unusable fuel',
    doc: 'Left in the tank when the pickup uncovers in level flight.',
  },
  usable: { ...FLUID, symbol: 'V_d', title: 'Usable fuel', doc: 'Drawn from filling to the pickup uncovering.' },
  laps: {
    ...PLAIN,
    symbol: 'N_k',
    title: 'Laps on a tank',
    doc: 'Usable fuel over what a lap takes; the run on the ground takes from it. None for a motor.',
  },
  time: {
    dimension: TIME,
    unit: 'min',
    symbol: 't_k',
    title: 'Minutes on a tank',
    doc: 'At the lap time of level flight.',
  },
  surface_angle: {
    ...ANGLE,
    symbol: 'α_f',
    title: 'Fuel surface stands at',
    doc: 'From level with the wing, high on the outboard side, in level flight.',
  },
  load: {
    ...PLAIN,
    suffix: '× gravity',
    symbol: 'n_f',
    title: 'Load on the fuel',
    doc: 'Apparent gravity over gravity.',
    detail: true,
  },
  head_start: head(
    'p_1',
    'Head at the start',
    'Pressure of fuel at the spray bar in level flight, tank filled. Negative: the engine must suck.',
  ),
  head_half: head('p_2', 'Head half way', 'With half of the usable fuel drawn.'),
  head_end: head('p_3', 'Head at the end', 'Just before the pickup uncovers.'),
  head_change: head(
    'Δp',
    'Change over the tank',
    'End less start: falling means that the engine leans out as the tank empties.',
  ),
  head_rest: head(
    'p_0',
    'Head at rest',
    'At the spray bar, filled, as the model stands for starting. Positive: the tank stands above the spray bar and floods the engine; negative: fuel drains back.',
  ),
  head_rest_end: detail(head('p_0e', 'Head at rest, nearly empty', 'With the unusable fuel left.')),
  needle_change: head(
    'Δp_0',
    'From ground to flight',
    'Head at the start of the flight less head at rest: the needle set on the ground is off by so much.',
  ),
  level_rest: {
    ...MILLIMETRES,
    symbol: 'h_0',
    title: 'Fuel from the spray bar at rest',
    ways: ['above', 'below', 'level with'],
    doc: 'Height of the surface over the spray bar, filled. Above it floods the engine, below it drains back.',
    detail: true,
  },
  spills_at_rest: {
    ...PLAIN,
    symbol: 'k_0',
    title: 'Fuel spills at rest',
    doc: 'Whether a filled tank runs out of its vent at rest.',
    oneOf: NO_YES,
  },
  spills_in_flight: {
    ...PLAIN,
    symbol: 'k_1',
    title: 'Fuel spills in flight',
    doc: 'Whether a filled tank runs out of its vent in level flight.',
    oneOf: NO_YES,
  },
  fuel_apart: detail({
    ...SHARE,
    symbol: 'Δm_f',
    title: 'Fuel apart from the table of weights',
    doc: 'Fuel of the full tank against that of the table of weights, as a share of the latter. None where the table has no fuel.',
  }),
  fuel_x_start: detail({
    ...MILLIMETRES,
    symbol: 'x_f1',
    title: 'Middle of the fuel at the start',
    doc: 'In level flight, aft of the wing root leading edge.',
  }),
  fuel_x_half: detail({
    ...MILLIMETRES,
    symbol: 'x_f2',
    title: 'Middle of the fuel half way',
    doc: 'In level flight, aft of the wing root leading edge.',
  }),
  fuel_y_start: detail({
    ...MILLIMETRES,
    symbol: 'y_f1',
    title: 'Middle of the fuel from centreline',
    doc: 'At the start, in level flight, outboard positive.',
  }),
  cg_shift: {
    ...MILLIMETRES,
    symbol: 'Δx_f',
    title: 'CG moves as fuel is drawn',
    ways: ['aft', 'forward', 'not at all'],
    doc: 'From filled to the pickup uncovering.',
  },
  cg_shift_out: detail({
    ...MILLIMETRES,
    symbol: 'Δy_f',
    title: 'CG moves sideways as fuel is drawn',
    ways: ['outboard', 'inboard', 'not at all'],
    doc: 'From filled to the pickup uncovering.',
  }),
  ...solverResults({
    of: 'Of the fuel surfaces in flight and at rest',
    steps: 'Of the searches for the fuel surface: filled, half way and at the end.',
    residual: { ...FLUID, doc: 'Volume that the fuel surface misses.' },
    ends: SURFACE_ENDS,
  }),
} as const satisfies Readonly<Record<string, Result>>;
