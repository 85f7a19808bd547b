import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { compute } from './compute';
import { figure, openSheet, type Sheet, settled, startBrowser } from './sheet';

let browser: Browser;
let folder: string;
let sheet: Sheet;
let page: Page;
beforeAll(async () => {
  browser = await startBrowser();
  folder = mkdtempSync(join(tmpdir(), 'sheets-'));
});
beforeEach(async () => {
  sheet = await openSheet(browser);
  page = sheet.page;
  return () => sheet.close();
});
afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true });
});

async function type(path: string, text: string): Promise<void> {
  const field = page.locator(`[data-text="${path}"]`);
  await field.fill(text);
  await field.press('Enter');
  await settled(page);
}

async function save(name: string): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save', exact: true }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/\.tetherwright\.json$/);
  const file = join(folder, name);
  await download.saveAs(file);
  return file;
}

const open = (file: string) => page.locator('input[type="file"]').setInputFiles(file);

test('a reload keeps the design', async () => {
  await type('tip_weight', '33 g');
  const pull = await figure(page, 'flight.pull');
  await page.reload();
  await settled(page);
  expect(await page.locator('[data-text="tip_weight"]').inputValue()).toBe('33 g');
  expect(await figure(page, 'flight.pull')).toBe(pull);
});

test('a saved file gives the same figures on the command line, and opens as it was saved', async () => {
  await type('tip_weight', '12 g');
  const shown = { cg: await figure(page, 'balance.cg_x'), pull: await figure(page, 'flight.pull') };
  const file = await save('light-tip.tetherwright.json');
  const answer = await compute(file, '--get', 'balance.cg_x', 'flight.pull');
  expect(answer).toContain(shown.cg);
  expect(answer).toContain(shown.pull);

  await type('tip_weight', '40 g');
  expect(await figure(page, 'flight.pull')).not.toBe(shown.pull);
  await open(file);
  await expect.poll(() => figure(page, 'flight.pull')).toBe(shown.pull);
  const again = await save('again.tetherwright.json');
  expect(readFileSync(again, 'utf8')).toBe(readFileSync(file, 'utf8'));
});

test('a broken file is refused with its reason, and the open design stays', async () => {
  const pull = await figure(page, 'flight.pull');
  const file = join(folder, 'broken.tetherwright.json');
  writeFileSync(file, '{ "format": "tetherwright", "version": 999, "cells": [] }');
  await open(file);
  await page.getByRole('alert').first().waitFor();
  expect(await page.getByRole('alert').first().textContent()).toMatch(/version|newer/i);
  expect(await figure(page, 'flight.pull')).toBe(pull);
});
