import 'fake-indexeddb/auto';
import { afterEach, expect, test, vi } from 'vitest';
import { type Document, type EngineService, openDesigns, serialise, serialiseDesigns } from '../../../engine/index';
import { createDesigns } from '../../../workbook/store/designs';
import { createSheet } from '../../../workbook/store/sheet';
import { takenWords } from '../../../workbook/store/taken-words';
import { newBrowser } from './keep/pages';
import { smallSheet } from './small-sheet';

const silent = new Proxy({} as EngineService, { get: () => () => new Promise(() => {}) });
const saved = vi.hoisted(() => vi.fn<(text: string, name: string) => void>());
vi.mock('../../../workbook/store/files', async (original) => ({
  ...(await original<typeof import('../../../workbook/store/files')>()),
  saveText: saved,
}));
afterEach(() => saved.mockReset());

async function open() {
  const browser = newBrowser();
  const { keeper } = browser.page();
  await keeper.start();
  keeper.startWith(serialise(smallSheet));
  const sheet = createSheet(smallSheet, {
    engine: silent,
    keep: keeper,
    loadDemo: async () => '',
    frozen: true,
    now: () => 0,
  });
  const none = async () => undefined;
  const refuse = async () => ({ ok: false, message: 'Nothing was taken.' }) as const;
  const firstDesign = async () => ({ ok: false, problems: [] }) as const;
  const designs = createDesigns(sheet, keeper, {
    engine: { firstDesign, tellDesign: none, tellApart: none, offers: none, take: refuse },
    firstVisit: true,
    now: () => browser.at,
  });
  const titles = async () => {
    await designs.readList();
    return designs.list.value!.map(({ title }) => title).sort();
  };
  const read = (documents: readonly Document[]) =>
    sheet.openFile(new File([serialiseDesigns(documents)], 'hangar.tetherwright.json'));
  return { sheet, designs, keeper, titles, read };
}
const called = (title: string, drawn = ''): Document => ({ ...smallSheet, title, drawn });

test('a file with several designs adds those that are new, knows those that are here, and keeps others of their titles apart', async () => {
  const { sheet, titles, read, designs } = await open();
  sheet.setText('tip_weight', '30 g');
  const mine = sheet.document.value;
  await read([called('Owl'), called('Heron'), mine, called('small sheet', 'By another')]);
  expect(await titles()).toEqual(['Heron', 'Owl', 'Small sheet', 'small sheet, 2']);
  expect(sheet.document.value).toBe(mine);
  expect(sheet.notices.value).toEqual([
    {
      good: true,
      title:
        'hangar.tetherwright.json, 4 designs: 3 are now on this machine, 1 was here already. Nothing was overwritten; “Open” lists them.',
      sentences: ['“small sheet” of the file differs from another of that title, and is kept as “small sheet, 2”.'],
    },
  ]);
  // Once more all of them are here, the one under its new title too.
  await read([called('Owl'), called('Heron'), mine, called('small sheet', 'By another')]);
  expect(await titles()).toHaveLength(4);
  expect(sheet.notices.value[0]!.title).toBe(
    'hangar.tetherwright.json, 4 designs: 4 were here already. Nothing was overwritten; “Open” lists them.',
  );
  // What was deleted here comes anew.
  await designs.deleteDesign(designs.list.value!.find(({ title }) => title === 'Owl')!);
  await read([called('Owl')]);
  expect(await titles()).toEqual(['Heron', 'Owl', 'Owl', 'Small sheet', 'small sheet, 2']);
});

test('two of one title in a file are kept apart; two that are the same come once', async () => {
  const { titles, read } = await open();
  await read([called('Owl'), called('Owl', 'By another'), called('Owl'), called(''), called('', 'By another')]);
  expect(await titles()).toEqual(['', 'Owl', 'Owl, 2', 'Untitled design, 2']);
});

test('a file in which one design is wrong adds none', async () => {
  const { sheet, titles } = await open();
  const text = serialiseDesigns([called('Owl'), called('Heron')]).replace('"title": "Heron"', '"title": 3');
  await sheet.openFile(new File([text], 'hangar.tetherwright.json'));
  expect(await titles()).toEqual([]);
  expect(sheet.notices.value[0]!.title).toMatch(/^hangar\.tetherwright\.json: .+ designs\[1\]\.title: expected a text/);
});

test('what could not be kept is counted', () => {
  expect(takenWords('a.json', 2, [{ as: 'new', document: smallSheet, title: 'Small sheet' }]).title).toBe(
    'a.json, 2 designs: 1 is now on this machine, 1 could not be kept. Nothing was overwritten; “Open” lists them.',
  );
});

test('chosen designs are saved as one file, which is then a file of each', async () => {
  const { sheet, designs, titles, read } = await open();
  sheet.setText('tip_weight', '30 g');
  await read([called('Owl'), called('Heron')]);
  await titles();
  const ids = designs.list.value!.filter(({ title }) => title !== 'Heron').map(({ id }) => id);
  expect(await designs.saveTogether(ids)).toBeUndefined();
  const [text, name] = saved.mock.calls[0]!;
  expect(name).toBe('2-designs.tetherwright.json');
  const opened = openDesigns(text);
  expect('designs' in opened && opened.designs.map(({ title }) => title).sort()).toEqual(['Owl', 'Small sheet']);
  expect(designs.file.value).toBe('same');
});
