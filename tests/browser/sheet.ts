import type { Browser, BrowserContext, Locator, Page } from 'playwright-core';
import { inject } from 'vitest';
import { openSmallDesign } from './designs';
import { closeRoom, giveBack, lendRoom, newRoom, type Window } from './rooms';

export { startBrowser } from './rooms';

export const DESK = { width: 1280, height: 900 };
export const PHONE = { width: 360, height: 740 };

/** What the driver writes where the page would keep itself for the flying field and may not. */
const NOT_KEPT = 'Service Worker registration blocked by Playwright';

/** A page of the built sheet, with everything that went wrong in it. */
export interface Sheet {
  readonly page: Page;
  /** Whoever asks for it may do with it what they like: no other sheet is opened in it then. */
  readonly context: BrowserContext;
  /** Errors written or thrown, rules of the policy broken, files that could not be had: one sentence each. */
  readonly troubles: readonly string[];
  close(): Promise<void>;
}

/**
 * Opens the small design in the place of the demo, and waits until it has settled. Where a page stands already the design is opened there,
 * which takes a sixth of what a page takes: there may be earlier designs beside it, and its opening can be taken back. With `anew` it is
 * as for somebody who was never there before. With `shipped` it is as a builder gets it: the whole demo is there, and the page keeps
 * itself for the flying field, which takes as long as opening it.
 */
export async function openSheet(
  browser: Browser,
  viewport: Window = DESK,
  { shipped = false, anew = shipped }: { readonly shipped?: boolean; readonly anew?: boolean } = {},
): Promise<Sheet> {
  const room = await (shipped ? newRoom(browser, viewport, 'allow') : lendRoom(browser, viewport));
  let [own, open] = [shipped, true];
  const troubles: string[] = [];
  room.hear = (violation) => troubles.push(violation);
  const { page } = room;
  // As with polls: on a machine that is busy a step takes its time.
  page.setDefaultTimeout(60_000);
  page.on('console', (message) => {
    const wrong = message.type() === 'error' || message.type() === 'warning';
    // A browser looks for a picture of its own where a picture alone is shown, as while the store is emptied.
    const itsOwn = message.location().url.endsWith('/favicon.ico');
    if (wrong && !itsOwn && message.text() !== NOT_KEPT) {
      troubles.push(`${message.type()}: ${message.text()}`);
    }
  });
  page.on('pageerror', (error) => troubles.push(`thrown: ${error.message}`));
  page.on('response', (response) => {
    if (response.status() >= 400) troubles.push(`${response.status()}: ${response.url()}`);
  });
  const address = inject(shipped ? 'shipped' : 'address');
  if (anew || !room.stands || !(await opensBeside(page, address))) {
    await forget(page, new URL(address));
    await page.goto(address);
  }
  await settled(page);
  // What is done to a page for the first visit is not taken back.
  room.stands = !anew;
  return {
    page,
    troubles,
    get context() {
      own = true;
      return room.context;
    },
    async close() {
      if (open) await (own ? closeRoom(room) : giveBack(browser, viewport, room));
      open = false;
    },
  };
}

/** Opens the small design where another was shown; false where that page can't be used. */
async function opensBeside(page: Page, address: string): Promise<boolean> {
  const usable = await page.evaluate(
    (at) =>
      location.href.replace(/#.*$/, '') === at &&
      localStorage.length === 0 &&
      document.querySelector('[data-state="settled"]') !== null &&
      document.querySelector('dialog[open], [role="menu"]') === null,
    address,
  );
  if (!usable) return false;
  await openSmallDesign(page);
  await page.evaluate(() => {
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    window.scrollTo(0, 0);
  });
  return true;
}

/** Empties all that was kept in the browser before, from a page of the same origin that keeps nothing by itself. */
async function forget(page: Page, address: URL): Promise<void> {
  await page.goto(new URL('icon.svg', address).href);
  await page.evaluate(() => sessionStorage.clear());
  const session = await page.context().newCDPSession(page);
  await session.send('Storage.clearDataForOrigin', { origin: address.origin, storageTypes: 'all' });
  await session.detach();
}

/** Waits until every number of the sheet answers for the design as it stands. */
export async function settled(page: Page): Promise<void> {
  await page.locator('[data-state="settled"]').waitFor();
}

/** Shows the sheet of this title, as a press in the list of sheets does; where the window is not wide the list opens first. */
export async function showSheet(page: Page, title: string): Promise<void> {
  const opener = page.locator('[data-opens="sheets"][aria-expanded="false"]');
  if ((await opener.count()) > 0) await opener.click();
  await page
    .locator('[data-sheet]')
    .filter({ hasText: new RegExp(`^${title}$`) })
    .click();
}

/** Waits until what was changed is in the browser's own store. */
export async function stored(page: Page): Promise<void> {
  await page.locator('[data-stored="true"]').waitFor();
}

/** Picks from a list by typing a title and Enter, as by keys. */
export async function pickFrom(field: Locator, title: string): Promise<void> {
  await field.fill(title);
  await field.page().getByRole('option', { name: title, exact: true }).first().waitFor();
  await field.press('Enter');
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
