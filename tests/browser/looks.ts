import type { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { axeOn } from './axe';

/** WCAG 2.2 A and AA, with the order of headings and the landmarks. */
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
/** Looked at by a test of its own. */
const ELSEWHERE = ['target-size'];

type Violations = Awaited<ReturnType<AxeBuilder['analyze']>>['violations'];

const told = (violations: Violations): string[] =>
  violations.map(({ id, nodes }) => {
    const places = nodes.map(
      (node) => `${node.target.join(' ')}: ${node.any[0]?.message ?? node.all[0]?.message ?? ''}`,
    );
    return `${id} (${nodes.length}): ${places.slice(0, 3).join(' | ')}`;
  });

/** What stands in the way of somebody in some places, or on the whole page. */
export async function barriers(page: Page, places?: readonly string[]): Promise<string[]> {
  const axe = await axeIn(page, places);
  return told((await axe.withTags(RULES).disableRules(ELSEWHERE).analyze()).violations);
}

/** What cannot be read for its colours. */
export async function unreadable(page: Page, places: readonly string[]): Promise<string[]> {
  const axe = await axeIn(page, places);
  return told((await axe.withRules('color-contrast').analyze()).violations);
}

/** Looks at those of the places that are there; at the whole page, with the rules for it, where none is named. */
async function axeIn(page: Page, places: readonly string[] | undefined): Promise<AxeBuilder> {
  const axe = axeOn(page);
  if (!places) return axe;
  const there: string[] = [];
  for (const place of places) if ((await page.locator(place).count()) > 0) there.push(place);
  expect(there).not.toEqual([]);
  for (const place of there) axe.include(place);
  return axe;
}

/** Pixels that something reaches beyond the window sideways, without a room of its own that scrolls. */
export const beyond = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);

/** Buttons, links, boxes and fields that are smaller than a finger needs, links within a sentence aside (WCAG 2.2, 2.5.8). */
export function smallTargets(page: Page, least: number): Promise<string[]> {
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
