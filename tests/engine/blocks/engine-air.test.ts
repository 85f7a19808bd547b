import { describe, expect, it } from 'vitest';
import type { LeversCell } from '../../../engine/sheet/document';
import { type Live, openLive, setLive } from '../../../engine/sheet/live';
import { cellsOf } from '../../../engine/sheet/sheets';
import { library } from '../../../engine/study/index';
import { onOneSheet } from '../sheet/one-sheet';
import { wholeOf } from '../study/whole';
import { curve, type Fields, openWith, read, withEngine } from './engine-designs';

const SEA = { 'air.temperature': '15 °C', 'air.elevation': '0 m', 'air.humidity': '0 %' };
const HOT = { ...SEA, 'air.temperature': '35 °C' };
const HIGH = { ...SEA, 'air.elevation': '1500 m' };

const set = (live: Live, texts: Fields): Live => setLive(live, Object.entries(texts), library).live;
/** Paths read in the air of one day after another. */
const through = (live: Live, days: readonly Fields[], path: string): number[] =>
  days.map((day) => read(set(live, day), path));

/*
 * Drag of model and lines, thrust of a given propeller and charge of a two-stroke all go with density, so only what does not sets the speed: drag due
 * to lift and Reynolds number. With k the share of drag due to lift and x = V/V_0 of a thrust law, d ln V/d ln ρ = 2k/(x/(1 − x) + 2 − 4k).
 */
const LAW = { static_thrust: '8 N', zero_thrust_speed: '47 m/s', torque: '0.25 N·m' };
const BREATHING = [
  ['thrust_law', LAW],
  ['measured_lap', {}],
  ['tachometer', {}],
  ['two_stroke', {}],
] as const;

describe.each(BREATHING)('a model with %s', (kind, fields) => {
  const live = openWith(kind, fields);
  it('is a little slower and pulls a little less on a hot day and on a high field, never more', () => {
    const laps = through(live, [SEA, HOT, HIGH], 'flight.lap_time');
    const pulls = through(live, [SEA, HOT, HIGH], 'flight.pull');
    for (const [k, slower] of [
      [1, 0.012],
      [2, 0.02],
    ] as const) {
      expect(laps[k]! / laps[0]! - 1).toBeGreaterThan(0.001);
      expect(laps[k]! / laps[0]! - 1).toBeLessThan(slower);
      expect(1 - pulls[k]! / pulls[0]!).toBeGreaterThan(0.001);
      expect(1 - pulls[k]! / pulls[0]!).toBeLessThan(2.5 * slower);
    }
  });

  it('loses power with the density, rpm or speed changing little', () => {
    const power = through(live, [SEA, HIGH], 'flight.shaft_power');
    const density = through(live, [SEA, HIGH], 'air.density');
    expect(power[1]! / power[0]! / (density[1]! / density[0]!)).toBeCloseTo(1, 2);
  });
});

describe('the closed form of a thrust law', () => {
  it('is what thin air costs in speed where Reynolds number is held', () => {
    const live = openWith('thrust_law', LAW);
    const thin = (density: string): Fields => ({ ...SEA, 'air.density': density });
    const speeds = through(live, [thin('1.225 kg/m³'), thin('1.1 kg/m³')], 'flight.speed');
    const induced = read(live, 'flight.drag_induced') / read(live, 'flight.thrust');
    const x = read(live, 'flight.speed') / 47;
    const found = Math.log(speeds[1]! / speeds[0]!) / Math.log(1.1 / 1.225);
    const formula = (2 * induced) / (x / (1 - x) + 2 - 4 * induced);
    // Friction and the cylinder of the line take the rest with ν = μ/ρ.
    expect(found).toBeGreaterThan(formula);
    expect(found).toBeLessThan(formula + 0.05);
  });
});

describe('thrust and power in other air', () => {
  const curves = (live: Live) => ({
    density: read(live, 'air.density'),
    thrust: curve(live, 'engine.thrust'),
    power: curve(live, 'engine.power'),
    rpm: read(live, 'flight.shaft_speed'),
  });
  it.each([
    ['thrust_law', LAW],
    ['thrust_law', { static_thrust: '8 N' }],
    ['measured_lap', { known_temperature: '15 °C', known_drag_area: '45 cm²', known_induced_area: '300 dm²' }],
  ] as const)('of %s go with density at every airspeed, and the rpm stay', (kind, fields) => {
    const live = openWith(kind, fields);
    const sea = curves(set(live, SEA));
    const high = curves(set(live, HIGH));
    const share = high.density / sea.density;
    for (const [k, thrust] of sea.thrust.entries()) {
      // As moist as then: the dry part cancels, and the share of the ratio is exact.
      expect(high.thrust[k]!).toBeCloseTo(share * thrust, 12);
      expect(high.power[k]! / sea.power[k]!).toBeCloseTo(share, 12);
    }
    expect(high.rpm).toBeCloseTo(sea.rpm, 9);
  });

  it.each([
    ['thrust_law', 'read_density', {}],
    ['measured_lap', 'known_density', { known_temperature: '31 °C', known_humidity: '70 %' }],
    ['tachometer', 'read_density', {}],
    ['two_stroke', 'rated_density', {}],
  ])('of %s are the same to the last bit in the same air, whatever the exponent', (kind, known, fields) => {
    const live = openWith(kind, { [known]: '1.1 kg/m³', ...fields });
    const day = { 'air.density': '1.1 kg/m³', 'air.temperature': '31 °C', 'air.humidity': '70 %' };
    const [one, ...others] = ['1', '0', '1.2', '0.5'].map((exponent) =>
      curves(set(live, { ...day, 'engine.density_exponent': exponent })),
    );
    for (const other of others) expect(other).toEqual(one);
  });

  it('of a motor on its pack go by two thirds of the density, as its rpm rise', () => {
    const live = openWith('thrust_law', { ...LAW, density_exponent: '0.5' });
    const sea = curves(set(live, SEA));
    const high = curves(set(live, HIGH));
    const share = high.density / sea.density;
    expect(high.thrust[0]! / sea.thrust[0]!).toBeCloseTo(share ** (2 / 3), 12);
    expect(high.rpm / sea.rpm).toBeCloseTo(share ** (-1 / 6), 12);
    // V_0 = 1.15 n p goes with the rpm: where thrust vanished at sea level there is some left.
    expect(high.thrust[9]!).toBeGreaterThan(share ** (2 / 3) * sea.thrust[9]!);
  });
});

describe('a timed lap', () => {
  const then = {
    ...{ known_density: '1.16 kg/m³', known_temperature: '28 °C', known_humidity: '60 %' },
    ...{ known_drag_area: '45 cm²', known_induced_area: '300 dm²' },
  };
  it('tells the power in the air in which it was timed, whatever the air of today', () => {
    const live = openWith('measured_lap', then);
    for (const path of ['engine.lap_thrust', 'engine.useful_power', 'engine.lap_speed']) {
      const [sea, ...others] = through(live, [SEA, HOT, HIGH], path);
      expect(others).toEqual([sea, sea]);
    }
  });
  it('of a dry day gives less power on a moist one by what the vapour takes of the charge', () => {
    const live = openWith('measured_lap', { ...then, known_humidity: '0 %' });
    const moist = { ...SEA, 'air.density': '1.16 kg/m³', 'air.temperature': '28 °C', 'air.humidity': '100 %' };
    const [dry, wet] = [{ ...moist, 'air.humidity': '0 %' }, moist].map((day) => {
      set(live, day);
      return curve(live, 'engine.power')[0]!;
    });
    expect(wet! / dry!).toBeCloseTo(1 - 0.0272 / 1.16, 3); // 27.2 g of water in a cubic metre of saturated air at 28 °C
  });
  it('takes the moisture of today where the humidity or the temperature of that day is not said', () => {
    const live = openWith('measured_lap', { ...then, known_temperature: '' });
    const power = through(
      live,
      [{ 'air.density': '1.16 kg/m³', 'air.humidity': '0 %' }, { 'air.humidity': '100 %' }],
      'engine.power',
    );
    expect(power[1]).toBe(power[0]);
  });
});

describe('what helps most', () => {
  it('shows a hot day as a loss of speed', () => {
    const document = withEngine('thrust_law', LAW);
    const cell: LeversCell = {
      ...{ kind: 'what_helps', id: 'levers', name: 'levers', title: 'What helps', rank: '', per: '' },
      rows: [{ of: 'air.temperature', way: 'up', text: '20 K' }],
      wanted: ['flight.lap_time', 'flight.pull'],
    };
    const told = wholeOf(
      openLive({ ...document, sheets: onOneSheet([...cellsOf(document), cell]) }, library),
      'levers',
    );
    if (typeof told === 'string') throw new Error(told);
    const [lap, pull] = told.levers!.present;
    expect(told.columns[0]![0]!).toBeGreaterThan(1.003 * lap!);
    expect(told.columns[1]![0]!).toBeLessThan(0.997 * pull!);
  });
});
