import { expect, test } from 'vitest';
import { DEMO_WINDOWS, inEveryWindow } from './misfits';
import { openSheet, startBrowser } from './sheet';
import { seeAll } from './views';

/** A phone, a tablet and a large desk, which lay out their columns each in another way; those between are looked at with the views. */
test('every sheet of the demo fits into a phone, a tablet and a desk, and writes no error', {
  timeout: 600_000,
}, async () => {
  const sheet = await openSheet(await startBrowser(), { width: 1920, height: 900 }, { shipped: true });
  const { page } = sheet;
  const told: string[] = [];
  for (const entry of await page.locator('[data-sheet]').all()) {
    await page.setViewportSize({ width: 1920, height: 900 });
    const title = await entry.textContent();
    await entry.click();
    // A long list of options is made when somebody opens it: what is there before are a few short ones, such as the options of a choice in a variant.
    const options = await page.locator('option').count();
    if (options > 20) told.push(`${title}: ${options} options stand in lists that nobody has opened`);
    await seeAll(page);
    told.push(...(await inEveryWindow(page, DEMO_WINDOWS)).map((sentence) => `${title}: ${sentence}`));
  }
  expect(told).toEqual([]);
  expect(sheet.troubles).toEqual([]);
  await sheet.close();
});
