import { beforeEach, expect, it } from 'vitest';
import { air } from '../../../engine/blocks/air/index';
import { body } from '../../../engine/blocks/body/index';
import { electric } from '../../../engine/blocks/engines/electric';
import { thrustLaw } from '../../../engine/blocks/engines/thrust-law';
import { flight } from '../../../engine/blocks/flight/index';
import { leadouts } from '../../../engine/blocks/leadouts/index';
import { lines } from '../../../engine/blocks/lines/index';
import { partsResults } from '../../../engine/blocks/parts/results';
import { propeller } from '../../../engine/blocks/propeller/calculated';
import { race } from '../../../engine/blocks/race/index';
import { tail } from '../../../engine/blocks/tail/index';
import { wing } from '../../../engine/blocks/wing/index';
import { newRig, type Rig } from './rig';

let rig: Rig;
beforeEach(() => {
  rig = newRig();
  rig.give('parts', partsResults, { mass: 0.85, x: 0.046, y: 0.01, z: 0, inertia_yy: 0.02, inertia_zz: 0.038 });
  for (const each of [air, wing, tail, body, thrustLaw, leadouts, lines, flight]) expect(rig.run(each)).toBeUndefined();
});

it('laps as level flight does, at the fastest needle', () => {
  expect(rig.run(race)).toBeUndefined();
  expect(rig.get('race.race_lap')).toBe(rig.get('flight.lap_time'));
  expect(rig.get('race.fuel_per_lap')).toBe(rig.get('flight.fuel_per_lap'));
  expect(rig.get('race.time')).toBe(rig.get('race.fast_time'));
  rig.run(race, { needle: 0 });
  expect(rig.get('race.time')).toBe(rig.get('race.range_time'));
  rig.run(race, { needle: rig.get('race.best_needle') });
  expect(rig.get('race.time')).toBe(rig.get('race.best_time'));
});

it('draws fuel by the clock where a lap is typed', () => {
  const lap = rig.get('flight.lap_time');
  rig.run(race, { lap_time: 2 * lap });
  expect(rig.get('race.fuel_per_lap')).toBeCloseTo(2 * rig.get('flight.fuel_per_lap'), 12);
});

it('corrects nothing on a standard day, and a thin day by what the model makes of it', () => {
  rig.run(air, { temperature: 288.15, pressure: 101325, humidity: 0 });
  rig.run(thrustLaw);
  rig.run(flight);
  rig.run(race, { timed_lap: 5 });
  // Air of the block is real air: its density differs from the ideal gas in the fourth digit.
  expect(rig.get('race.standard_lap_time')).toBeCloseTo(rig.get('flight.lap_time'), 3);
  expect(rig.get('race.corrected_lap_time')).toBeCloseTo(5, 3);

  rig.run(air, { temperature: 308.15, pressure: 95000, humidity: 0 });
  rig.run(thrustLaw);
  rig.run(flight);
  rig.run(race, { timed_lap: 5 });
  const ratio = rig.get('race.standard_lap_time') / rig.get('flight.lap_time');
  expect(rig.get('race.corrected_lap_time')).toBeCloseTo(5 * ratio, 9);
  rig.run(race, { density_exponent: 0 });
  // The same thrust in denser air is slower than thrust that grows with it.
  expect(rig.get('race.standard_lap_time')).toBeGreaterThan(ratio * rig.get('flight.lap_time'));
});

it('says why there is no race', () => {
  expect(rig.run(race, { usable: 1e-6 })).toBe('no_laps');
  expect(rig.get('race.fuel_usable')).toBe(1e-6);
  for (const each of [propeller, electric, flight]) expect(rig.run(each)).toBeUndefined();
  expect(rig.run(race)).toBe('no_fuel');
});
