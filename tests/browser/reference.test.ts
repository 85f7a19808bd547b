import type { Browser, Page } from 'playwright-core';
import { beforeAll, describe, expect, inject, test } from 'vitest';
import { axeOn } from './axe';
import { DESK, openSheet, PHONE, showSheet, startBrowser } from './sheet';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});

/** Every kind of piece, and no chapter twice of its kind: looking at all of them takes a minute. */
async function keepSome(page: Page): Promise<void> {
  const kept = ['cautions', 'signs', 'bands', 'block.air', 'formulas', 'materials'];
  await page.evaluate((some) => {
    for (const chapter of document.querySelectorAll('.chapter')) if (!some.includes(chapter.id)) chapter.remove();
  }, kept);
}

describe.each([
  ['at a desk', DESK],
  ['on a phone', PHONE],
])('the reference %s', (_where, viewport) => {
  test('opens at the place asked for, is no wider than the window and stands in nobody’s way', async () => {
    const { page, troubles, close } = await openSheet(browser, viewport);
    await page.goto(`${inject('address')}reference.html#field.flight.height`);
    const field = page.locator('[id="field.flight.height"]');
    await field.waitFor();
    await expect.poll(() => field.evaluate((place) => place.matches(':target'))).toBe(true);
    await expect.poll(async () => (await field.boundingBox())?.y ?? -1).toBeGreaterThanOrEqual(0);
    expect((await field.boundingBox())!.y).toBeLessThan(viewport.height / 2);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(viewport.width);
    await keepSome(page);
    const { violations } = await axeOn(page).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.target.join(' ')}`)).toEqual([]);
    expect(troubles).toEqual([]);
    await close();
  });
});

test('a field of a block leads to its place in the reference, beside the sheet, without a connection too', async () => {
  const { page, context, close } = await openSheet(browser, DESK, { shipped: true });
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await context.setOffline(true);
  await showSheet(page, 'Model');
  const title = page.locator('#cell-flight').getByRole('button', { name: 'Flying height: commands' });
  const unfold = page.locator('.fold[aria-expanded="false"]');
  while (!(await title.isVisible()) && (await unfold.count()) > 0) await unfold.first().click();
  await title.click();
  const link = page.getByRole('menuitem', { name: 'What it means' });
  const [reference] = await Promise.all([context.waitForEvent('page'), link.click()]);
  const field = reference.locator('[id="field.flight.height"]');
  await field.waitFor();
  expect(await field.textContent()).toContain('Flying height');
  expect(await page.locator('[data-state="settled"]').count()).toBe(1);
  await close();
});
