import { describe, expect, it } from 'vitest';
import { propellers } from '../../../engine/library/tables/propellers';
import { valueColumns } from '../../../engine/sheet/library-numbers';
import { library, startEngine } from '../../../engine/study/index';
import { block, type Fields, faults, openWith, read, withEngine } from './engine-designs';

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

describe('a propeller tuned by its pull', () => {
  const open = (fields: Fields) => openWith('two_stroke', {}, block('propeller', 'propeller', fields));
  const REST = { still_shaft_speed: '11000 rpm', still_pull: '9 N' };
  const FLIGHT = { flying_shaft_speed: '11800 rpm', flying_speed: '25 m/s', flying_pull: '3.6 N' };

  it('pulls what was measured, at rest and in flight', () => {
    const live = open({ ...REST, ...FLIGHT, at_shaft_speed: '11000 rpm', at_airspeed: '0 m/s' });
    expect(read(live, 'propeller.static_thrust')).toBeCloseTo(9, 1);
    const flying = open({ ...REST, ...FLIGHT, at_shaft_speed: '11800 rpm', at_airspeed: '25 m/s' });
    expect(Math.abs(read(flying, 'propeller.thrust') / 3.6 - 1)).toBeLessThan(0.01);
    expect(read(flying, 'propeller.tuning_status')).toBe(0);
    expect(read(flying, 'propeller.tuning_residual')).toBeLessThan(1e-9);
    expect(read(flying, 'propeller.band_before')).toBe(0.14);
    expect(read(flying, 'propeller.band_after')).toBe(0.03);
  });
  it('is kept by the shift and the chord factor that it shows', () => {
    const tuned = open({ ...REST, ...FLIGHT });
    const [shift, factor] = ['propeller.tuned_shift', 'propeller.tuned_chord'].map((path) => read(tuned, path));
    const kept = open({ angle_shift: `${shift} rad`, chord_factor: `${factor}` });
    expect(read(kept, 'propeller.thrust') / read(tuned, 'propeller.thrust')).toBeCloseTo(1, 12);
    expect(read(kept, 'propeller.tuning_status')).toBe(1);
    expect(read(kept, 'propeller.band_after')).toBe(0.14);
    expect(valueColumns(propellers).map((column) => column.name)).toEqual(
      expect.arrayContaining(['angle_shift', 'chord_factor']),
    );
  });
  it('takes one measurement alone, with its own band', () => {
    expect(read(open(REST), 'propeller.band_after')).toBe(0.06);
    expect(read(open(FLIGHT), 'propeller.band_after')).toBe(0.03);
    expect(read(open(FLIGHT), 'propeller.tuned_chord')).not.toBe(1);
  });
  it('says what is missing, what is typed twice and what no such propeller pulls', () => {
    const why = (fields: Fields): string | undefined => faults(open(fields)).find((text) => !/wait/.test(text));
    expect(why({ still_pull: '9 N' })).toContain(
      'A measured pull is half typed. At rest it takes rpm and pull; in flight rpm, airspeed and pull. Type what is missing, or take the rest out.',
    );
    expect(why({ ...REST, chord_factor: '1.1' })).toContain(
      'Shift of the blade angle or chord factor are typed, and a measured pull too, which finds them. Remove the typed ones, or the measured pulls.',
    );
    expect(why({ ...REST, still_pull: '90 N' })).toContain(
      'No propeller of this size and shape pulls what was measured, within 8° of blade angle and a half to double the chord. Look at rpm, pulls, diameter and pitch: one may be mistyped.',
    );
  });
});
