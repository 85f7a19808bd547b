import type { AxeBuilder } from '@axe-core/playwright';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeOn } from './axe';
import { DESK, openSheet, PHONE, type Sheet, startBrowser } from './sheet';
import { views } from './views';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

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

async function unreadable(page: Page, sample: readonly string[] | undefined): Promise<string[]> {
  const axe = axeOn(page).withRules('color-contrast');
  for (const place of sample ?? []) if ((await page.locator(place).count()) > 0) axe.include(place);
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

describe.each([
  ['at a desk', DESK, 24],
  ['on a phone', PHONE, 44],
] as const)('%s', (_where, viewport, target) => {
  describe.each(views)('$name', ({ open, sample }) => {
    let sheet: Sheet;
    beforeAll(async () => {
      sheet = await openSheet(browser, viewport);
      await open(sheet.page);
    }, 120_000);
    afterAll(() => sheet.close());

    // A long view is made of the same pieces on every width: it's looked at once.
    if (viewport === DESK || !sample) {
      test('nothing stands in the way of people who cannot see or use a pointer', async () => {
        expect(await barriers(sheet.page)).toEqual([]);
      }, 180_000);
    }

    // Words have the same colours on every width.
    if (viewport === DESK) {
      test.each(['light', 'blueprint'] as const)(
        'every word is readable on %s paper',
        async (paper) => {
          await lay(sheet.page, paper);
          expect(await unreadable(sheet.page, sample)).toEqual([]);
        },
        180_000,
      );
    }

    test('nothing reaches beyond the window', async () => {
      expect(await beyond(sheet.page)).toBeLessThanOrEqual(0);
    });

    test(`every target is at least ${target} px high and wide`, async () => {
      expect(await smallTargets(sheet.page, target)).toEqual([]);
    });

    test('nothing is written as an error', () => {
      expect(sheet.troubles).toEqual([]);
    });
  });
});

describe.each(views.filter(({ sample }) => sample))('$name, at 400 %', ({ open }) => {
  // 1280 px wide at 400 % (WCAG 2.2, 1.4.10).
  const ZOOMED = { width: 320, height: 256 };
  test('flows into the window', async () => {
    const sheet = await openSheet(browser, ZOOMED);
    await open(sheet.page);
    expect(await beyond(sheet.page)).toBeLessThanOrEqual(0);
    await sheet.close();
  }, 120_000);
});
