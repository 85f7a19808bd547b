import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { openDesign, QUERN } from './designs';
import { DESK, openSheet, PHONE, settled, startBrowser } from './sheet';
import { withPieces } from './with-pieces';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});

/** The Quern with a note that says numbers, as a file. */
function file() {
  const text = 'With {tip_weight} in the tip the nose is out by {flight.nose_out} and the lines pull {flight.pull}.';
  const note = { kind: 'note', id: 'planted', name: 'reading', title: 'What the numbers say', text };
  const design = withPieces(JSON.parse(readFileSync(QUERN, 'utf8')), [note]);
  return { name: 'notes.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(design)) };
}

test.each([
  ['at a desk', DESK],
  ['on a phone', PHONE],
])('%s a note follows the design, and a fault in it is said at its place', async (_, viewport) => {
  const sheet = await openSheet(browser, viewport);
  const { page } = sheet;
  await openDesign(page, file());
  const reading = page.locator('.cell').filter({ hasText: 'What the numbers say' });
  const words = reading.locator('.prose');
  await expect.poll(() => words.textContent()).toContain('With 21\u00a0g in the tip');
  await settled(page);
  const pull = (): Promise<string | null> => words.locator('.said').nth(2).textContent();
  const before = await pull();
  expect(before).toMatch(/^2\d\.\d\u00a0N$/);

  const field = page.locator('[data-text="tip_weight"]');
  await field.fill('41 g');
  await field.press('Enter');
  await expect.poll(() => words.textContent()).toContain('With 41\u00a0g in the tip');
  await expect.poll(pull).not.toBe(before);

  await reading.getByRole('button', { name: 'Edit these words' }).click();
  const editor = page.getByRole('textbox', { name: 'Words of What the numbers say' });
  await editor.fill('Pull {flight.pul}, tip {tip_weight}, \\{brace}.');
  await editor.blur();
  await expect.poll(() => words.textContent()).toBe('Pull {flight.pul}, tip 41\u00a0g, {brace}.');
  const flag = reading.locator('[data-fault="reading.said1"]');
  expect(await flag.textContent()).toContain('flight has nothing called pul. Did you mean flight.pull?');
  expect(await reading.textContent()).toContain(
    'What stands in braces is a formula. Write \\{ for a brace that is only a brace.',
  );
  await flag.getByRole('button', { name: 'Write flight.pull' }).click();
  await expect.poll(() => words.textContent()).toMatch(/^Pull 2\d\.\d\u00a0N, tip 41\u00a0g, \{brace\}\.$/);
  expect(await flag.count()).toBe(0);
  expect(sheet.troubles).toEqual([]);
  await sheet.close();
});
