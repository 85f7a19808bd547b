import { fileURLToPath } from 'node:url';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { findChromium, launch } from '../../.ci/chromium.mjs';

/**
 * A browser's profile with one page, for one kind of window. It keeps the compiled code of the page and the process that draws it,
 * which cost more to make than the sheet takes to open.
 */
export interface Room {
  readonly context: BrowserContext;
  readonly page: Page;
  /** The page shows a sheet that the next one can take the place of. */
  stands: boolean;
  /** Takes down each rule of the policy that a page in it breaks. */
  hear(violation: string): void;
}

export interface Window {
  readonly width: number;
  readonly height: number;
}

/** What comes in at the microphone of that browser: a test writes it before it listens. */
export const AT_THE_MICROPHONE = fileURLToPath(new URL('../../.cache/at-the-microphone.wav', import.meta.url));
const MICROPHONE = [
  '--use-fake-device-for-media-stream',
  '--use-fake-ui-for-media-stream',
  `--use-file-for-fake-audio-capture=${AT_THE_MICROPHONE}`,
];

let started: Browser | undefined;
const lent = new Set<Room>();
const empty = new WeakMap<Browser, Map<string, Room[]>>();

/** The browser that all files of this process share; it ends with the process. What an earlier file left open is closed. */
export async function startBrowser(): Promise<Browser> {
  await Promise.all([...lent].map(closeRoom));
  if (!started?.isConnected()) started = await launch(await findChromium(), MICROPHONE);
  return started;
}

const kindOf = ({ width, height }: Window): string => `${width} × ${height}`;

/** A room whose page nobody uses; it may have been used before. */
export async function lendRoom(browser: Browser, window: Window): Promise<Room> {
  const room = empty.get(browser)?.get(kindOf(window))?.pop() ?? (await newRoom(browser, window, 'block'));
  lent.add(room);
  return room;
}

/** How a page looks that nobody has set up. */
const UNSET = { media: null, colorScheme: null, reducedMotion: null, forcedColors: null } as const;

/** Takes a room back: other pages in it are closed, and nobody listens to its own any more. */
export async function giveBack(browser: Browser, window: Window, room: Room): Promise<void> {
  const { context, page } = room;
  page.removeAllListeners();
  await Promise.all(context.pages().map((each) => each !== page && each.close()));
  await page.setViewportSize(window);
  await page.emulateMedia(UNSET);
  lent.delete(room);
  const rooms = empty.get(browser) ?? new Map<string, Room[]>();
  empty.set(browser, rooms.set(kindOf(window), [...(rooms.get(kindOf(window)) ?? []), room]));
}

/** A room of its own, never to be given to another. `workers`: whether the page may keep itself for the flying field. */
export async function newRoom(browser: Browser, viewport: Window, workers: 'allow' | 'block'): Promise<Room> {
  const context = await browser.newContext({ viewport, hasTouch: viewport.width < 600, serviceWorkers: workers });
  const room: Room = { context, page: await context.newPage(), stands: false, hear: () => {} };
  await context.exposeFunction('reportViolation', (text: string) => room.hear(text));
  await context.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      const { reportViolation } = globalThis as unknown as { reportViolation(text: string): void };
      reportViolation(`policy: ${event.violatedDirective} refused ${event.blockedURI || event.sample}`);
    });
  });
  return room;
}

export async function closeRoom(room: Room): Promise<void> {
  lent.delete(room);
  await room.context.close();
}
