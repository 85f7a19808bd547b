import { readFileSync, writeFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { compute } from './compute';
import { QUERN } from './designs';
import { DESK, openSheet, PHONE, type Sheet, settled, slide, startBrowser } from './sheet';
import { withPieces } from './with-pieces';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});

const SPREAD = {
  kind: 'tolerances',
  id: 'planted-spread',
  name: 'shop',
  title: 'Shop and weather',
  rows: [
    { of: 'line_length', distribution: 'normal', size: '10 cm', above: '' },
    { of: 'tip_weight', distribution: 'triangular', size: '1 g', above: '3 g' },
  ],
  parts: false,
  wanted: ['flight.pull', 'flight.lap_time'],
  samples: 400,
  seed: 1,
};
const chart = (chart: string) => ({
  ...{ kind: 'chart', id: `planted-${chart}`, name: `shop_${chart}`, title: `Pull as ${chart}`, chart, series: 'shop' },
  ...{ across: '', up: ['flight.pull'], lines: '' },
});
const file = (): string => {
  const demo = JSON.parse(readFileSync(QUERN, 'utf8'));
  return JSON.stringify(withPieces(demo, [SPREAD, chart('histogram'), chart('shares')]));
};

const cell = (page: Page) => page.locator('.cell-tolerances').first();
const row = async (page: Page, path: string): Promise<string[]> =>
  cell(page).locator(`tr[data-result="${path}"] :is(th, td)`).allTextContents();
const words = (page: Page) => cell(page).locator('.progress-words').textContent();
const add = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'Add a piece', exact: true }).click();
  await page.getByRole('button', { name: 'Tolerances', exact: true }).click();
  await page.getByRole('button', { name: /^Done with title/ }).click();
  await cell(page).scrollIntoViewIfNeeded();
  await cell(page).locator('.set-up > summary').click();
};
const typeWhole = async (page: Page, label: string, text: string): Promise<void> => {
  await page.getByLabel(label, { exact: true }).fill(text);
  await page.keyboard.press('Enter');
};

describe.each([
  ['at a desk', DESK],
  ['on a phone', PHONE],
])('a spread of one’s own %s', (_where, viewport) => {
  const atDesk = test.runIf(viewport === DESK);
  let sheet: Sheet;
  let page: Page;
  beforeAll(async () => {
    sheet = await openSheet(browser, viewport);
    page = sheet.page;
    await add(page);
  });
  afterAll(() => sheet.close());

  test('begins with what is called a beginning, and computes by itself', async () => {
    await page.getByLabel('With the uncertainty of the parts').uncheck();
    expect(await cell(page).locator('.spread-rows li').first().textContent()).toBe(
      'tip weight: normal, standard deviation 0.42\u00a0g, a guess: type your own',
    );
    await expect.poll(() => words(page)).toBe('2500 of 2500 designs');
    expect((await row(page, 'parts.mass')).slice(0, 2)).toEqual(['All-up weight, g', '850.1']);
    expect(await cell(page).locator('.chart-caption').textContent()).toMatch(
      /^Tip weight makes nearly all of the uncertainty of the all-up weight\./,
    );
  });

  test('takes what is typed, and says what is wrong with it at its place', async () => {
    const size = cell(page).locator('[data-text$=".row1.size"]').first();
    const typed = async (text: string): Promise<void> => {
      await size.click();
      await page.keyboard.press('ControlOrMeta+A');
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
    };
    await typed('2 mm');
    const flag = cell(page).locator('[data-fault$=".row1.size"]');
    await flag.waitFor();
    expect(await flag.textContent()).toMatch(/a length.*a mass|a mass.*a length/);
    await typed('4.2 g');
    await expect.poll(async () => (await row(page, 'parts.mass'))[3]).toMatch(/^4\.[12]/);
  });

  atDesk('gives other designs for another seed, and the same again for the same', async () => {
    await settled(page);
    const first = await row(page, 'parts.mass');
    await typeWhole(page, 'Seed', '2');
    await expect.poll(async () => (await row(page, 'parts.mass')).join()).not.toBe(first.join());
    await typeWhole(page, 'Seed', 'many');
    expect(await cell(page).getByRole('alert').textContent()).toBe(
      '“many” cannot be taken. Type a whole number from 0 to 1000000.',
    );
    await typeWhole(page, 'Seed', '1');
    await expect.poll(async () => (await row(page, 'parts.mass')).join()).toBe(first.join());
  });

  atDesk('takes a correlation of two things, which then have one share together', async () => {
    const form = cell(page).locator('.set-up');
    expect(await form.getByRole('button', { name: 'Add a correlation' }).count()).toBe(1);
    await form.getByRole('button', { name: 'Add a correlation' }).click();
    await cell(page).locator('[data-text$=".pair1"]').first().click();
    await page.keyboard.press('ControlOrMeta+A');
    await page.keyboard.type('0.5');
    await page.keyboard.press('Enter');
    await expect
      .poll(() => cell(page).locator('.spread-rows li').allTextContents(), { timeout: 20_000 })
      .toContainEqual(expect.stringMatching(/ and .*: correlation 0\.5/));
    await expect.poll(() => words(page), { timeout: 20_000 }).toMatch(/^(\d+) of \1 designs$/);
    await form.getByRole('button', { name: /^Remove Correlation of/ }).click();
    await expect.poll(() => cell(page).locator('[data-text$=".pair1"]').count()).toBe(0);
  });

  atDesk('is stopped on a wish while very many designs run, and goes on when asked', async () => {
    await typeWhole(page, 'How many designs', '400000');
    const stop = cell(page).getByRole('button', { name: /^Stop/ });
    await stop.waitFor();
    await stop.click();
    await expect.poll(() => words(page)).toMatch(/^stopped at /);
    await cell(page)
      .getByRole('button', { name: /^Compute all/ })
      .click();
    await expect.poll(() => words(page)).not.toMatch(/^stopped/);
    await typeWhole(page, 'How many designs', '500');
    await expect.poll(() => words(page)).toBe('2500 of 2500 designs');
  });

  test('leaves no trouble behind', () => {
    expect(sheet.troubles).toEqual([]);
  });
});

describe('a spread from a file', () => {
  let sheet: Sheet;
  let page: Page;
  let folder: string;
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'spread-'));
    sheet = await openSheet(browser);
    page = sheet.page;
    const sent = { name: 'shop.tetherwright.json', mimeType: 'application/json', buffer: Buffer.from(file()) };
    await page.locator('input[type="file"]').first().setInputFiles(sent);
    await cell(page).waitFor();
    await cell(page).getByText('1600 of 1600 designs').waitFor();
  });
  afterAll(async () => {
    await sheet.close();
    await rm(folder, { recursive: true });
  });

  test('has the numbers of the command line', async () => {
    const path = join(folder, 'shop.tetherwright.json');
    writeFileSync(path, file());
    const { spread } = JSON.parse(await compute(path, '--tolerances', 'shop', '--json'));
    const [, , ...shown] = await row(page, 'flight.pull');
    const { mean, deviation, low, middle, high } = spread.results[0];
    const near = [mean, deviation, low, middle, high] as number[];
    // Half a unit of the last place that is shown.
    const half = (text: string): number => 0.5 * 10 ** -(text.split('.')[1]?.length ?? 0);
    for (const [k, text] of shown.entries()) {
      expect(Math.abs(Number(text) - near[k]!), `${text} for ${near[k]}`).toBeLessThanOrEqual(1.001 * half(text));
    }
  });

  test('is drawn as a histogram with its percentiles and as shares', async () => {
    const histogram = page.locator('#cell-shop_histogram');
    await histogram.scrollIntoViewIfNeeded();
    await histogram.locator('[data-line="95 %"]').waitFor();
    expect(await histogram.locator('[data-line]').count()).toBeGreaterThanOrEqual(4);
    expect(await histogram.locator('.chart-caption').textContent()).toMatch(
      /^Line pull: of 400 designs 5\u00a0% lie below /,
    );
    const shares = page.locator('#cell-shop_shares');
    await shares.scrollIntoViewIfNeeded();
    expect(await shares.locator('[data-bar]').count()).toBe(4);
    expect(await shares.locator('.chart-caption').textContent()).toMatch(
      /^Line length makes (9\d\u00a0%|nearly all) of the uncertainty/,
    );
  });

  test('follows a slide that moves, its means first', async () => {
    const before = (await row(page, 'flight.lap_time'))[2];
    const control = slide(page, 'engine_station');
    await control.focus();
    for (let k = 0; k < 3; k++) await page.keyboard.press('ArrowRight');
    await slide(page, 'line_length').focus();
    await page.keyboard.press('PageDown');
    await settled(page);
    await cell(page).scrollIntoViewIfNeeded();
    await expect.poll(async () => (await row(page, 'flight.lap_time'))[2]).not.toBe(before);
    await expect.poll(() => words(page)).toBe('1600 of 1600 designs');
    expect(sheet.troubles).toEqual([]);
  });
});
