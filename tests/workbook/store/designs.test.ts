import 'fake-indexeddb/auto';
import { expect, test, vi } from 'vitest';
import type { Document, EngineService, FirstDesignAnswer, HangarService } from '../../../engine/index';
import { serialise, textAt } from '../../../engine/index';
import { createDesigns } from '../../../workbook/store/designs';
import { createSheet } from '../../../workbook/store/sheet';
import { newBrowser } from './keep/pages';
import { smallSheet } from './small-sheet';

/** An engine that answers nothing but first designs: what is shown doesn't matter here. */
const silent = new Proxy({} as EngineService, { get: () => () => new Promise(() => {}) });

async function open(browser = newBrowser()) {
  const page = browser.page();
  const kept = await page.keeper.start();
  if (kept === undefined) page.keeper.startWith(serialise(smallSheet));
  const sheet = createSheet(smallSheet, {
    engine: silent,
    keep: page.keeper,
    loadDemo: async () => '',
    frozen: true,
    now: () => 0,
  });
  const firstDesign = vi.fn(async (): Promise<FirstDesignAnswer> => ({ ok: true, document: other('First design') }));
  const none = async () => undefined;
  const take = vi.fn<HangarService['take']>(async () => ({ ok: false, message: 'That cannot be taken.' }));
  const designs = createDesigns(sheet, page.keeper, {
    engine: { firstDesign, take, tellDesign: none, tellApart: none, offers: none },
    firstVisit: kept === undefined,
    now: () => browser.at,
  });
  const tip = () => textAt(sheet.document.value, 'tip_weight');
  const listed = async () => {
    await designs.readList();
    return designs.list.value!;
  };
  return { sheet, designs, firstDesign, take, tip, listed, ...page };
}
const other = (title: string): Document => ({ ...smallSheet, title });
const file = (document: Document) => new File([serialise(document)], 'other.tetherwright.json');

test('a version is looked at, and returned to as one edit that begins a version of its own', async () => {
  const { sheet, designs, tip, keeper } = await open();
  sheet.setText('tip_weight', '30 g');
  await designs.readVersions();
  const [newest, oldest] = designs.versions.value!;
  expect([newest!.says, oldest!.says]).toEqual([['tip_weight'], ['as it was opened']]);
  designs.look(oldest!);
  expect([tip(), sheet.looking.value?.at]).toEqual(['21 g', expect.stringMatching(/^the version of /)]);
  sheet.setText('tip_weight', '5 g');
  expect([tip(), sheet.refusals.value]).toEqual(['21 g', 1]);
  designs.returnTo(oldest!);
  expect([tip(), sheet.looking.value]).toEqual(['21 g', undefined]);
  expect(sheet.undoSays.value).toMatch(/^return to the version of /);
  await keeper.stored();
  await designs.readVersions();
  expect(designs.versions.value).toHaveLength(3);
  sheet.undo();
  expect(tip()).toBe('30 g');
});

test('a file that is opened is a design of its own; the one before it stays, and opening it again makes no second one', async () => {
  const { sheet, designs, listed } = await open();
  sheet.setText('tip_weight', '30 g');
  await sheet.openFile(file(other('Other')));
  expect(designs.file.value).toBe('same');
  expect((await listed()).map((each) => each.title).sort()).toEqual(['Other', 'Small sheet']);
  sheet.undo();
  await sheet.openFile(file(other('Other')));
  expect(await listed()).toHaveLength(2);
  expect(sheet.document.value.title).toBe('Other');
});

test('a sheet is copied into another design, which is opened with it, and Undo goes back to the one before', async () => {
  const { sheet, designs, listed, keeper } = await open();
  sheet.setText('tip_weight', '30 g');
  await sheet.openFile(file({ ...other('Other'), sheets: [{ id: 's1', title: 'Model', pieces: [] }] }));
  const [was, into] = ['Small sheet', 'Other'];
  designs.openDesign((await listed()).find((each) => each.title === was)!);
  const kept = (await listed()).find((each) => each.title === into)!;
  designs.copySheetTo(kept, 's1');
  expect([sheet.document.value.title, keeper.open.value]).toEqual([into, kept.id]);
  expect(sheet.sheetList.value.map(({ title, pieces }) => [title, pieces])).toEqual([
    ['Model', 0],
    ['Decide', 2],
  ]);
  expect(sheet.shownSheet.value.title).toBe('Decide');
  // Into the open one itself under names of its own.
  designs.copySheetTo(kept, sheet.shownSheet.value.id);
  expect(sheet.shownSheet.value.pieces.map((piece) => piece.name)).toEqual(['words_2', 'set_these_2']);
  sheet.undo();
  sheet.undo();
  expect(sheet.document.value.title).toBe(was);
});

test('a variant is copied into another design, which is opened with it and a table of variants, and Undo goes back', async () => {
  const { sheet, designs, listed, keeper } = await open();
  sheet.makeVariant('Light tip', { tip_weight: '5 g' });
  const variants = { ...other('Other'), variants: [{ name: 'Light tip', changes: { tip_weight: '7 g' } }] };
  await sheet.openFile(file(variants));
  designs.openDesign((await listed()).find((each) => each.title === 'Small sheet')!);
  const kept = (await listed()).find((each) => each.title === 'Other')!;
  designs.copyVariantTo(kept, 'Gone');
  expect(sheet.document.value.title).toBe('Small sheet');
  designs.copyVariantTo(kept, 'Light tip');
  expect([sheet.document.value.title, keeper.open.value]).toEqual(['Other', kept.id]);
  // Its own of that name stays.
  expect(sheet.document.value.variants).toEqual([
    { name: 'Light tip', changes: { tip_weight: '7 g' } },
    { name: 'Light tip 2', changes: { tip_weight: '5 g' } },
  ]);
  expect(sheet.shownSheet.value.pieces.map(({ kind }) => kind)).toContain('variants');
  sheet.undo();
  expect(sheet.document.value.title).toBe('Small sheet');
});

test('a piece of another design comes in as one edit of the open one; what cannot come is said', async () => {
  const { sheet, designs, take, listed } = await open();
  sheet.setText('tip_weight', '30 g');
  await sheet.openFile(file(other('Other')));
  const small = (await listed()).find((each) => each.title === 'Small sheet')!;
  const piece = { of: 'lines', name: 'lines', title: 'Lines', says: 'line set' } as const;
  await designs.take(small, piece);
  expect(sheet.notices.value).toEqual([{ title: 'That cannot be taken.', sentences: [] }]);
  take.mockImplementationOnce(async (document) => ({
    ok: true,
    document: { ...document, drawn: 'With lines' },
    sheet: document.sheets[0]!.id,
    done: 'The lines are here now.',
  }));
  await designs.take(small, piece);
  expect([sheet.document.value.title, sheet.document.value.drawn]).toEqual(['Other', 'With lines']);
  expect(sheet.undoSays.value).toBe('“Lines” of Small sheet');
  expect(sheet.notices.value.at(-1)).toMatchObject({ title: 'The lines are here now.', after: sheet.document.value });
  sheet.undo();
  expect(sheet.document.value.drawn).toBe(smallSheet.drawn);
  // An edit while the engine works on it is not lost.
  take.mockImplementationOnce(async (document) => {
    sheet.setText('tip_weight', '12 g');
    return { ok: true, document, sheet: '', done: '' };
  });
  await designs.take(small, piece);
  expect(sheet.notices.value.at(-1)!.title).toBe(
    'The design was changed while the piece was being taken. Nothing was taken: take it once more.',
  );
});

test('a design is opened from the list with what was kept of it, and Undo goes back to the one before', async () => {
  const { sheet, designs, tip, listed, keeper } = await open();
  sheet.setText('tip_weight', '30 g');
  await sheet.openFile(file(other('Other')));
  const small = (await listed()).find((each) => each.title === 'Small sheet')!;
  designs.openDesign(small);
  expect([sheet.document.value.title, tip(), keeper.open.value]).toEqual(['Small sheet', '30 g', small.id]);
  sheet.setText('tip_weight', '31 g');
  sheet.undo();
  sheet.undo();
  expect(sheet.document.value.title).toBe('Other');
  sheet.setText('tip_weight', '9 g');
  const all = await listed();
  expect(all.map((each) => [each.title, textAt(JSON.parse(each.text), 'tip_weight')]).sort()).toEqual([
    ['Other', '9 g'],
    ['Small sheet', '30 g'],
  ]);
});

test('a copy is named as one; a deleted design is listed as such and comes back', async () => {
  const { sheet, designs, listed } = await open();
  sheet.setText('tip_weight', '30 g');
  designs.copyDesign((await listed())[0]!);
  expect(sheet.document.value.title).toBe('Small sheet, copy');
  const small = (await listed()).find((each) => each.title === 'Small sheet')!;
  await designs.deleteDesign(small);
  const found = () => designs.list.value!.find((each) => each.id === small.id)!.deleted;
  expect(found()).toBeTypeOf('number');
  await designs.bringBack(small);
  expect(found()).toBeUndefined();
  await designs.deleteDesign(small);
  await designs.removeDesign(small);
  expect(designs.list.value!.map((each) => each.title)).toEqual(['Small sheet, copy']);
});

test('a version is named, deleted and brought back', async () => {
  const { sheet, designs } = await open();
  sheet.setText('tip_weight', '30 g');
  await designs.readVersions();
  const [newest, oldest] = designs.versions.value!;
  await designs.nameVersion(newest!, ' as flown ');
  expect(designs.versions.value![0]!.name).toBe('as flown');
  const bringBack = await designs.deleteVersion(oldest!);
  expect(designs.versions.value).toHaveLength(1);
  await bringBack();
  expect(designs.versions.value).toHaveLength(2);
  await designs.nameVersion(newest!, '  ');
  expect(designs.versions.value![0]!.name).toBeUndefined();
});

test('a text in the store that cannot be read is said, kept, and can be saved as it is', async () => {
  const { sheet, designs, listed } = await open();
  sheet.setText('tip_weight', '30 g');
  const [design] = await listed();
  designs.copyDesign({ ...design!, text: '{ "format"' });
  expect(sheet.document.value.title).toBe('Small sheet');
  expect(sheet.notices.value).toMatchObject([
    { title: expect.stringMatching(/^Small sheet: This file is broken at line 1/), text: '{ "format"' },
  ]);
});

test('a first design is opened as a design of its own; a form that is refused opens nothing', async () => {
  const { sheet, designs, firstDesign, listed } = await open();
  const form = {
    title: '',
    drive: 'engine',
    span: '',
    chord: '',
    size: '',
    line_length: '',
    weight: '',
    propeller: '',
    line_diameter: '',
    line_count: '',
    lap_time: '',
    tail_stock: 'balsa',
  } as const;
  const problem = { field: 'span', message: 'Span: nothing is typed.' } as const;
  firstDesign.mockResolvedValueOnce({ ok: false, problems: [problem] });
  expect(await designs.firstDesign(form)).toEqual([problem]);
  expect(sheet.document.value).toBe(smallSheet);
  expect(await designs.firstDesign(form)).toEqual([]);
  expect(sheet.document.value.title).toBe('First design');
  expect((await listed()).map((each) => each.title)).toEqual(['First design']);
  sheet.undo();
  expect(sheet.document.value).toEqual(smallSheet);
});

test('what is being typed belongs to the design in which it is typed', async () => {
  const { sheet, listed } = await open();
  sheet.setText('line_length', '19 m');
  sheet.typing(() => sheet.setText('tip_weight', '44 g'));
  await sheet.openFile(file(other('Other')));
  const texts = (await listed()).map((each) => [each.title, textAt(JSON.parse(each.text), 'tip_weight')]);
  expect(texts.sort()).toEqual([
    ['Other', '21 g'],
    ['Small sheet', '44 g'],
  ]);
});
