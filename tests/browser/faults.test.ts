import type { Browser, Page } from 'playwright-core';
import { beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { DESK, openSheet, PHONE, type Sheet, settled, startBrowser } from './sheet';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});

describe.each([
  ['at a desk', DESK],
  ['on a phone', PHONE],
])('%s', (_where, viewport) => {
  let sheet: Sheet;
  let page: Page;
  beforeEach(async () => {
    sheet = await openSheet(browser, viewport);
    page = sheet.page;
    return () => sheet.close();
  });

  const type = async (path: string, text: string): Promise<void> => {
    const field = page.locator(`[data-text="${path}"]`);
    await field.fill(text);
    await field.press('Enter');
  };
  const state = () => page.locator('.sheet-state button');

  test('the words at the top open the list of every place, each with its sentence and a way to it', async () => {
    await type('engine_station', 'flight.pul');
    await page.locator('[data-state="fault"]').waitFor();
    await state().click();
    const list = page.getByRole('dialog');
    const place = list.locator('[data-listed="engine_station"]');
    expect(await place.locator('p').textContent()).toContain('flight has nothing called pul.');
    const waits = list.getByRole('listitem').filter({ hasText: 'waits for the engine station.' });
    expect(await waits.count()).toBeGreaterThan(3);
    await waits.first().getByRole('link', { name: 'the engine station' }).click();
    await expect.poll(() => list.count()).toBe(0);
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.closest('[data-text]')?.getAttribute('data-text')))
      .toBe('engine_station');
    expect(sheet.troubles).toEqual([]);
  });

  test('a press writes the name that was meant, and Undo takes that back', async () => {
    await type('tip_weight', 'tip_wieght');
    await page.locator('[data-state="fault"]').waitFor();
    await type('tip_weight', '2 * ballast.tip_wieght');
    const flag = page.locator('[data-fault="tip_weight"]');
    await flag.getByRole('button', { name: 'Write ballast.tip_weight' }).click();
    await expect.poll(() => page.locator('[data-text="tip_weight"]').evaluate(textOf)).not.toContain('wieght');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => flag.textContent()).toContain('Did you mean ballast.tip_weight?');
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'Undo' }).click();
    await settled(page);
  });
});

const textOf = (field: Element): string =>
  field instanceof HTMLInputElement ? field.value : (field.textContent ?? '');
