import type { Browser, Page } from 'playwright-core';
import { beforeAll, beforeEach, expect, test } from 'vitest';
import { papers } from '../../workbook/theme/tokens';
import { openSheet, type Sheet, settled, startBrowser } from './sheet';

let browser: Browser;
let sheet: Sheet;
let page: Page;
beforeAll(async () => {
  browser = await startBrowser();
});
beforeEach(async () => {
  sheet = await openSheet(browser);
  page = sheet.page;
  return () => sheet.close();
});

/** Colours as the page has computed them: of the sheet, of its words, and of an outline of the drawing. */
const colours = (): Promise<{ paper: string; ink: string; outline: string }> =>
  page.evaluate(() => ({
    paper: getComputedStyle(document.querySelector('.sheet')!).backgroundColor,
    ink: getComputedStyle(document.body).color,
    outline: getComputedStyle(document.querySelector('[data-part="wing"]')!).stroke,
  }));
const rgb = (hex: string): string =>
  `rgb(${[1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16)).join(', ')})`;
const on = ({ paper, ink }: { paper: string; ink: string }) => ({
  paper: rgb(paper),
  ink: rgb(ink),
  outline: rgb(ink),
});

test('the sheet follows the device until a paper is chosen, which the browser keeps', async () => {
  expect(await colours()).toEqual(on(papers.light));
  await page.emulateMedia({ colorScheme: 'dark' });
  await expect.poll(colours).toEqual(on(papers.blueprint));
  await page.getByLabel('Paper').selectOption('light');
  await expect.poll(colours).toEqual(on(papers.light));
  await page.emulateMedia({ colorScheme: 'light' });
  await page.getByLabel('Paper').selectOption('blueprint');
  await page.reload();
  await settled(page);
  expect(await colours()).toEqual(on(papers.blueprint));
  await expect
    .poll(() => page.locator('meta[name="theme-color"]').getAttribute('content'))
    .toBe(rgb(papers.blueprint.desk));
});

test('print is black on white whatever paper lies on the screen', async () => {
  await page.getByLabel('Paper').selectOption('blueprint');
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  await expect.poll(colours).toEqual(on({ paper: '#ffffff', ink: '#000000' }));
});

test('in forced colours everything that is drawn takes the colours of the system', async () => {
  await page.emulateMedia({ forcedColors: 'active', colorScheme: 'dark' });
  const system = await page.evaluate(() => {
    const probe = document.createElement('i');
    probe.style.cssText = 'color: CanvasText; background: Canvas';
    document.body.append(probe);
    const { color, backgroundColor } = getComputedStyle(probe);
    probe.remove();
    return { color, backgroundColor };
  });
  expect(system.color).not.toBe(system.backgroundColor);
  expect((await colours()).outline).toBe(system.color);
  await page.locator('[data-chart]').first().scrollIntoViewIfNeeded();
  await page.locator('[data-chart] [data-mark="now"]').first().waitFor();
  const strokes = await page
    .locator('[data-chart] path[stroke]')
    .evaluateAll((lines) => lines.map((line) => getComputedStyle(line).stroke).filter((stroke) => stroke !== 'none'));
  expect(strokes.length).toBeGreaterThan(0);
  for (const stroke of strokes) expect(stroke).not.toBe(system.backgroundColor);
});

test('without motion nothing moves by itself', async () => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  const moving = await page.evaluate(() => document.getAnimations().length);
  expect(moving).toBe(0);
  const timed = await page.evaluate(
    () =>
      [...document.querySelectorAll('*')].filter((element) => {
        const { transitionDuration, animationName } = getComputedStyle(element);
        return animationName !== 'none' || /[1-9]/.test(transitionDuration);
      }).length,
  );
  expect(timed).toBe(0);
});
