import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { DESK, openSheet, PHONE, settled, showSheet, startBrowser } from './sheet';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});

const CELL = '#cell-line_shape';
const WCAG = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

async function addLines(page: Page): Promise<void> {
  await showSheet(page, 'Model');
  await page.getByRole('button', { name: 'Add a piece', exact: true }).click();
  await page.getByRole('dialog', { name: 'Add' }).getByRole('button', { name: 'Lines in full', exact: true }).click();
  await page.locator(CELL).waitFor();
  await settled(page);
  await page.locator(`${CELL} .block-picture`).scrollIntoViewIfNeeded();
}
async function type(page: Page, path: string, text: string): Promise<void> {
  const cell = page.locator(`#cell-${path.split('.')[0]}`);
  const unfold = cell.locator('.fold[aria-expanded="false"]');
  if ((await unfold.count()) > 0) await unfold.click();
  const field = page.locator(`[data-text="${path}"]`).first();
  await field.fill(text);
  await field.press('Enter');
  await page.locator(`${CELL} .block-picture`).scrollIntoViewIfNeeded();
}

describe.each([
  ['at a desk', DESK],
  ['on a phone', PHONE],
] as const)('%s', (_, viewport) => {
  test('the lines are drawn in plan and side view, and follow the flight', async () => {
    const sheet = await openSheet(browser, viewport);
    const { page } = sheet;
    await addLines(page);
    const picture = page.locator(`${CELL} .block-picture`);
    const bow = picture.locator('[data-bow="side"]');
    await bow.waitFor();
    // The same number as among the results.
    const result = page.locator('output[data-value="line_shape.bow_down"]');
    expect((await result.textContent())!.trim()).toBe(`${await bow.textContent()} down`);
    await expect.poll(() => picture.textContent()).toMatch(/the bow drawn \d+ times/);
    await expect.poll(() => picture.locator('figcaption').textContent()).toContain('counter-clockwise');

    // Words and figures stand inside the picture.
    const outside = await picture.locator('svg').evaluate((svg) => {
      const frame = svg.getBoundingClientRect();
      return [...svg.querySelectorAll('text')]
        .filter((text) => {
          const { left, right, top, bottom } = text.getBoundingClientRect();
          return left < frame.left - 1 || right > frame.right + 1 || top < frame.top - 1 || bottom > frame.bottom + 1;
        })
        .map((text) => text.textContent);
    });
    expect(outside).toEqual([]);

    // Read by keys.
    await picture.locator('.chart-read').focus();
    await page.keyboard.press('ArrowRight');
    const reading = picture.locator('[data-reading]');
    await expect
      .poll(() => reading.getAttribute('data-reading'))
      .toMatch(
        /^plan, Along the line [\d.]+\u00a0m, Behind the radius \d+\u00a0mm, Bow back \d+\u00a0mm, Trail [\d.]+°, Tension [\d.]+\u00a0N$/,
      );
    await page.keyboard.press('ArrowDown');
    await expect.poll(() => reading.getAttribute('data-reading')).toMatch(/^side view, Along the line /);
    await page.keyboard.press('Escape');

    const before = await bow.textContent();
    await type(page, 'flight.height', '8 m');
    await settled(page);
    await expect.poll(() => bow.textContent()).not.toBe(before);

    const { violations } = await new AxeBuilder({ page }).include(`${CELL} .block-picture`).withTags(WCAG).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);

    // Where there is no flight the reason stands in its place.
    await type(page, 'flight.height', '30 m');
    await expect.poll(() => picture.textContent()).toContain('is more than 80° up on lines of this radius');
    await picture.locator('svg').waitFor({ state: 'detached' });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(viewport.width);
    expect(sheet.troubles).toEqual([]);
    await sheet.close();
  });
});
