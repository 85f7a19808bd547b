import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { axeOn } from './axe';
import { DESK, figure, openSheet, PHONE, type Sheet, settled, slide, startBrowser, stored } from './sheet';

const script = fileURLToPath(new URL('../../.ci/start.mjs', import.meta.url));
const USUAL_PORT = 8420;

/** Somebody else has the usual port: this test, or whoever had it before. */
async function takeUsualPort(): Promise<void> {
  const other = createServer();
  onTestFinished(async () => void other.close());
  await new Promise<void>((taken) => {
    other.once('error', () => taken());
    other.listen(USUAL_PORT, '127.0.0.1', taken);
  });
}

async function addressPrintedBy(started: ChildProcess): Promise<string> {
  let said = '';
  for await (const piece of started.stdout ?? []) {
    said += piece;
    const address = /Tetherwright is at (\S+)/.exec(said)?.[1];
    if (address) return address;
  }
  throw new Error(`No address was printed, only: ${said}`);
}

test('with an empty home, the usual port taken and nothing to read, the printed address answers with the page', async () => {
  await takeUsualPort();
  const home = mkdtempSync(join(tmpdir(), 'home-'));
  const started = spawn(process.execPath, [script], {
    env: { ...process.env, HOME: home },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  onTestFinished(async () => {
    started.kill();
    await once(started, 'exit');
    rmSync(home, { recursive: true });
  });
  const address = await addressPrintedBy(started);
  expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
  expect(address).not.toContain(`:${USUAL_PORT}/`);
  const answer = await fetch(address);
  expect(answer.status).toBe(200);
  expect(await answer.text()).toContain('<title>Tetherwright</title>');
});

describe.each([
  ['at a desk', DESK],
  ['on a phone', PHONE],
])('the first visit %s', (_where, viewport) => {
  const ways = (page: Page) => page.getByRole('region', { name: 'Ways to begin' });
  const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

  let sheet: Sheet;
  beforeAll(async () => {
    sheet = await openSheet(await startBrowser(), viewport, { anew: true });
    return () => sheet.close();
  });

  test('shows the demo and the ways to begin, which stay while something is changed and go with the next sheet', async () => {
    const { page } = sheet;
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toContain('Quern 25');
    expect(await ways(page).getByRole('button').allTextContents()).toEqual([
      'Begin with my model',
      'Open a file',
      'Look around here first',
    ]);
    const field = page.locator('[data-text="tip_weight"]').first();
    const top = (): Promise<number> =>
      slide(page, 'tip_weight').evaluate((element) => element.getBoundingClientRect().top + window.scrollY);
    const before = await top();
    await field.fill('25 g');
    await field.press('Enter');
    await page.getByRole('button', { name: 'Undo', disabled: false }).waitFor();
    await settled(page);
    expect(await top()).toBe(before);
    await page.keyboard.press('Alt+Shift+PageDown');
    await expect.poll(() => ways(page).count()).toBe(0);
    await page.keyboard.press('Alt+Shift+PageUp');
    await expect.poll(() => ways(page).count()).toBe(0);
  });

  test('a few numbers make a sheet that flies; what is wrong is said at its place; Undo brings the demo back', async () => {
    const { page, troubles } = sheet;
    await press(page, 'Open');
    await press(page, 'Begin with my model');
    const form = page.getByRole('dialog');
    await form.getByLabel('Name').fill('Own racer');
    await form.getByLabel('Span').fill('12 m');
    await form.getByLabel('Displacement').fill('2.5');
    await form.getByLabel('Displacement').press('Enter');
    await form
      .getByText('Span: 12 m is not between 0.2 m and 3 m. Type the distance from wing tip to wing tip.')
      .waitFor();
    await expect.poll(() => page.evaluate(() => (document.activeElement as HTMLInputElement).name)).toBe('span');
    expect(await form.getByLabel('Span').getAttribute('aria-invalid')).toBe('true');
    const { violations } = await axeOn(page).include('dialog').analyze();
    expect(violations.filter(({ impact }) => impact === 'serious' || impact === 'critical')).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(viewport.width);
    await form.getByLabel('Span').fill('0.8 m');
    await form.getByLabel('Span').press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Own racer' }).waitFor();
    await settled(page);
    expect(Number.parseFloat(await figure(page, 'flight.lap_time'))).toBeGreaterThan(3);
    expect(await page.locator('.check-value, [data-check]').count()).toBeGreaterThan(0);
    expect(await page.locator('[data-check].broken').count()).toBe(0);
    await press(page, 'Undo');
    await page.getByRole('heading', { level: 1, name: /Quern 25/ }).waitFor();
    await press(page, 'Redo');
    await page.getByRole('heading', { level: 1, name: 'Own racer' }).waitFor();
    await stored(page);
    await page.reload();
    await settled(page);
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Own racer');
    expect(await ways(page).count()).toBe(0);
    expect(troubles).toEqual([]);
  });
});
