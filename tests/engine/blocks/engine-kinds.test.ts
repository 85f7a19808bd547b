import { describe, expect, it } from 'vitest';
import { openLive, setLive } from '../../../engine/sheet/live';
import { cellsOf } from '../../../engine/sheet/sheets';
import { library } from '../../../engine/study/index';
import { cone } from '../../../engine/study/run/cone';
import { onOneSheet } from '../sheet/one-sheet';
import { block, curve, faults, KINDS, MEASURED, openWith, read, rpm, withEngine } from './engine-designs';

describe.each(Object.keys(KINDS))('a design with %s', (kind) => {
  const live = openWith(kind);
  it('settles, with fuel or charge, laps and the propeller in flight', () => {
    expect(faults(live)).toEqual([]);
    expect(read(live, 'flight.lap_time')).toBeGreaterThan(3);
    expect(read(live, 'flight.lap_time')).toBeLessThan(8);
    expect(read(live, 'flight.laps_per_filling')).toBeGreaterThan(10);
    expect(read(live, 'flight.laps_per_filling_low')).toBeLessThan(read(live, 'flight.laps_per_filling'));
    expect(read(live, 'flight.propeller_efficiency')).toBeGreaterThan(0.3);
    expect(read(live, 'flight.propeller_efficiency')).toBeLessThan(0.95);
    expect(read(live, 'flight.tip_mach')).toBeGreaterThan(0.2);
    const [fuel, charge] = [read(live, 'flight.fuel_per_lap'), read(live, 'flight.charge_per_lap')];
    if (kind === 'electric') expect([fuel, charge > 0]).toEqual([0, true]);
    else expect([fuel > 0, charge]).toEqual([true, 0]);
  });
  it('pulls less the faster it flies', () => {
    const thrust = curve(live, 'engine.thrust');
    for (let k = 4; k < thrust.length; k++) expect(thrust[k]!).toBeLessThan(thrust[k - 1]!);
  });
});

describe('engine and propeller together', () => {
  it('agree on the torque at every airspeed', () => {
    const live = openWith('two_stroke');
    const [torque, power, speed] = ['torque', 'power'].map((name) => curve(live, `engine.${name}`)).concat([[]]);
    for (let k = 0; k < 21; k++) expect(power![k]! / torque![k]!).toBeGreaterThan(0);
    expect(speed).toEqual([]);
    // At rest between the two peaks: torque falls from 0.25 N·m towards 300 W at 13500 rpm.
    const rest = read(live, 'engine.static_shaft_speed');
    expect(rpm(rest)).toBeGreaterThan(9500);
    expect(rpm(rest)).toBeLessThan(13500);
    expect(torque![0]!).toBeLessThan(0.25);
    expect(torque![0]!).toBeGreaterThan(300 / ((13500 * 2 * Math.PI) / 60));
  });

  it('give back the rpm that was read, when the propeller is the one that was read', () => {
    for (const given of ['9000 rpm', '11000 rpm', '12500 rpm']) {
      const live = openWith('tachometer', { reading_1: given });
      expect(rpm(read(live, 'engine.static_shaft_speed')) / Number.parseFloat(given)).toBeCloseTo(1, 2);
    }
  });

  it('turn slower with more diameter and with more pitch, and lose power where the air is thin', () => {
    const live = openWith('two_stroke');
    const rest = (texts: [string, string][]) => read(setLive(live, texts, library).live, 'engine.static_shaft_speed');
    const now = rest([]);
    expect(rest([['propeller.diameter', '10 in']])).toBeLessThan(now);
    expect(rest([['propeller.pitch', '7 in']])).toBeLessThan(now);
    setLive(
      live,
      [
        ['propeller.diameter', '9 in'],
        ['propeller.pitch', '6 in'],
      ],
      library,
    );
    const low = read(live, 'engine.static_power');
    const high = setLive(live, [['air.elevation', '2000 m']], library).live;
    expect(read(high, 'engine.static_power')).toBeLessThan(0.85 * low);
  });

  it('hold the rpm that a governor is set to until the pack gives no more', () => {
    const held = openWith('electric', { governed_speed: '9000 rpm' });
    expect(new Set(curve(held, 'engine.torque')).size).toBe(21);
    expect(rpm(read(held, 'engine.static_shaft_speed'))).toBeCloseTo(9000, 6);
    expect(read(held, 'engine.throttle')).toBeLessThan(0.9);
    const full = openWith('electric', { governed_speed: '40000 rpm' });
    const free = openWith('electric', { governed_speed: '' });
    expect(read(full, 'engine.static_shaft_speed')).toBe(read(free, 'engine.static_shaft_speed'));
    expect(read(free, 'engine.throttle')).toBeCloseTo(1, 5);
    expect(read(held, 'flight.charge_per_lap')).toBeLessThan(read(free, 'flight.charge_per_lap'));
  });

  it('take the charge that was put back, and the fuel that was drawn, before any guess', () => {
    const measured = openWith('electric', { charge_put_back: '1500 mAh', charge_time: '300 s' });
    expect(read(measured, 'flight.charge_per_lap')).toBeCloseTo(
      ((1500 * 3.6) / 300) * read(measured, 'flight.lap_time'),
      9,
    );
    const drawn = openWith('two_stroke', { fuel_drawn: '50 mL', fuel_laps: '60', fuel_lap_time: '4 s' });
    const lap = read(drawn, 'flight.lap_time');
    expect(read(drawn, 'flight.fuel_per_lap')).toBeCloseTo((50e-6 / 240) * lap, 15);
    expect(read(drawn, 'flight.laps_per_filling')).toBeCloseTo((60 / 50) * (240 / lap), 9);
    const glow = openWith('two_stroke', {});
    const diesel = openWith('two_stroke', { fuel: 'diesel' });
    expect(read(diesel, 'flight.fuel_per_lap')).toBeLessThan(0.35 * read(glow, 'flight.fuel_per_lap'));
  });

  it('take a measured propeller just as well', () => {
    const live = openWith('two_stroke', {}, MEASURED);
    expect(faults(live)).toEqual([]);
    expect(read(live, 'propeller.zero_thrust_speed')).toBeCloseTo(0.8 * 200 * 9 * 0.0254, 2);
    expect(read(live, 'flight.lap_time')).toBeGreaterThan(3);
  });
});

describe('what is computed again', () => {
  const live = openWith('two_stroke');
  const stepsOf = (path: string): string[] => {
    const { program } = live.compiled;
    const wanted = [program.slotOf.get('flight.speed')!];
    const chosen = cone(program, [program.slotOf.get(path)!], wanted);
    return Array.from(chosen, (step) => program.steps[step]!.path);
  };
  it('is not the propeller when the flying height or the engine moves, and is when its size does', () => {
    expect(stepsOf('flight.height')).not.toContain('propeller');
    expect(stepsOf('engine.peak_power')).not.toContain('propeller');
    expect(stepsOf('engine.peak_power')).toContain('engine');
    expect(stepsOf('propeller.diameter')).toEqual(expect.arrayContaining(['propeller', 'engine', 'flight']));
  });
});

describe('rows of the library in a choice', () => {
  const choice = (name: string, table: string, rows: readonly string[]) =>
    ({
      kind: 'choice',
      id: `c_${name}`,
      name,
      title: name,
      of: 'library',
      table,
      columns: [],
      options: rows.map((row) => ({ name: row, title: row, pattern: 'plain' as const })),
      text: rows[0]!,
    }) as const;
  it('feed an engine, a motor and a propeller by the names of their fields', () => {
    const prop = block('propeller', 'propeller', {
      diameter: 'prop.diameter',
      pitch: 'prop.pitch',
      shape: 'prop.shape',
    });
    const props = choice('prop', 'propellers', ['propeller_9x6', 'propeller_9x5', 'propeller_10x6_moulded']);
    const fields = ['fuel', 'peak_torque', 'torque_speed', 'peak_power', 'power_speed'];
    const engine = Object.fromEntries(fields.map((name) => [name, `power_unit.${name}`]));
    const units = choice('power_unit', 'engines', ['glow_4_1', 'diesel_2_5']);
    const document = withEngine('two_stroke', engine, prop);
    const live = openLive({ ...document, sheets: onOneSheet([...cellsOf(document), props, units]) }, library);
    expect(faults(live)).toEqual([]);
    const laps = ['glow_4_1', 'diesel_2_5'].map((row) => {
      setLive(live, [['power_unit', row]], library);
      expect(faults(live)).toEqual([]);
      return read(live, 'flight.lap_time');
    });
    expect(laps[1]!).toBeGreaterThan(laps[0]!);
    const shapes = ['propeller_9x6', 'propeller_10x6_moulded'].map((row) => {
      setLive(live, [['prop', row]], library);
      return read(live, 'propeller.shape');
    });
    expect(shapes[0]).not.toBe(shapes[1]);
    const motors = choice('motor', 'motors', ['motor_35_1000', 'motor_42_800']);
    const names = ['speed_per_volt', 'resistance', 'idle_current'];
    const electric = withEngine('electric', Object.fromEntries(names.map((name) => [name, `motor.${name}`])));
    const driven = openLive({ ...electric, sheets: onOneSheet([...cellsOf(electric), motors]) }, library);
    expect(faults(driven)).toEqual([]);
  });
});
