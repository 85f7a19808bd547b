import { describe, expect, test } from 'vitest';
import type { Part } from '../../../engine/sheet/document';
import { openLive, setLive } from '../../../engine/sheet/live';
import { faultsOf } from '../../../engine/sheet/sentences';
import { library } from '../../../engine/study/library';
import { documentOf, part, parts } from './small';

type Texts = Readonly<Record<string, string>>;

/** The part by the library that the program has: its numbers, and what is wrong with it. */
function weighed(shape: Part['shape'], fields: Texts, units: 'metric' | 'inch_pound' = 'metric') {
  const rows = [part('other', 'point', { mass: '1 kg', x: '0 mm' }), part('it', shape, { x: '0 mm', ...fields })];
  const { compiled, state } = setLive(openLive({ ...documentOf([parts(rows)]), units }, library), [], library).live;
  const at = (path: string): number => state.m[compiled.program.slotOf.get(path)!]!;
  return {
    grams: at('parts.it.mass') * 1000,
    faults: faultsOf(compiled, state).map(({ path, message }) => `${path}: ${message}`),
    name: (path: string) => compiled.names.find((each) => each.path === path)!,
  };
}
const grams = (shape: Part['shape'], fields: Texts): number => {
  const { grams: mass, faults } = weighed(shape, fields);
  expect(faults).toEqual([]);
  return mass;
};
const BALSA = { material: 'balsa_medium' } as const;

describe('a shape weighs its closed form by its material', () => {
  test('strip and square: 10 × 5 mm, 900 mm of balsa of 135 kg/m³', () =>
    expect(grams('strip', { ...BALSA, length: '900 mm', width: '10 mm', thickness: '5 mm' })).toBeCloseTo(6.075, 12));
  test('tube: carbon 6 × 4 mm, 500 mm', () =>
    expect(
      grams('tube', { material: 'carbon_laminate', length: '500 mm', diameter: '6 mm', wall: '1 mm' }),
    ).toBeCloseTo(1.6e-3 * Math.PI * 5 * 500, 9));
  test('tapered sheet: a trailing edge of 30 × 6 mm to nothing', () => {
    const edge = { ...BALSA, length: '900 mm', width: '30 mm', thickness: '6 mm', thickness_end: '0 mm' };
    expect(grams('tapered', edge)).toBeCloseTo(0.135e-3 * 900 * 30 * 3, 9);
    expect(grams('tapered', { ...edge, thickness_end: '' })).toBeCloseTo(0.135e-3 * 900 * 30 * 6, 9);
  });
  test('triangle: 10 mm legs', () =>
    expect(grams('triangle', { ...BALSA, length: '900 mm', width: '10 mm', height: '10 mm' })).toBeCloseTo(6.075, 12));
  test('ribs: section × chord × thickness × how many, lightened', () => {
    const ribs = {
      ...BALSA,
      chord: '220 mm',
      section_thickness: 'naca_0015.thickness',
      thickness: '2 mm',
      count: '12',
    };
    const one = 0.135e-3 * 0.68508 * 0.15 * 220 ** 2 * 2;
    expect(grams('ribs', ribs) / (12 * one)).toBeCloseTo(1, 4);
    expect(grams('ribs', { ...ribs, cut_away: '30 %' }) / (12 * 0.7 * one)).toBeCloseTo(1, 4);
    expect(grams('ribs', { ...ribs, section_thickness: '15 %' })).toBeCloseTo(grams('ribs', ribs), 9);
  });
  test('foam core: a panel of 500 mm from 250 to 180 mm', () => {
    const core = { material: 'foam_extruded', length: '500 mm', chord: '250 mm', tip_chord: '180 mm' };
    const square = (250 ** 2 + 250 * 180 + 180 ** 2) / 3;
    const all = 0.032e-3 * 0.68508 * 0.15 * square * 500;
    expect(grams('core', { ...core, section_thickness: '15 %' }) / all).toBeCloseTo(1, 4);
  });
  test('a length off the roll: wire, cable, line or fuel tube', () => {
    expect(grams('run', { length: '600 mm', wire: 'wire_1_60' })).toBeCloseTo(9.41, 2);
    expect(grams('run', { length: '600 mm', wire: 'stranded_0_38' })).toBeCloseTo(0.4254, 9);
    expect(grams('run', { length: '200 mm', wire: 'fuel_tube_medium' })).toBeCloseTo(3.388, 9);
  });
});

describe('how many', () => {
  test('four screws weigh four times one, with their finish', () => {
    expect(grams('point', { mass: 'screw_m3x16.mass', count: '4' })).toBeCloseTo(4.84, 12);
    expect(grams('point', { mass: '2 g', coats_area: '1 dm²', coat: '100 g/m²', count: '3' })).toBeCloseTo(9, 12);
    expect(grams('point', { mass: '2 g' })).toBe(2);
  });
  test('less than none are cut-outs', () =>
    expect(
      grams('core', {
        material: 'foam_bead',
        length: '50 mm',
        chord: '200 mm',
        section_thickness: '10 %',
        count: '-1',
      }),
    ).toBeLessThan(0));
  test('what the scale says is of all of them', () =>
    expect(grams('point', { mass: '2 g', count: '4', weighed: '9 g' })).toBeCloseTo(9, 12));
  test('the mass of one of several can’t be set in place of the mass of all', () => {
    expect(weighed('point', { mass: '2 g' }).name('parts.it.mass').settable).toBe(true);
    expect(weighed('point', { mass: '2 g', count: '4' }).name('parts.it.mass').settable).toBe(false);
  });
});

describe('what is wrong is said where it is', () => {
  test('of a wire that is not there', () =>
    expect(weighed('run', { length: '600 mm', wire: 'cord' }).faults).toContain(
      'parts.it.wire: it is made of “cord”: there is no wire, line or tube of that name.',
    ));
  test('of a size that lacks', () =>
    expect(weighed('ribs', { ...BALSA, chord: '220 mm', thickness: '2 mm' }).faults).toContain(
      'parts.it.section_thickness: it needs its section thickness. Type it, such as “15\u00a0%”.',
    ));
  test('of more cut away than there is', () =>
    expect(
      weighed('core', { ...BALSA, length: '1 mm', chord: '1 mm', section_thickness: '15 %', cut_away: '120 %' }).faults,
    ).toContain(
      'parts.it.cut_away: The cut away of it is 120\u00a0%. Allowed: 0\u00a0% to 100\u00a0%. Type a value within that.',
    ));
});
