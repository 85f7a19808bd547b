import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { DESK, openSheet, type Sheet, settled, startBrowser } from './sheet';

let sheet: Sheet;
let page: Page;
beforeAll(async () => {
  const browser: Browser = await startBrowser();
  sheet = await openSheet(browser, DESK, { anew: true });
  page = sheet.page;
});
afterAll(() => sheet.close());

/** What has the focus: its label, else its words; '' where nothing has. */
const focused = (): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement;
    if (!at || at === document.body) return '';
    return at.getAttribute('aria-label') ?? (at as HTMLInputElement).labels?.[0]?.textContent ?? at.textContent ?? '';
  });

let count = 0;
async function press(...keys: readonly string[]): Promise<void> {
  for (const key of keys) await page.keyboard.press(key);
  count += keys.length;
}
async function type(text: string): Promise<void> {
  await page.keyboard.type(text);
  count += text.length;
}
/** The letters go to the field once it is there. */
async function goTo(): Promise<void> {
  await press('F8');
  await expect.poll(focused).toBe('Go to');
}
/** To the next piece; the focus comes there once it is drawn. */
async function nextPiece(): Promise<void> {
  const before = await focused();
  await press('Alt+PageDown');
  await expect.poll(focused).not.toBe(before);
  expect(await focused()).toMatch(/^\d+, .*: commands$/);
}
const begin = (): Promise<void> => page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());

test('Tab stops of the opened design are under 60, each another one', async () => {
  const stops: string[] = [];
  for (let k = 0; k < 100; k++) {
    await page.keyboard.press('Tab');
    const here = await focused();
    if (here === '') break;
    stops.push(here);
  }
  expect(stops.length).toBeLessThan(60);
  expect(stops).toContain('Open');
  expect(stops).toContain('engine station');
  expect(stops).toContain('Title block, design');
});

test('arrow keys go along the words of a bar and of a piece, Home and End to their ends', async () => {
  await begin();
  await press('Tab', 'Tab');
  expect(await focused()).toBe('Open');
  await press('ArrowRight');
  expect(await focused()).toBe('Save');
  await press('End');
  expect(await focused()).toBe('Reference');
  await press('Home');
  expect(await focused()).toBe('Open');
  await press('Alt+PageDown');
  await expect.poll(focused).toMatch(/^1, .*: commands$/);
  await press('ArrowRight');
  await expect.poll(focused).toMatch(/^close /i);
});

test('keys lead from piece to piece and from sheet to sheet', async () => {
  await press('Alt+PageDown');
  await expect.poll(focused).toMatch(/^2, .*: commands$/);
  await press('Alt+PageUp');
  await expect.poll(focused).toMatch(/^1, /);
  const now = page.locator('.set-now');
  await press('Alt+Shift+PageDown');
  await expect.poll(() => now.textContent()).toMatch(/^Sheet 2 of \d+: Model/);
  await expect.poll(focused).toMatch(/^1, /);
  await press('Alt+Shift+PageUp');
  await expect.poll(() => now.textContent()).toMatch(/^Sheet 1 of/);
});

test('the page of keys lists them, and closing a dialog leaves the focus where it was', async () => {
  await nextPiece();
  const before = await focused();
  await goTo();
  await type('keys');
  await press('Enter');
  const dialog = page.getByRole('dialog', { name: 'Keys' });
  await dialog.waitFor();
  for (const key of ['F8', 'Shift F8', 'F2', 'Alt Page Down', 'Alt Shift Page Down']) {
    expect(await dialog.locator('dt').allTextContents()).toContain(key);
  }
  await press('Escape');
  await expect.poll(focused).toBe(before);
  await press('Shift+F8');
  await page.getByRole('dialog', { name: 'Add', exact: true }).waitFor();
  await press('Escape');
  await expect.poll(focused).toBe(before);
});

test('the focus never falls to the page itself: a piece that is removed, a notice, Undo with nothing left to undo', async () => {
  await nextPiece();
  await press('Enter');
  await page.getByRole('menu').waitFor();
  await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute('role'))).toBe('menuitem');
  await press('End', 'Enter');
  await expect.poll(focused).toMatch(/^\d+, .*: commands$/);
  const back = page.getByRole('button', { name: 'Take it back' });
  await back.focus();
  await press('Enter');
  await back.waitFor({ state: 'detached' });
  await expect.poll(focused).not.toBe('');
  await settled(page);
  // Nothing is left to take back: the word that was pressed can't be pressed any longer.
  await page.locator('input[type="range"][data-path="engine_station"]').focus();
  await press('ArrowRight');
  await settled(page);
  await page.getByRole('button', { name: 'Undo' }).focus();
  await press('Enter');
  await expect.poll(focused).toBe('Open');
});

test('a design is begun, a variable set, a part added, a chart made and all saved in under 120 keys', async () => {
  await begin();
  count = 0;
  await goTo();
  await type('beg');
  await press('Enter');
  await page.getByLabel('Span').waitFor();
  await type('Own');
  await press('Tab');
  await type('1m');
  await press('Tab', 'Tab', 'Tab');
  await type('4cc');
  await press('Enter');
  await page.getByRole('heading', { name: 'Own', exact: true }).waitFor();
  await settled(page);

  await goTo();
  await type('line l');
  await press('Enter');
  await expect.poll(focused).toBe('line length, value');
  await type('17m');
  await press('Enter');
  await settled(page);

  await goTo();
  await type('weight and b');
  await press('Enter');
  await expect.poll(focused).toBe('1, Weight and balance: commands');
  await press('ArrowRight', 'Enter');
  await page.getByRole('button', { name: 'Add a part' }).waitFor();
  await press('End', 'ArrowUp', 'ArrowUp', 'ArrowUp', 'Enter');
  await expect.poll(focused).toBe('Title of New part');
  await type('Clip');
  await press('Tab', 'Tab', 'Tab', 'Tab', 'Tab', 'Tab');
  await expect.poll(focused).toBe('Clip, mass');
  await type('5g');
  await press('Tab', 'Tab');
  await type('100mm');
  await press('Enter');
  await expect.poll(() => page.locator('[data-value="parts.clip.mass"]').first().textContent()).toBe('5\u00a0g');
  await settled(page);

  await goTo();
  await type('chart');
  await press('Enter');
  await page.getByRole('dialog', { name: /^Make a chart of/ }).waitFor();
  await expect.poll(focused).toBe('Against what?');
  await press('Enter');
  await expect.poll(() => page.evaluate(() => document.activeElement?.className)).toContain('cell-chart');

  const saved = page.waitForEvent('download');
  await press('F2');
  expect((await saved).suggestedFilename()).toMatch(/^own.*\.tetherwright\.json$/);
  expect(count).toBeLessThan(120);
  expect(sheet.troubles).toEqual([]);
});
