import type { Browser, CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { barriers, beyond, smallTargets, unreadable } from './looks';
import { inEveryWindow } from './misfits';
import { DESK, openSheet, PHONE, type Sheet, showSheet, startBrowser } from './sheet';
import { type View, views } from './views';

let browser: Browser;
let sheet: Sheet | undefined;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => sheet?.close());

const lay = (page: Page, paper: 'light' | 'blueprint'): Promise<void> =>
  page.evaluate((name) => {
    document.documentElement.dataset.paper = name;
  }, paper);

const sessions = new WeakMap<Page, CDPSession>();

/** A finger in place of a pointer, as far as the page can ask. It lasts as long as the session that asked for it. */
async function byFinger(page: Page, enabled: boolean): Promise<void> {
  const session = sessions.get(page) ?? (await page.context().newCDPSession(page));
  sessions.set(page, session);
  await session.send('Emulation.setTouchEmulationEnabled', { enabled, maxTouchPoints: 1 });
}

/** Away from what was opened, back to the first sheet at a desk. */
async function leave(page: Page): Promise<void> {
  await byFinger(page, false);
  await page.setViewportSize(DESK);
  await lay(page, 'light');
  const layers = page.locator('dialog:modal, [role="menu"]:visible');
  for (let k = 0; k < 5 && (await layers.count()) > 0; k++) await page.keyboard.press('Escape');
  await showSheet(page, 'Decide');
  await page.evaluate(() => window.scrollTo(0, 0));
}

/** The view, on the page that stands already; on a page of its own where it can't be reached from there. */
async function visit({ open }: View): Promise<Sheet> {
  if (sheet) {
    try {
      await leave(sheet.page);
      await open(sheet.page);
      return sheet;
    } catch {
      await sheet.close();
    }
  }
  sheet = await openSheet(browser, DESK);
  await open(sheet.page);
  return sheet;
}

/** 1280 px wide at 400 % (WCAG 2.2, 1.4.10). */
const ZOOMED = { width: 320, height: 256 };

describe.each(views)('$name', (view) => {
  let page: Page;
  beforeAll(async () => {
    ({ page } = await visit(view));
  });

  test('nothing stands in the way of people who cannot see or use a pointer, and every word is readable', async () => {
    expect(await barriers(page, view.part)).toEqual([]);
  });

  const { blueprint } = view;
  if (blueprint) {
    test('every word is readable on blueprint paper', async () => {
      await lay(page, 'blueprint');
      expect(await unreadable(page, blueprint)).toEqual([]);
      await lay(page, 'light');
    });
  }

  test('every target is at least 24 px high and wide', async () => {
    expect(await smallTargets(page, 24)).toEqual([]);
  });

  test('in every window nothing overlaps, is cut off, breaks inside a word or reaches beyond', async () => {
    expect(await inEveryWindow(page, view.windows)).toEqual([]);
  });

  test('on a phone every target is at least 44 px high and wide', async () => {
    await page.setViewportSize(PHONE);
    await byFinger(page, true);
    await expect.poll(() => page.evaluate(() => matchMedia('(pointer: coarse)').matches)).toBe(true);
    expect(await smallTargets(page, 44)).toEqual([]);
    expect(await beyond(page)).toBeLessThanOrEqual(0);
  });

  if (view.flows) {
    test('nothing reaches beyond a window at 400 %', async () => {
      await page.setViewportSize(ZOOMED);
      await expect.poll(() => beyond(page)).toBeLessThanOrEqual(0);
    });
  }

  test('nothing is written as an error', () => {
    expect(sheet?.troubles).toEqual([]);
  });
});
