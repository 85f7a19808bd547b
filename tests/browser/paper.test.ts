import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { papers } from '../../workbook/theme/tokens';
import { DESK, openSheet, type Sheet, settled, startBrowser } from './sheet';

let sheet: Sheet;
let page: Page;
beforeAll(async () => {
  const browser: Browser = await startBrowser();
  sheet = await openSheet(browser);
  page = sheet.page;
});
beforeEach(async () => {
  await page.emulateMedia({ media: null, colorScheme: 'light', forcedColors: 'none', reducedMotion: 'no-preference' });
  await page.setViewportSize(DESK);
});
afterAll(() => sheet.close());

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

/** Width of A4 within the margins of the page, px at 96 an inch. */
const A4 = 703;
/** Pages of what the browser makes of the page as it stands. */
const printedPages = async (format: 'A4' | 'Letter' = 'A4'): Promise<number> =>
  ((await page.pdf({ format })).toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length;
/** What stands on paper: words that are too small, fields that are seen, charts without a picture, and what is wider than the page. */
const onPaper = () =>
  page.evaluate(() => {
    const seen = (element: Element): boolean => element.getClientRects().length > 0;
    const small = new Set<string>();
    const words = document.createTreeWalker(document.querySelector('.sheet')!, NodeFilter.SHOW_TEXT);
    for (let node = words.nextNode(); node; node = words.nextNode()) {
      const element = node.parentElement!;
      if (node.nodeValue!.trim() === '' || !seen(element)) continue;
      const drawn = element.closest('svg');
      const scale = drawn ? drawn.getBoundingClientRect().width / Number(drawn.getAttribute('width')) : 1;
      const points = Number.parseFloat(getComputedStyle(element).fontSize) * scale * 0.75;
      if (points < 7) small.add(`${points.toFixed(2)} pt: ${node.nodeValue!.trim()}`);
    }
    const fields = [...document.querySelectorAll('input, textarea, summary, [role="slider"], .fold, .set-line, nav')];
    return {
      small: [...small],
      fields: fields.filter(seen).map((element) => element.outerHTML.slice(0, 80)),
      bare: [...document.querySelectorAll('[data-chart]')].filter((chart) => !chart.querySelector('svg')).length,
      waiting: document.querySelectorAll('#pieces [aria-busy="true"]').length,
      wider: document.documentElement.scrollWidth - window.innerWidth,
    };
  });
const FINE = { small: [], fields: [], bare: 0, waiting: 0, wider: 0 };

describe('print', () => {
  test('the first print of the open sheet has all its pages, and nothing moves while they are made', async () => {
    // Heard before the page hears it and goes back to the screen.
    await sheet.context.addInitScript(() => {
      const laidOut: string[] = [];
      Object.assign(window, { laidOut });
      window.addEventListener('afterprint', () => laidOut.push(document.querySelector('.frame')!.outerHTML));
    });
    await page.reload();
    await settled(page);
    await page.evaluate(() => {
      const { laidOut } = window as unknown as { laidOut: string[] };
      window.addEventListener('beforeprint', () => laidOut.push(document.querySelector('.frame')!.outerHTML));
    });
    const first = await printedPages();
    const [before, after] = await page.evaluate(() => (window as unknown as { laidOut: string[] }).laidOut);
    expect(before).toContain('<h2 class="on-paper sheet-heading">Sheet 1 of 3: Decide</h2>');
    expect(after === before).toBe(true);
    expect(first).toBeGreaterThan(3);
    expect(await printedPages()).toBe(first);
  });

  test('on paper stand texts in the place of fields, none under 7 pt, and every chart', async () => {
    await page.setViewportSize({ width: A4, height: 900 });
    await page.emulateMedia({ media: 'print' });
    expect(await onPaper()).toEqual(FINE);
    const drawing = page.locator('.paper-drawing svg').first();
    expect(await drawing.textContent()).toMatch(/scale 1 : (1|2|5|10|20|50), sizes in mm/);
    // What says that it is 50 mm long is.
    const pixels = await page
      .locator('.paper-drawing [data-rule] path')
      .first()
      .evaluate((path: SVGPathElement) => path.getBBox().width * path.getScreenCTM()!.a);
    expect((pixels * 25.4) / 96).toBeCloseTo(50, 1);
    expect(await page.locator('.variable-value.on-paper').first().textContent()).toBe('−150 mm');
  });

  test('Ctrl+P asks what to print, and the whole set comes on A4 and on Letter with what no screen has shown', async () => {
    await page.evaluate(() => {
      window.print = () => document.body.setAttribute('data-printed', '');
    });
    await page.keyboard.press('Control+p');
    await page.getByLabel('The whole set: 3 sheets').check();
    await page.getByRole('dialog').getByRole('button', { name: 'Print', exact: true }).click();
    await page.locator('[data-printed]').waitFor();
    expect(await page.getByRole('dialog').count()).toBe(0);
    await page.setViewportSize({ width: A4, height: 900 });
    await page.emulateMedia({ media: 'print' });
    expect(await onPaper()).toEqual(FINE);
    expect(await page.locator('.sheet-heading').allTextContents()).toEqual([
      'Sheet 1 of 3: Decide',
      'Sheet 2 of 3: Model',
      'Sheet 3 of 3: Weights',
    ]);
    // Folded on the screen, whole on paper; the names of the parts are words, not only buttons.
    expect(await page.locator('#cell-wing .field').count()).toBeGreaterThan(5);
    expect(await page.locator('[data-part="fin"] .part-title').isVisible()).toBe(true);
    const rules = await page.locator('.frame > style').textContent();
    expect(rules).toContain('"sheet: 2 of 3, Model"');
    await page.emulateMedia({ media: null });
    await page.setViewportSize(DESK);
    await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
    await page.locator('.one-sheet').nth(1).waitFor({ state: 'detached' });
    // The browser's own ways to print go by the choice.
    expect(await printedPages('Letter')).toBeGreaterThan(12);
    await page.evaluate(() => localStorage.removeItem('tetherwright.printed'));
  });
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
  await page.getByLabel('Paper').selectOption('device');
});

test('print is black on white whatever paper lies on the screen', async () => {
  await page.getByLabel('Paper').selectOption('blueprint');
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  await expect.poll(colours).toEqual(on({ paper: '#ffffff', ink: '#000000' }));
  await page.emulateMedia({ media: null, colorScheme: 'light' });
  await page.getByLabel('Paper').selectOption('device');
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
