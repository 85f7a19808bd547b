import { LANDING_OVER_STALL, TRAVEL_ENDS } from '../../physics/index';
import type { Ways } from '../../units/index';
import type { Result } from '../block';
import { AIRSPEED, ANGLE, MILLIMETRES, NEWTONS, PER_RADIAN, PLAIN, SHARE, TORQUE, UP_DOWN } from '../measures';
import { solverResults } from '../solver';

/** The lines as `sense` tells them. */
export const UP_LINES = ['front', 'rear'] as const;

const angle = (symbol: string, title: string, doc: string): Result => ({ ...ANGLE, symbol, title, doc });
const plain = (symbol: string, title: string, doc: string): Result => ({ ...PLAIN, symbol, title, doc });
const length = (symbol: string, title: string, doc: string): Result => ({ ...MILLIMETRES, symbol, title, doc });
const under = (at: number, because: string, result: Result): Result => ({
  ...result,
  least: { at, because, stops: true },
});
const LONGER: Ways = ['longer', 'shorter'];
const detail = (result: Result): Result => ({ ...result, detail: true });

/** The linkage as it was computed, for what hangs on it. */
const asBuilt = {
  front_arm: detail(length('r_1', 'Arm of the front leadout', 'As typed, or half of the bellcrank.')),
  rear_arm: detail(length('r_2', 'Arm of the rear leadout', 'As typed, or half of the bellcrank.')),
  hole_offset: detail(length('o_p', 'Leadout holes inboard of the pivot', 'As typed.')),
  bellcrank_z: detail(length('z_p', 'Height of the bellcrank', 'As typed, or that of the guide.')),
  pushrod_arm: detail(length('p', 'Pushrod arm', 'As typed.')),
  pushrod_direction: detail(
    angle('θ_p', 'Direction of the pushrod arm', 'From aft toward outboard, with the bellcrank square.'),
  ),
  pushrod_length: detail(length('l_p', 'Pushrod length', 'As typed, or made to measure.')),
  horn_height: detail(length('h', 'Horn height', 'As typed.')),
  horn_direction: detail(angle('θ_h', 'Direction of the horn', 'From aft upward, with the elevator neutral.')),
  horn_y: detail(length('y_h', 'Horn from centreline', 'As typed, or straight behind the pushrod’s hole.')),
  up_line_longer: detail(length('λ', 'Up line longer by', 'As typed.')),
  hinge_incidence: detail({
    ...PER_RADIAN,
    symbol: 'b_1',
    title: 'Hinge moment by incidence',
    doc: 'As typed, or by theory.',
  }),
  hinge_deflection: detail({
    ...PER_RADIAN,
    symbol: 'b_2',
    title: 'Hinge moment by deflection',
    doc: 'As typed, or by theory.',
  }),
  friction: detail({ ...TORQUE, symbol: 'M_f', title: 'Friction at the elevator', doc: 'As typed.' }),
  pivot_torque_arm: detail(
    length('f_p', 'Friction arm of the pivot', 'Friction coefficient × radius: its torque over the pull.'),
  ),
  down_turn: detail(angle('β_2', 'Bellcrank at full down', 'Turn from square.')),
} as const satisfies Readonly<Record<string, Result>>;

export const controlResults = {
  up_travel: angle('δ_u', 'Full up elevator', 'What handle and stops allow, trailing edge up.'),
  down_travel: angle('δ_d', 'Full down elevator', 'What handle and stops allow, trailing edge down.'),
  up_line: {
    ...plain(
      'u',
      'Up line',
      'The leadout that gives up elevator when it is pulled: it belongs to the top of the handle.',
    ),
    oneOf: UP_LINES,
  },
  ratio: {
    ...plain('i', 'Elevator over handle', 'Degrees of elevator for a degree of the handle, at neutral.'),
    usual: [0.5, 1.2],
  },
  neutral: {
    ...angle(
      'δ_0',
      'Elevator with the handle upright',
      'Where the trailing edge goes. Mend it by the pushrod or by the lines, as the next two say.',
    ),
    ways: UP_DOWN,
  },
  pushrod_change: {
    ...length(
      'Δl_p',
      'Pushrod for neutral',
      'Make the pushrod so much longer or shorter for neutral elevator with the handle upright.',
    ),
    ways: LONGER,
  },
  line_change: {
    ...length(
      'Δλ',
      'Or up line for neutral',
      'Or make the up line so much longer or shorter. None: no line length does it within the stops.',
    ),
    ways: LONGER,
  },
  symmetry: plain(
    'δ_u/δ_d',
    'Up over down',
    'Elevator from neutral at the same tilt of the handle each way: 1 moves alike.',
  ),
  hinge_moment: {
    ...TORQUE,
    symbol: 'H',
    title: 'Hinge moment in level flight',
    doc: 'That holds the elevator, positive where it must press the trailing edge up.',
  },
  most_moment: {
    ...TORQUE,
    symbol: 'H_m',
    title: 'Greatest hinge moment',
    doc: 'Of the most up and the most down used, at the greatest speed of a manoeuvre, before the model has turned after it.',
  },
  line_difference: {
    ...NEWTONS,
    symbol: 'ΔT',
    title: 'Difference between the lines',
    doc: 'Pull of the line that works less that of the other, for that moment with its friction, at the least pull.',
  },
  pull_needed: {
    ...NEWTONS,
    symbol: 'T_n',
    title: 'Pull that holds it',
    doc: 'Least pull of both lines that gives that moment: all of it in one line, the other just slack.',
  },
  pull_share: {
    ...SHARE,
    symbol: 'T_n/T_1',
    title: 'Share of the least pull used',
    doc: 'From 100 % on one line is slack and the other cannot give the elevator wanted.',
  },
  pull_margin: under(
    1,
    'the lines cannot hold the elevator wanted',
    plain(
      'T_1/T_n',
      'Least pull over pull that holds it',
      'Below 1 the lines cannot hold the elevator wanted: stop. More pull, a longer horn, a larger bellcrank or a smaller elevator would do.',
    ),
  ),
  needed: { ...angle('δ_e', 'Elevator needed in level flight', 'As level flight has it.'), ways: UP_DOWN },
  margin: under(
    0,
    'level flight cannot be trimmed',
    angle(
      'Δδ',
      'Up elevator to spare in level flight',
      'Full up less what is needed. Below 0 it cannot be trimmed: stop.',
    ),
  ),
  needed_landing: {
    ...angle(
      'δ_el',
      'Elevator needed at landing speed',
      'Engine stopped, height held. None: it does not balance there with tight lines.',
    ),
    ways: UP_DOWN,
  },
  margin_landing: under(
    0,
    'the nose cannot be held up for landing',
    angle(
      'Δδ_l',
      'Up elevator to spare at landing speed',
      'Full up less what is needed. Below 0 it cannot be held off: stop. Ground and flare ask for some more.',
    ),
  ),
  margin_down: detail(angle('Δδ_d', 'Down elevator to spare in level flight', 'Full down and what is needed, added.')),
  up_limit: detail({ ...plain('e_u', 'Full up ends at', 'What comes first.'), oneOf: TRAVEL_ENDS }),
  down_limit: detail({ ...plain('e_d', 'Full down ends at', 'What comes first.'), oneOf: TRAVEL_ENDS }),
  handle_at_up: detail(angle('κ_1', 'Handle at full up', 'Tilt from upright.')),
  handle_at_down: detail(angle('κ_2', 'Handle at full down', 'Tilt from upright.')),
  handle_at_neutral: detail({
    ...angle('κ_0', 'Handle at neutral elevator', 'Tilt that gives no elevator.'),
    ways: ['back', 'forward'],
  }),
  up_turn: detail(angle('β_1', 'Bellcrank at full up', 'Turn from square.')),
  ratio_up: detail(plain('i_u', 'Ratio at full up', 'Degrees of elevator for a degree of the handle there.')),
  ratio_down: detail(plain('i_d', 'Ratio at full down', 'Degrees of elevator for a degree of the handle there.')),
  moment_up: detail({
    ...TORQUE,
    symbol: 'H_1',
    title: 'Hinge moment, most up used',
    doc: 'At the greatest speed of a manoeuvre; where full up is less, at that.',
  }),
  moment_down: detail({
    ...TORQUE,
    symbol: 'H_2',
    title: 'Hinge moment, most down used',
    doc: 'At the greatest speed of a manoeuvre; where full down is less, at that.',
  }),
  trim_difference: detail({
    ...NEWTONS,
    symbol: 'ΔT_0',
    title: 'Difference in level flight',
    doc: 'Pull of the up line less that of the down line for the elevator of level flight, without friction, at the pull of level flight.',
  }),
  pushrod_force: detail({
    ...NEWTONS,
    symbol: 'F_p',
    title: 'Force in the pushrod',
    ways: ['pull', 'push'],
    doc: 'At the greatest hinge moment. A push asks for guides against bowing.',
  }),
  handle_torque: detail({
    ...TORQUE,
    symbol: 'M_h',
    title: 'Torque at the wrist',
    doc: 'At the greatest hinge moment, at the pull of level flight: overhang and difference together.',
  }),
  least_pull: detail({ ...NEWTONS, symbol: 'T_1', title: 'Least pull', doc: 'As typed, or that of level flight.' }),
  greatest_speed: detail({
    ...AIRSPEED,
    symbol: 'V_m',
    title: 'Greatest speed of a manoeuvre',
    doc: 'As typed, or 1.1 times level flight.',
  }),
  landing_speed: detail({
    ...AIRSPEED,
    symbol: 'V_l',
    title: 'Landing speed',
    doc: `As typed, or ${LANDING_OVER_STALL} times the stall speed.`,
  }),
  used_up: detail(angle('δ_1', 'Most up used in flight', 'As typed.')),
  used_down: detail(angle('δ_2', 'Most down used in flight', 'As typed.')),
  pushrod_measured: detail(
    length('l_p0', 'Pushrod made to measure', 'Eye to eye with the bellcrank square and the elevator neutral.'),
  ),
  fails_at: detail({
    ...angle('β_r', 'Turn at which it fails', 'Of the bellcrank; only where the linkage does not work.'),
    ways: UP_DOWN,
  }),
  ...solverResults({
    of: 'Of the handle at which the elevator is neutral',
    steps: 'Of the search for it.',
    residual: { ...ANGLE, doc: 'Elevator angle that is left there.' },
    ends: ['settled', 'never neutral'],
  }),
  ...asBuilt,
} as const satisfies Readonly<Record<string, Result>>;
