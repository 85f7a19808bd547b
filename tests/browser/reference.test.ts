import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { axeOn } from './axe';
import { DESK, openSheet, PHONE, type Sheet, startBrowser } from './sheet';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});

/** No chapter twice of its kind. */
const KINDS = ['cautions', 'signs', 'bands', 'block.air', 'formulas', 'materials'];

const goTo = async (page: Page, id: string): Promise<void> => {
  await page.evaluate((to) => {
    location.hash = to;
  }, id);
  await page.locator(`[id="${id}"]`).waitFor();
};

describe.each([
  ['at a desk', DESK],
  ['on a phone', PHONE],
])('the reference %s', (_where, viewport) => {
  let sheet: Sheet;
  let page: Page;
  beforeAll(async () => {
    sheet = await openSheet(browser, viewport);
    page = sheet.page;
    await page.goto(`${inject('address')}reference.html#field.flight.height`);
  });
  afterAll(() => sheet.close());

  test('opens at the place asked for, in its chapter alone', async () => {
    const field = page.locator('[id="field.flight.height"]');
    await field.waitFor();
    expect(await field.getAttribute('class')).toBe('entry here');
    await expect.poll(async () => (await field.boundingBox())?.y ?? -1).toBeGreaterThanOrEqual(0);
    expect((await field.boundingBox())!.y).toBeLessThan(viewport.height / 2);
    expect(await page.locator('.chapter').count()).toBe(1);
    expect(await page.title()).toBe('Level flight – Reference – Tetherwright');
  });

  test('no chapter is wider than the window or stands in anybody’s way', async () => {
    for (const id of KINDS) {
      await goTo(page, id);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(viewport.width);
      // Looked at where every kind of piece stands: the others are no different.
      if (id !== 'block.air') continue;
      const { violations } = await axeOn(page).analyze();
      expect(violations.map((each) => `${id}, ${each.id}: ${each.nodes[0]?.target.join(' ')}`)).toEqual([]);
    }
    expect(sheet.troubles).toEqual([]);
  });

  test('words lead to a place, and the browser’s way back to where the page was left', async () => {
    await goTo(page, 'block.wing');
    const kept = () => page.evaluate(() => (history.state as { y?: number } | null)?.y);
    await page.evaluate(() => window.scrollTo(0, 700));
    await expect.poll(kept).toBe(700);
    await page.getByRole('searchbox', { name: 'Search' }).fill('nutral point');
    // Where the search does not stand by, somebody scrolls to it first.
    const left = await page.evaluate(() => window.scrollY);
    expect(left).toBeGreaterThan(50);
    await expect.poll(kept).toBe(left);
    await page.getByRole('searchbox', { name: 'Search' }).press('Enter');
    const found = page.locator('[id="result.balance.neutral_point"]');
    await found.waitFor();
    expect(await found.evaluate((element) => element === document.activeElement)).toBe(true);
    await page.goBack();
    await page.locator('[id="block.wing"]').waitFor();
    await expect.poll(() => page.evaluate(() => window.scrollY)).toBe(left);
  });
});
