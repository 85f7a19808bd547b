import { CHARGE_EXPONENT } from '../../physics/index';
import { VOLUME_FLOW } from '../../units/index';
import type { Field } from '../block';
import { FLUID, PLAIN, SECONDS, SHARE } from '../measures';

const GUESS = 'A guess without a source: time your own.';
const laps = (symbol: string, title: string, doc: string, value: number, most: number, basis: string): Field => ({
  ...PLAIN,
  symbol,
  title,
  doc,
  default: value,
  range: [0, most],
  basis,
});
const seconds = (symbol: string, title: string, doc: string, value: number): Field => ({
  ...SECONDS,
  symbol,
  title,
  doc,
  default: value,
  range: [0, 120],
  basis: GUESS,
});
const takes = (field: Field, taken: string): Field => ({ ...field, taken });

/** Pieces that say what the race is made of, where they are there. */
export const racePieces = {
  lap: { link: 'lap', optional: true, doc: 'The lap time in the wind of the day, unless typed.' },
  tank: { link: 'tank', optional: true, doc: 'The usable fuel, unless typed.' },
  launch: {
    link: 'launch',
    optional: true,
    doc: 'Laps and time of the run from release to flying speed, unless typed.',
  },
  glide: { link: 'glide', optional: true, doc: 'Laps and time of the glide to the pit, unless typed.' },
} as const;

/** What a race asks of model, needle and pit crew. */
export const raceFields = {
  laps: {
    ...PLAIN,
    symbol: 'N',
    title: 'Laps of the race',
    doc: 'Whole laps from release, from the current rule book.',
    default: 100,
    range: [1, 2000],
    basis: 'A round number: check the current rule book.',
  } as Field,
  lap_time: {
    ...SECONDS,
    symbol: 't_f',
    title: 'Lap time in the race',
    doc: 'Under power, at the fastest needle: that of the wind of the day, or a timed lap.',
    default: Number.NaN,
    range: [1, 30],
    taken: 'lap.lap_time',
    basis: 'Level flight in calm air.',
  } as Field,
  usable: {
    ...FLUID,
    symbol: 'V_u',
    title: 'Usable fuel',
    doc: 'What a filling gives.',
    default: Number.NaN,
    range: [1e-6, 2e-3],
    taken: 'tank.usable',
    basis: 'Tank volume of the engine.',
  } as Field,
  reserve: laps(
    'n_s',
    'Reserve',
    'Fuel kept at every landing and at the end, in laps under power.',
    2,
    100,
    'Common practice, no source.',
  ),
  needle: {
    ...SHARE,
    symbol: 's',
    title: 'Needle',
    doc: 'From 0 %, set for range, to 100 %, the fastest setting, at which the lap time holds.',
    default: 1,
    range: [0, 1],
    basis: 'The fastest setting.',
  } as Field,
  range_slower: {
    ...SHARE,
    symbol: 'Δt',
    title: 'Slower on the range needle',
    doc: 'How much longer a lap takes on the needle set for range than on the fastest.',
    default: 0.04,
    range: [0, 1],
    basis: 'A guess without a source: fly some laps on each setting and time them.',
  } as Field,
  range_saves: {
    ...SHARE,
    symbol: 'Δv',
    title: 'Saved on the range needle',
    doc: 'How much less fuel a lap takes on the needle set for range than on the fastest.',
    default: 0.15,
    range: [0, 0.9],
    basis: 'A guess without a source: measure what some laps draw on each setting.',
  } as Field,
  run_laps: takes(laps('n_r', 'Laps of the run', 'From release to flying speed.', 0.2, 5, GUESS), 'launch.laps'),
  run_time: takes(seconds('t_r', 'Time of the run', 'From release to flying speed.', 2.5), 'launch.time'),
  glide_laps: takes(laps('n_g', 'Laps of the glide', 'From shutting off to touchdown.', 1.5, 20, GUESS), 'glide.laps'),
  glide_time: takes(seconds('t_g', 'Time of the glide', 'From shutting off to touchdown.', 9), 'glide.time'),
  catch_time: seconds('t_c', 'Touchdown to fuelling', 'Until the model is held and the hose is on.', 2),
  refuel_rate: {
    dimension: VOLUME_FLOW,
    unit: 'mL/s',
    symbol: 'q',
    title: 'Refuelling rate',
    doc: 'With the hose on.',
    default: 15e-6,
    range: [0.1e-6, 1e-3],
    basis: GUESS,
  } as Field,
  restart_time: seconds(
    't_s',
    'Restart',
    'From the hose coming off until the engine runs and the model is released.',
    4,
  ),
  timed_lap: {
    ...SECONDS,
    symbol: 't_m',
    title: 'Timed lap',
    doc: 'A lap timed on the day, to be told for standard air and calm.',
    default: Number.NaN,
    range: [1, 30],
    basis: 'The lap time in the race.',
  } as Field,
  density_exponent: {
    ...PLAIN,
    symbol: 'κ',
    title: 'Thrust goes with density to the power of',
    doc: '1 where the engine breathes the air, 0 where its power stays.',
    default: CHARGE_EXPONENT,
    range: [0, 1.5],
    basis: 'The charge of a two-stroke (derivation).',
    advanced: true,
  } as Field,
} as const;
