import { expect, test } from 'vitest';
import { openText, serialise } from '../../../../engine/sheet/file';
import { faultsOfLive, numberAt, openLive, setLive } from '../../../../engine/sheet/live';
import { cellsOf } from '../../../../engine/sheet/sheets';
import { firstDesign } from '../../../../engine/study/first-design/index';
import type { FirstDesignForm } from '../../../../engine/study/first-design/told';
import { library } from '../../../../engine/study/library';
import { everyFew } from '../../../cases';

const blank: FirstDesignForm = {
  title: '',
  drive: 'engine',
  span: '1 m',
  chord: '',
  size: '4.1 cm³',
  line_length: '',
  weight: '',
  propeller: '',
  line_diameter: '',
  line_count: '',
  lap_time: '',
  tail_stock: 'balsa',
};
const made = (form: Partial<FirstDesignForm>) => {
  const answer = firstDesign({ ...blank, ...form });
  if (!answer.ok) throw new Error(answer.problems.map(({ message }) => message).join(' '));
  const live = openLive(answer.document, library);
  return { document: answer.document, live, at: (path: string) => numberAt(live, path) };
};
const problems = (form: Partial<FirstDesignForm>) => {
  const answer = firstDesign({ ...blank, ...form });
  return answer.ok ? [] : answer.problems.map(({ field, message }) => `${field} | ${message}`);
};

/** Wing area per displacement that is taken, with aspect 5, dm²/cm³. */
const goTogether = (span: number, displacement: number): boolean => {
  const loading = (span * span * 20) / displacement;
  return loading >= 1.6 && loading <= 11;
};

const SPANS = [0.5, 0.6, 0.75, 0.9, 1.05, 1.2, 1.4, 1.6];
const ENGINES = [0.8, 1, 1.5, 2.5, 3.5, 4.1, 6.5, 8, 10];
const grid = SPANS.flatMap((span) => ENGINES.map((engine) => ({ span, engine }))).filter(({ span, engine }) =>
  goTogether(span, engine),
);

function expectToFly(form: Partial<FirstDesignForm>): void {
  const { document, live, at } = made(form);
  expect(faultsOfLive(live)).toEqual([]);
  expect(openText(serialise(document))).toEqual({ ok: true, document });
  // All checks of the sheet hold.
  expect(at('balance.cg_share')).toBeGreaterThan(0.17);
  expect(at('balance.cg_share')).toBeLessThan(0.23);
  expect(at('balance.static_margin')).toBeGreaterThan(0.05);
  expect(at('flight.nose_out')).toBeGreaterThan(0);
  expect(at('flight.nose_out')).toBeLessThan((4 * Math.PI) / 180);
  expect(Math.abs(at('flight.outboard_low'))).toBeLessThan((2 * Math.PI) / 180);
  expect(at('flight.pull_per_weight')).toBeGreaterThan(1.5);
  expect(at('flight.breaking_margin')).toBeGreaterThan(3);
}

test('the grid has the whole range in it', () => {
  expect(grid.length).toBeGreaterThan(35);
  for (const span of SPANS) expect(grid.some((each) => each.span === span)).toBe(true);
  for (const engine of ENGINES) expect(grid.some((each) => each.engine === engine)).toBe(true);
});

test.each(everyFew(grid))(
  'a model of $span m with an engine of $engine cm³ settles, balances and flies',
  ({ span, engine }) => {
    expectToFly({ span: `${span} m`, size: `${engine} cm³` });
  },
);

test.each(everyFew(grid.filter((_, k) => k % 2 === 0)))(
  'so does one of $span m with a motor in place of $engine cm³',
  (each) => {
    expectToFly({ drive: 'motor', span: `${each.span} m`, size: `${Math.round(each.engine * 90.3)} W` });
  },
);

test.each(everyFew(grid.filter((_, k) => k % 3 === 0)))(
  'a timed lap is flown again: $span m, $engine cm³',
  ({ span, engine }) => {
    const form = { span: `${span} m`, size: `${engine} cm³` };
    const lap = made(form).at('flight.lap_time');
    for (const share of [0.8, 0.95, 1.1]) {
      const timed = { ...form, lap_time: `${(share * lap).toFixed(2)} s` };
      const { at, live } = made(timed);
      expect(Math.abs(at('flight.lap_time') - Number((share * lap).toFixed(2)))).toBeLessThan(0.005);
      expect(faultsOfLive(live)).toEqual([]);
    }
  },
);

test('a weight that was typed is the weight of the parts with an empty tank', () => {
  for (const drive of ['engine', 'motor'] as const) {
    const { at } = made({ drive, weight: '900 g', size: drive === 'engine' ? '4.1 cm³' : '370 W' });
    const fuel = drive === 'engine' ? 0.5 * at('parts.fuel_load.mass') : 0;
    expect(Math.abs(at('parts.mass') - fuel - 0.9)).toBeLessThan(0.0001);
    expect(at('balance.cg_share')).toBeCloseTo(0.2, 2);
  }
}, 30_000);

test('weights that are set after the model was weighed add to it, and a larger wing is heavier', () => {
  const { document, at } = made({ weight: '900 g' });
  const after = (texts: Record<string, string>) =>
    numberAt(setLive(openLive(document, library), Object.entries(texts), library).live, 'parts.mass');
  const before = at('parts.mass');
  const tip = at('tip_weight') * 1000;
  expect(after({ tip_weight: `${tip + 20} g` }) - before).toBeCloseTo(0.02, 9);
  expect(after({ nose_weight: '30 g', tail_weight: '10 g' }) - before).toBeCloseTo(0.04, 9);
  expect(after({ 'parts.propeller.mass': '40 g' }) - before).toBeCloseTo(0.04 - at('propeller_mass'), 9);
  expect(after({ displacement: '5.1 cm³' })).toBeGreaterThan(before + 0.045);
  expect(after({ span: '1.1 m' })).toBeGreaterThan(before + 0.03);
});

test.each(['engine', 'motor'] as const)('what drags more slows a lap that was timed: %s', (drive) => {
  const { at, document } = made({ drive, size: drive === 'engine' ? '4.1 cm³' : '370 W', lap_time: '4.9 s' });
  const lap = (texts: Record<string, string>) =>
    numberAt(setLive(openLive(document, library), Object.entries(texts), library).live, 'flight.lap_time') -
    at('flight.lap_time');
  expect(lap({ 'body.wheel_diameter': '100 mm', 'body.wheel_width': '25 mm' })).toBeGreaterThan(0.03);
  expect(lap({ span: '1.2 m' })).toBeGreaterThan(0.05);
  expect(lap({ 'lines.diameter': '0.5 mm' })).toBeGreaterThan(0.05);
  expect(lap({ line_length: '21 m' })).toBeGreaterThan(0.5);
  expect(lap({ tip_weight: '60 g' })).toBeGreaterThan(0);
  const brief = cellsOf(document).find((cell) => cell.name === 'brief')!;
  expect(brief.kind === 'note' && brief.text).toContain('Timed with: a lap of {engine.lap_time}');
});

test('one rpm, pitch and speed stand in the whole sheet, and the tank follows the engine', () => {
  for (const size of ['0.8 cm³', '4.1 cm³', '10 cm³']) {
    const span = `${Math.cbrt(Number.parseFloat(size)) * 0.6} m`;
    for (const lap_time of ['', '4.6 s']) {
      const { at } = made({ size, span, lap_time });
      expect(at('flight.shaft_speed') / at('shaft_speed')).toBeCloseTo(1, 5);
      expect(at('engine.tank_volume')).toBeCloseTo(15 * at('displacement'), 12);
      if (lap_time !== '') expect(at('flight.pitch_speed_share')).toBeCloseTo(0.85, 2);
    }
  }
});

test('every size follows the variables of the sheet', () => {
  const { document } = made({});
  const names = cellsOf(document).flatMap((cell) =>
    cell.kind === 'variables' ? cell.rows.map((row) => row.name) : [],
  );
  expect(names).toEqual([
    'span',
    'chord',
    'engine_station',
    'tip_weight',
    'line_length',
    'guide_x',
    'displacement',
    'nose_weight',
    'tail_weight',
  ]);
  const notes = cellsOf(document).flatMap((cell) => (cell.kind === 'note' ? [cell.text] : []));
  expect(notes.join(' ')).toContain('common practice, no source');
});

test('a racer that pulls harder than ten times its weight is told to set the test of its class, on a slide', () => {
  const racer = made({ span: '1020 mm', chord: '150 mm', size: '2.5 cm³', line_length: '15.92 m', lap_time: '2.6 s' });
  const brief = cellsOf(racer.document).find((cell) => cell.name === 'brief')!;
  const told =
    'It pulls harder in flight than a pull test of ten times its weight, which is a stop. Classes of such models ask for more: set “pull test over weight” below to what the rule book of your class says.';
  expect(brief.kind === 'note' && brief.text).toContain(told);
  expect(racer.at('flight.test_margin')).toBeLessThan(1);
  const set = setLive(racer.live, [['pull_test', '30']], library).live;
  expect(numberAt(set, 'flight.test_margin')).toBeGreaterThan(2);
  const slow = made({ lap_time: '4.9 s' });
  expect(JSON.stringify(slow.document)).not.toContain('pull_test');
});

test('what was weighed is said as it was typed, and what was left of it without needless digits', () => {
  const assumed = (form: Partial<FirstDesignForm>): string => {
    const note = cellsOf(made(form).document).find((cell) => cell.name === 'assumptions');
    return note?.kind === 'note' ? /Wing, fuselage and fin.* grows/.exec(note.text)![0] : '';
  };
  expect(assumed({ weight: '820 g' })).toMatch(
    /: 820 g as weighed, less \d{3}\u00a0g of all other parts when the design was begun; from 20\u00a0dm² on it grows$/,
  );
  expect(assumed({ span: '52 in', chord: '10.25 in', weight: '43.5 oz' })).toMatch(
    /: 43.5 oz as weighed, less \d\d\.\d\u00a0oz of all other parts when the design was begun; from 533\u00a0in² on it grows$/,
  );
});

test('other units and bare numbers are taken', () => {
  const { document } = made({ span: '40 in', chord: '210', size: '0.25 in³', weight: '30 oz', line_length: '60 ft' });
  const texts = cellsOf(document).flatMap((cell) =>
    cell.kind === 'variables' ? cell.rows.map((row) => row.text) : [],
  );
  expect(document.units).toBe('inch_pound');
  expect(made({}).document.units).toBe('metric');
  expect([texts[0], texts[1], texts[4], texts[6]]).toEqual(['40 in', '210 mm', '60 ft', '0.25 in³']);
});

test.each<[Partial<FirstDesignForm>, string]>([
  [{ span: '' }, 'span | Span: nothing is typed. Type the distance from wing tip to wing tip.'],
  [{ span: 'wide' }, 'span | Span: “wide” is not a number with a unit. Type the distance from wing tip to wing tip.'],
  [
    { span: '850 g' },
    'span | Span: “850\u00a0g” is a mass, not a length. Type the distance from wing tip to wing tip.',
  ],
  [
    { span: '12 m' },
    'span | Span: 12\u00a0m is not between 0.2\u00a0m and 3\u00a0m. Type the distance from wing tip to wing tip.',
  ],
  [
    { span: '-1 m' },
    'span | Span: “-1\u00a0m” is not a number with a unit. Type the distance from wing tip to wing tip.',
  ],
  [
    { size: '40' },
    'displacement | Engine: 40 is not between 0.1\u00a0cm³ and 30\u00a0cm³. Type the displacement; a 25 has 4.1\u00a0cm³.',
  ],
  [
    { line_length: '50 m' },
    'line_length | Line length: 50\u00a0m is not between 4\u00a0m and 30\u00a0m. Type the length from grip to model, or leave it blank for one by the size of the engine.',
  ],
  [
    { propeller: 'nine' },
    'propeller | Propeller: “nine” is not a diameter and a pitch. Type both as they are marked, such as 9x6 (inches) or 230x150\u00a0mm, or leave it blank for one by the size of the engine.',
  ],
  [
    { line_count: '2.5' },
    'line_count | Lines: 2.5 is not a whole number. Type how many lines, or leave it blank for two.',
  ],
  [
    { line_count: '6' },
    'line_count | Lines: 6 is not between 1 and 4. Type how many lines, or leave it blank for two.',
  ],
  [
    { line_diameter: '3 mm' },
    'line_diameter | Line diameter: 3\u00a0mm is not between 0.1\u00a0mm and 2\u00a0mm. Type the diameter of one line, or leave it blank for one by the size of the engine.',
  ],
  [
    { weight: '850 mm' },
    'weight | Weight: “850\u00a0mm” is a length, not a mass. Type the weight ready to fly with the tank empty, or leave it blank for an estimate.',
  ],
  [
    { lap_time: '0.2 s' },
    'lap_time | Lap time: 0.2\u00a0s is not between 1\u00a0s and 20\u00a0s. Type the time of one level lap, or leave it blank if the model has not flown.',
  ],
  [
    { drive: 'motor', size: '' },
    'motor_power | Motor: nothing is typed. Type the electric power that the motor takes in flight.',
  ],
  [
    { chord: '600 mm' },
    'chord | Mean chord: the span is 1.67 times the chord, and 2 to 16 times is taken. Look at span and chord.',
  ],
  [
    { size: '0.8 cm³' },
    'displacement | Engine: for a wing of 20\u00a0dm² from 1\u00a0cm³ to 25\u00a0cm³ is taken, and 0.8\u00a0cm³ was typed. Look at engine, span and chord.',
  ],
  [
    { drive: 'motor', size: '50 W' },
    'motor_power | Motor: for a wing of 20\u00a0dm² from 90\u00a0W to 2300\u00a0W is taken, and 50\u00a0W was typed. Look at motor, span and chord.',
  ],
  [
    { line_length: '4 m', span: '1.25 m' },
    'line_length | Line length: the lines are 3.2 times the span, and 4 to 60 times is taken. Look at line length and span.',
  ],
  [
    { lap_time: '10 s' },
    'lap_time | Lap time: 10\u00a0s on these lines is 12\u00a0m/s and a pull of 0.78 times the weight; 1.2 to 8.4\u00a0s is taken. Look at lap time and line length.',
  ],
  [
    { weight: '300 g' },
    'weight | Weight: 300\u00a0g is too little for an engine or motor of that size with tail, gear and fittings, some 383\u00a0g, and 100\u00a0g or more of wing, fuselage and fin. Look at weight and size, or leave the weight blank for an estimate.',
  ],
])('%j is refused at its entry', (form, sentence) => {
  expect(problems(form)).toEqual([sentence]);
});

test('all entries that are at fault are told together', () => {
  expect(problems({ span: '', weight: 'heavy', lap_time: '1 h' }).map((each) => each.split(' | ')[0])).toEqual([
    'span',
    'weight',
    'lap_time',
  ]);
});
