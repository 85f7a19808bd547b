import { describe, expect, test, vi } from 'vitest';
import {
  cellsOf,
  type Document,
  differencesOf,
  type EngineService,
  readVariants,
  serialise,
  textAt,
  type Variant,
} from '../../../engine/index';
import { startEngine } from '../../../engine/study/index';
import { VariantsView } from '../../../workbook/cells/variants/view';
import { designAt } from '../../../workbook/charts/index';
import { SheetContext } from '../../../workbook/store/context';
import { createSheet, type Sheet } from '../../../workbook/store/sheet';
import { newVariants } from '../../../workbook/store/variants';
import { onOneSheet } from '../../engine/sheet/one-sheet';
import { library, slideRule } from '../../engine/study/slide-rule';
import type { Page } from '../drawing/page';
import { onStoppedClock } from './stopped-clock';

const LONG: Variant = { name: 'Long bolt', changes: { bolt: 'long', a: '25 mm' } };

function designWith(variants: readonly Variant[], head: Partial<Document> = {}): Document {
  const document = slideRule();
  const check = {
    kind: 'check',
    id: 'ch',
    name: 'stop',
    title: 'Stop',
    of: 'double',
    low: '',
    high: '80 mm',
    below: '',
    above: 'too far',
  } as const;
  const table = { ...newVariants(document), wanted: ['double', 'root.mean'] };
  return { ...document, sheets: onOneSheet([...cellsOf(document), check, table]), variants, ...head };
}

let page: Page;
let copied: string[];
onStoppedClock((opened) => {
  page = opened;
  copied = [];
});

const rest = (): Promise<unknown> => vi.advanceTimersByTimeAsync(60);

async function open(document: Document, copy?: (text: string) => Promise<void>): Promise<Sheet> {
  const engine: EngineService = startEngine(library, { pause: () => Promise.resolve(), now: () => 0 });
  const sheet = createSheet(document, {
    engine,
    keep: { write() {} },
    loadDemo: async () => '',
    frozen: true,
    now: () => 0,
    ...(copy ? { copy } : {}),
  });
  await rest();
  const cell = cellsOf(document).find((each) => each.kind === 'variants');
  if (cell?.kind === 'variants') {
    page.show(
      <SheetContext.Provider value={sheet}>
        <VariantsView cell={cell} />
      </SheetContext.Provider>,
    );
    await rest();
  }
  return sheet;
}

/** The table as lines, cells set apart by bars. */
const lines = (): string[] =>
  [...page.body.querySelectorAll('.variants-table tr')].map((row) =>
    [...row.children]
      .map((cell) =>
        [...cell.childNodes]
          .map((node) => node.textContent?.replaceAll('\u00a0', ' ').trim())
          .filter(Boolean)
          .join(' '),
      )
      .join(' | '),
  );
const button = (words: string): HTMLElement => {
  const found = [...page.body.querySelectorAll('button')].find(
    (each) => each.textContent?.replace(/\s+/g, ' ').trim() === words,
  );
  if (!found) throw new Error(`no button “${words}”`);
  return found as unknown as HTMLElement;
};
const press = async (words: string): Promise<void> => {
  button(words).click();
  await rest();
};
const notice = (sheet: Sheet): string | undefined => sheet.notices.value.at(-1)?.title;

describe('the table of variants', () => {
  test('shows results with differences from the baseline, stops, and what each change does', async () => {
    await open(designWith([LONG], { baseline: { a: '18 mm' } }));
    expect(lines()).toEqual([
      'Result | Baseline | As set | Long bolt',
      'double | 64.9 mm | 70.6 mm +5.7 | ✕ stop: 95.7 mm +30.8',
      'Geometric mean | 25.5 mm | 28.3 mm +2.8 | 35.4 mm +9.9',
      expect.stringMatching(/^What is changed, and what that does to/),
      'a | 18 mm | 20 mm +5.7 mm | 25 mm +23.3 mm',
      'Bolt | middle | same | long +7.5 mm',
    ]);
    expect(page.body.textContent).toContain('averaged over every order');
  });

  test('says why one does not fly, and what of it is not in the design any more', async () => {
    await open(designWith([{ name: 'Odd', changes: { b: '-1 mm', 'tail_fin.x': '1 mm' } }]));
    expect([...page.body.querySelectorAll('.variants-reasons li')].map((each) => each.textContent)).toEqual([
      'Odd: Side 20\u00a0mm and height −1\u00a0mm point opposite ways.',
    ]);
    expect(page.body.querySelector('[data-gone]')!.textContent).toBe(
      'Odd changes “tail fin: x”, which is not in the design any more: kept, and not counted.',
    );
    expect(lines()[1]).toBe('double | 70.6 mm | –');
  });

  test('tells what variants are where there are none, and makes one of what is set in one press', async () => {
    const sheet = await open(designWith([]));
    expect(page.body.textContent).toContain('No variants yet.');
    await press('Make a variant of what is set now');
    expect(sheet.document.value.variants).toEqual([
      { name: 'Variant 1', changes: { a: '20 mm', b: '2 × a', bolt: 'middle' } },
    ]);
    expect(notice(sheet)).toBe('Made: the variant “Variant 1”. The design is as it was.');
    sheet.setText('a', '30 mm');
    await rest();
    expect(lines()[1]).toBe('double | ✕ stop: 98.9 mm | 70.6 mm −28.3');
    sheet.undo();
    sheet.undo();
    expect(sheet.document.value.variants).toEqual([]);
  });

  test('keeps one in a press, after which nothing differs, and takes that back', async () => {
    const sheet = await open(designWith([LONG]));
    const before = serialise(sheet.document.value);
    await press('Keep: set the design to it Long bolt');
    expect([textAt(sheet.document.value, 'bolt'), textAt(sheet.document.value, 'a')]).toEqual(['long', '25 mm']);
    expect(lines()).toEqual([
      'Result | As set | Long bolt',
      'double | ✕ stop: 95.7 mm | ✕ stop: 95.7 mm no change',
      'Geometric mean | 35.4 mm | 35.4 mm no change',
    ]);
    expect(notice(sheet)).toBe('The design is set to Long bolt now.');
    sheet.undo();
    expect(serialise(sheet.document.value)).toBe(before);
  });

  test('makes one the baseline, removes it, and shows it on the charts', async () => {
    const sheet = await open(designWith([LONG]));
    await press('Make it the baseline Long bolt');
    expect(differencesOf(sheet.document.value).map(({ path, before }) => [path, before])).toEqual([
      ['bolt', 'long'],
      ['a', '25 mm'],
    ]);
    expect(lines()[0]).toBe('Result | Baseline | As set | Long bolt');
    sheet.chartVariant('Long bolt', true);
    expect(sheet.document.value.variants![0]!.on_charts).toBe(true);
    await press('Remove Long bolt');
    expect(sheet.document.value.variants).toBeUndefined();
    expect(notice(sheet)).toBe('Removed: the variant “Long bolt”.');
  });
});

describe('a design that lies elsewhere on the axes of a trial series', () => {
  const sample = 500;
  async function openGrid() {
    const document = designWith([]);
    const sheet = await open(document);
    const leave = sheet.sweeps.watch('grid');
    await rest();
    leave();
    const grid = sheet.sweeps.progress('grid').value!;
    expect(grid.state).toBe('done');
    return { sheet, grid, design: designAt(grid, sample) };
  }

  test('is what its sample says: along every axis, the last fastest', async () => {
    const { grid, design } = await openGrid();
    expect(grid.axes.map(({ values }) => values.length)).toEqual([21, 10, 3, 1]);
    expect(design.map(({ path }) => path)).toEqual(['a', 'b', 'bolt', 'sum.times']);
    // 500 = (16 × 10 + 6) × 3 + 2
    expect(design.map(({ si }, k) => [...grid.axes[k]!.values].indexOf(si))).toEqual([16, 6, 2, 0]);
  });

  test('is taken as a variant that gives what the point says to the digit, and leaves the design', async () => {
    const { sheet, grid, design } = await openGrid();
    const before = sheet.document.value.sheets;
    sheet.taker.variant(design);
    const { variants, sheets } = sheet.document.value;
    expect(sheets).toEqual(before);
    const [{ name, changes }] = variants as [Variant];
    expect(name).toBe('A 42 mm, b 20 mm, bolt long, times twice');
    expect(Object.keys(changes)).toEqual(['a', 'b', 'bolt', 'sum.times']);
    await rest();
    const column = sheet.sweeps.progress('variants').value!.variants!.columns.find((each) => each.name === name)!;
    for (const w of [0, 1]) {
      const point = grid.columns[w]![sample]!;
      if (Number.isNaN(point)) expect(column.values[w]).toBeNaN();
      else expect(column.values[w]).toBeCloseTo(point, 12);
    }
  });

  test('is set in one step, which is taken back in one', async () => {
    const { sheet, grid } = await openGrid();
    const before = serialise(sheet.document.value);
    sheet.taker.set(designAt(grid, 400));
    expect(sheet.document.value.variants).toEqual([]);
    await rest();
    expect(sheet.value('double')).toBeCloseTo(grid.columns[0]![400]!, 12);
    expect(notice(sheet)).toMatch(/^The design is set to a 3.* now\.$/);
    sheet.undo();
    expect(serialise(sheet.document.value)).toBe(before);
  });
});

describe('a variant', () => {
  test('is copied, and added to a design that has one of its name under the next', async () => {
    const sheet = await open(designWith([LONG]), async (text) => void copied.push(text));
    await press('Copy Long bolt');
    expect(readVariants(copied[0]!)).toEqual({ ok: true, variants: [LONG] });
    expect(sheet.addCopied(copied[0]!)).toEqual({ ok: true, message: 'One variant was added.' });
    expect(sheet.document.value.variants!.map(({ name }) => name)).toEqual(['Long bolt', 'Long bolt 2']);
    expect(sheet.addCopied('{}').ok).toBe(false);
  });

  test('is offered as a text where there is no clipboard', async () => {
    const sheet = await open(designWith([LONG]));
    await sheet.copyVariant('Long bolt');
    const { title, text } = sheet.notices.value.at(-1)!;
    expect(title).toBe('The variant Long bolt could not be put on the clipboard.');
    expect(readVariants(text!).ok).toBe(true);
  });

  test('is edited as the design is: a bare number takes the unit of its entry; a name that is taken is refused', async () => {
    const sheet = await open(designWith([LONG, { name: 'Other', changes: {} }]));
    sheet.editVariant('Long bolt', 'a', '1 in');
    sheet.editVariant('Long bolt', 'a', '1.25');
    expect(sheet.document.value.variants![0]!.changes.a).toBe('1.25 in');
    sheet.editVariant('Long bolt', 'bolt', undefined);
    expect(sheet.document.value.variants![0]!.changes).toEqual({ a: '1.25 in' });
    expect(sheet.renameVariant('Long bolt', 'other')).toBe(
      'Another variant is called “Other” already. Choose another name.',
    );
    expect(sheet.renameVariant('Long bolt', 'Slim')).toBeUndefined();
    expect(sheet.document.value.variants![0]!.name).toBe('Slim');
  });

  test('brings a table to a design that has none, in the same step', async () => {
    const bare = slideRule();
    const sheet = await open(bare);
    sheet.makeVariant('a 25 mm', { a: '25 mm' });
    const { variants, sheets } = sheet.document.value;
    expect(variants).toEqual([{ name: 'a 25 mm', changes: { a: '25 mm' } }]);
    expect(sheets[0]!.pieces.at(-1)).toMatchObject({ kind: 'variants', name: 'variants', wanted: ['double'] });
    expect(notice(sheet)).toBe(
      'Made: the variant “a 25 mm”, in a table at the end of this sheet. The design is as it was.',
    );
    sheet.undo();
    expect(serialise(sheet.document.value)).toBe(serialise(bare));
  });
});
