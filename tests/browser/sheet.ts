import type { Browser, BrowserContext, Page } from 'playwright-core';
import { inject } from 'vitest';
import { findChromium, launch } from '../../.ci/chromium.mjs';

export const DESK = { width: 1280, height: 900 };
export const PHONE = { width: 360, height: 740 };

export const startBrowser = async (): Promise<Browser> => launch(await findChromium());

/** A page of the built sheet, with everything that went wrong in it. */
export interface Sheet {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Errors written or thrown, rules of the policy broken, files that could not be had: one sentence each. */
  readonly troubles: readonly string[];
  close(): Promise<void>;
}

/** Opens the sheet as somebody does who was never there before, and waits until it has settled. */
export async function openSheet(browser: Browser, viewport = DESK): Promise<Sheet> {
  const context = await browser.newContext({ viewport, acceptDownloads: true, hasTouch: viewport.width < 600 });
  const troubles: string[] = [];
  await context.exposeFunction('reportViolation', (text: string) => troubles.push(text));
  await context.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      const report = (globalThis as unknown as { reportViolation(text: string): void }).reportViolation;
      report(`policy: ${event.violatedDirective} refused ${event.blockedURI || event.sample}`);
    });
  });
  const page = await context.newPage();
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning')
      troubles.push(`${message.type()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => troubles.push(`thrown: ${error.message}`));
  page.on('response', (response) => {
    if (response.status() >= 400) troubles.push(`${response.status()}: ${response.url()}`);
  });
  await page.goto(inject('address'));
  await settled(page);
  return { page, context, troubles, close: () => context.close() };
}

/** Waits until every number of the sheet answers for the design as it stands. */
export async function settled(page: Page): Promise<void> {
  await page.getByText('all settled').first().waitFor({ timeout: 20_000 });
}
