import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { beforeAll, beforeEach, expect, test } from 'vitest';
import { findChromium, launch } from '../../.ci/chromium.mjs';
import { QUERN } from './designs';
import { DESK, figure, openSheet, type Sheet, settled, slide } from './sheet';
import { withPieces } from './with-pieces';

let browser: Browser;
let sheet: Sheet;
let page: Page;
// A browser of their own: the pages of other tests stay open, with the workers that they have started.
beforeAll(async () => {
  browser = await launch(await findChromium());
  return () => browser.close();
});
beforeEach(async () => {
  sheet = await openSheet(browser, DESK, { anew: true });
  page = sheet.page;
  return () => sheet.close();
});

/** Opens the demo with one more sweep at its top. */
async function openWith(count: number): Promise<void> {
  const demo = JSON.parse(readFileSync(QUERN, 'utf8'));
  const axis = (of: string) => ({ of, low: '', high: '', count });
  const cell = {
    kind: 'trial_series',
    id: 'planted',
    name: 'planted',
    title: 'Many designs',
    axes: [axis('engine_station'), axis('line_length')],
    wanted: ['flight.pull', 'balance.cg_x'],
  };
  const text = JSON.stringify(withPieces(demo, [cell]));
  const file = { name: 'many.tetherwright.json', mimeType: 'application/json', buffer: Buffer.from(text) };
  await page.locator('input[type="file"]').first().setInputFiles(file);
  await page.getByRole('heading', { name: 'Many designs' }).waitFor();
}

/** Names of the workers that run for the page, those that a worker started among them. */
async function workers(): Promise<string[]> {
  const session = await browser.newBrowserCDPSession();
  const { targetInfos } = await session.send('Target.getTargets', { filter: [{ type: 'worker', exclude: false }] });
  await session.detach();
  return targetInfos.map((info) => info.url.split('/').at(-1) ?? '');
}

const bar = () => page.getByRole('progressbar', { name: 'Designs computed of Many designs' });

test('a large sweep is computed by workers that the engine starts, one for each core', async () => {
  const samplers = async () => (await workers()).filter((name) => name.startsWith('sampler'));
  expect(await samplers()).toEqual([]);
  await openWith(150);
  await settled(page);
  await expect.poll(() => bar().getAttribute('aria-valuetext')).toBe('22\u202f500 of 22\u202f500 designs');
  const cores = await page.evaluate(() => navigator.hardwareConcurrency);
  expect(await samplers()).toHaveLength(Math.min(cores, 8));
  expect(sheet.troubles).toEqual([]);
});

test('a sweep that takes long says how long, can be ended and begun again, and gives way to an edit', async () => {
  await openWith(900);
  await expect.poll(() => bar().getAttribute('aria-valuetext')).toMatch(/, about \d+\u00a0(s|min) left$/);
  await page.getByRole('button', { name: 'Stop Many designs' }).click();
  await expect
    .poll(() => bar().getAttribute('aria-valuetext'))
    .toMatch(/^stopped at [\d\u202f]+ of 810\u202f000 designs$/);
  await settled(page);
  const at = await bar().getAttribute('aria-valuenow');
  await page.waitForTimeout(200);
  expect(await bar().getAttribute('aria-valuenow')).toBe(at);
  expect(Number(at)).toBeLessThan(810_000);
  await page.getByRole('button', { name: 'Compute all of Many designs' }).click();
  await expect.poll(() => bar().getAttribute('aria-valuetext')).toMatch(/left$/);
  const before = await figure(page, 'balance.cg_x');
  const told = await bar().evaluateHandle((element) => {
    const texts: string[] = [];
    const watch = new MutationObserver(() => texts.push(element.getAttribute('aria-valuetext') ?? ''));
    watch.observe(element, { attributes: true });
    return texts;
  });
  await slide(page, 'engine_station').focus();
  await page.keyboard.press('End');
  await expect.poll(() => figure(page, 'balance.cg_x')).not.toBe(before);
  // The answer came in the midst of the sweep, which now runs for the newer design.
  expect((await told.jsonValue()).filter((text) => text.startsWith('810\u202f000 of'))).toEqual([]);
  await expect.poll(() => bar().getAttribute('aria-valuetext')).toMatch(/left$/);
  await page.getByRole('button', { name: 'Stop Many designs' }).click();
  await settled(page);
  expect(sheet.troubles).toEqual([]);
});
