import { expect, test } from 'vitest';
import { DESK, openSheet, settled, showSheet, startBrowser, stored } from './sheet';

test('a piece goes to another sheet by keys and by hand, which is shown again after loading, and a sheet is copied', async () => {
  const sheet = await openSheet(await startBrowser(), { ...DESK, width: 1600 }, { anew: true });
  const { page } = sheet;
  const piece = (name: string) => page.locator(`#cell-${name}`);
  const notice = () => page.locator('.notices.done').textContent();

  await piece('fin_stock').locator('.balloon').focus();
  await page.keyboard.press('Enter');
  await page.getByRole('menuitem', { name: 'Move to another sheet' }).press('Enter');
  await page.getByRole('dialog', { name: 'Move “Fin stock” to' }).waitFor();
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('2 Model');
  await page.keyboard.press('Enter');
  await expect.poll(() => piece('fin_stock').count()).toBe(0);
  await expect.poll(notice).toContain('Moved: Fin stock, to Model.');
  // Whoever goes on by keys is at the piece that comes next.
  expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toContain('Line set');

  await page.evaluate(() => window.scrollTo(0, 0));
  const balloon = (await piece('set_these').locator('.balloon').boundingBox())!;
  const line = (await page.locator('[data-sheet]').filter({ hasText: 'Weights' }).boundingBox())!;
  await page.mouse.move(balloon.x + 5, balloon.y + 5);
  await page.mouse.down();
  await page.mouse.move(line.x + 20, line.y + 10, { steps: 4 });
  await page.locator('.put-onto').getByText('Weights').waitFor();
  await page.mouse.up();
  await expect.poll(notice).toContain('Moved: Set these, to Weights.');
  await showSheet(page, 'Weights');
  await piece('set_these').waitFor();

  await stored(page);
  await page.reload();
  await settled(page);
  await piece('set_these').waitFor();

  await page.getByRole('button', { name: 'Sheet 2, Model: commands' }).click();
  await page.getByRole('menuitem', { name: 'Copy to another design' }).click();
  await page.getByText('There is no other design on this machine yet.').waitFor();
  await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
  await page.getByRole('button', { name: 'Open', exact: true }).click();
  await page.getByRole('button', { name: 'An empty design' }).click();
  await expect.poll(() => page.locator('h1').textContent()).toBe('Untitled design');
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect.poll(() => page.locator('h1').textContent()).toContain('Quern 25');
  await page.getByRole('button', { name: 'Sheet 2, Model: commands' }).click();
  await page.getByRole('menuitem', { name: 'Copy to another design' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Untitled design' }).click();
  await expect.poll(() => page.locator('h1').textContent()).toBe('Untitled design');
  expect(await page.locator('[data-sheet]').allTextContents()).toEqual(['Decide', 'Model']);
  expect(sheet.troubles).toEqual([]);
  await sheet.close();
});
