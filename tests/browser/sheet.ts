import type { Browser, BrowserContext, Locator, Page } from 'playwright-core';
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
  const context = await browser.newContext({ viewport, hasTouch: viewport.width < 600 });
  const troubles: string[] = [];
  await context.exposeFunction('reportViolation', (text: string) => troubles.push(text));
  await context.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      const { reportViolation } = globalThis as unknown as { reportViolation(text: string): void };
      reportViolation(`policy: ${event.violatedDirective} refused ${event.blockedURI || event.sample}`);
    });
  });
  const page = await context.newPage();
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') {
      troubles.push(`${message.type()}: ${message.text()}`);
    }
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
  await page.locator('[data-state="settled"]').waitFor({ timeout: 20_000 });
}

/** Shows the sheet of this title, as a press in the list of sheets does. */
export async function showSheet(page: Page, title: string): Promise<void> {
  const sheets = page.getByRole('navigation', { name: 'Sheets' });
  await sheets.getByRole('button', { name: new RegExp(`^\\d+ ${title}`) }).click();
}

/** Waits until what was changed is in the browser's own store. */
export async function stored(page: Page): Promise<void> {
  await page.locator('[data-stored="true"]').waitFor();
}

export const slide = (page: Page, variable: string): Locator =>
  page.locator(`input[type="range"][data-path="${variable}"]`);

export const figure = async (page: Page, path: string): Promise<string> =>
  ((await page.locator(`output[data-figure="${path}"]`).textContent()) ?? '').trim();

export interface Place {
  readonly x: number;
  readonly y: number;
}

/** The middle of something drawn, in pixels of the window. */
export async function placeOf(drawn: Locator): Promise<Place> {
  return drawn.first().evaluate((element) => {
    const { left, right, top, bottom } = element.getBoundingClientRect();
    return { x: (left + right) / 2, y: (top + bottom) / 2 };
  });
}

/** Where a slide's handle is when it stands at its present number. */
export async function handleOf(control: Locator): Promise<Place> {
  await control.scrollIntoViewIfNeeded();
  return control.evaluate((element: HTMLInputElement) => {
    const { left, top, width, height } = element.getBoundingClientRect();
    const [low, high] = [Number(element.min), Number(element.max)];
    return { x: left + (width * (element.valueAsNumber - low)) / (high - low), y: top + height / 2 };
  });
}
