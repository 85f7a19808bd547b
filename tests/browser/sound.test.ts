import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { DESK, openSheet, PHONE, type Sheet, settled, startBrowser } from './sheet';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});

/** Opens every piece and scrolls through every sheet, so that all that waits until it's on the screen has been there. */
async function seeAll(page: Page): Promise<void> {
  for (const sheet of await page.getByRole('navigation', { name: 'Sheets' }).getByRole('button').all()) {
    await sheet.click();
    await seeSheet(page);
  }
}

async function seeSheet(page: Page): Promise<void> {
  const folded = page.locator('.fold[aria-expanded="false"]');
  while ((await folded.count()) > 0) await folded.first().click();
  const height = await page.evaluate(() => document.documentElement.scrollHeight);
  for (let y = 0; y <= height; y += 400) {
    await page.evaluate((to) => window.scrollTo(0, to), y);
    await page.waitForTimeout(50);
  }
  await page.evaluate(() => window.scrollTo(0, 0));
  await settled(page);
}

describe.each([
  ['at a desk', DESK],
  ['on a phone', PHONE],
])('%s', (_where, viewport) => {
  let sheet: Sheet;
  beforeAll(async () => {
    sheet = await openSheet(browser, viewport);
    await seeAll(sheet.page);
  });
  afterAll(() => sheet.close());

  test('nothing breaks the policy, is written as an error or cannot be had', () => {
    expect(sheet.troubles).toEqual([]);
  });
});

describe('the policy', () => {
  test('comes with every answer, and the page says the same for hosts that send none', async () => {
    const answer = await fetch(inject('address'));
    const policy = answer.headers.get('content-security-policy');
    expect(policy).toContain("script-src 'self'");
    expect(policy).not.toMatch(/unsafe-eval/);
    const { page, close } = await openSheet(browser);
    expect(await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content')).toBe(policy);
    const worker = await page.evaluate(() =>
      performance
        .getEntriesByType('resource')
        .map((entry) => entry.name)
        .find((name) => name.includes('worker')),
    );
    expect((await fetch(worker ?? '')).headers.get('content-security-policy')).toBe(policy);
    await close();
  });

  test('refuses code made from strings, and the refusal is seen here', async () => {
    const { page, troubles, close } = await openSheet(browser);
    // A task of the page's own: what the driver runs itself stands outside the policy.
    const made = await page.evaluate(
      () =>
        new Promise((resolve) => {
          setTimeout(() => {
            try {
              resolve(new Function('return 2')());
            } catch (error) {
              resolve((error as Error).name);
            }
          });
        }),
    );
    expect(made).toBe('EvalError');
    await expect.poll(() => troubles.some((trouble) => trouble.startsWith('policy: script-src'))).toBe(true);
    await close();
  });
});
