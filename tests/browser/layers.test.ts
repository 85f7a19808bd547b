import { readFile } from 'node:fs/promises';
import type { Browser } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { figure, openSheet, pickFrom, settled, showSheet, startBrowser } from './sheet';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});

test('a stack is built layer by layer, and the parts cut from it follow', async () => {
  const { page, troubles, close } = await openSheet(browser);
  const choice = page.locator('#cell-stabiliser_stock');
  const mass = async (): Promise<number> =>
    Number.parseFloat((await choice.locator('.option.picked .consequence').textContent()) ?? '');
  await expect.poll(mass).toBe(24.4);
  await choice.getByText('What each is made of, from one face to the other').click();
  const stack = choice.getByRole('group', { name: 'balsa–ply, 4 mm, layers' });
  expect(await stack.getByRole('listitem').count()).toBe(5);

  // A glue line of 60 g/m² over 236 cm² weighs 1.42 g, on 24.45 g.
  const before = await figure(page, 'parts.mass');
  await stack.getByRole('button', { name: 'Add a glue line to balsa–ply, 4 mm' }).press('Enter');
  await expect.poll(mass).toBe(25.9);
  expect(await figure(page, 'parts.mass')).not.toBe(before);
  expect(await stack.textContent()).toContain('Together 976\u00a0g/m², 4\u00a0mm thick');

  await pickFrom(stack.getByLabel('balsa–ply, 4 mm, core, material'), 'Plywood, birch, along the face grain');
  await settled(page);
  await expect.poll(mass).toBeGreaterThan(50);
  await page.getByRole('button', { name: 'Undo' }).click();
  await stack.getByRole('button', { name: 'Remove balsa–ply, 4 mm, glue', exact: true }).click();
  await expect.poll(mass).toBe(24.4);
  expect(troubles).toEqual([]);
  await close();
});

test('the weight and balance table is saved as CSV', async () => {
  const { page, close } = await openSheet(browser);
  await showSheet(page, 'Weights');
  await page.locator('#cell-parts').locator('.fold[aria-expanded="false"]').click();
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the table as CSV' }).click();
  const file = await saved;
  expect(file.suggestedFilename()).toBe('weight-and-balance.csv');
  const lines = (await readFile(await file.path(), 'utf8')).split('\r\n');
  expect(lines[0]).toMatch(/^part,name,shape,how many,fuel,.*"mass of one, g",.*"mass that counts, g","estimate, g",/);
  expect(lines.find((line) => /^"Engine, 4\.1 cm³",engine,weight,1,,.*,172,.*,-150,7,5,/.test(line))).toBeDefined();
  await close();
});
