import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeOn } from './axe';
import { everyKind, fileOfEveryKind } from './charts-sheet';
import { DESK, openSheet, PHONE, pickFrom, type Sheet, settled, startBrowser } from './sheet';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});

const cell = (page: Page, name: string): Locator => page.locator(`#cell-${name}`);
const picture = (page: Page, name: string): Locator => cell(page, name).locator('.chart-read svg');

async function openEveryKind(page: Page): Promise<void> {
  await page.locator('input[type="file"]').first().setInputFiles(fileOfEveryKind());
  await cell(page, 'lines_kind').waitFor();
  await settled(page);
}

/** Picks in a list by keys alone: its letters lead there, quickly enough to be one word. */
async function pickByKeys(list: Locator, title: string): Promise<void> {
  await list.focus();
  await list.page().keyboard.type(title);
  await list.page().keyboard.press('Enter');
}

describe.each([
  ['at a desk', DESK],
  ['on a phone', PHONE],
])('charts %s', (_, viewport) => {
  // What a chart is made of, and what keys do with it, is the same on every width.
  const atDesk = test.runIf(viewport === DESK);
  let sheet: Sheet;
  let page: Page;
  beforeAll(async () => {
    sheet = await openSheet(browser, viewport);
    page = sheet.page;
    await openEveryKind(page);
  });
  afterAll(() => sheet.close());

  test('every kind is drawn, says what to see and keeps within the screen', async () => {
    for (const { name } of everyKind) {
      await cell(page, name).scrollIntoViewIfNeeded();
      await picture(page, name).waitFor();
      const caption = await cell(page, name).locator('figcaption').textContent();
      expect(caption, name).toMatch(/\w.*\d.*\.$/);
      const { width, room } = await picture(page, name).evaluate((svg) => ({
        width: svg.getBoundingClientRect().width,
        room: document.documentElement.clientWidth,
      }));
      expect(width, name).toBeLessThanOrEqual(room);
    }
    const wide = await page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth);
    expect(wide).toBe(false);
    expect(sheet.troubles).toEqual([]);
  });

  atDesk('no barrier is found in a chart, its numbers or its form', async () => {
    const axe = axeOn(page).withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']);
    const kinds = ['tip_sweep', 'contour_kind', 'bars_kind', 'ring_kind', 'run_kind'].map((name) => cell(page, name));
    // Their numbers and forms are made of the same pieces, and long.
    const press = async () => {
      for (const kind of [kinds[0]!, kinds[3]!])
        for (const summary of await kind.locator('details > summary').all()) await summary.click();
    };
    await press();
    for (const kind of kinds) axe.include(`#${await kind.getAttribute('id')}`);
    const { violations } = await axe.analyze();
    expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
    await press();
  });

  atDesk('the arrow keys read values with their units, and say them once they rest', async () => {
    const chart = cell(page, 'lines_kind').locator('.chart-read');
    await chart.scrollIntoViewIfNeeded();
    await chart.focus();
    await page.keyboard.press('ArrowRight');
    const reading = chart.locator('[data-reading]');
    await reading.waitFor();
    await page.keyboard.press('Home');
    const first = await reading.getAttribute('data-reading');
    expect(first).toMatch(/^[\d.]+\u00a0g, engine station −170\u00a0mm, Line pull [\d.]+\u00a0N$/);
    await page.keyboard.press('ArrowRight');
    const second = await reading.getAttribute('data-reading');
    expect(second).not.toBe(first);
    expect(second).toMatch(/engine station −16[67]/);
    const line = second?.split(',')[0];
    await page.keyboard.press('ArrowUp');
    expect((await reading.getAttribute('data-reading'))?.split(',')[0]).not.toBe(line);
    const now = await reading.getAttribute('data-reading');
    await expect.poll(() => chart.locator('[role="status"]').textContent()).toBe(now);
    await page.keyboard.press('Escape');
    await reading.waitFor({ state: 'detached' });
  });

  test('a finger or the pointer reads what is nearest', async () => {
    for (const name of ['contour_kind', 'histogram_kind', 'ring_kind', 'leg_kind']) {
      const svg = picture(page, name);
      await svg.scrollIntoViewIfNeeded();
      const box = (await svg.boundingBox())!;
      const at = { x: box.width * 0.55, y: box.height * 0.6 };
      if (viewport === PHONE) await svg.tap({ position: at });
      else await svg.hover({ position: at });
      const reading = svg.locator('[data-reading]');
      await reading.waitFor();
      expect(await reading.getAttribute('data-reading'), name).toMatch(/\d/);
    }
  });

  test('the ring of the present design is dragged along its axis in one step of undo, by Shift and arrows too', async () => {
    const chart = cell(page, 'lines_kind').locator('.chart-read');
    const ring = chart.locator('.chart-now').first();
    const undo = page.getByRole('button', { name: 'Undo', exact: true });
    const place = (): Promise<number> => ring.evaluate((div) => Number.parseFloat((div as HTMLElement).style.left));
    await ring.scrollIntoViewIfNeeded();
    const before = await place();
    const box = (await ring.boundingBox())!;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    if (viewport === PHONE) {
      const touch = await page.context().newCDPSession(page);
      const at = (type: 'touchStart' | 'touchMove', by: number) =>
        touch.send('Input.dispatchTouchEvent', { type, touchPoints: [{ x: x + by, y }] });
      await at('touchStart', 0);
      for (const by of [8, 16, 24, 32]) await at('touchMove', by);
      await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    } else {
      await page.mouse.move(x, y);
      await page.mouse.down();
      for (const by of [8, 16, 24, 32]) await page.mouse.move(x + by, y);
      await page.mouse.up();
    }
    await expect.poll(place).toBeGreaterThan(before + 2);
    await undo.click();
    await expect.poll(place).toBeCloseTo(before, 1);

    await chart.focus();
    await page.keyboard.press('Shift+ArrowLeft');
    await expect.poll(place).toBeLessThan(before);
    await expect.poll(() => chart.locator('[role="status"]').textContent()).toMatch(/^engine station [-−]\d/i);
    await undo.click();
    await expect.poll(place).toBeCloseTo(before, 1);
    expect(sheet.troubles).toEqual([]);
  });

  atDesk('a chart is set up by keys: kind, source, across, what is shown, each at once in the picture', async () => {
    const form = cell(page, 'lines_kind').locator('.set-up');
    await form.locator('summary').focus();
    await page.keyboard.press('Enter');
    await pickByKeys(form.getByLabel('Kind'), 'histogram');
    await cell(page, 'lines_kind').locator('[data-count]').first().waitFor();
    await pickByKeys(form.getByLabel('Kind'), 'carpet');
    await expect.poll(() => cell(page, 'lines_kind').locator('figcaption').textContent()).toMatch(/^Every crossing/);
    const cg = form.getByRole('checkbox', { name: 'CG', exact: true });
    await cg.focus();
    await page.keyboard.press('Space');
    await expect.poll(() => picture(page, 'lines_kind').locator('[data-panel]').count()).toBe(2);
    const title = form.getByLabel('Title');
    await title.focus();
    await page.keyboard.press('ControlOrMeta+A');
    await page.keyboard.type('Pull and CG over both');
    await page.keyboard.press('Enter');
    await expect.poll(() => cell(page, 'lines_kind').locator('h2').textContent()).toBe('Pull and CG over both');
    const lines = picture(page, 'lines_kind').locator('path[stroke-width="1.8"]');
    const back = async () => (await form.getByLabel('Kind').inputValue()) === 'line';
    for (let k = 0; k < 12 && !(await back()); k++) await page.getByRole('button', { name: 'Undo' }).click();
    expect(await cell(page, 'lines_kind').locator('h2').textContent()).toBe('Pull along the bearers');
    await expect.poll(() => lines.count()).toBe(5);
    expect(sheet.troubles).toEqual([]);
  });

  atDesk('a sweep is set up: from, to, how many, one more axis and result; what is wrong is said', async () => {
    const sweep = cell(page, 'tip_sweep');
    const form = sweep.locator('.set-up');
    await form.locator('summary').scrollIntoViewIfNeeded();
    if ((await form.getAttribute('open')) === null) await form.locator('summary').click();
    const count = form.getByLabel('How many values').first();
    await count.fill('many');
    await page.keyboard.press('Tab');
    expect(await form.getByRole('alert').textContent()).toBe(
      '“many” is not a number of values. Type a whole number from 2 to 1001.',
    );
    await count.fill('5');
    await page.keyboard.press('Tab');
    await expect.poll(() => form.getByRole('alert').count()).toBe(0);
    await expect.poll(() => form.textContent()).toContain('25 designs: 5 × 5.');
    await pickFrom(form.getByLabel('And along'), 'Stabiliser stock');
    await expect.poll(() => form.textContent()).toContain('75 designs: 5 × 5 × 3.');
    await form.getByRole('checkbox', { name: 'balsa, 5 mm' }).uncheck();
    await expect.poll(() => form.textContent()).toContain('50 designs: 5 × 5 × 2.');
    await pickFrom(form.getByLabel('Add a result'), 'Lap time, s');
    await expect.poll(() => form.locator('.set-up-list li').count()).toBe(4);
    await settled(page);
    await expect.poll(() => sweep.textContent()).toContain('50 of 50 designs');
    await form.getByRole('button', { name: 'Remove the axis engine station' }).click();
    await expect
      .poll(() => cell(page, 'contour_kind').locator('.fault-flag').first().textContent())
      .toContain(
        'Pull over engine and tip weight needs the engine station as an axis of Engine station by tip weight. The axes of Engine station by tip weight are the tip weight, Stabiliser stock.',
      );
    await page.getByRole('button', { name: 'Undo' }).click();
    await settled(page);
    expect(await cell(page, 'contour_kind').locator('.fault-flag').count()).toBe(0);
  });
});
