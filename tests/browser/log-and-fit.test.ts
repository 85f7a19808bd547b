import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeOn } from './axe';
import { DESK, openSheet, PHONE, type Sheet, settled, startBrowser, stored } from './sheet';

/* Laps that an invented club flew with the invented Quern 25: all numbers are invented. */
const FLOWN = [
  'flight,laps,time,pull,note',
  '1,10,50.4 s,24 N,calm',
  '2,10,50.7 s,24.6 N,"evening, calm"',
  '3,5,25.3 s,,',
];

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});

const cell = (page: Page, name: string) => page.locator(`#cell-${name}`);
const button = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' });

async function add(page: Page, word: string): Promise<void> {
  await button(page, 'Add a piece').click();
  await button(page, word).click();
  await page.keyboard.press('Escape');
}

async function type(page: Page, label: string, text: string): Promise<void> {
  await page.getByRole('textbox', { name: label, exact: true }).click();
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

describe.each([
  ['at a desk', DESK],
  ['on a phone', PHONE],
])('flown laps %s', (_where, viewport) => {
  let sheet: Sheet;
  let page: Page;
  beforeAll(async () => {
    sheet = await openSheet(browser, viewport);
    page = sheet.page;
  });
  afterAll(() => sheet.close());

  test('are typed by row, and a reading that is wrong says so at its place', async () => {
    await add(page, 'Log of flown laps');
    await type(page, 'time, 1', '50.5 s');
    const kept = page.locator('[data-text="flown.row1.time"]');
    // The editor stands in the field's place while it has the focus.
    const text = () => kept.evaluate((field) => (field instanceof HTMLInputElement ? field.value : field.textContent));
    await expect.poll(text).toBe('50.5 s');
    await settled(page);
    await type(page, 'Pull at the handle, 1', '24 mm');
    await page.locator('[data-fault="flown.row1.pull"]').waitFor();
    expect(await cell(page, 'flown').locator('[data-fault="flown.row1.pull"]').textContent()).toContain('length');
    await button(page, 'Undo').click();
    await settled(page);
    await button(page, 'Add a flight').click();
    expect(await page.locator('[data-text="flown.row2#label"]').inputValue()).toBe('2');
    await button(page, 'Undo').click();
    expect(await page.locator('[data-text="flown.row2#label"]').count()).toBe(0);
  });

  test('are pasted, and what can not be taken stays with the reason', async () => {
    const log = cell(page, 'flown');
    await log.getByText('Paste flights').click();
    const room = log.locator('textarea');
    await room.fill('flight,speed\n1,30');
    await button(page, 'Add these flights').click();
    expect(await log.locator('[id$="-paste-said"]').textContent()).toMatch(/^The heading has “speed”/);
    expect(await room.inputValue()).toBe('flight,speed\n1,30');
    await room.fill(FLOWN.join('\n'));
    await button(page, 'Add these flights').click();
    expect(await log.locator('[id$="-paste-said"]').textContent()).toBe('3 flights were added.');
    await settled(page);
    expect(await log.locator('tbody th').count()).toBe(4);
    const saving = page.waitForEvent('download');
    await button(page, 'Save as CSV').click();
    const csv = readFileSync(await (await saving).path(), 'utf8');
    expect(csv).toMatch(/^2,10,50\.7 s,24\.6 N,+"evening, calm"\r$/m);
  });

  test('give a factor that is taken into the design, and taken back', async () => {
    await add(page, 'Fit to flown laps');
    const fit = cell(page, 'fit');
    await fit.scrollIntoViewIfNeeded();
    await fit.locator('.fit-factors').waitFor();
    // At one length of line drag and power act alike: said, and nothing to be taken.
    expect(await fit.locator('.fit-sentence').first().textContent()).toMatch(
      /^The log (cannot tell|hardly tells) the drag factor of Level flight and the power factor of Engine and propeller apart/,
    );
    await fit.locator('.set-up > summary').click();
    await button(page, /^Remove Power factor/).click();
    await settled(page);
    await fit.locator('.fit-factors tbody tr').nth(1).waitFor({ state: 'detached' });
    await fit.getByText(/^Fitted in \d+ steps? to 6 measured numbers of 4 flights\.$/).waitFor();
    const found = (await fit.locator('.fit-factors tbody td').nth(1).textContent())!;
    expect(found).toMatch(/^1\.\d+ ± 0\.0\d+$/);
    expect(await fit.locator('.fit-readings tbody tr').count()).toBe(6);
    await button(page, 'Take these values into the design').click();
    await settled(page);
    await fit.getByText('These values are in the design.').waitFor();
    expect(
      Math.abs(
        Number.parseFloat((await fit.locator('.fit-factors tbody td').nth(0).textContent())!) -
          Number.parseFloat(found),
      ),
    ).toBeLessThan(0.006);
    await button(page, 'Undo').click();
    await settled(page);
    // On a phone the way to Undo has led away from it, and what is off the screen is not fitted anew.
    await fit.locator('.set-up > summary').scrollIntoViewIfNeeded();
    await fit.locator('.fit-factors').scrollIntoViewIfNeeded();
    await button(page, 'Take these values into the design').waitFor();
  });

  test('without barriers, sideways scroll or trouble, and after a reload they are still there', async () => {
    const { violations } = await axeOn(page).include('.cell-log').include('.cell-fit').analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target).join(' ')}`)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
    await stored(page);
    await page.reload();
    await settled(page);
    expect(await cell(page, 'flown').locator('tbody th').count()).toBe(4);
    expect(sheet.troubles).toEqual([]);
  });
});
