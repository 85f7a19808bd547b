import { expect, test } from 'vitest';
import { inEveryWindow } from './misfits';
import { openSheet, startBrowser } from './sheet';
import { seeAll } from './views';

test('every sheet of the demo fits into every window', { timeout: 600_000 }, async () => {
  const sheet = await openSheet(await startBrowser(), { width: 1920, height: 900 }, { shipped: true });
  const { page } = sheet;
  const told: string[] = [];
  for (const entry of await page.locator('[data-sheet]').all()) {
    await page.setViewportSize({ width: 1920, height: 900 });
    const title = await entry.textContent();
    await entry.click();
    await seeAll(page);
    told.push(...(await inEveryWindow(page)).map((sentence) => `${title}: ${sentence}`));
  }
  expect(told).toEqual([]);
  await sheet.close();
});
