import type { Browser, Page } from 'playwright-core';
import { beforeAll, beforeEach, expect, test } from 'vitest';
import { compute } from './compute';
import { QUERN } from './designs';
import { figure, openSheet, type Sheet, settled, slide, startBrowser } from './sheet';

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

test('the demo says that it is invented', async () => {
  expect(await page.locator('body').textContent()).toMatch(/invented/i);
});

test('another material for the tail changes weight and CG, as the command line says', async () => {
  const choice = page
    .locator('fieldset.choice')
    .filter({ has: page.getByText('stabiliser', { exact: false }) })
    .first();
  const path = await choice.getAttribute('data-path');
  const before = { mass: await figure(page, 'parts.mass'), cg: await figure(page, 'balance.cg_x') };
  const other = choice.locator('label.option:not(.picked)').first();
  const option = await other.locator('input').getAttribute('value');
  await other.click();
  await expect.poll(() => figure(page, 'parts.mass')).not.toBe(before.mass);
  await settled(page);
  const after = { mass: await figure(page, 'parts.mass'), cg: await figure(page, 'balance.cg_x') };
  expect(after.cg).not.toBe(before.cg);
  const answer = await compute(QUERN, '--set', `${path}=${option}`, '--get', 'parts.mass', 'balance.cg_x');
  expect(answer).toContain(after.mass);
  expect(answer).toContain(after.cg);
});

test('a fault is told as a sentence at its place, and the sheet counts it', async () => {
  const text = page.locator('[data-text="engine_station"]');
  await text.fill('3 g');
  await text.press('Enter');
  await page.locator('[data-state="fault"]').waitFor();
  await expect
    .poll(() => page.locator('[data-fault="engine_station"]').textContent())
    .toBe('3\u00a0g is a mass; here a length is wanted. Write a length, such as 10\u00a0mm.');
  await page.getByRole('button', { name: 'Undo' }).click();
  await settled(page);
});

test('the slide moves by keys', async () => {
  const engine = slide(page, 'engine_station');
  const before = { station: await engine.inputValue(), cg: await figure(page, 'balance.cg_x') };
  await engine.focus();
  for (let k = 0; k < 20; k++) await page.keyboard.press('ArrowRight');
  await settled(page);
  expect(Number(await engine.inputValue())).toBeGreaterThan(Number(before.station));
  expect(await figure(page, 'balance.cg_x')).not.toBe(before.cg);
});
