import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import { newBrowser, sheetText } from './pages';

const one = sheetText('one');
const two = sheetText('two');
const three = sheetText('three');
const later = (time: number) => new Promise((resolve) => setTimeout(resolve, time));

async function twoPages(options: Parameters<typeof newBrowser>[0] = {}, deaf = false) {
  const browser = newBrowser(options);
  const first = browser.page({ deaf });
  await first.keeper.start();
  first.keeper.startWith(one);
  first.keeper.write(two, 'span');
  await first.keeper.stored();
  const second = browser.page({ deaf });
  expect(await second.keeper.start()).toBe(two);
  const stored = async () => (await first.store.read(first.keeper.open.value))!.text;
  return { first, second, stored };
}

test('the second page of a design is told at once and changes nothing', async () => {
  const { second, stored } = await twoPages();
  expect(second.keeper.keeping.value).toEqual({ kind: 'elsewhere', unkept: false });
  expect(second.keeper.mayChange()).toBe(false);
  second.keeper.write(three, 'span');
  await second.keeper.stored();
  expect(await stored()).toBe(two);
});

test('a page that only looks shows what the other one writes', async () => {
  const { first, second } = await twoPages();
  first.keeper.write(three, 'span');
  await first.keeper.stored();
  await expect.poll(() => second.show.mock.calls).toEqual([[three, false]]);
});

test('a page that takes over has all that the other one had, which looks from then on', async () => {
  const { first, second, stored } = await twoPages();
  first.keeper.write(three, 'span');
  await second.keeper.takeOver();
  expect(second.keeper.keeping.value.kind).toBe('kept');
  expect(second.show.mock.calls.at(-1)![0]).toBe(three);
  expect(first.keeper.keeping.value).toEqual({ kind: 'elsewhere', unkept: false });
  second.keeper.write(one, 'span');
  await second.keeper.stored();
  expect(await stored()).toBe(one);
  await expect.poll(() => first.show.mock.calls.at(-1)).toEqual([one, false]);
  await first.keeper.takeOver();
  expect([first, second].map(({ keeper }) => keeper.keeping.value.kind)).toEqual(['kept', 'elsewhere']);
});

test('a page that does not answer loses the design, and is told', async () => {
  const { first, second, stored } = await twoPages({}, true);
  await second.keeper.takeOver();
  expect(first.keeper.keeping.value).toEqual({ kind: 'elsewhere', unkept: false });
  first.keeper.write(three, 'a hand that was moving it');
  expect(first.keeper.keeping.value).toEqual({ kind: 'elsewhere', unkept: true });
  expect(await stored()).toBe(two);
});

test('a copy is a design of its own, on which both pages work', async () => {
  const { first, second, stored } = await twoPages();
  const { to } = second.keeper.begin();
  second.keeper.write(three, 'opening a copy');
  await second.keeper.stored();
  expect(second.keeper.keeping.value.kind).toBe('kept');
  expect((await second.store.read(to))!.text).toBe(three);
  first.keeper.write(one, 'span');
  await first.keeper.stored();
  expect(await stored()).toBe(one);
});

test('a design that the other page has left is free', async () => {
  const { first, second } = await twoPages();
  const { from } = first.keeper.begin();
  await later(20);
  second.keeper.begin();
  second.keeper.turn(from);
  await expect.poll(() => second.keeper.keeping.value.kind).toBe('kept');
});

test('without locks the revision keeps the pages apart: the later one is told and overwrites nothing', async () => {
  const { first, second, stored } = await twoPages({ locks: false });
  first.keeper.write(three, 'span');
  await first.keeper.stored();
  second.keeper.write(one, 'chord');
  await second.keeper.stored();
  expect(await stored()).toBe(three);
  expect(second.keeper.keeping.value).toEqual({ kind: 'elsewhere', unkept: true });
  // What stands there and is kept nowhere is put under what the other page has, to be taken back.
  await second.keeper.takeOver();
  expect(second.show.mock.calls.at(-1)).toEqual([three, true]);
  second.keeper.write(one, 'taken back');
  await second.keeper.stored();
  expect(await stored()).toBe(one);
});
