import type { Browser, Locator, Page } from 'playwright-core';
import { beforeAll, beforeEach, expect, test } from 'vitest';
import { figure, openSheet, type Sheet, settled, showSheet, startBrowser } from './sheet';

let browser: Browser;
let sheet: Sheet;
let page: Page;
beforeAll(async () => {
  browser = await startBrowser();
});
beforeEach(async () => {
  sheet = await openSheet(browser);
  page = sheet.page;
  return () => sheet.close();
});

const button = (name: string): Locator => page.getByRole('button', { name, exact: true });
const change = async (path: string): Promise<string> =>
  ((await page.locator(`[data-change="${path}"]`).textContent()) ?? '').trim();
const type = async (path: string, text: string): Promise<void> => {
  const field = page.locator(`[data-text="${path}"]`).first();
  await field.fill(text);
  await field.press('Enter');
  await settled(page);
};
const differing = (): Promise<(string | null)[]> =>
  page.locator('[data-difference]').evaluateAll((lines) => lines.map((line) => line.getAttribute('data-difference')));

test('the design is taken as the baseline, compared line by line, and put back one line or all', async () => {
  await button('Take this design as the baseline').click();
  await expect.poll(() => change('parts.mass')).toBe('0');
  const before = { mass: await figure(page, 'parts.mass'), cg: await figure(page, 'balance.cg_x') };
  await type('tip_weight', '31 g');
  await type('engine_station', '-140 mm');
  await expect.poll(() => change('parts.mass')).toBe('+10');

  await page.getByText('What differs from the baseline').click();
  await expect.poll(differing).toEqual(['tip_weight', 'engine_station']);
  const line = page.locator('[data-difference="tip_weight"]');
  expect(await line.locator('.difference-texts').textContent()).toBe('then 21 g → , now 31 g');
  await line.getByRole('button', { name: /^Put back/ }).press('Enter');
  await expect.poll(differing).toEqual(['engine_station']);
  await expect.poll(() => figure(page, 'parts.mass')).toBe(before.mass);
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('What differs from the baseline');

  await button('Return to the baseline').click();
  await expect.poll(() => figure(page, 'balance.cg_x')).toBe(before.cg);
  // One step back: the engine stands where it stood before the return, and before that the tip weight.
  await button('Undo').click();
  await expect.poll(differing).toEqual(['engine_station']);
  await button('Undo').click();
  await expect.poll(() => change('parts.mass')).toBe('+10');

  await button('Remove the baseline').click();
  await expect.poll(() => change('parts.mass')).toBe('');
  expect(await button('Return to the baseline').count()).toBe(0);
  await button('Undo').click();
  await expect.poll(() => change('parts.mass')).toBe('+10');
  expect(sheet.troubles).toEqual([]);
});

test('a part that is added shows as a change', async () => {
  await button('Take this design as the baseline').click();
  await expect.poll(() => change('parts.mass')).toBe('0');
  await showSheet(page, 'Weights');
  await page.locator('#cell-parts').locator('.fold[aria-expanded="false"]').click();
  await page.getByText('What is often forgotten').click();
  await button('Add Fuel tubing and filter').click();
  await expect.poll(() => change('parts.mass')).toBe('+5');
});
