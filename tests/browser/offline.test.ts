import { beforeAll, expect, test } from 'vitest';
import { DESK, figure, openSheet, type Sheet, settled, showSheet, startBrowser } from './sheet';

/** As the demo comes, kept by the page for the flying field; from then on there is no connection. */
let sheet: Sheet;
beforeAll(async () => {
  sheet = await openSheet(await startBrowser(), DESK, { shipped: true });
  await sheet.page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await sheet.context.setOffline(true);
  return () => sheet.close();
});

test('after the first visit the sheet opens, computes and charts without a connection', async () => {
  const { page, troubles } = sheet;
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
});

test('a field of a block leads to its place in the reference, beside the sheet, and back, without a connection too', async () => {
  const { page, context } = sheet;
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
  const left = await page.evaluate(() => window.scrollY);
  expect(left).toBeGreaterThan(200);
  await page.evaluate(() => window.scrollTo(0, 0));
  await reference.getByRole('link', { name: /^Back to Quern 25.*, Level flight$/ }).click();
  await expect.poll(() => page.evaluate(() => [window.scrollY, location.hash])).toEqual([left, '']);
  expect(await page.locator('.one-sheet.shown').getAttribute('aria-label')).toBe('Model');
  // In the page of the design that stands already.
  expect(context.pages().filter((each) => !each.url().includes('reference')).length).toBe(1);
});
