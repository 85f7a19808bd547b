import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Document } from '../../../engine/sheet/document';
import { openText } from '../../../engine/sheet/file';
import { faultsOfLive, type Live, openLive, setLive } from '../../../engine/sheet/live';
import { cone } from '../../../engine/study/cone';
import { library, startEngine } from '../../../engine/study/index';

/*
 * The invented Quern 25 with each kind of engine in place of its own: a settled document a kind. Numbers are invented but of the size
 * that models have.
 */
const text = readFileSync(new URL('../../../data/workbooks/quern-25.tetherwright.json', import.meta.url), 'utf8');
const opened = openText(text);
if (!opened.ok) throw new Error(opened.message);
const demo = opened.document;

type Fields = Readonly<Record<string, string>>;
const STAND: Fields = { station: 'engine_station', height: '5 mm', bearer_rear: '10 mm' };
const block = (name: string, kind: string, fields: Fields) =>
  ({ kind: 'block', id: `b_${name}`, name, title: name, block: kind, fields }) as const;
const PROPELLER = block('propeller', 'propeller', { diameter: '9 in', pitch: '6 in' });
/** A table of the size that tunnels give for a 9×6. */
const MEASURED = block('propeller', 'measured_propeller', {
  diameter: '9 in',
  pitch: '6 in',
  ...Object.fromEntries(
    [
      [0, 0.11, 0.05],
      [0.2, 0.1, 0.051],
      [0.4, 0.078, 0.049],
      [0.6, 0.045, 0.037],
      [0.8, 0, 0.012],
    ].flatMap((row, k) =>
      ['advance', 'thrust', 'power'].map((name, column) => [`${name}_${k + 1}`, String(row[column])]),
    ),
  ),
});

const KINDS: Readonly<Record<string, Fields>> = {
  thrust_law: { static_thrust: '8 N', shaft_speed: '11400 rpm', zero_thrust_speed: '47 m/s' },
  measured_lap: { lap_time: '5.2 s', known_mass: '850 g', known_radius: '18.9 m' },
  tachometer: { reading_1: '11000 rpm' },
  two_stroke: {},
  electric: { governed_speed: '11500 rpm' },
};
const ALONE = new Set(['thrust_law', 'measured_lap']);

function withEngine(kind: string, fields: Fields = {}, propeller = PROPELLER): Document {
  const engine = demo.cells.find((cell) => cell.kind === 'block' && cell.name === 'engine')!;
  const put = { ...engine, block: kind, fields: { ...STAND, ...KINDS[kind], ...fields } } as typeof engine;
  const cells = demo.cells.map((cell) => (cell === engine ? put : cell));
  const baseline = {};
  return { ...demo, cells: ALONE.has(kind) ? cells : [...cells, propeller], baseline };
}
const openWith = (...rest: Parameters<typeof withEngine>): Live => openLive(withEngine(...rest), library);
const read = (live: Live, path: string): number => live.state.m[live.compiled.program.slotOf.get(path)!]!;
const curve = (live: Live, path: string): number[] => {
  const at = live.compiled.program.slotOf.get(path)!;
  return Array.from(live.state.m.subarray(at, at + 21));
};
const faults = (live: Live): string[] => faultsOfLive(live).map((fault) => fault.message);
const rpm = (rate: number): number => (rate * 60) / (2 * Math.PI);

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

describe('what goes wrong is said', () => {
  const said = (...rest: Parameters<typeof withEngine>) =>
    faultsOfLive(openWith(...rest))
      .filter((fault) => fault.path === 'engine' || fault.path === 'propeller')
      .map((fault) => fault.message)
      .filter((message) => !message.includes(' waits for '));
  const large = block('propeller', 'propeller', { diameter: '16 in', pitch: '12 in' });
  const small = block('propeller', 'propeller', { diameter: '5 in', pitch: '3 in' });
  it('when the propeller is too large or too small', () => {
    expect(said('two_stroke', {}, large)).toEqual([
      'The propeller (406 mm × 305 mm) is too large for the engine: it asks for more torque than there is at any rpm at which the engine runs. A smaller diameter or a finer pitch would do.',
    ]);
    expect(said('two_stroke', {}, small)[0]).toMatch(
      /^The propeller \(127 mm × 76\.2 mm\) is too small for the engine: at rest it would run at 2\d{4} rpm, far beyond its peak of power at 13500 rpm\. A larger diameter or a coarser pitch would do\.$/,
    );
  });
  it('when the data of the engine do not agree', () => {
    expect(said('two_stroke', { power_speed: '9000 rpm' })).toEqual([
      'Peak power must come at more rpm than peak torque: it is at 9000 rpm, and peak torque at 9500 rpm. Look at both again.',
    ]);
    expect(said('two_stroke', { peak_power: '400 W' })).toEqual([
      'The two peaks do not go together: 400 W at 13500 rpm is more torque than the peak of 0.25 N·m. Look at all four again.',
    ]);
    expect(said('tachometer', { reading_2: '11100 rpm' })).toEqual([
      'The two readings, 11000 rpm and 11100 rpm, lie so near that they tell no slope. Read a propeller of clearly other size, or take the second reading out.',
    ]);
  });
  it('when only half of a measurement is typed', () => {
    const fuel =
      'A measured draw of fuel needs three numbers: the fuel drawn, the laps flown on it and the lap time of that flight. Type all three, or none.';
    for (const kind of ['thrust_law', 'measured_lap', 'tachometer', 'two_stroke'])
      expect(said(kind, { fuel_laps: '60' })).toEqual([fuel]);
    expect(said('electric', { charge_put_back: '1500 mAh' })).toEqual([
      'Charge that was put back needs the running time of that flight beside it. Type both, or none.',
    ]);
  });
  it('when the table of a propeller has holes', () => {
    const table = (fields: Fields) => block('propeller', 'measured_propeller', fields);
    const row = (k: number, J: string): Fields => ({
      [`advance_${k}`]: J,
      [`thrust_${k}`]: '0.1',
      [`power_${k}`]: '0.05',
    });
    expect(said('two_stroke', {}, table(row(1, '0')))).toEqual([
      'A measured table needs three rows or more, each with its advance ratio, thrust and power coefficient. Type the missing numbers.',
    ]);
    expect(said('two_stroke', {}, table({ ...row(1, '0'), advance_2: '0.3' }))).toEqual([
      'A row of the table is not complete: it needs advance ratio, thrust and power coefficient. Type what is missing, or clear the row.',
    ]);
    expect(said('two_stroke', {}, table({ ...row(1, '0'), ...row(2, '0.4'), ...row(3, '0.3') }))).toEqual([
      'The advance ratios must rise from row to row. Put the rows in order.',
    ]);
    expect(said('two_stroke', {}, table({ ...row(1, '0.1'), ...row(2, '0.4'), ...row(3, '0.6') }))).toEqual([
      'The first row must be at rest, with an advance ratio of 0: it is 0.1.',
    ]);
  });
  it('when there is no propeller', () => {
    const document = withEngine('two_stroke');
    const live = openLive({ ...document, cells: document.cells.filter((cell) => cell.name !== 'propeller') }, library);
    expect(faults(live)).toContain('engine needs one propeller; there is none. Add a propeller block.');
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

describe('the blade', () => {
  it('is told along its length: its thrust adds up to that of the propeller', async () => {
    const engine = startEngine(library, { pause: async () => {}, now: () => performance.now() });
    await engine.open(withEngine('two_stroke'));
    const told = await engine.trace('propeller.blade');
    expect(told.columns.map((column) => column.name)).toEqual([
      'radius',
      'chord',
      'angle',
      'inflow',
      'lift_coefficient',
      'thrust',
    ]);
    const [radius, , angle, inflow, , thrust] = told.present;
    let sum = 0;
    for (let k = 1; k < radius!.length; k++) {
      sum += ((thrust![k]! + thrust![k - 1]!) / 2) * (radius![k]! - radius![k - 1]!);
      expect(radius![k]!).toBeGreaterThan(radius![k - 1]!);
    }
    for (let k = 3; k < 6; k++) expect(angle![k]!).toBeGreaterThan(inflow![k]!);
    const live = openWith('two_stroke');
    expect(Math.abs(sum / read(live, 'propeller.thrust') - 1)).toBeLessThan(0.05);
  });
  it('takes typed chords and angles: its own change nothing, more of both gives more thrust', () => {
    const thrust = (fields: Fields): number =>
      read(openWith('two_stroke', {}, block('propeller', 'propeller', fields)), 'propeller.thrust');
    const plain = thrust({});
    // The sport shape has a chord of 0.17 R at 60 %: 19.4 mm of a 9 in propeller.
    expect(Math.abs(thrust({ chord_60: '19.43 mm' }) / plain - 1)).toBeLessThan(0.002);
    expect(thrust({ chord_60: '25 mm' })).toBeGreaterThan(1.02 * plain);
    expect(thrust({ angle_shift: '1°' })).toBeGreaterThan(1.03 * plain);
    expect(thrust({ angle_30: '10°', angle_75: '8°' })).toBeLessThan(0.8 * plain);
    expect(thrust({ blades: '3' })).toBeGreaterThan(1.2 * plain);
  });
  it('of a heavier propeller has more inertia, which flight takes', () => {
    const inertia = (fields: Fields): number =>
      read(openWith('two_stroke', {}, block('propeller', 'propeller', fields)), 'engine.rotor_inertia');
    const plain = inertia({});
    expect(inertia({ material_density: '2700 kg/m³' })).toBeCloseTo(2 * plain, 9);
    expect(inertia({ mass: '30 g' })).toBeGreaterThan(plain);
    expect(read(openWith('two_stroke', { rotor_inertia: '500 g·cm²' }), 'engine.rotor_inertia')).toBeCloseTo(5e-5, 12);
  });
});
