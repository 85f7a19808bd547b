import { describe, expect, it } from 'vitest';
import { library, startEngine } from '../../../engine/study/index';
import { block, type Fields, openWith, read, withEngine } from './engine-designs';

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
