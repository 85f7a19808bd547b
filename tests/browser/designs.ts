import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { BrowserContext, Page } from 'playwright-core';

/** A design of few pieces on three sheets; most tests look at this one, since the demo, with every study on it, takes longer. */
export const QUERN = fileURLToPath(new URL('../designs/quern.tetherwright.json', import.meta.url));
/** The same model on a windy day, with weights on hand, a table and levers. */
export const FLYING_DAY = fileURLToPath(new URL('../designs/flying-day.tetherwright.json', import.meta.url));

/** Lets the page find the small design where it looks for the demo. */
export async function withSmallDemo(context: BrowserContext): Promise<void> {
  const body = `export default ${JSON.stringify(readFileSync(QUERN, 'utf8'))}`;
  await context.route(/\/quern-25\.tetherwright-[^/]*\.js$/, (route) =>
    route.fulfill({ contentType: 'text/javascript', body }),
  );
}

/** Opens a file as somebody does who picks it; `file`: its path, or its name and content. */
export async function openDesign(page: Page, file: Parameters<Page['setInputFiles']>[1]): Promise<void> {
  await page.locator('input[type="file"]').first().setInputFiles(file);
}

let opened = 0;

/** Opens the small design once more, and waits until it is the one that is shown. */
export async function openSmallDesign(page: Page): Promise<void> {
  opened += 1;
  const name = `opened-${opened}.tetherwright.json`;
  await openDesign(page, { name, mimeType: 'application/json', buffer: readFileSync(QUERN) });
  await page.locator(`button[title="Take back: opening ${name}"]`).waitFor();
}
