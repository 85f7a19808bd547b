import type { Browser } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { DESK, figure, openSheet, settled, startBrowser } from './sheet';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});

test('after the first visit the sheet opens, computes and charts without a connection', async () => {
  const { page, context, troubles, close } = await openSheet(browser, DESK, { shipped: true });
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await context.setOffline(true);
  const reached = await page.evaluate(() =>
    fetch(`./?${Math.random()}`, { cache: 'no-store' }).then(
      () => true,
      () => false,
    ),
  );
  await page.reload();
  await settled(page);
  const before = await figure(page, 'flight.lap_time');
  const field = page.locator('[data-text="line_length"]');
  await field.fill('16 m');
  await field.press('Enter');
  await settled(page);
  expect(await figure(page, 'flight.lap_time')).not.toBe(before);
  await page.locator('[data-mark="now"]').first().waitFor();
  expect(reached).toBe(false);
  expect(troubles.filter((trouble) => !trouble.includes('ERR_INTERNET_DISCONNECTED'))).toEqual([]);
  await close();
});
