import { readFileSync } from 'node:fs';
import type { Browser, Locator, Page } from 'playwright-core';
import { beforeAll, beforeEach, expect, test } from 'vitest';
import { compute } from './compute';
import { QUERN } from './designs';
import { figure, handleOf, openSheet, type Place, placeOf, type Sheet, settled, slide, startBrowser } from './sheet';
import { piecesOf } from './with-pieces';

const ENGINE = 'engine_station';
/** The slide and the chart along it are on the screen together. */
const TALL = { width: 1280, height: 1800 };

let browser: Browser;
let sheet: Sheet;
let page: Page;
beforeAll(async () => {
  browser = await startBrowser();
});
beforeEach(async () => {
  sheet = await openSheet(browser, TALL);
  page = sheet.page;
  return () => sheet.close();
});

/** The chart in the demo whose sweep runs along this variable. */
function chartAlong(variable: string): Locator {
  const cells = piecesOf(JSON.parse(readFileSync(QUERN, 'utf8')));
  const sweep = cells.find(
    (cell: { kind: string; axes?: { of: string }[] }) =>
      cell.kind === 'trial_series' && cell.axes?.[0]?.of === variable,
  );
  const chart = cells.find(
    (cell: { kind: string; series?: string }) => cell.kind === 'chart' && cell.series === sweep.name,
  );
  return page.locator(`[data-chart="${chart.name}"]`);
}

/** Takes the handle of the engine's slide and moves it in small steps, stopping when `step` says so. The pointer stays down. */
async function drag(pixels: readonly number[], step: () => Promise<void>): Promise<void> {
  const handle = await handleOf(slide(page, ENGINE));
  await page.mouse.move(handle.x, handle.y);
  await page.mouse.down();
  for (const moved of pixels) {
    await page.mouse.move(handle.x + moved, handle.y, { steps: 2 });
    await step();
  }
}

const key = ({ x, y }: Place) => `${x.toFixed(1)} ${y.toFixed(1)}`;

test('while the pointer is down on the engine position, the marked point of the chart takes a new place at every stop', async () => {
  const mark = chartAlong(ENGINE).locator('[data-mark="now"]');
  await mark.first().waitFor();
  const places = [key(await placeOf(mark))];
  await drag([6, 12, 18, 24, 30, 36, 42], async () => {
    const before = places.at(-1);
    await expect.poll(async () => key(await placeOf(mark)), { interval: 20 }).not.toBe(before);
    places.push(key(await placeOf(mark)));
  });
  expect(new Set(places.slice(1)).size).toBeGreaterThanOrEqual(5);
  await page.mouse.up();
  expect(sheet.troubles).toEqual([]);
});

test('with the pointer still down, the figure, the CG mark and the command line give the same CG', async () => {
  const mark = (part: string) => page.locator(`[data-mark="${part}"][data-view="plan"]`);
  const start = { figure: await figure(page, 'balance.cg_x'), mark: key(await placeOf(mark('cg'))) };
  await drag([15, 30], async () => {});
  await expect.poll(() => figure(page, 'balance.cg_x')).not.toBe(start.figure);
  await expect.poll(async () => key(await placeOf(mark('cg')))).not.toBe(start.mark);
  await settled(page);

  const station = await slide(page, ENGINE).inputValue();
  const names = ['balance.cg_x', 'leadouts.guide_x', 'engine.station'];
  const { values } = JSON.parse(await compute(QUERN, '--set', `${ENGINE}=${station} mm`, '--get', ...names, '--json'));
  expect(values['balance.cg_x'].text).toBe(await figure(page, 'balance.cg_x'));

  // The plan has its nose up: down the window is aft, and two other marks give the scale.
  const [engine, guide, cg] = await Promise.all(['engine_station', 'guide', 'cg'].map((part) => placeOf(mark(part))));
  const share = (cg!.y - engine!.y) / (guide!.y - engine!.y);
  const drawn = values['engine.station'].si + share * (values['leadouts.guide_x'].si - values['engine.station'].si);
  expect(Math.abs(drawn - values['balance.cg_x'].si)).toBeLessThan(0.0005);
  await page.mouse.up();
});

test('one drag is one step back', async () => {
  const before = await slide(page, ENGINE).inputValue();
  await drag([10, 20, 30], async () => {});
  await page.mouse.up();
  await settled(page);
  expect(await slide(page, ENGINE).inputValue()).not.toBe(before);
  await page.getByRole('button', { name: 'Undo' }).click();
  await settled(page);
  expect(await slide(page, ENGINE).inputValue()).toBe(before);
  await page.getByRole('button', { name: 'Redo' }).click();
  await settled(page);
  expect(await slide(page, ENGINE).inputValue()).not.toBe(before);
});
