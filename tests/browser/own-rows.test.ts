import type { Browser, Page } from 'playwright-core';
import { beforeAll, beforeEach, expect, test } from 'vitest';
import {
  DESK,
  figure,
  openSheet,
  PHONE,
  pickFrom,
  type Sheet,
  settled,
  showSheet,
  startBrowser,
  stored,
} from './sheet';

let browser: Browser;
let sheet: Sheet;
let page: Page;
beforeAll(async () => {
  browser = await startBrowser();
});
beforeEach(async () => {
  sheet = await openSheet(browser, DESK, { anew: true });
  page = sheet.page;
  return () => sheet.close();
});

async function openBearers(): Promise<void> {
  await showSheet(page, 'Weights');
  await page.locator('#cell-parts').locator('.fold[aria-expanded="false"]').click();
  await page.locator('tr[data-part="bearers"]').getByRole('button').first().click();
}

test('an own material is added where it is picked, weighs the part, is kept, and cannot go while it is used', async () => {
  await openBearers();
  const before = await figure(page, 'parts.mass');
  const own = page.locator('.own-rows').first();
  await own.locator('summary').click();
  await own.getByRole('button', { name: 'Add an own material' }).click();
  await own.getByRole('button', { name: 'Add this material' }).click();
  expect(await own.getByRole('alert').textContent()).toMatch(
    /The title is blank\. Write what this material is called\.\s*Density is blank\. Type it in kg\/m³ or with another unit\.\s*The source is blank\./,
  );
  await own.getByLabel('Title', { exact: true }).fill('Lead-like wood');
  await own.getByLabel('Density, kg/m³').fill('5 g/cm³');
  await own.getByLabel('Source', { exact: true }).fill('scale and ruler');
  await own.getByRole('button', { name: 'Add this material' }).click();
  await settled(page);
  expect(await page.locator('input[data-path="parts.bearers.material"]').inputValue()).toBe('Lead-like wood');
  await expect.poll(() => figure(page, 'parts.mass')).not.toBe(before);
  expect(await page.locator('.row-told').first().textContent()).toBe(
    'Own material. Density 5000\u00a0kg/m³, Young’s modulus not known. Source: scale and ruler',
  );
  await stored(page);
  await page.reload();
  await settled(page);
  await showSheet(page, 'Weights');
  await page.locator('tr[data-part="bearers"]').getByRole('button').first().click();
  await own.locator('summary').click();
  const row = own.getByRole('region', { name: 'Own material Lead-like wood' });
  await row.getByRole('button', { name: 'Remove' }).click();
  expect(await row.getByRole('alert').textContent()).toMatch(/is used in one place\. Put something else there first:/);
  await row.getByRole('button', { name: 'parts.bearers.material' }).click();
  await pickFrom(page.locator('input[data-path="parts.bearers.material"]'), 'Maple, sugar');
  await row.getByRole('button', { name: 'Remove' }).click();
  await row.waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Undo' }).click();
  await row.waitFor();
  expect(sheet.troubles).toEqual([]);
});

test('on a phone the form of an own row fits the window', async () => {
  await sheet.close();
  sheet = await openSheet(browser, PHONE, { anew: true });
  page = sheet.page;
  await openBearers();
  const own = page.locator('.own-rows').first();
  await own.locator('summary').click();
  await own.getByRole('button', { name: 'Add an own material' }).click();
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
});
