import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';

/** A design of few pieces on three sheets; most tests look at this one, since the demo, with every study on it, takes longer. */
export const QUERN = fileURLToPath(new URL('../designs/quern.tetherwright.json', import.meta.url));
/** The same model on a windy day, with weights on hand, a table and levers. */
export const FLYING_DAY = fileURLToPath(new URL('../designs/flying-day.tetherwright.json', import.meta.url));

/** Opens a file as somebody does who picks it; `file`: its path, or its name and content. */
export async function openDesign(page: Page, file: Parameters<Page['setInputFiles']>[1]): Promise<void> {
  await page.locator('input[type="file"]').first().setInputFiles(file);
}

let opened = 0;

/** Opens the small design once more, after an empty one, so that nothing which an earlier test has unfolded or typed stays in its place. */
export async function openSmallDesign(page: Page): Promise<void> {
  const small = readFileSync(QUERN, 'utf8');
  const empty = JSON.stringify({ ...JSON.parse(small), sheets: [{ id: 'empty', title: 'Empty', pieces: [] }] });
  for (const text of [empty, small]) {
    opened += 1;
    const name = `opened-${opened}.tetherwright.json`;
    await openDesign(page, { name, mimeType: 'application/json', buffer: Buffer.from(text) });
    await page.locator(`button[title="Take back: opening ${name}"]`).waitFor();
  }
}
