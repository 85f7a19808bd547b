import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { axeOn } from './axe';
import { openSheet, PHONE, type Sheet, settled, showSheet, startBrowser } from './sheet';

let sheet: Sheet;
let page: Page;
beforeAll(async () => {
  sheet = await openSheet(await startBrowser(), PHONE);
  page = sheet.page;
});
afterAll(() => sheet.close());

const wide = (): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth);

test('a chart of a result is made in six presses by a finger, and Undo takes it off again', async () => {
  const pieces = await page.locator('article.cell').count();
  let presses = 0;
  const press = async (what: ReturnType<Page['locator']>): Promise<void> => {
    presses++;
    await what.tap();
  };
  await press(page.locator('.figures').getByRole('button', { name: 'Line pull: commands' }));
  await press(page.getByRole('menuitem', { name: 'Make a chart of this' }));
  const dialog = page.getByRole('dialog', { name: 'Make a chart of Line pull' });
  const options = dialog.getByRole('option');
  await options.first().waitFor();
  for (const box of await Promise.all((await options.all()).slice(0, 5).map((option) => option.boundingBox()))) {
    expect(box!.height).toBeGreaterThanOrEqual(44);
  }
  const { violations } = await axeOn(page).include('dialog').analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.target.join(' ')}`)).toEqual([]);
  await press(dialog.getByRole('option', { name: 'tip weight, g' }));
  await press(dialog.getByLabel('A line for each of what?'));
  await press(dialog.getByRole('option', { name: 'Stabiliser stock' }));
  await expect.poll(() => dialog.textContent()).toContain('Line pull against tip weight, for each stabiliser stock');
  await press(dialog.getByRole('button', { name: 'Make the chart' }));
  const chart = page.locator('article').filter({ hasText: 'Line pull against tip weight, for each stabiliser stock' });
  await chart.locator('svg').first().waitFor();
  expect(presses).toBeLessThanOrEqual(6);
  expect(await chart.evaluate((element) => element === document.activeElement)).toBe(true);
  expect(await wide()).toBeLessThanOrEqual(PHONE.width);
  await page.getByRole('button', { name: 'Take it back' }).tap();
  await expect.poll(() => page.locator('article.cell').count()).toBe(pieces);
  await settled(page);
});

test('a number that is typed becomes a variable where it stands', async () => {
  await showSheet(page, 'Model');
  await page.getByRole('button', { name: 'open Tail' }).tap();
  const tail = page.locator('#cell-tail');
  await tail.getByRole('button', { name: 'Stabiliser span: commands' }).tap();
  await page.getByRole('menuitem', { name: 'Make this a variable' }).tap();
  await expect
    .poll(() => page.locator('.notices.done').textContent())
    .toMatch(/slides now, from .* to .*, under “.*”\./);
  expect(await page.evaluate(() => document.activeElement?.closest('article')?.className)).toContain('cell-variables');
  await page.getByRole('button', { name: 'Take it back' }).tap();
  await settled(page);
  expect(sheet.troubles).toEqual([]);
});
