import { describe, expect, test } from 'vitest';
import { faultsOfLive, numberAt, openLive } from '../../../../engine/sheet/live';
import { cellsOf } from '../../../../engine/sheet/sheets';
import { firstDesign } from '../../../../engine/study/first-design/index';
import type { FirstDesignForm } from '../../../../engine/study/first-design/told';
import { library } from '../../../../engine/study/library';
import { units } from '../../../../engine/units/index';

const blank: FirstDesignForm = {
  ...{ title: '', drive: 'engine', span: '49 1/4"', chord: '', size: 'a 35', propeller: '', line_length: "60'" },
  ...{ line_diameter: '.015"', line_count: '', weight: '', lap_time: '', tail_stock: 'balsa_ply' },
};
const made = (form: Partial<FirstDesignForm>) => {
  const answer = firstDesign({ ...blank, ...form });
  if (!answer.ok) throw new Error(answer.problems.map(({ message }) => message).join(' '));
  const live = openLive(answer.document, library);
  return { document: answer.document, live, at: (path: string) => numberAt(live, path) };
};

const metric = units.filter(({ system }) => system === 'metric').map(({ name }) => name);
const METRIC = new RegExp(
  `[0-9][\\s\u00a0]?(?:${metric
    .sort((a, b) => b.length - a.length)
    .map((name) => name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
    .join('|')})(?![\\p{L}\\p{N}·/²³⁴])`,
  'u',
);

/** Every text of a design with the place where it stands. */
function textsIn(value: unknown, at: string): [string, string][] {
  if (typeof value === 'string') return [[at, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, inner]) => textsIn(inner, `${at}.${name}`));
}

describe.each<readonly [string, Partial<FirstDesignForm>]>([
  ['weighed and timed', { weight: '2 lb 10 oz', lap_time: '5.2 s', propeller: '10x6' }],
  ['guessed', {}],
  ['with a motor', { drive: 'motor', size: '500 W', line_diameter: '' }],
])('an inch-pound design, %s', (_, form) => {
  const { document, live, at } = made(form);
  test('has no metric unit in what the program wrote', () => {
    expect(document.units).toBe('inch_pound');
    const texts = cellsOf(document).flatMap((cell) => textsIn(cell, cell.name));
    expect(texts.filter(([, text]) => METRIC.test(text))).toEqual([]);
    const slides = cellsOf(document).flatMap((cell) => (cell.kind === 'variables' ? cell.rows : []));
    expect(slides.map(({ unit }) => unit).filter((unit) => metric.includes(unit))).toEqual([]);
  });
  test('flies as a metric one does', () => {
    expect(faultsOfLive(live)).toEqual([]);
    expect(at('balance.cg_share')).toBeCloseTo(0.2, 1.5);
    expect(at('flight.nose_out')).toBeGreaterThan(0);
    if (form.weight) expect(at('parts.mass_empty')).toBeCloseTo(42 * 0.028349523125, 3.5);
    if (form.lap_time) expect(Math.abs(at('flight.lap_time') - 5.2)).toBeLessThan(0.005);
  });
});

test('sizes that are found stand in inches, feet and ounces', () => {
  const { document } = made({ line_length: '', line_diameter: '' });
  const rows = cellsOf(document).flatMap((cell) => (cell.kind === 'variables' ? cell.rows : []));
  const text = (name: string) => rows.find((row) => row.name === name)!.text;
  expect(text('chord')).toBe('9.85 in');
  expect(text('engine_station')).toMatch(/^-[0-9]+(\.[0-9]{1,2})? in$/);
  expect(text('tip_weight')).toMatch(/^[0-9.]+ oz$/);
  expect(text('line_length')).toMatch(/^[0-9]+ ft$/);
  const notes = cellsOf(document)
    .map((cell) => (cell.kind === 'note' ? cell.text : ''))
    .join('\n');
  expect(notes).toContain('- Engine with silencer and screws: 1.6\u00a0lb/in³ of its displacement and 0.71\u00a0oz.');
  expect(notes).toContain('span with a 35 on lines of');
  expect(notes).toContain('0.015\u00a0in up to 0.43\u00a0in³');
});

test('what is refused names limits in the units of the design', () => {
  const said = (form: Partial<FirstDesignForm>) => {
    const answer = firstDesign({ ...blank, ...form });
    return answer.ok ? [] : answer.problems.map(({ message }) => message);
  };
  expect(said({ weight: '0.2 oz' })).toEqual([
    'Weight: 0.2\u00a0oz is not between 0.71\u00a0oz and 353\u00a0oz. Type the weight ready to fly with the tank empty, or leave it blank for an estimate.',
  ]);
  expect(said({ size: '.001 cu in' })).toEqual([
    'Engine: .001 cu in is not between 0.0061\u00a0in³ and 1.8\u00a0in³. Type the displacement; a 25 has 0.25\u00a0in³.',
  ]);
  expect(said({ weight: '6 oz' }).join()).toMatch(/some [0-9.]+\u00a0oz, and [0-9.]+\u00a0oz or more of wing/);
});

test.each(['1 m', '40 in'])('the leadout guide of a span of %s slides around its place', (span) => {
  const { document, live, at } = made({ span, size: '4.1 cm³' });
  const rows = cellsOf(document).flatMap((cell) => (cell.kind === 'variables' ? cell.rows : []));
  const { low, high, unit } = rows.find(({ name }) => name === 'guide_x')!;
  const metres = unit === 'mm' ? 0.001 : 0.0254;
  const [least, most] = [low, high].map((text) => Number.parseFloat(text) * metres);
  expect((least! + most!) / 2).toBeCloseTo(at('guide_x'), 2);
  expect((most! - least!) / at('chord')).toBeCloseTo(0.3, 1);
  expect(live.compiled.document).toBe(document);
});
