import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { expect, test } from 'vitest';
import { createDesignStore, databaseOpener } from '../../../../workbook/store/keep/index';
import { newBrowser, sheetText } from './pages';

const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;
const one = sheetText('one');
const two = sheetText('two');
const three = sheetText('three');

async function startedPage(browser: ReturnType<typeof newBrowser>, text = one) {
  const page = browser.page();
  const kept = await page.keeper.start();
  if (kept === undefined) page.keeper.startWith(text);
  return { ...page, kept };
}

test('what was changed is there on the next visit, and what only came ready is not kept', async () => {
  const browser = newBrowser();
  const first = await startedPage(browser);
  expect(first.kept).toBeUndefined();
  expect(first.keeper.file.value).toBe('untouched');
  await first.keeper.stored();
  expect(await first.store.designs()).toEqual([]);
  first.keeper.write(two, 'title');
  first.keeper.write(three, 'title');
  await first.keeper.stored();
  expect(await browser.page().keeper.start()).toBe(three);
  expect(await first.store.designs()).toMatchObject([{ title: 'three', text: three }]);
});

test('the design as it came is the first version, and edits gather in the next', async () => {
  const browser = newBrowser();
  const { keeper, store } = await startedPage(browser);
  keeper.write(two, 'span');
  await keeper.stored();
  browser.at += 9 * MINUTE;
  keeper.write(three, 'chord');
  await keeper.stored();
  browser.at += 2 * MINUTE;
  keeper.write(two, 'taken back: chord');
  await keeper.stored();
  const versions = await store.versions(keeper.open.value);
  expect(versions.map(({ says, edits, text }) => ({ says, edits, text }))).toEqual([
    { says: ['taken back: chord'], edits: 1, text: two },
    { says: ['span', 'chord'], edits: 2, text: three },
    { says: ['as it was opened'], edits: 0, text: one },
  ]);
});

test('a version can be named, deleted, and put back', async () => {
  const { keeper, store } = await startedPage(newBrowser());
  keeper.write(two, 'span');
  await keeper.stored();
  const read = () => store.versions(keeper.open.value);
  const [newest, oldest] = await read();
  await store.nameVersion(newest!.id, 'as flown');
  await store.deleteVersion(oldest!.id);
  expect((await read()).map(({ name }) => name)).toEqual(['as flown']);
  await store.restoreVersion(oldest!);
  expect(await read()).toEqual([{ ...newest, name: 'as flown' }, oldest]);
});

test('how the sheet is arranged is kept with the design, and is no version and no change of its file', async () => {
  const { keeper, store } = await startedPage(newBrowser());
  keeper.write(two, 'span');
  keeper.filed(two);
  expect(keeper.file.value).toBe('same');
  keeper.write(three);
  await keeper.stored();
  expect(keeper.file.value).toBe('same');
  expect((await store.versions(keeper.open.value)).map(({ text }) => text)).toEqual([two, one]);
  keeper.write(one, 'chord');
  expect(keeper.file.value).toBe('older');
});

test('a file that was saved is remembered on the next visit', async () => {
  const browser = newBrowser();
  const { keeper } = await startedPage(browser);
  keeper.write(two, 'span');
  await keeper.stored();
  keeper.filed(two);
  await keeper.stored();
  const next = await startedPage(browser);
  expect(next.keeper.file.value).toBe('same');
});

test('another design takes the place of the open one, which stays as it is', async () => {
  const { keeper, store } = await startedPage(newBrowser());
  keeper.write(two, 'span');
  const { from, to } = keeper.begin();
  keeper.write(three, 'opening three');
  await keeper.stored();
  expect((await store.read(from))!.text).toBe(two);
  expect((await store.read(to))!.text).toBe(three);
  keeper.turn(from);
  keeper.write(two, 'taken back: opening three');
  keeper.write(one, 'span');
  await keeper.stored();
  expect((await store.read(from))!.text).toBe(one);
  expect((await store.read(to))!.text).toBe(three);
});

test('a deleted design is not opened, can be brought back, and goes for good after 30 days', async () => {
  const browser = newBrowser();
  const { keeper, store } = await startedPage(browser);
  keeper.write(two, 'span');
  await keeper.stored();
  const id = keeper.open.value;
  await store.markDeleted(id, browser.at);
  expect(await browser.page().keeper.start()).toBeUndefined();
  await store.markDeleted(id, undefined);
  expect(await browser.page().keeper.start()).toBe(two);
  await store.markDeleted(id, browser.at);
  await store.clear(browser.at + 30 * DAY - 1);
  expect(await store.read(id)).toBeDefined();
  await store.clear(browser.at + 30 * DAY);
  expect(await store.read(id)).toBeUndefined();
  expect(await store.versions(id)).toEqual([]);
});

test('a design that is worked on is not deleted, though another page has deleted it', async () => {
  const { keeper, store } = await startedPage(newBrowser());
  keeper.write(two, 'span');
  await keeper.stored();
  await store.markDeleted(keeper.open.value, 1);
  keeper.write(three, 'chord');
  await keeper.stored();
  expect(await store.read(keeper.open.value)).not.toHaveProperty('deleted');
});

test('the sheet that the first edition kept is the first design', async () => {
  const browser = newBrowser();
  const old = await openDB(browser.name, 1, { upgrade: (fresh) => void fresh.createObjectStore('sheets') });
  await old.put('sheets', two, 'open');
  old.close();
  const { keeper, store } = browser.page();
  expect(await keeper.start()).toBe(two);
  expect(await store.designs()).toMatchObject([{ title: 'two', text: two }]);
});

test('a page of the first edition in another tab does not keep this one from opening', async () => {
  const browser = newBrowser();
  const old = await openDB(browser.name, 1, { upgrade: (fresh) => void fresh.createObjectStore('sheets') });
  const { keeper, tell } = browser.page();
  expect(await keeper.start()).toBeUndefined();
  expect(tell.mock.calls).toEqual([
    [
      'An older Tetherwright is open in another tab, so this one keeps nothing. Close the other tab, then load this page again.',
    ],
  ]);
  old.close();
});

const failing = (name: string) => {
  const error = new DOMException('', name);
  return createDesignStore(() => Promise.reject(error));
};

test.each([
  ['SecurityError', 'This browser keeps nothing between visits here. Save the design to a file before you leave.'],
  [
    'QuotaExceededError',
    'The store of this browser is full: the last change is not kept. Save the design to a file before you leave; removing versions, and deleting designs for good, makes room.',
  ],
  [
    'VersionError',
    'A newer Tetherwright is open in another tab, so this one keeps nothing any more. Save the design to a file, then load this page again.',
  ],
])('a store that fails with %s is said once, and as long as it lasts', async (name, sentence) => {
  const { keeper, tell } = newBrowser().page({ store: failing(name) });
  expect(await keeper.start()).toBeUndefined();
  keeper.startWith(one);
  keeper.write(two, 'span');
  await keeper.stored();
  keeper.write(three, 'span');
  await keeper.stored();
  expect(tell.mock.calls).toEqual([[sentence]]);
  expect(keeper.keeping.value).toEqual({ kind: 'refused', sentence });
});

test('what could not be written is written, with all its changes, as soon as there is room', async () => {
  const browser = newBrowser();
  const real = createDesignStore(databaseOpener(browser.name));
  let full = true;
  const { keeper } = browser.page({
    store: {
      ...real,
      write: (write) => (full ? Promise.reject(new DOMException('', 'QuotaExceededError')) : real.write(write)),
    },
  });
  await keeper.start();
  keeper.startWith(one);
  keeper.write(two, 'span');
  await keeper.stored();
  keeper.write(three, 'chord');
  await keeper.stored();
  expect(keeper.keeping.value.kind).toBe('refused');
  full = false;
  keeper.retry();
  await keeper.stored();
  expect(keeper.keeping.value.kind).toBe('kept');
  expect(await real.versions(keeper.open.value)).toMatchObject([
    { text: three, says: ['span', 'chord'], edits: 2 },
    { text: one },
  ]);
});

test('a store that was emptied meanwhile is said, and what is open is kept anew', async () => {
  const browser = newBrowser();
  const { keeper, store, tell } = await startedPage(browser);
  keeper.write(two, 'span');
  await keeper.stored();
  await browser.forget();
  keeper.write(three, 'span');
  await keeper.stored();
  expect(tell.mock.calls).toEqual([
    [
      'The browser has emptied its store: other designs and versions that were kept here are gone. What is open is kept anew. Save it to a file.',
    ],
  ]);
  expect(await store.designs()).toMatchObject([{ text: three }]);
  keeper.write(one, 'span');
  await keeper.stored();
  expect(tell).toHaveBeenCalledOnce();
});
