import type { Result } from '../block';
import { FLUID, PLAIN, SECONDS, SHARE } from '../measures';

export const raceResults = {
  time: { ...SECONDS, symbol: 't_N', title: 'Race time', doc: 'From first release to the end of the last lap.' },
  stops: { ...PLAIN, symbol: 'k', title: 'Stops', doc: 'The fewest that the tank allows.' },
  laps_per_tank: {
    ...PLAIN,
    symbol: 'n_p',
    title: 'Laps a tank',
    doc: 'Whole laps from release to a stop, with the glide; to the end of the race where there is no stop.',
  },
  lacking: {
    ...PLAIN,
    symbol: 'x',
    title: 'Laps lacking for one stop less',
    doc: 'So many laps longer would a tank have to last.',
  },
  race_lap: { ...SECONDS, symbol: 't', title: 'Lap time under power', doc: 'At this needle.', detail: true },
  fuel_per_lap: { ...FLUID, symbol: 'v', title: 'Fuel a lap', doc: 'At this needle.', detail: true },
  fuel_usable: {
    ...FLUID,
    symbol: 'V_1',
    title: 'Usable fuel of a filling',
    doc: 'As typed, else that of the tank where the design has one, else the tank volume of the engine.',
    detail: true,
  },
  fuel: { ...FLUID, symbol: 'V_N', title: 'Fuel of the race', doc: 'What the engine burns.' },
  left: { ...PLAIN, symbol: 'n_l', title: 'Laps left in the tank', doc: 'At the end, under power.', detail: true },
  pit_time: { ...SECONDS, symbol: 't_p', title: 'Time in the pits', doc: 'From touchdown to release, all stops.' },
  slow_time: {
    ...SECONDS,
    symbol: 't_a',
    title: 'Lost in runs and glides',
    doc: 'What take-offs and glides cost over laps under power.',
  },
  best_needle: {
    ...SHARE,
    symbol: 's_b',
    title: 'Best needle',
    doc: 'Of the shortest race: as fast as the stops that it needs allow.',
  },
  best_time: { ...SECONDS, symbol: 't_b', title: 'Race time on the best needle', doc: 'Of the shortest race.' },
  best_stops: {
    ...PLAIN,
    symbol: 'k_b',
    title: 'Stops on the best needle',
    doc: 'Of the shortest race.',
    detail: true,
  },
  fast_time: { ...SECONDS, symbol: 't_1', title: 'Race time on the fastest needle', doc: 'At 100 %.', detail: true },
  range_time: { ...SECONDS, symbol: 't_0', title: 'Race time on the range needle', doc: 'At 0 %.', detail: true },
  standard_lap_time: {
    ...SECONDS,
    symbol: 't_i',
    title: 'Lap in standard air, calm',
    doc: 'What the model would fly at sea level of the standard atmosphere without wind, at the fastest needle.',
    detail: true,
  },
  corrected_lap_time: {
    ...SECONDS,
    symbol: 't_k',
    title: 'Timed lap, corrected',
    doc: 'The timed lap as it would be in standard air and calm.',
  },
} as const satisfies Readonly<Record<string, Result>>;
