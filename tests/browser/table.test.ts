import { readFileSync } from 'node:fs';
import { fromArrow } from 'arquero';
import type { Browser, Download, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeOn } from './axe';
import { QUERN } from './designs';
import { DESK, openSheet, PHONE, type Sheet, settled, slide, startBrowser } from './sheet';
import { withPieces } from './with-pieces';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});

/** Opens the small design with a sweep of 320 stations by so many lengths and a table of it at its top. */
async function openTable(page: Page, lengths: number): Promise<void> {
  const demo = JSON.parse(readFileSync(QUERN, 'utf8'));
  const axis = (of: string, count: number, low = '', high = '') => ({ of, low, high, count });
  const sweep = {
    kind: 'trial_series',
    id: 'planted-sweep',
    name: 'many',
    title: 'Many designs',
    axes: [axis('engine_station', 320), axis('line_length', lengths, '5 m', '60 m')],
    wanted: ['flight.pull', 'balance.cg_x'],
  };
  const table = {
    kind: 'table',
    id: 'planted-table',
    name: 'many_rows',
    title: 'Rows of many designs',
    series: 'many',
    columns: [],
    keep: [],
    rows: 'all',
    reason: '',
    groups: [],
    measures: ['greatest', 'median'],
    sort: '',
    descending: false,
  };
  const text = JSON.stringify(withPieces(demo, [sweep, table]));
  const file = { name: 'many.tetherwright.json', mimeType: 'application/json', buffer: Buffer.from(text) };
  await page.locator('input[type="file"]').first().setInputFiles(file);
  await page.locator('.table-room').waitFor();
  await settled(page);
}

const room = (page: Page) => page.locator('.table-room');
const count = (page: Page) => page.locator('.table-line [role="status"]').textContent();
/** What stands in the row with this number. */
const row = (page: Page, number: number) => page.locator(`.table-room tr[aria-rowindex="${number + 1}"]`);
const entries = async (page: Page, number: number) =>
  (await row(page, number).locator('th, td').allTextContents()).map((text) => text.replaceAll('\u202f', ''));
const head = (page: Page, name: RegExp) => page.locator('.table-room').getByRole('columnheader', { name });
const bytesOf = async (download: Download) => readFileSync(await download.path());

describe.each([
  ['of 100 160 rows at a desk', DESK, 313, '100\u202f160'],
  ['of 4160 rows on a phone', PHONE, 13, '4160'],
])('a table %s', (_which, viewport, lengths, rows) => {
  const ROWS = 320 * lengths;
  // A finger scrolls it as a page, and finds the same rows in it.
  const atDesk = test.runIf(viewport === DESK);
  let sheet: Sheet;
  let page: Page;
  beforeAll(async () => {
    sheet = await openSheet(browser, viewport);
    page = sheet.page;
    await openTable(page, lengths);
  });
  afterAll(() => sheet.close());

  test('shows its first rows, and holds no more of them than are looked at', async () => {
    expect(await count(page)).toBe(`${rows} designs`);
    expect((await entries(page, 1)).slice(0, 3)).toEqual(['Take the design of row 1', '−170', '5']);
    expect(await page.locator('.table-room tbody tr').count()).toBeLessThan(80);
    expect(await page.locator('.table-room table').getAttribute('aria-rowcount')).toBe(String(ROWS + 1));
  });

  atDesk('is scrolled to its last row and back by keys', async () => {
    await room(page).focus();
    await page.keyboard.press('End');
    await expect.poll(async () => (await entries(page, ROWS))[2]).toBe('60');
    expect((await entries(page, ROWS)).at(-1)).toMatch(/^The line length of Lines is 60\sm/);
    await page.keyboard.press('Home');
    await expect.poll(() => row(page, 1).count()).toBe(1);
  });

  atDesk('goes to the present design, which is marked in words', async () => {
    await page.getByRole('button', { name: 'Go to the row nearest to the present design' }).click();
    const marked = page.locator('.table-room tr.present');
    await expect.poll(() => marked.count()).toBe(1);
    expect(await marked.locator('th').textContent()).toMatch(/^near Take the design of row \d/);
    const [, station, length] = (await marked.locator('th, td').allTextContents()).map((text) =>
      Number(text.replace('−', '-')),
    );
    expect(Math.abs(station! + 150)).toBeLessThan(0.1);
    expect(Math.abs(length! - 18.3)).toBeLessThan(0.2);
  });

  atDesk('is sorted by keys at a head, and says so', async () => {
    const pull = head(page, /pull/i);
    await pull.getByRole('button').focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => pull.getAttribute('aria-sort')).toBe('ascending');
    await page.keyboard.press('Enter');
    await expect.poll(() => pull.getAttribute('aria-sort')).toBe('descending');
    await room(page).evaluate((element) => element.scrollTo({ top: 0 }));
    const pulls = async () => {
      const found = await Promise.all([1, 2, 3, 4].map(async (number) => Number((await entries(page, number))[3])));
      return found.every((pull, k) => k === 0 || pull <= found[k - 1]!) && found[0]! > 80;
    };
    await expect.poll(pulls).toBe(true);
    await page.keyboard.press('Enter');
    await expect.poll(() => pull.getAttribute('aria-sort')).toBe('none');
  });

  test('keeps rows within typed limits and by reason, and goes back with Undo', async () => {
    await page.locator('.table-form summary').click();
    await page.getByRole('button', { name: 'Add a limit' }).click();
    await page.getByLabel('Limit 1: of what').selectOption({ label: 'Line pull' });
    await page.getByLabel('Line pull, from').fill('24 N');
    await page.getByLabel('Line pull, from').press('Enter');
    await page.getByLabel('Line pull, to').fill('25 kg');
    await page.getByLabel('Line pull, to').press('Enter');
    await expect.poll(() => page.locator('.table-keep .fault-flag').textContent()).toMatch(/force/);
    await page.getByLabel('Line pull, to').fill('26 N');
    await page.getByLabel('Line pull, to').press('Enter');
    await expect.poll(() => count(page)).toMatch(new RegExp(`^[\\d\u202f]+ of ${rows} designs$`));
    await expect.poll(async () => Number((await entries(page, 1))[3]) <= 26).toBe(true);
    await page.getByRole('button', { name: /^Remove the limit/ }).click();
    await expect.poll(() => count(page)).toBe(`${rows} designs`);
    await page.getByLabel('Designs', { exact: true }).selectOption('unanswered');
    await expect.poll(() => count(page)).toMatch(new RegExp(` of ${rows} designs$`));
    await expect.poll(async () => (await entries(page, 1)).at(-1)).toMatch(/^The line length of Lines/);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => count(page)).toBe(`${rows} designs`);
    await page.locator('.table-form summary').click();
  });

  atDesk('gives groups with what is said of each, and saves them as CSV and Arrow', async () => {
    await page.locator('.table-form summary').click();
    const agree = page.getByRole('group', { name: 'One row for all designs that agree in' });
    await agree.getByRole('checkbox', { name: /engine station/i }).check();
    await expect.poll(() => count(page)).toBe(`320 groups of ${rows} designs`);
    const [, , designs, without, greatest, median] = await entries(page, 1);
    expect([designs, Number(without) > 0, Number(greatest) > Number(median)]).toEqual(['313', true, true]);

    const [csv] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as CSV' }).click(),
    ]);
    expect(csv.suggestedFilename()).toBe('many_rows.csv');
    const lines = (await bytesOf(csv)).toString().split('\r\n');
    expect(lines).toHaveLength(320 + 2);
    expect(lines[0]).toContain('"flight.pull (N), greatest","flight.pull (N), median"');
    expect(lines[1]).toMatch(/^-170,313,\d+,/);

    const [arrow] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as Arrow' }).click(),
    ]);
    const read = fromArrow(new Uint8Array(await bytesOf(arrow)));
    expect([read.numRows(), read.get('designs', 0)]).toEqual([320, 313]);
    await agree.getByRole('checkbox', { name: /engine station/i }).uncheck();
    await page.locator('.table-form summary').click();
  });

  atDesk('follows the design: another line pull after the tip weight has moved', async () => {
    const before = (await entries(page, 1))[4];
    await slide(page, 'tip_weight').focus();
    await page.keyboard.press('End');
    await settled(page);
    await expect.poll(async () => (await entries(page, 1))[4]).not.toBe(before);
  });

  test('keeps to the window, stands in nobody’s way and breaks no rule', async () => {
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(viewport.width);
    await page.locator('.table-form summary').click();
    const { violations } = await axeOn(page).include('#cell-many_rows').analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' ')}`)).toEqual([]);
    if (viewport === PHONE) {
      // The number itself is small, but the room around it takes the finger; the list of views measures that.
      const low = await page
        .locator('#cell-many_rows')
        .locator('button:not(.balloon):visible, select:visible, label.tick:visible, summary, .text-entry:visible')
        .evaluateAll((all) =>
          all.filter((each) => each.getBoundingClientRect().height < 44).map((each) => each.outerHTML),
        );
      expect(low).toEqual([]);
    }
    expect(sheet.troubles).toEqual([]);
  });
});
