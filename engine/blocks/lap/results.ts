import { STRONGEST_WIND } from '../../physics/index';
import { TIME } from '../../units/index';
import type { Result } from '../block';
import { AIRSPEED, ANGLE, NEWTONS, PLAIN } from '../measures';
import { solverResults } from '../solver';

const TIMES = { dimension: TIME, unit: 's' } as const;
const pull = (symbol: string, title: string, doc: string): Result => ({ ...NEWTONS, symbol, title, doc });
const detail = (result: Result): Result => ({ ...result, detail: true });
const place = (symbol: string, title: string, doc: string): Result => ({ ...ANGLE, symbol, title, doc });
const FROM_DOWNWIND = 'From straight downwind of the pilot, in the direction of flight: 180° is straight upwind.';

/** How the search for the wind at the floor may end; of them only the first has a wind. */
export const FLOOR_ENDS = ['settled', 'below the floor', 'not met'] as const;
const floorSolver = solverResults({
  of: 'Of the wind at which the least pull comes down to the least wanted; in calm air already, or in no wind up to 20 m/s',
  steps: 'Laps in wind that were solved for it.',
  residual: { ...NEWTONS, doc: 'Least pull in that wind less the least wanted.' },
  ends: FLOOR_ENDS,
});

/** How the lap in a gust may end; of them only the first has a greatest pull, and slack lines a least one of 0. */
export const GUST_ENDS = ['settled', 'slack', 'stalled', 'overtaken', 'no balance', 'not periodic'] as const;

export const lapResults = {
  least_pull: pull('T_1', 'Least pull', 'Of all lines at the model, around the lap.'),
  least_pull_per_weight: {
    ...PLAIN,
    suffix: '× weight',
    symbol: 'T_1/mg',
    title: 'Least pull',
    doc: 'Over the weight of the model.',
  },
  least_azimuth: place('θ_1', 'Where the pull is least', FROM_DOWNWIND),
  least_bearing: detail(place('β_1', 'Bearing of the least pull', 'Compass bearing from the pilot to the model.')),
  greatest_pull: pull('T_2', 'Greatest pull', 'Of all lines at the model, around the lap.'),
  greatest_pull_at_handle: pull(
    'T_h2',
    'Greatest pull at the handle',
    'Around the lap: what the pull test is held against.',
  ),
  greatest_azimuth: place('θ_2', 'Where the pull is greatest', FROM_DOWNWIND),
  greatest_bearing: detail(
    place('β_2', 'Bearing of the greatest pull', 'Compass bearing from the pilot to the model.'),
  ),
  least_pull_in_gust: pull(
    'T_1g',
    'Least pull in a gust',
    'With the wind of a gust all around the lap. 0: the lines go slack.',
  ),
  greatest_pull_in_gust: pull(
    'T_h2g',
    'Greatest pull at the handle in a gust',
    'With the wind of a gust all around the lap; none where no such lap can be flown: “Lap in a gust” says why.',
  ),
  greatest_pull_met: pull(
    'T_h3',
    'Greatest pull at the handle, gusts counted',
    'The greater of the lap in the mean wind and the lap in a gust. Where no lap in a gust can be flown it is that of the mean wind, and the gust may pull harder: “Lap in a gust” says so.',
  ),
  floor: pull('T_f', 'Least pull wanted', 'As typed, or the weight of the model.'),
  floor_margin: {
    ...PLAIN,
    symbol: 'T_1/T_f',
    title: 'Least pull over the least wanted',
    doc: 'Below 1 the lines pull less than wanted somewhere on the lap.',
    least: { at: 1, because: 'the lines pull less than wanted somewhere on the lap' },
  },
  wind_at_floor: {
    ...AIRSPEED,
    symbol: 'W_f',
    title: 'Wind limit for tight lines',
    doc: 'Mean wind, measured as above, in which the least pull comes down to the least wanted. None: even the strongest wind looked at (20 m/s) does not, or calm air already does; the second “Solver ended” says which.',
  },
  tight_up_to: detail({
    ...AIRSPEED,
    symbol: 'W_t',
    title: 'Lines tight up to',
    doc: `The wind limit for tight lines; the strongest wind looked at (${STRONGEST_WIND} m/s) where the pull stays over the least wanted even there, and 0 where it does not in calm air.`,
  }),
  lap_time: {
    ...TIMES,
    symbol: 't_w',
    title: 'Lap time in wind',
    doc: 'Whether wind slows or speeds the lap hangs on the side force of the fuselage, which is uncertain.',
  },
  lap_time_change: {
    ...TIMES,
    symbol: 'Δt',
    title: 'Longer than in calm air',
    doc: 'Lap time in wind less that in calm air; uncertain with the side force of the fuselage.',
  },
  slowest: { ...AIRSPEED, symbol: 'V_1', title: 'Slowest', doc: 'Over the ground, around the lap.' },
  fastest: { ...AIRSPEED, symbol: 'V_2', title: 'Fastest', doc: 'Over the ground, around the lap.' },
  wind_there: detail({
    ...AIRSPEED,
    symbol: 'W_H',
    title: 'Wind at the model',
    doc: 'By the profile of the wind, at the flying height.',
  }),
  ...solverResults({
    of: 'Of the lap that comes back to its own speed',
    steps: 'Laps computed until one closed.',
    residual: { ...AIRSPEED, doc: 'By how much the lap misses the speed that it began with.' },
  }),
  gust_end: {
    ...PLAIN,
    symbol: 'k_g',
    title: 'Lap in a gust',
    doc: `Why there is no pull in a gust: the lines go slack, the wing stalls, the gust overtakes the model, or no lap balances or closes. In formulas a number: ${GUST_ENDS.map((end, k) => `${k} is ${end}`).join(', ')}.`,
    oneOf: GUST_ENDS,
    detail: true,
  },
  floor_status: floorSolver.status,
  floor_iterations: floorSolver.iterations,
  floor_residual: floorSolver.residual,
  reason_azimuth: detail({
    ...ANGLE,
    symbol: 'θ_r',
    title: 'Where it gives way',
    doc: `Only where there is no lap. ${FROM_DOWNWIND}`,
  }),
} as const satisfies Readonly<Record<string, Result>>;
