import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { QUERN } from './designs';
import { DESK, openSheet, PHONE, type Sheet, settled, startBrowser } from './sheet';
import { withPieces } from './with-pieces';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});

const block = (name: string, title: string, fields: Readonly<Record<string, string>> = {}) => ({
  ...{ kind: 'model', id: `planted-${name}`, name, title, of: name, fields },
});
const file = (): string => {
  const demo = JSON.parse(readFileSync(QUERN, 'utf8'));
  const planted = [block('control', 'Control linkage'), block('shutoff', 'Fuel shutoff')];
  return JSON.stringify(withPieces(demo, planted));
};
const cell = (page: Page, name: string) => page.locator(`#cell-${name}`);
const picture = (page: Page) => cell(page, 'control').locator('.linkage svg');
const said = async (page: Page): Promise<string> => (await picture(page).getAttribute('aria-label')) ?? '';

describe.each([
  ['at a desk', DESK],
  ['on a phone', PHONE],
] as const)('the control linkage %s', (_, viewport) => {
  let sheet: Sheet;
  let page: Page;
  beforeAll(async () => {
    sheet = await openSheet(browser, viewport);
    page = sheet.page;
    const sent = { name: 'control.tetherwright.json', mimeType: 'application/json', buffer: Buffer.from(file()) };
    await page.locator('input[type="file"]').first().setInputFiles(sent);
    await cell(page, 'control').waitFor();
    await settled(page);
    await cell(page, 'control').scrollIntoViewIfNeeded();
    await picture(page).waitFor();
  });
  afterAll(() => sheet.close());

  test('is drawn, and said in words', async () => {
    expect(await said(page)).toMatch(
      /^Control linkage: the bellcrank from above .* pulls the rear leadout in and sets the elevator [\d.]+° up; .* With the handle upright the elevator stands at 0°\.$/,
    );
    const box = (await picture(page).boundingBox())!;
    expect(box.x).toBeGreaterThanOrEqual(0);
    expect(box.x + box.width).toBeLessThanOrEqual(viewport.width);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(viewport.width);
  });

  test('follows a horn that is put on the other side: the other line is up', async () => {
    await cell(page, 'control').getByLabel('Horn stands', { exact: true }).selectOption('above');
    await expect.poll(() => said(page)).toContain('pulls the front leadout in');
    await cell(page, 'control').getByLabel('Horn stands', { exact: true }).selectOption('below');
    await expect.poll(() => said(page)).toContain('pulls the rear leadout in');
  });

  test('has its caution beside it, and so has the shutoff', async () => {
    expect(await cell(page, 'control').getByRole('note', { name: 'Caution' }).textContent()).toContain('up is up');
    expect(await cell(page, 'shutoff').getByRole('note', { name: 'Caution' }).textContent()).toContain('Stop if');
  });

  test('leaves no trouble behind', () => {
    expect(sheet.troubles).toEqual([]);
  });
});
