import { describe, expect, test } from 'vitest';
import type { Document, WeighingCell } from '../../../engine/sheet/document';
import { serialise } from '../../../engine/sheet/file';
import { openLive } from '../../../engine/sheet/live';
import { putText } from '../../../engine/sheet/paths';
import { rename } from '../../../engine/sheet/rename';
import { cellsOf } from '../../../engine/sheet/sheets';
import { applyChanges } from '../../../engine/sheet/transaction';
import { weighingPart } from '../../../engine/sheet/weighed-as';
import { answer } from '../../../engine/study/command/answer';
import { readArguments } from '../../../engine/study/command/arguments';
import { library as tradeLibrary } from '../../../engine/study/library';
import { weighingOf } from '../../../engine/study/weighing/weighing';
import { writeQuantity } from '../../../engine/units/index';
import { someOf } from '../../cases';
import { library, smallDesign } from '../sheet/small';
import { begun, forms } from './place/begun';

const bench = (change: Partial<WeighingCell> = {}): WeighingCell => ({
  ...{ kind: 'weighing', id: '99', name: 'bench', title: 'Bench', parts: 'parts', order: [] },
  ...{ text: '18 mm', within: '2 mm', ...change },
});
function benched(change: Partial<WeighingCell> = {}): Document {
  const small = smallDesign();
  const [first] = small.sheets;
  return { ...small, sheets: [{ ...first!, pieces: [...first!.pieces, bench(change)] }] };
}
const weigh = (document: Document, texts: Readonly<Record<string, string>>): Document =>
  Object.entries(texts).reduce(
    (now, [part, text]) => applyChanges(now, weighingPart(now, `parts.${part}.weighed`, text)!).document,
    document,
  );
const put = (document: Document, path: string, text: string): Document => putText(document, path, text)!;
function read(document: Document, path: string): number {
  const { compiled, state } = openLive(document, library);
  return state.m[compiled.program.slotOf.get(path)!]!;
}
const told = (document: Document) => weighingOf(openLive(document, library), 'bench');
const inGrams = (mass: number): string => writeQuantity(mass, 'g');

const WEIGHED = { fin: '20 g', engine: '205 g', stab: '30 g' } as const;

describe('the bench', () => {
  const before = benched();
  const some = weigh(before, WEIGHED);

  test('keeps the order of weighing in the file, the last one last, and lets go of what is taken off', () => {
    const orderIn = (document: Document) =>
      cellsOf(document).flatMap((cell) => (cell.kind === 'weighing' ? cell.order : []));
    expect(orderIn(some)).toEqual(['parts.fin', 'parts.engine', 'parts.stab']);
    expect(orderIn(weigh(some, { fin: '21 g' }))).toEqual(['parts.engine', 'parts.stab', 'parts.fin']);
    expect(orderIn(weigh(some, { engine: '' }))).toEqual(['parts.fin', 'parts.stab']);
    const renaming = rename(some, 'parts.engine', 'motor_itself');
    expect(renaming.ok && orderIn(applyChanges(some, renaming.changes).document)).toEqual([
      'parts.fin',
      'parts.motor_itself',
      'parts.stab',
    ]);
  });

  test('one weighing is one edit that can be taken back', () => {
    const done = applyChanges(before, weighingPart(before, 'parts.fin.weighed', '20 g')!);
    expect(applyChanges(done.document, done.inverse).document).toEqual(before);
  });

  test('tells where the CG was told to lie after each: as if only so many had been weighed', () => {
    const fewer: readonly Readonly<Record<string, string>>[] = [{}, { fin: '20 g' }, { fin: '20 g', engine: '205 g' }];
    const steps = [...fewer, WEIGHED].map((texts) => weigh(before, texts));
    const { history } = told(some);
    expect(history.map(({ path }) => path)).toEqual(['', 'parts.fin', 'parts.engine', 'parts.stab']);
    expect(history.map(({ x }) => x)).toEqual(steps.map((each) => read(each, 'parts.x')));
    expect(history.map(({ band }) => band)).toEqual(steps.map((each) => read(each, 'parts.x_sd')));
  });

  test('parts weighed without being listed come first, as the table has them', () => {
    const unlisted = put(weigh(before, { fin: '20 g' }), 'parts.engine.weighed', '205 g');
    expect(told(unlisted).history.map(({ path }) => path)).toEqual(['', 'parts.engine', 'parts.fin']);
  });

  test('tells of each part the band that is left once it weighs what it is estimated at, and puts the best next', () => {
    const { parts, next, finished } = told(before);
    expect(parts.map(({ path }) => path)).toEqual(
      ['engine', 'wing', 'stab', 'fin', 'tip'].map((each) => `parts.${each}`),
    );
    for (const { path, estimate, band, share } of parts) {
      const after = put(before, `${path}.weighed`, inGrams(estimate));
      expect(band).toBeCloseTo(read(after, 'parts.x_sd'), 12);
      expect(share).toBeCloseTo(1 - (band / finished.band) ** 2, 12);
    }
    const least = parts.toSorted((a, b) => a.band - b.band)[0]!;
    expect(next).toBe(least.path);
  });

  test('tells what has been weighed by itself and how much that is', () => {
    const { weighed, done, finished } = told(some);
    expect(weighed.mass).toBeCloseTo(0.255, 12);
    const moment = ['fin', 'engine', 'stab'].reduce(
      (sum, name) => sum + read(some, `parts.${name}.mass`) * read(some, `parts.${name}.x`),
      0,
    );
    expect(weighed.x).toBeCloseTo(moment / 0.255, 12);
    expect(done).toBe(read(some, 'parts.weighed_share'));
    expect(finished.x).toBe(read(some, 'parts.x'));
    expect(told(before).weighed).toEqual({ mass: Number.NaN, x: Number.NaN, y: Number.NaN });
  });

  test('what the rest may weigh brings the CG to the limits when the rest weighs so much', () => {
    const { rest, parts } = told(weigh(benched({ text: '20 mm' }), { engine: '205 g', fin: '16 g' }));
    const open = parts.filter(({ state }) => state === 'open');
    expect(rest?.mass).toBeCloseTo(
      open.reduce((sum, { mass }) => sum + mass, 0),
      12,
    );
    if (rest?.may.status !== 'settled') throw new Error('the rest has no answer');
    const { least, most } = rest.may;
    for (const [mass, x] of [
      [least, 0.018],
      [most, 0.022],
    ] as const) {
      const scaled = open.reduce(
        (now, part) => put(now, `${part.path}.weighed`, inGrams((part.mass * mass) / rest.mass)),
        weigh(before, { engine: '205 g', fin: '16 g' }),
      );
      expect(read(scaled, 'parts.x')).toBeCloseTo(x, 9);
    }
  });

  test('what one part may weigh brings the CG where it is wanted', () => {
    const able = told(before).parts.filter(({ mayWeigh }) => !Number.isNaN(mayWeigh));
    expect(able.map(({ path }) => path)).toContain('parts.engine');
    for (const { path, mayWeigh } of able) {
      expect(read(put(before, `${path}.weighed`, inGrams(mayWeigh)), 'parts.x')).toBeCloseTo(0.018, 9);
    }
  });

  test('nothing is told of a target where none is wanted', () => {
    const { rest, wanted, parts } = told(benched({ text: '', within: '' }));
    expect([rest, wanted]).toEqual([undefined, Number.NaN]);
    expect(parts.every(({ mayWeigh }) => Number.isNaN(mayWeigh))).toBe(true);
  });

  test('a part that was weighed as something else is to be weighed anew', () => {
    const faced = put(some, 'tail_stock', 'faced');
    const { parts, history } = told(faced);
    const stab = parts.find(({ path }) => path === 'parts.stab')!;
    expect(stab.state).toBe('remade');
    expect(stab.mass).toBe(stab.estimate);
    expect(stab.band).toBeGreaterThan(0);
    expect(history.map(({ path }) => path)).toEqual(['', 'parts.fin', 'parts.engine']);
    expect(history.at(-1)).toMatchObject({ x: read(faced, 'parts.x'), band: read(faced, 'parts.x_sd') });
  });

  test('leaves out fuel, and what weighs nothing until it is weighed', () => {
    const without = put(before, 'tip_weight', '0 g');
    const paths = (document: Document) => told(document).parts.map(({ path }) => path);
    expect(paths(before)).not.toContain('parts.tank');
    expect(paths(without)).not.toContain('parts.tip');
    expect(paths(weigh(without, { tip: '3 g' }))).toContain('parts.tip');
  });

  test('says once all is weighed that nothing is next', () => {
    const all = weigh(before, { ...WEIGHED, wing: '140 g', tip: '20 g' });
    expect(told(all)).toMatchObject({ next: '', done: 1 });
    expect(told(all).rest).toBeUndefined();
  });
});

test('what is wrong with a bench is told', () => {
  const faultOf = (change: Partial<WeighingCell>) => told(benched(change)).message;
  expect(faultOf({ parts: '' })).toBe('Bench has no table of parts to weigh. There is parts.');
  expect(faultOf({ parts: 'partz' })).toBe(
    'Bench weighs the parts of “partz”: there is no table of parts of that name. There is parts.',
  );
  expect(weighingOf(openLive(benched(), library), 'nobody').message).toBe(
    'There is no bench called “nobody”. The benches are bench.',
  );
});

test('the command line tells the same', () => {
  const asked = readArguments(['design.json', '--weighing', 'bench']);
  if (asked.ask !== 'run') throw new Error('not read');
  const { out, err } = answer(asked.request, serialise(weigh(benched(), WEIGHED)), library);
  expect(err).toBe('');
  expect(out.replaceAll('\u00a0', ' ')).toMatchInlineSnapshot(`
    "CG when finished 30.8 mm ± 3.2 mm (one standard deviation), wanted 18 mm ± 2 mm
    49.4 % weighed: 255 g with its CG at −24.9 mm
    the rest, estimated 261 g, may weigh 157 g to 181 g
    next on the scale: parts.wing
    parts.engine: 205 g, weighed
    parts.wing: 240 g, estimated; weighed it takes 80.9 % of the band, to ± 1.4 mm; by itself it may weigh 151 g
    parts.stab: 30 g, weighed
    parts.fin: 20 g, weighed
    parts.tip: 21 g, estimated; weighed it takes 0.12 % of the band, to ± 3.2 mm
    before any: 12.8 mm ± 7.9 mm
    after parts.fin: 16.3 mm ± 7.8 mm
    after parts.engine: 17.9 mm ± 4.0 mm
    after parts.stab: 30.8 mm ± 3.2 mm
    "
  `);
  const json = answer({ ...asked.request, json: true }, serialise(weigh(benched(), WEIGHED)), library);
  expect(Object.keys(JSON.parse(json.out).weighing)).toEqual([
    'state',
    'next',
    'done',
    'wanted',
    'within',
    'weighed',
    'finished',
    'rest',
    'parts',
    'history',
  ]);
});

test.each(someOf([0, 1, 4, 7, 11]))('a begun model is weighed to its end as the bench says, model %d', (k) => {
  const of = begun(forms[k]!);
  const [first, ...others] = of.sheets;
  const table = cellsOf(of).find(({ kind }) => kind === 'parts')!.name;
  const pieces = [...first!.pieces, bench({ parts: table, text: '', within: '' })];
  let document: Document = { ...of, sheets: [{ ...first!, pieces }, ...others] };
  const bands: number[] = [];
  for (;;) {
    const { next, parts, finished, history, message } = weighingOf(openLive(document, tradeLibrary), 'bench');
    expect(message).toBeUndefined();
    // As it was told before the part came on the scale at just its estimate.
    if (bands.length > 0) expect(finished.band).toBeCloseTo(bands.at(-1)!, 12);
    expect(history).toHaveLength(bands.length + 1);
    if (next === '') break;
    const part = parts.find(({ path }) => path === next)!;
    bands.push(part.band);
    const weighing = weighingPart(document, `${next}.weighed`, inGrams(part.estimate));
    document = applyChanges(document, weighing!).document;
  }
  expect(bands.length).toBeGreaterThan(8);
  expect(bands.at(-1)).toBeLessThan(bands[0]!);
});
