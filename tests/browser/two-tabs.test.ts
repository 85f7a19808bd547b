import type { Page } from 'playwright-core';
import { beforeAll, expect, inject, test } from 'vitest';
import { axeOn } from './axe';
import { DESK, openSheet, type Sheet, settled, startBrowser, stored } from './sheet';

let sheet: Sheet;
let first: Page;
let second: Page;
/** The tests follow one another in two tabs, as somebody would go on. */
beforeAll(async () => {
  sheet = await openSheet(await startBrowser(), DESK, { anew: true });
  first = sheet.page;
  await type(first, '33 g');
  await first.locator('[data-keeping="kept"]').waitFor();
  second = await anotherTab();
  return () => sheet.close();
});

const tip = (page: Page) => page.locator('[data-text="tip_weight"]').first();
const tipOf = (page: Page): Promise<string> => tip(page).evaluate(textOf);
const banner = (page: Page) => page.getByRole('alert', { name: 'Only to be looked at' });
const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

const textOf = (field: Element): string =>
  field instanceof HTMLInputElement ? field.value : (field.textContent ?? '');

async function type(page: Page, text: string): Promise<void> {
  const field = tip(page);
  await field.fill(text);
  await field.press('Enter');
  await settled(page);
}

async function anotherTab(): Promise<Page> {
  const tab = await sheet.context.newPage();
  await tab.goto(inject('address'));
  await settled(tab);
  return tab;
}

test('the second tab is told at once, shows the design as it is, and changes nothing', async () => {
  await banner(second).getByText('This design is open in another tab, and is worked on there.').waitFor();
  expect(await tipOf(second)).toBe('33 g');
  await type(second, '44 g');
  expect(await tipOf(second)).toBe('33 g');
  expect(await banner(second).evaluate((element) => element === document.activeElement)).toBe(true);
  const { violations } = await axeOn(second).include('[role="alert"]').analyze();
  expect(violations.filter(({ impact }) => impact === 'serious' || impact === 'critical')).toEqual([]);
  // It follows the tab in which the design is worked on.
  await type(first, '35 g');
  await expect.poll(() => tipOf(second)).toBe('35 g');
  expect(sheet.troubles).toEqual([]);
});

test('the second tab takes over, and the first one looks and can take it back', async () => {
  await press(second, 'Work on it here');
  await expect.poll(() => banner(second).count()).toBe(0);
  await banner(first).waitFor();
  await type(second, '36 g');
  await expect.poll(() => tipOf(first)).toBe('36 g');
  await press(first, 'Work on it here');
  await banner(second).waitFor();
  await expect.poll(() => banner(first).count()).toBe(0);
});

test('the second tab works on a copy, and each keeps its own', async () => {
  await press(second, 'Work on a copy');
  await expect.poll(() => banner(second).count()).toBe(0);
  await type(second, '40 g');
  await type(first, '41 g');
  for (const page of [first, second]) {
    await stored(page);
    await page.reload();
  }
  await settled(first);
  await settled(second);
  expect([await tipOf(first), await tipOf(second)]).toEqual(['41 g', '40 g']);
  expect(await second.getByRole('heading', { level: 1 }).textContent()).toMatch(/, copy$/);
});

test('a tab that is closed leaves its design to the next one', async () => {
  await second.close();
  const next = await anotherTab();
  expect(await banner(next).count()).toBe(0);
  expect(await tipOf(next)).toBe('40 g');
});
