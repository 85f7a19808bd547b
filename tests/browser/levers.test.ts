import type { Browser, Page } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { FLYING_DAY, openDesign } from './designs';
import { DESK, openSheet, PHONE, settled, startBrowser } from './sheet';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});

const levers = (page: Page) => page.locator('.levers');
/** What stands in the first column of the ranking, below the present design. */
const ranked = (page: Page): Promise<string[]> => levers(page).locator('tbody tr[data-change] th').allTextContents();

async function openFlyingDay(viewport: typeof DESK) {
  const sheet = await openSheet(browser, viewport);
  await openDesign(sheet.page, FLYING_DAY);
  await levers(sheet.page).scrollIntoViewIfNeeded();
  await levers(sheet.page).locator('[data-bar]').first().waitFor();
  await settled(sheet.page);
  return sheet;
}

test('levers are ranked by the result that is picked, and by one for each unit of another', async () => {
  const sheet = await openFlyingDay(DESK);
  const { page } = sheet;
  expect((await ranked(page))[0]).toMatch(/^Wind: [+−]1\u00a0m\/s$/);
  await page.getByLabel('Ranked by the change of').selectOption({ label: 'Lap time in wind' });
  await expect.poll(async () => (await ranked(page))[0]).toMatch(/^Line length: [+−]0.3\u00a0m$/);
  await page.getByLabel('Ranked by the change of').selectOption({ label: 'Least pull' });
  await page.getByLabel('for each change of').selectOption({ label: 'Lap time in wind' });
  const head = levers(page).getByRole('columnheader', { name: 'Least pull for each s of lap time in wind' });
  await head.waitFor();
  expect(
    await levers(page).locator('tbody tr[data-change]').first().locator('td:not(.levers-take)').last().textContent(),
  ).toMatch(/^[+−][\d.]+\u00a0N\/s$/);
  await page.keyboard.press('Control+z');
  expect(sheet.troubles).toEqual([]);
  await sheet.close();
});

test('on a phone a lever is set up, a fault in it is said at its place, and it is taken off', async () => {
  const sheet = await openFlyingDay(PHONE);
  const { page } = sheet;
  await levers(page).locator('summary', { hasText: 'Set up these changes' }).click();
  const amount = page.locator('[data-text="day_levers.row3.change"]');
  await amount.fill('');
  await amount.press('Enter');
  const flag = levers(page).locator('[data-fault="day_levers.row3.change"]');
  expect(await flag.textContent()).toContain(
    'The tip weight has no amount to be changed by. Type one, such as “2\u00a0g”.',
  );
  await amount.fill('10 g');
  await amount.press('Enter');
  await expect.poll(() => ranked(page)).toContain('Tip weight: +10\u00a0g');
  expect(await flag.count()).toBe(0);
  await levers(page).getByRole('button', { name: 'Remove tip weight' }).click();
  await expect.poll(() => ranked(page)).not.toContain('Tip weight: +10\u00a0g');
  expect(sheet.troubles).toEqual([]);
  await sheet.close();
});
