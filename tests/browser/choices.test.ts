import type { Browser } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { DESK, openSheet, PHONE, settled, showSheet, startBrowser } from './sheet';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});

describe.each([
  ['at a desk', DESK],
  ['on a phone', PHONE],
] as const)('choices and links %s', (_how, viewport) => {
  test('an own option is added, titled, filled, picked, and taken back', async () => {
    const { page, troubles, close } = await openSheet(browser, viewport);
    const choice = page.locator('#cell-bearers');
    const options = choice.locator('.option-title');
    const before = await options.allTextContents();
    await choice.getByText('Edit the options').press('Enter');
    await choice.getByRole('button', { name: /^Add an option/ }).press('Enter');
    await choice.getByLabel(/^Title of Option/).fill('one long slot');
    await page.keyboard.press('Enter');
    await expect.poll(() => options.allTextContents()).toEqual([...before, 'one long slot']);
    await choice.locator('input[type="radio"]').last().check({ force: true });
    await settled(page);
    expect(await choice.locator('.picked .option-title').textContent()).toBe('one long slot');
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(viewport.width);
    const undo = page.getByRole('button', { name: 'Undo', exact: true });
    for (let k = 0; k < 3; k++) await undo.click();
    await expect.poll(() => options.allTextContents()).toEqual(before);
    expect(troubles).toEqual([]);
    await close();
  });

  test('a block says which of two it takes, where there are two', async () => {
    const { page, troubles, close } = await openSheet(browser, viewport);
    await showSheet(page, 'Model');
    const flight = page.locator('#cell-flight');
    await flight.locator('.fold[aria-expanded="false"]').click();
    expect(await flight.getByLabel(/^Which lines/).count()).toBe(0);
    await page.locator('#cell-lines .balloon').press('Enter');
    await page.locator('#cell-lines').getByRole('menuitem', { name: 'Copy', exact: true }).click();
    const which = flight.getByLabel(/^Which lines/);
    await which.waitFor();
    await settled(page);
    const first = await which.inputValue();
    const other = (
      await which.locator('option').evaluateAll((all) => all.map((o) => (o as HTMLOptionElement).value))
    ).find((name) => name !== '' && name !== first)!;
    await which.selectOption(other);
    await settled(page);
    expect(await which.inputValue()).toBe(other);
    expect(troubles).toEqual([]);
    await close();
  });
});
