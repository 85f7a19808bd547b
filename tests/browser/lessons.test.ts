import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { axeOn } from './axe';
import { openSheet, PHONE, type Sheet, settled, startBrowser } from './sheet';

let sheet: Sheet;
let page: Page;
beforeAll(async () => {
  sheet = await openSheet(await startBrowser(), PHONE);
  page = sheet.page;
});
afterAll(() => sheet.close());

test('a lesson is put on the open design, its line is drawn by finger and by keys, and the design answers', async () => {
  await page.getByRole('button', { name: 'Add a study' }).first().tap();
  await page.getByRole('button', { name: 'Lessons', exact: true }).tap();
  await page.locator('[data-study="lines_lesson"]').tap();
  await page.getByRole('button', { name: 'Put it on this design' }).tap();
  const guess = page.locator('.guess');
  await guess.locator('.guess-paper').waitFor();
  await settled(page);

  const show = guess.getByRole('button', { name: 'Show the answer' });
  await show.tap();
  await expect.poll(() => guess.getByRole('alert').textContent()).toMatch(/^Draw the line first/);

  // A finger goes over the chart: the page stays where it is under it.
  const paper = guess.locator('.guess-paper');
  await paper.evaluate((element) => element.scrollIntoView({ block: 'center' }));
  const box = (await paper.boundingBox())!;
  const before = await page.evaluate(() => scrollY);
  const touch = await page.context().newCDPSession(page);
  const finger = async (type: 'touchStart' | 'touchMove', across: number, down: number): Promise<void> => {
    const at = { x: box.x + across * box.width, y: box.y + down * box.height };
    await touch.send('Input.dispatchTouchEvent', { type, touchPoints: [at] });
  };
  await finger('touchStart', 0.05, 0.2);
  for (let k = 1; k <= 6; k++) await finger('touchMove', 0.05 + 0.15 * k, 0.2 + 0.1 * k);
  await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await touch.detach();
  const points = guess.getByRole('slider');
  const heights = async (): Promise<number[]> =>
    points.evaluateAll((all) => all.map((point) => Number(point.getAttribute('aria-valuenow'))));
  const drawn = await heights();
  expect(drawn[0]!).toBeGreaterThan(drawn[4]!);
  expect(drawn[4]!).toBeGreaterThan(drawn[8]!);
  expect(await page.evaluate(() => scrollY)).toBe(before);

  await points.first().focus();
  for (const key of ['ArrowRight', 'ArrowRight', 'PageUp']) await page.keyboard.press(key);
  await expect.poll(async () => (await heights())[2]!).toBeGreaterThan(drawn[2]!);
  const { violations } = await axeOn(page).include('.guess').analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.target.join(' ')}`)).toEqual([]);

  await show.tap();
  await expect
    .poll(() => guess.locator('.guess-result').textContent())
    .toMatch(/^The answer falls from [\d.]+\u00a0N to [\d.]+\u00a0N\. Your line falls from/);
  expect(await guess.locator('[data-line="answer"]').count()).toBe(1);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(PHONE.width);
  expect(sheet.troubles).toEqual([]);
});
