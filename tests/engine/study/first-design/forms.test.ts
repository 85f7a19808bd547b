import { describe, expect, test } from 'vitest';
import type { Document } from '../../../../engine/sheet/document';
import { faultsOfLive, numberAt, openLive } from '../../../../engine/sheet/live';
import { firstDesign } from '../../../../engine/study/first-design/index';
import type { FirstDesignForm } from '../../../../engine/study/first-design/told';
import { library } from '../../../../engine/study/library';

/*
 * Forms as fliers fill them: the design settles and agrees with what was typed. Sizes are invented, of the kind that models have.
 */
const blank: FirstDesignForm = {
  title: '',
  drive: 'engine',
  span: '',
  chord: '',
  size: '',
  propeller: '',
  line_length: '',
  line_diameter: '',
  line_count: '',
  weight: '',
  lap_time: '',
  tail_stock: 'balsa',
};

interface Typed {
  /** kg, tank empty. */
  readonly weight?: number;
  /** s. */
  readonly lap?: number;
  /** m. */
  readonly length?: number;
  /** m. */
  readonly diameter?: number;
  readonly lines?: number;
}

const RACER = { span: '0.9 m', chord: '110 mm', size: '2.5 cm³', line_length: '15.92 m', line_diameter: '0.38 mm' };
const forms: readonly (readonly [string, Partial<FirstDesignForm>, Typed])[] = [
  ['racer, laps of 2.6 s', { ...RACER, weight: '480 g', lap_time: '2.6 s' }, { weight: 0.48, lap: 2.6, length: 15.92 }],
  [
    'racer, laps of 1.7 s',
    { ...RACER, weight: '480 g', lap_time: '1.7 s' },
    { weight: 0.48, lap: 1.7, diameter: 0.00038 },
  ],
  ['racer, 7x7', { ...RACER, propeller: '7x7', weight: '500 g', lap_time: '2.2' }, { weight: 0.5, lap: 2.2 }],
  ['light trainer', { span: '0.55 m', size: '0.8 cm³', weight: '150 g' }, { weight: 0.15 }],
  ['light electric trainer', { drive: 'motor', span: '0.6 m', size: '40 W', weight: '150.5 g' }, { weight: 0.1505 }],
  ['heavy stunt model', { span: '1.7 m', chord: '340 mm', size: '15 cm³', weight: '4 kg' }, { weight: 4 }],
  [
    'heavy stunt model, timed',
    { span: '1.7 m', size: '13 cm³', weight: '4 kg', lap_time: '5.2 s', line_length: '21 m', line_diameter: '0.46 mm' },
    { weight: 4, lap: 5.2, length: 21, diameter: 0.00046 },
  ],
  ['electric', { drive: 'motor', span: '1.4 m', size: '600 W', weight: '1700 g' }, { weight: 1.7 }],
  [
    'electric, timed',
    { drive: 'motor', span: '1.2 m', size: '450 W', weight: '1.35 kg', lap_time: '0:05.1', propeller: '11x5.5' },
    { weight: 1.35, lap: 5.1 },
  ],
  [
    'inches and a 35',
    { span: '49 1/4"', size: 'a 35', line_length: "60'", line_diameter: '.015"', weight: '2 lb 10 oz' },
    { weight: 42 * 0.028349523125, length: 18.288, diameter: 0.000381 },
  ],
  ['cubic inches', { span: '42 in', size: '.25 cu in', propeller: '9x6', line_length: '60 ft' }, { length: 18.288 }],
  ['a 049', { span: '18"', size: 'a 049', line_length: '35 ft', weight: '5 1/2 oz' }, { weight: 5.5 * 0.028349523125 }],
  ['commas', { span: '1,25 m', size: '6,5 ccm', weight: '1250,5 g', lap_time: '5,3' }, { weight: 1.2505, lap: 5.3 }],
  [
    'bare numbers',
    { span: '1', chord: '200', size: '4', line_length: '18', weight: '850' },
    { weight: 0.85, length: 18 },
  ],
  [
    'three lines',
    { span: '1 m', size: '4 cm³', line_count: '3', line_diameter: '0.3' },
    { lines: 3, diameter: 0.0003 },
  ],
  ['one line', { span: '0.8 m', size: '2.5 cm³', line_count: '1', line_length: '15 m' }, { lines: 1, length: 15 }],
  ['balsa with ply faces', { span: '1 m', size: '4 cm³', tail_stock: 'balsa_ply', weight: '900 g' }, { weight: 0.9 }],
  ['light ply', { span: '1.1 m', size: '5 cm³', tail_stock: 'light_ply', lap_time: '5 s' }, { lap: 5 }],
  ['light ply, small', { span: '0.5 m', size: '1 cm³', tail_stock: 'light_ply' }, {}],
  ['propeller known', { span: '1 m', size: '4 cm³', propeller: '10x4' }, {}],
  ['propeller and lap known', { span: '1 m', size: '4 cm³', propeller: '9x6', lap_time: '4.8 s' }, { lap: 4.8 }],
  ['novice', { span: '1 m', size: '3.5 cm³', lap_time: '6.4 s', weight: '780 g' }, { lap: 6.4, weight: 0.78 }],
  ['team model', { span: '0.95 m', chord: '130 mm', size: '2.5 cm³', lap_time: '3.4 s' }, { lap: 3.4 }],
  ['long lines', { span: '1.5 m', size: '10 cm³', line_length: '21.5 m' }, { length: 21.5 }],
  ['short lines', { span: '0.5 m', size: '0.8 cm³', line_length: '8 m' }, { length: 8 }],
  ['slender wing', { span: '1.3 m', chord: '130 mm', size: '4 cm³' }, {}],
  ['deep wing', { span: '0.8 m', chord: '280 mm', size: '4 cm³', weight: '700 g' }, { weight: 0.7 }],
  ['half-gram weight', { span: '0.75 m', size: '1.5 cm³', weight: '382.5 g' }, { weight: 0.3825 }],
  ['small electric, timed', { drive: 'motor', span: '0.7 m', size: '90 W', lap_time: '4.6 s' }, { lap: 4.6 }],
  ['large electric', { drive: 'motor', span: '1.8 m', size: '1200 W', weight: '3600 g' }, { weight: 3.6 }],
];

/** The design with a launch, a glide and a race that are as they are offered. */
function withMore(document: Document, fuelled: boolean): Document {
  const more = ['launch', 'glide', ...(fuelled ? ['race'] : [])].map(
    (of) => ({ kind: 'model', id: `more_${of}`, name: of, title: of, of, fields: {} }) as const,
  );
  return { ...document, sheets: [...document.sheets, { id: 'more', title: 'More', pieces: more }] };
}

test('there are thirty forms', () => expect(forms.length).toBe(30));

describe.each(forms)('%s', (_, form, typed) => {
  test('settles and agrees with what was typed', () => {
    const answer = firstDesign({ ...blank, ...form });
    if (!answer.ok) throw new Error(answer.problems.map(({ message }) => message).join(' '));
    const live = openLive(withMore(answer.document, form.drive !== 'motor'), library);
    const at = (path: string): number => numberAt(live, path);
    expect(faultsOfLive(live)).toEqual([]);
    expect(answer.document.sheets.map(({ title }) => title)).toEqual(['Decide', 'Model', 'Weights']);
    if (typed.weight !== undefined) expect(Math.abs(at('parts.mass_empty') - typed.weight)).toBeLessThan(0.00025);
    if (typed.lap !== undefined) expect(Math.abs(at('flight.lap_time') - typed.lap)).toBeLessThan(0.005);
    if (typed.length !== undefined) expect(at('line_length')).toBeCloseTo(typed.length, 9);
    if (typed.diameter !== undefined) expect(at('lines.diameter')).toBeCloseTo(typed.diameter, 12);
    expect(at('lines.count')).toBe(typed.lines ?? 2);
    expect(at('flight.shaft_speed') / at('shaft_speed')).toBeCloseTo(1, 5);
    // One propeller, speed and lap in what is added to the design.
    expect(at('flight.pitch_speed_share')).toBeLessThan(1);
    expect(at('flight.pitch_speed_share')).toBeCloseTo(
      (2 * Math.PI * at('flight.speed')) / (at('shaft_speed') * at('propeller_pitch')),
      4,
    );
    expect(at('launch.flying_speed')).toBeLessThan(at('flight.speed'));
    expect(at('launch.length')).toBeGreaterThan(1.5);
    expect(at('launch.laps')).toBeLessThan(0.25);
    expect(at('launch.time')).toBeGreaterThan(0.25);
    expect(at('launch.time')).toBeLessThan(4);
    expect(at('glide.laps')).toBeGreaterThan(0.15);
    expect(at('glide.laps')).toBeLessThan(2);
    expect(at('glide.landing_speed')).toBeLessThan(at('flight.speed'));
    if (form.drive !== 'motor') {
      expect(at('race.race_lap')).toBe(at('flight.lap_time'));
      expect(Math.abs(at('race.laps_per_tank') / at('flight.laps_per_filling') - 1)).toBeLessThan(0.2);
    }
    expect(at('balance.cg_share')).toBeGreaterThan(0.15);
    expect(at('balance.cg_share')).toBeLessThan(0.25);
    expect(at('flight.nose_out')).toBeGreaterThan(0);
  });
});
