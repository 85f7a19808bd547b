import type { AxeBuilder } from '@axe-core/playwright';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeOn } from './axe';
import { misfits, WINDOWS } from './misfits';
import { DESK, openSheet, PHONE, type Sheet, startBrowser } from './sheet';
import { seeAll, views } from './views';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});

/** WCAG 2.2 A and AA, with the order of headings and the landmarks. */
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
/** Looked at by tests of their own. */
const ELSEWHERE = ['color-contrast', 'target-size'];

type Violations = Awaited<ReturnType<AxeBuilder['analyze']>>['violations'];

const told = (violations: Violations): string[] =>
  violations.map(({ id, nodes }) => {
    const places = nodes.map(
      (node) => `${node.target.join(' ')}: ${node.any[0]?.message ?? node.all[0]?.message ?? ''}`,
    );
    return `${id} (${nodes.length}): ${places.slice(0, 3).join(' | ')}`;
  });

async function barriers(page: Page): Promise<string[]> {
  const axe = axeOn(page);
  return told((await axe.withTags(RULES).disableRules(ELSEWHERE).analyze()).violations);
}

async function unreadable(page: Page, places: readonly string[] = ['body']): Promise<string[]> {
  const axe = axeOn(page).withRules('color-contrast');
  const there: string[] = [];
  for (const place of places) if ((await page.locator(place).count()) > 0) there.push(place);
  expect(there).not.toEqual([]);
  for (const place of there) axe.include(place);
  return told((await axe.analyze()).violations);
}

/** Pixels that something reaches beyond the window sideways, without a room of its own that scrolls. */
const beyond = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);

/** Buttons, links, boxes and fields that are smaller than a finger needs, links within a sentence aside (WCAG 2.2, 2.5.8). */
function smallTargets(page: Page, least: number): Promise<string[]> {
  return page.evaluate((size) => {
    const words = (element: Element | null): number => element?.textContent?.trim().length ?? 0;
    const inSentence = (element: Element): boolean =>
      getComputedStyle(element).display === 'inline' && words(element.parentElement) > words(element);
    const small: string[] = [];
    for (const element of document.querySelectorAll('button, a[href], input, select, textarea, summary')) {
      if (!element.checkVisibility({ visibilityProperty: true }) || inSentence(element)) continue;
      if (element.matches('.unseen, .skip, [tabindex="-1"]')) continue;
      // While a dialog is open nothing else can be reached.
      if (document.querySelector('dialog:modal') && !element.closest('dialog')) continue;
      const box = (element.closest('label') ?? element).getBoundingClientRect();
      // Some reach further than they are drawn.
      const reach = getComputedStyle(element, '::before');
      const more = (side: 'top' | 'left'): number =>
        reach.position === 'absolute' && reach.content !== 'none'
          ? Math.max(0, -2 * Number.parseFloat(reach[side]))
          : 0;
      const [width, height] = [box.width + more('left'), box.height + more('top')];
      if (Math.min(width, height) >= size - 0.5) continue;
      const name = element.getAttribute('aria-label') ?? element.textContent?.trim().slice(0, 40);
      small.push(`${element.tagName.toLowerCase()} "${name}" ${Math.round(width)} × ${Math.round(height)}`);
    }
    return small.slice(0, 20);
  }, least);
}

const lay = (page: Page, paper: 'light' | 'blueprint'): Promise<void> =>
  page.evaluate((name) => {
    document.documentElement.dataset.paper = name;
  }, paper);

/** What doesn't fit in which window. */
async function inEveryWindow(page: Page): Promise<string[]> {
  const told: string[] = [];
  for (const { width, height } of WINDOWS) {
    await page.setViewportSize({ width, height });
    let found = await misfits(page);
    // Charts are drawn anew once their room has another width.
    for (let k = 0; k < 5 && found.length > 0; k++) {
      await page.waitForTimeout(300);
      found = await misfits(page);
    }
    told.push(...found.map((sentence) => `${width} × ${height}: ${sentence}`));
  }
  return told;
}

/** 1280 px wide at 400 % (WCAG 2.2, 1.4.10). */
const ZOOMED = { width: 320, height: 256 };

describe.each([
  ['at a desk', DESK, 24],
  ['on a phone', PHONE, 44],
] as const)('%s', (_where, viewport, target) => {
  describe.each(views)('$name', ({ open, part, blueprint, flows }) => {
    let sheet: Sheet;
    beforeAll(async () => {
      sheet = await openSheet(browser, viewport);
      await open(sheet.page);
    });
    afterAll(() => sheet.close());

    // What a page is made of and its colours are the same on every width.
    if (viewport === DESK) {
      test('nothing stands in the way of people who cannot see or use a pointer', async () => {
        expect(await barriers(sheet.page)).toEqual([]);
      });

      test('every word is readable', async () => {
        await lay(sheet.page, 'light');
        expect(await unreadable(sheet.page, part)).toEqual([]);
      });

      if (blueprint) {
        test('every word is readable on blueprint paper', async () => {
          await lay(sheet.page, 'blueprint');
          expect(await unreadable(sheet.page, blueprint)).toEqual([]);
        });
      }
    }

    test(`every target is at least ${target} px high and wide`, async () => {
      expect(await smallTargets(sheet.page, target)).toEqual([]);
    });

    // What the width decides is asked of widths; a finger's window has its own targets.
    if (viewport === DESK) {
      test('in every window nothing overlaps, is cut off, breaks inside a word or reaches beyond', async () => {
        expect(await inEveryWindow(sheet.page)).toEqual([]);
      });
    } else {
      test('nothing reaches beyond the window', async () => {
        expect(await beyond(sheet.page)).toBeLessThanOrEqual(0);
      });
    }

    if (viewport === PHONE && flows) {
      test('nothing reaches beyond a window at 400 %', async () => {
        await sheet.page.setViewportSize(ZOOMED);
        await expect.poll(() => beyond(sheet.page)).toBeLessThanOrEqual(0);
      });
    }

    test('nothing is written as an error', () => {
      expect(sheet.troubles).toEqual([]);
    });
  });
});

test('every sheet of the demo fits into every window', { timeout: 600_000 }, async () => {
  const sheet = await openSheet(browser, { width: 1920, height: 900 });
  const { page } = sheet;
  const told: string[] = [];
  for (const entry of await page.locator('[data-sheet]').all()) {
    await page.setViewportSize({ width: 1920, height: 900 });
    const title = await entry.textContent();
    await entry.click();
    await seeAll(page);
    told.push(...(await inEveryWindow(page)).map((sentence) => `${title}: ${sentence}`));
  }
  expect(told).toEqual([]);
  await sheet.close();
});
