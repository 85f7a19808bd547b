import type { Browser, Page } from 'playwright-core';
import { beforeAll, beforeEach, expect, test } from 'vitest';
import { figure, openSheet, type Sheet, settled, startBrowser } from './sheet';

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

/** What has the focus: its label, else its words. */
const focused = (): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement;
    return (
      at?.getAttribute('aria-label') ??
      (at as HTMLInputElement | null)?.labels?.[0]?.textContent ??
      at?.textContent ??
      ''
    );
  });

/** Goes on by Tab alone until something has the focus; every place on the way shows that it has it. */
async function tabTo(wanted: string | RegExp, key: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> {
  for (let k = 0; k < 400; k++) {
    await page.keyboard.press(key);
    const here = await focused();
    if (typeof wanted === 'string' ? here === wanted : wanted.test(here)) return;
  }
  throw new Error(`Nothing like ${wanted} was reached by ${key}.`);
}

/** Goes along the words of the group that has the focus until it is at the wanted one. */
async function alongTo(wanted: string, key: 'ArrowRight' | 'ArrowLeft' = 'ArrowRight'): Promise<void> {
  for (let k = 0; k < 60 && (await focused()) !== wanted; k++) await page.keyboard.press(key);
  expect(await focused()).toBe(wanted);
}

/** Types in place of what stands in the field with the focus. */
async function type(text: string): Promise<void> {
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
  await settled(page);
}

test('the whole job is done by keys alone', async () => {
  // The demo is opened anew.
  await tabTo('Open');
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').waitFor();
  await tabTo(/^The demo/);
  await page.keyboard.press('Enter');
  await settled(page);

  // The way past the words at the top.
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  await tabTo('Go to the pieces', 'Tab');
  await page.keyboard.press('Enter');
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('pieces');

  // A slide moves by arrows.
  const cg = await figure(page, 'balance.cg_x');
  await tabTo('engine station');
  for (let k = 0; k < 10; k++) await page.keyboard.press('ArrowRight');
  await settled(page);
  await expect.poll(() => figure(page, 'balance.cg_x')).not.toBe(cg);

  // A value is typed.
  const mass = await figure(page, 'parts.mass');
  await tabTo('tip weight, value');
  await type('26 g');
  await expect.poll(() => figure(page, 'parts.mass')).not.toBe(mass);
  // What changed is said once, after the hand has come to rest.
  await expect.poll(() => page.locator('[data-spoken]').textContent()).toContain('All-up weight: 855\u00a0g.');

  // Another material for the tail: the picked one of a group takes the focus, arrows pick the next.
  const before = await figure(page, 'parts.mass');
  await tabTo(/^balsa–ply, 4 mm/);
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => figure(page, 'parts.mass')).not.toBe(before);
  await settled(page);

  // A chart is read as a table.
  await tabTo(/^\d+, CG against engine station/, 'Shift+Tab');
  await alongTo('Table of values');
  await page.keyboard.press('Enter');
  await expect.poll(() => page.locator('.chart-figures[open] td').count()).toBeGreaterThan(10);

  // A part is put on the scale.
  await tabTo(/^Sheet 1 of /, 'Shift+Tab');
  await page.keyboard.press('Enter');
  await tabTo('Decide');
  await alongTo('Weights');
  await page.keyboard.press('Enter');
  await tabTo('1, Weight and balance: commands');
  await alongTo('Open Weight and balance');
  await page.keyboard.press('Enter');
  await tabTo('Fin and rudder, weighed');
  await type('11 g');
  await expect.poll(() => page.locator('[data-value="parts.fin.mass"]').first().textContent()).toBe('11\u00a0g');

  // The design becomes the baseline, and the last edits are taken back.
  await tabTo('Take this design as the baseline');
  await page.keyboard.press('Enter');
  await expect.poll(() => page.locator('[data-change="parts.mass"]').textContent()).toBe('0');
  await tabTo('Open', 'Shift+Tab');
  await alongTo('Undo');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Enter');
  await expect.poll(() => page.locator('[data-value="parts.fin.mass"]').first().textContent()).not.toBe('11\u00a0g');

  // It is saved to a file.
  await alongTo('Save', 'ArrowLeft');
  const saved = page.waitForEvent('download');
  await page.keyboard.press('Enter');
  expect((await saved).suggestedFilename()).toMatch(/^quern-25.*\.tetherwright\.json$/);
  expect(sheet.troubles).toEqual([]);
});

test('whatever has the focus shows it, by an outline that is seen against paper', async () => {
  const unseen: string[] = [];
  for (let k = 0; k < 150; k++) {
    await page.keyboard.press('Tab');
    const trouble = await page.evaluate(() => {
      const at = document.activeElement;
      if (!at || at === document.body) return '';
      const shows = (element: Element | null): boolean => {
        if (!element) return false;
        const { outlineStyle, outlineWidth, borderBottomColor } = getComputedStyle(element);
        const focus = getComputedStyle(document.documentElement).getPropertyValue('--focus');
        const probe = document.createElement('i');
        probe.style.color = 'var(--focus)';
        document.body.append(probe);
        const colour = getComputedStyle(probe).color;
        probe.remove();
        return (
          focus !== '' &&
          ((outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2) || borderBottomColor === colour)
        );
      };
      // A radio of a group of swatches hands its outline to its label; an editor's room to the field in it.
      return shows(at) || shows(at.closest('label')) || shows(at.closest('.cm-editor'))
        ? ''
        : `${at.tagName} ${at.className} ${at.getAttribute('aria-label') ?? at.textContent?.slice(0, 30)}`;
    });
    if (trouble !== '') unseen.push(trouble);
  }
  expect([...new Set(unseen)]).toEqual([]);
});
