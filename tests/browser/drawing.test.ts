import type { Browser, Page } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { openSheet, type Sheet, settled, startBrowser } from './sheet';

let browser: Browser;
let sheet: Sheet;
let page: Page;
beforeAll(async () => {
  browser = await startBrowser();
  sheet = await openSheet(browser, { width: 1280, height: 1400 });
  page = sheet.page;
  return () => sheet.close();
});

const plain = async (selector: string): Promise<string> =>
  ((await page.locator(selector).first().textContent()) ?? '').replaceAll('\u00a0', ' ');
const dragBy = async (x: number, y: number, dx: number, dy: number): Promise<void> => {
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + dx, y + dy, { steps: 3 });
  await page.mouse.up();
};

test('a part is dragged by pointer and by keys, the design follows, and each is one step back', async () => {
  await page.locator('.standing').getByLabel('Parts to scale').check();
  const crank = page.locator('.standing [data-parts="plan"] [data-placed="parts.bellcrank"]');
  await crank.scrollIntoViewIfNeeded();
  const { x, y } = (await crank.boundingBox())!;
  const station = async (): Promise<number> =>
    Number(/station (−?\d+) mm/.exec(await plain('.standing [data-part-words]'))?.[1]?.replace('−', '-'));
  await dragBy(x + 2, y + 2, 0, 24);
  await settled(page);
  const moved = await station();
  expect(moved).toBeGreaterThan(62 + 40);
  await page.keyboard.press('Shift+ArrowDown');
  await expect.poll(station).toBe(moved + 1);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect.poll(station).toBe(moved);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect.poll(station).toBe(62);
  expect(sheet.troubles).toEqual([]);
});

/** One white pixel. */
const PIXEL = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAQAAAC1HAwCAAAAC0lEQVR42mNk+A8AAQUBAScY42YAAAAASUVORK5CYII=',
  'base64',
);

test('an outline is drawn over a picture of the plan, and the areas follow', async () => {
  await page.getByRole('button', { name: /^Open large/ }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('radio', { name: 'Side view' }).check();
  const file = dialog.locator('input[type="file"]');
  await file.setInputFiles({ name: 'plan.png', mimeType: 'image/png', buffer: Buffer.from('<svg onload="x"/>') });
  await dialog.getByText('“plan.png” is no PNG').waitFor();
  await file.setInputFiles({ name: 'plan.png', mimeType: 'image/png', buffer: PIXEL });
  await dialog.locator('[data-traced-plan] image').waitFor();
  await dialog.getByRole('button', { name: /^Draw it/ }).click();
  const { x, y, width } = (await dialog.locator('svg').first().boundingBox())!;
  const places = [0.25, 0.75].flatMap((across) => [60, 160].map((down) => [x + across * width, y + down] as const));
  for (const k of [0, 2, 3, 1]) await page.mouse.click(...places[k]!);
  await dialog.getByRole('button', { name: 'Close the outline' }).click();
  const area = (): Promise<string> => plain('[data-outline-results]');
  await expect.poll(area).toMatch(/^Side area \d/);
  const drawn = await area();
  const corner = (await dialog.locator('.corner-handle').nth(2).boundingBox())!;
  await dragBy(corner.x + corner.width / 2, corner.y + corner.height / 2, 20, 30);
  await expect.poll(area).not.toBe(drawn);
  expect(await dialog.locator('.corner-handle').count()).toBe(4);
  const dragged = await area();
  await page.keyboard.press('Shift+ArrowDown');
  await expect.poll(area).not.toBe(dragged);
  await dialog.getByRole('button', { name: 'Done' }).click();
  expect(sheet.troubles).toEqual([]);
});
