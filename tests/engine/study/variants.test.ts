import { describe, expect, test } from 'vitest';
import { baselineOf } from '../../../engine/sheet/baseline';
import type { Document, Variant, VariantsCell } from '../../../engine/sheet/document';
import { serialise } from '../../../engine/sheet/file';
import { keepingBaseline } from '../../../engine/sheet/keep-baseline';
import { type Live, openLive, setLive } from '../../../engine/sheet/live';
import { putText } from '../../../engine/sheet/paths';
import { cellsOf } from '../../../engine/sheet/sheets';
import { applyChanges } from '../../../engine/sheet/transaction';
import { answer } from '../../../engine/study/command/answer';
import { readArguments } from '../../../engine/study/command/arguments';
import { startEngine } from '../../../engine/study/session';
import type { SweepProgress, VariantColumn, VariantsTold } from '../../../engine/terms/index';
import { onOneSheet } from '../sheet/one-sheet';
import { randomFrom } from '../sheet/random';
import { smallDesign, library as smallLibrary } from '../sheet/small';
import { library, slideRule } from './slide-rule';
import { wholeOf } from './whole';

const wanted = ['double', 'root.mean'];
const table: VariantsCell = { kind: 'variants', id: '99', name: 'beside', title: 'Beside', wanted };

const withTable = (document: Document, cell: VariantsCell = table): Document => ({
  ...document,
  sheets: onOneSheet([...cellsOf(document), cell]),
});
const design = (variants: readonly Variant[], head: Partial<Document> = {}): Document => ({
  ...withTable(slideRule()),
  ...head,
  variants,
});

function told(live: Live): VariantsTold {
  const progress = wholeOf(live, 'beside');
  if (typeof progress === 'string') throw new Error(progress);
  expect(progress.state).toBe('done');
  return progress.variants!;
}
const toldOf = (document: Document): VariantsTold => told(openLive(document, library));
const column = ({ columns }: VariantsTold, name: string): VariantColumn => columns.find((each) => each.name === name)!;

/** What the sheet gives when the texts are typed into it and everything is computed anew. */
function recomputed(
  document: Document,
  texts: Readonly<Record<string, string>>,
  of = library,
  paths = wanted,
): number[] {
  const typed = Object.entries(texts).reduce((now, [path, text]) => putText(now, path, text) ?? now, document);
  const { compiled, state } = openLive(typed, of);
  return paths.map((path) => state.m[compiled.program.slotOf.get(path)!]!);
}

/** Texts that may be typed, some of them formulas, blanks or at fault. */
const TYPED: Readonly<Record<string, readonly string[]>> = {
  a: ['20 mm', '25 mm', '0.03 m', '-4 mm', 'b / 2', '1 in', 'oops'],
  b: ['30 mm', '2 × a', 'a + 3 mm', '-1 mm'],
  bolt: ['short', 'middle', 'long', 'none'],
  'root.side': ['a', '12 mm', ''],
  'sum.more': ['bolt.length', '3 mm', ''],
  'sum.times': ['once', 'twice', ''],
  'bolt.long.length': ['a / 2', '9 mm'],
  'aside.by': ['2'],
  'gone.path': ['1 mm'],
  'sum.nothing': ['1 mm'],
};

function randomTexts(random: ReturnType<typeof randomFrom>, most: number): Record<string, string> {
  const paths = Object.keys(TYPED);
  const texts: Record<string, string> = {};
  for (let k = random.below(most + 1); k > 0; k--) {
    const path = random.pick(paths);
    texts[path] = random.pick(TYPED[path]!);
  }
  return texts;
}
const known = (texts: Readonly<Record<string, string>>): Record<string, string> =>
  Object.fromEntries(Object.entries(texts).filter(([path]) => path !== 'gone.path' && path !== 'sum.nothing'));

describe('a variant', () => {
  test.each([...Array(40).keys()])('is what the design with its texts computed anew is, seed %d', (seed) => {
    const random = randomFrom(seed + 1);
    const baseline = random.below(2) === 0 ? undefined : known(randomTexts(random, 3));
    const variants = [0, 1, 2].map((k): Variant => ({ name: `v${k}`, changes: randomTexts(random, 7) }));
    const document = design(variants, baseline ? { baseline } : {});
    const { from, columns } = toldOf(document);
    expect(columns.map(({ what }) => what)).toEqual([
      ...(baseline ? ['baseline'] : []),
      ...['design', 'variant', 'variant', 'variant'],
    ]);
    const texts = [...(baseline ? [baseline] : []), {}, ...variants.map(({ changes }) => known(changes))];
    const reference = columns.find(({ what }) => what === from)!;
    for (const [k, { values, shares, changes, gone, reason, what }] of columns.entries()) {
      const expected = recomputed(document, texts[k]!);
      expect(values).toEqual(expected);
      expect(reason === '').toBe(!expected.some(Number.isNaN));
      expect(gone).toEqual(
        what === 'variant'
          ? Object.keys(variants[Number(columns[k]!.name[1])]!.changes).filter((p) => !(p in texts[k]!))
          : [],
      );
      if (!shares) continue;
      expect(shares.each).toHaveLength(changes.length);
      for (const [w, value] of values.entries()) {
        const sum = shares.each.reduce((all, each) => all + (each[w]! || 0), shares.together[w]!);
        const difference = value - reference.values[w]!;
        if (Number.isNaN(difference)) continue;
        expect(sum).toBeCloseTo(difference, 12);
      }
    }
  });

  test('is the same in whatever order its changes stand', () => {
    const changes = { a: '25 mm', bolt: 'long', 'sum.times': 'twice', b: 'a + 3 mm' };
    const turned = Object.fromEntries(Object.entries(changes).reverse());
    const one = column(toldOf(design([{ name: 'A', changes }])), 'A');
    const other = column(toldOf(design([{ name: 'A', changes: turned }])), 'A');
    expect(other.values).toEqual(one.values);
    const shareOf = ({ changes: all, shares }: VariantColumn, path: string) =>
      shares!.each[all.findIndex((each) => each.path === path)];
    for (const path of Object.keys(changes)) expect(shareOf(other, path)).toEqual(shareOf(one, path));
  });

  test('that was kept has no difference from the design', () => {
    const changes = { a: '25 mm', bolt: 'long', b: 'a + 3 mm' };
    const document = design([{ name: 'A', changes }]);
    const kept = Object.entries(changes).reduce((now, [path, text]) => putText(now, path, text)!, document);
    const { columns } = toldOf(kept);
    expect(columns[1]).toEqual({ ...columns[0], what: 'variant', name: 'A' });
    expect(columns[1]!.changes).toEqual([]);
  });

  test('says in words why it does not fly, and leaves the others alone', () => {
    const { columns } = toldOf(
      design([
        { name: 'Backwards', changes: { b: '-1 mm' } },
        { name: 'Longer', changes: { bolt: 'long' } },
        { name: 'Odd', changes: { bolt: 'huge' } },
      ]),
    );
    expect(columns.map(({ reason }) => reason)).toEqual([
      '',
      'Side 20\u00a0mm and height −1\u00a0mm point opposite ways.',
      '',
      'bolt: Nothing is called huge. Write one of short, middle, long.',
    ]);
    expect(columns.map(({ values }) => values.map(Number.isNaN))).toEqual([
      [false, false],
      [true, true],
      [false, false],
      [true, false],
    ]);
  });

  test('tells what has no place in the design, kept and not counted', () => {
    const { columns } = toldOf(design([{ name: 'A', changes: { 'fin.thickness': '3 mm', a: '25 mm' } }]));
    expect(columns[1]).toMatchObject({ gone: ['fin.thickness'], changes: [{ path: 'a', from: '20 mm', to: '25 mm' }] });
    expect(columns[1]!.values).toEqual(recomputed(slideRule(), { a: '25 mm' }));
  });
});

describe('what makes the difference', () => {
  test('is averaged over every order while the changes are few numbers and options', () => {
    const { columns } = toldOf(design([{ name: 'A', changes: { 'sum.times': 'twice', 'sum.more': '3 mm' } }]));
    const [from, to] = [recomputed(slideRule(), {})[0]!, columns[1]!.values[0]!];
    // `sum.more` was a formula: no order of it is flown.
    expect(columns[1]!.shares!.method).toBe('alone');
    expect(to).not.toBe(from);
    const ordered = column(toldOf(design([{ name: 'A', changes: { 'sum.times': 'twice', a: '30 mm' } }])), 'A');
    const value = (texts: Record<string, string>): number => recomputed(slideRule(), texts)[0]!;
    const twice = { 'sum.times': 'twice' };
    const both = value({ ...twice, a: '30 mm' });
    expect(ordered.shares!.method).toBe('orders');
    expect(ordered.shares!.each[0]![0]).toBeCloseTo((value(twice) - value({}) + both - value({ a: '30 mm' })) / 2, 12);
    expect(ordered.shares!.together).toEqual([0, 0]);
  });

  test('is told of each alone, and of all together besides, where there are many, or an order does not fly', () => {
    const variants: Variant[] = [
      {
        name: 'Many',
        changes: {
          a: '21 mm',
          bolt: 'long',
          'root.height': '40 mm',
          'sum.times': 'twice',
          'bolt.long.length': '9 mm',
          'aside.by': '2',
        },
      },
      { name: 'Signs', changes: { 'root.side': '-9 mm', 'root.height': '-4 mm' } },
    ];
    const { columns } = toldOf(design(variants));
    expect(columns[1]!.shares!.method).toBe('alone');
    const signs = columns[2]!.shares!;
    expect(signs.method).toBe('alone');
    // Each by itself points the other way; together they are fine.
    expect(signs.each).toEqual([
      [Number.NaN, Number.NaN],
      [Number.NaN, Number.NaN],
    ]);
    expect(signs.together[1]).toBe(columns[2]!.values[1]! - columns[0]!.values[1]!);
  });

  test('names what was built since the baseline before the changes', () => {
    const before: Document = { ...design([{ name: 'A', changes: { a: '25 mm' } }]), baseline: { bolt: 'short' } };
    const gone = cellsOf(before).find(({ name }) => name === 'aside')!;
    const changes = keepingBaseline(before, [{ change: 'remove', id: gone.id }]);
    const document = applyChanges(before, changes).document;
    expect(document.baseline_design).toBeDefined();
    const { from, columns } = toldOf(document);
    expect(from).toBe('baseline');
    const then = recomputed(baselineOf(document)!, {});
    expect(columns[0]!.values).toEqual(then);
    expect(columns[1]!.shares).toEqual({
      ...{ method: 'orders', each: [], together: [0, 0] },
      built: columns[1]!.values.map((value, w) => value - then[w]!),
    });
    expect(columns[2]!.changes).toEqual([{ path: 'a', from: '20 mm', to: '25 mm' }]);
    for (const [w, value] of columns[2]!.values.entries()) {
      const { each, built } = columns[2]!.shares!;
      expect(each[0]![w]! + built![w]!).toBeCloseTo(value - then[w]!, 12);
    }
  });
});

test('a field of the baseline that reads a variable now, with the number that it had, is not told as a change', () => {
  const bare = slideRule();
  const typed: Document = {
    ...withTable(bare),
    sheets: withTable(putText(bare, 'root.height', '40 mm')!).sheets,
    baseline: {},
  };
  const linked = applyChanges(typed, [
    { change: 'text', path: 'root.height', text: 'b' },
    { change: 'text', path: 'sum.times', text: 'twice' },
  ]).document;
  const moved = applyChanges(linked, [{ change: 'text', path: 'a', text: '25 mm' }]).document;
  const paths = (document: Document) =>
    toldOf(document)
      .columns.at(-1)!
      .changes.map(({ path }) => path)
      .sort();
  expect(paths(linked)).toEqual(['sum.times']);
  // 2 × a is 40 mm in the baseline, whatever it is now.
  expect(paths(moved)).toEqual(['a', 'sum.times']);
  expect(toldOf(moved).columns[0]!.values).toEqual(recomputed(baselineOf(moved)!, {}));
  const other = applyChanges(linked, [{ change: 'text', path: 'root.height', text: 'b + 1 mm' }]).document;
  expect(paths(other)).toEqual(['root.height', 'sum.times']);
});

describe('in the engine', () => {
  test('variants follow each edit, the columns first while a finger is down', async () => {
    const engine = startEngine(library, { pause: async () => {}, now: () => 0 });
    await engine.open(design([{ name: 'A', changes: { bolt: 'long', 'sum.times': 'twice' } }]));
    const news: SweepProgress[] = [];
    const run = async (coarse: boolean): Promise<VariantsTold> => {
      await engine.sweep({ sweep: 'beside', coarse }, (each) => news.push(each));
      return news.at(-1)!.variants!;
    };
    const fast = await run(true);
    expect(fast.columns.map(({ done, shares }) => [done, shares !== undefined])).toEqual([
      [true, false],
      [true, false],
    ]);
    expect((await run(false)).columns[1]!.shares!.each).toHaveLength(2);
    await engine.set([['a', '26 mm']]);
    const moved = await run(false);
    expect(moved.columns[1]!.values).toEqual(
      recomputed(slideRule({ a: '26 mm' }), { bolt: 'long', 'sum.times': 'twice' }),
    );
  });

  test('those on the charts are told whole, and along an axis, as the design would be with their texts typed', async () => {
    const engine = startEngine(library, { pause: async () => {}, now: () => 0 });
    const variants: Variant[] = [
      { name: 'Long', changes: { bolt: 'long', a: '22 mm' }, on_charts: true },
      { name: 'Linked', changes: { 'sum.more': 'a / 5', b: '30 mm' }, on_charts: true },
      { name: 'Aside', changes: { bolt: 'short' } },
    ];
    const document = design(variants);
    const { names } = await engine.open(document);
    const slotOf = (path: string): number => names!.findLast((each) => each.path === path)!.slot;
    const ghosts = await engine.variantGhosts();
    expect(ghosts.variants.map(({ name }) => name)).toEqual(['Long', 'Linked']);
    for (const [k, { values }] of ghosts.variants.entries()) {
      const { changes } = variants[k]!;
      expect(wanted.map((path) => values[slotOf(path)])).toEqual(recomputed(document, changes));
      let last: SweepProgress | undefined;
      await engine.sweep({ sweep: 'grid', baseline: ['a'], variant: variants[k]!.name }, (each) => {
        last = each;
      });
      const { axes, columns } = last!;
      expect(axes.map(({ path }) => path)).toEqual(['a']);
      for (const at of [0, 7, 20]) {
        const a = `${Number((axes[0]!.values[at]! * 1000).toPrecision(9))} mm`;
        const [double] = recomputed(document, { ...changes, a });
        expect(columns[0]![at]).toBeCloseTo(double!, 12);
      }
    }
    let refused: SweepProgress | undefined;
    await engine.sweep({ sweep: 'grid', baseline: ['a'], variant: 'Aside' }, (each) => {
      refused = each;
    });
    expect([refused!.state, refused!.message]).toEqual(['fault', 'There is no variant called “Aside” on the charts.']);
    // The design itself is as it was.
    expect((await engine.set([])).values[slotOf('double')]).toBe(recomputed(document, {})[0]);
  });

  test('a design whose numbers are typed in another way is the same as one that is opened anew', () => {
    const document = { ...withTable(smallDesign(), { ...table, wanted: ['lap.pull', 'parts.mass'] }) };
    const variants: Variant[] = [
      { name: 'A', changes: { tip_weight: '30 g', tail_stock: 'faced', 'motor.lost': '1 N' } },
    ];
    const { live } = setLive(
      openLive({ ...document, variants }, smallLibrary),
      [['cord_length', '17 m']],
      smallLibrary,
    );
    expect(column(told(live), 'A').values).toEqual(
      recomputed(putText(document, 'cord_length', '17 m')!, variants[0]!.changes, smallLibrary, [
        'lap.pull',
        'parts.mass',
      ]),
    );
  });
});

describe('on the command line', () => {
  const file = serialise(
    design([{ name: 'Long', changes: { bolt: 'long', a: '25 mm', 'fin.x': '1 mm' } }], { baseline: { a: '18 mm' } }),
  );
  const said = (...words: string[]) => {
    const read = readArguments(['x.json', ...words]);
    if (read.ask !== 'run') throw new Error('not understood');
    return answer(read.request, file, library);
  };
  test('the table says each column, its differences, and what makes them', () => {
    expect(said('--variants', 'beside')).toMatchInlineSnapshot(`
      {
        "code": 0,
        "err": "",
        "out": "baseline
        double 64.9 mm
        root.mean 25.5 mm
      as set
        double 70.6 mm (+5.7 mm)
        root.mean 28.3 mm (+2.8 mm)
        a “18 mm” to “20 mm”: double +5.7 mm, root.mean +2.8 mm
      Long
        double 95.7 mm (+30.8 mm)
        root.mean 35.4 mm (+9.9 mm)
        fin.x: not in the design, kept and not counted
        shares, averaged over every order of the changes:
        a “18 mm” to “25 mm”: double +23.3 mm, root.mean +9.9 mm
        bolt “middle” to “long”: double +7.5 mm, root.mean 0 mm
      ",
      }
    `);
    expect(JSON.parse(said('--variants', 'beside', '--json').out).variants.columns[2]).toMatchObject({
      ...{ what: 'variant', name: 'Long', reason: '', gone: ['fin.x'] },
      shares: { method: 'orders', each: [expect.any(Array), expect.any(Array)] },
    });
  });
  test('a variant is computed in the place of the design', () => {
    expect(said('--variant', 'Long', '--get', 'double')).toEqual({
      code: 0,
      out: said('--set', 'bolt=long', 'a=25 mm', '--get', 'double').out,
      err: 'Long changes fin.x, which is not in the design: left out.\n',
    });
    expect(said('--variant', 'Lang')).toEqual({
      ...{ code: 1, out: '' },
      err: 'There is no variant called “Lang”. The variants are Long. Did you mean Long?\n',
    });
    expect(said('--variants', 'besides').err).toBe(
      'There is no table of variants called “besides”. The tables of variants are beside.\n',
    );
  });
});
