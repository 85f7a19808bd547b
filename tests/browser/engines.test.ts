import type { Browser, Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { DESK, figure, openSheet, PHONE, settled, showSheet, startBrowser } from './sheet';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});

async function addPiece(page: Page, title: string): Promise<void> {
  await page.getByRole('button', { name: 'Add a piece', exact: true }).click();
  const list = page.getByRole('dialog', { name: 'Add' });
  await list.getByRole('button', { name: title, exact: true }).click();
}
async function type(page: Page, path: string, text: string): Promise<void> {
  const field = page.locator(`[data-text="${path}"]`).first();
  await field.fill(text);
  await field.press('Enter');
}
const number = (text: string): number => Number.parseFloat(text.replace('−', '-'));

describe.each([
  ['at a desk', DESK],
  ['on a phone', PHONE],
] as const)('%s', (_, viewport) => {
  test('an engine by its data and a propeller take the place of the engine, and follow their size', async () => {
    const sheet = await openSheet(browser, viewport);
    const { page } = sheet;
    await showSheet(page, 'Model');
    await page.locator('#cell-engine .balloon').click();
    await page.locator('#cell-engine').getByRole('menuitem', { name: 'Remove', exact: true }).click();
    await page.locator('#cell-engine').waitFor({ state: 'detached' });
    await addPiece(page, 'Engine by its data');
    await page.locator('#cell-two_stroke').waitFor();
    await addPiece(page, 'Propeller');
    await page.locator('#cell-propeller').waitFor();
    await settled(page);
    const lap = number(await figure(page, 'flight.lap_time'));
    expect(lap).toBeGreaterThan(3);
    expect(lap).toBeLessThan(5);
    await type(page, 'propeller.diameter', '10 in');
    await expect.poll(async () => number(await figure(page, 'flight.lap_time'))).not.toBe(lap);
    await type(page, 'propeller.diameter', '16 in');
    await expect
      .poll(() => page.locator('#cell-two_stroke').textContent())
      .toContain('is too large for the engine: it asks for more torque than there is');
    await type(page, 'propeller.diameter', '9 in');
    await expect.poll(async () => number(await figure(page, 'flight.lap_time'))).toBe(lap);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(viewport.width);
    expect(sheet.troubles).toEqual([]);
    await sheet.close();
  });
});
