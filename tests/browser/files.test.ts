import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { compute } from './compute';
import { QUERN } from './designs';
import { DESK, figure, openSheet, type Sheet, settled, startBrowser, stored } from './sheet';

let browser: Browser;
let folder: string;
let sheet: Sheet;
let page: Page;
beforeAll(async () => {
  browser = await startBrowser();
  folder = mkdtempSync(join(tmpdir(), 'sheets-'));
});
beforeEach(async () => {
  show(await openSheet(browser));
  return () => sheet.close();
});
afterAll(async () => {
  rmSync(folder, { recursive: true });
});

function show(opened: Sheet): void {
  sheet = opened;
  page = sheet.page;
}

/** As for somebody who was never there before. */
async function showAnew(): Promise<void> {
  await sheet.close();
  show(await openSheet(browser, DESK, { anew: true }));
}

async function type(path: string, text: string): Promise<void> {
  const field = page.locator(`[data-text="${path}"]`);
  await field.fill(text);
  await field.press('Enter');
  await settled(page);
}

async function save(name: string): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save', exact: true }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/\.tetherwright\.json$/);
  const file = join(folder, name);
  await download.saveAs(file);
  return file;
}

const open = (file: string) => page.locator('input[type="file"]').setInputFiles(file);

test('a reload keeps the design', async () => {
  await type('tip_weight', '33 g');
  const pull = await figure(page, 'flight.pull');
  await stored(page);
  await page.reload();
  await settled(page);
  expect(await page.locator('[data-text="tip_weight"]').inputValue()).toBe('33 g');
  expect(await figure(page, 'flight.pull')).toBe(pull);
});

test('a saved file gives the same figures on the command line, and opens as it was saved', async () => {
  await type('tip_weight', '12 g');
  const shown = { cg: await figure(page, 'balance.cg_x'), pull: await figure(page, 'flight.pull') };
  const file = await save('light-tip.tetherwright.json');
  const answer = await compute(file, '--get', 'balance.cg_x', 'flight.pull');
  expect(answer).toContain(shown.cg);
  expect(answer).toContain(shown.pull);

  await type('tip_weight', '40 g');
  expect(await figure(page, 'flight.pull')).not.toBe(shown.pull);
  await open(file);
  await expect.poll(() => figure(page, 'flight.pull')).toBe(shown.pull);
  const again = await save('again.tetherwright.json');
  expect(readFileSync(again, 'utf8')).toBe(readFileSync(file, 'utf8'));
});

const heading = () => page.getByRole('heading', { level: 1 }).textContent();
const tip = () => page.locator('[data-text="tip_weight"]').first();
const tipText = () =>
  tip().evaluate((field) => (field instanceof HTMLInputElement ? field.value : (field.textContent ?? '')));
const press = (name: string) => page.getByRole('button', { name, exact: true }).click();

/** Drops a file onto the middle of the page, as from the desktop. */
async function drop(name: string, text: string): Promise<void> {
  const data = await page.evaluateHandle(
    ([called, content]) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([content!], called!, { type: 'application/json' }));
      return transfer;
    },
    [name, text],
  );
  for (const kind of ['dragover', 'drop']) await page.dispatchEvent('main', kind, { dataTransfer: data });
}

const quern = JSON.parse(readFileSync(QUERN, 'utf8'));
/** Every sentence is held where files are read; these are refused before and after they are understood. */
const refused: [kind: string, text: string, says: readonly string[]][] = [
  [
    'broken',
    '{ "format": "tetherwright", ',
    ['This file is broken at line 1, column 29: expected', 'Nothing was opened.'],
  ],
  [
    'wrong',
    JSON.stringify({
      ...quern,
      title: 3,
      sheets: [{ ...quern.sheets[0], pieces: [{ ...quern.sheets[0].pieces[0], text: null }] }],
    }),
    [
      '2 things in it are not as it should be',
      'title: expected a text, found 3.',
      'sheets[0].pieces[0].text: expected a text, found',
    ],
  ],
];

test.each(refused)(
  'a %s file is refused with its reason, opened or dropped, and the open design stays',
  async (kind, text, says) => {
    await type('tip_weight', '27 g');
    const pull = await figure(page, 'flight.pull');
    const told = async () => (await page.locator('.notices[role="alert"]').textContent()) ?? '';
    const name = `${kind}.tetherwright.json`;
    const file = join(folder, name);
    writeFileSync(file, text);
    await open(file);
    for (const sentence of says) await expect.poll(told).toContain(sentence);
    expect(await told()).toContain(`${name}: `);
    await press('Close');
    expect(await told()).toBe('');
    await drop(name, text);
    for (const sentence of says) await expect.poll(told).toContain(sentence);
    expect(await figure(page, 'flight.pull')).toBe(pull);
    expect(await tipText()).toBe('27 g');
    expect(await heading()).toContain('Quern 25');
  },
);

test('a good file that is dropped is opened, Undo brings back what was open, and both are kept', async () => {
  await type('tip_weight', '27 g');
  await drop('other.tetherwright.json', JSON.stringify({ ...quern, title: 'Other racer' }));
  await expect.poll(heading).toBe('Other racer');
  await settled(page);
  expect(await tipText()).toBe('21 g');
  await page.locator('[data-file="same"]').waitFor();
  await press('Undo');
  await expect.poll(tipText).toBe('27 g');
  await press('Open');
  const other = page.getByRole('dialog').locator('li', { hasText: 'Other racer' }).first();
  await other.getByRole('button', { name: 'Open Other racer' }).click();
  await expect.poll(heading).toBe('Other racer');
  await stored(page);
  await page.reload();
  await settled(page);
  expect(await heading()).toBe('Other racer');
});

test('it is said whether the design as it stands is in a file', async () => {
  await showAnew();
  const state = () => page.locator('[data-keeping]').textContent();
  expect(await page.locator('[data-keeping]').count()).toBe(0);
  await type('tip_weight', '27 g');
  expect(await state()).toBe('saved in this browser only');
  await save('states.tetherwright.json');
  await expect.poll(state).toBe('saved to a file');
  await type('tip_weight', '28 g');
  await expect.poll(state).toBe('saved in this browser, changed since it was saved to a file');
  await press('Undo');
  await expect.poll(state).toBe('saved to a file');
  await stored(page);
  await page.reload();
  await settled(page);
  expect(await state()).toBe('saved to a file');
});

const versions = () => page.getByRole('dialog').locator('.versions > li');

test('a version is looked at without being changed, and returned to as one edit', async () => {
  await showAnew();
  await press('Versions');
  await page.getByRole('dialog').getByText('There is none yet.').waitFor();
  await press('Close');
  await type('tip_weight', '27 g');
  await type('tip_weight', '28 g');
  await press('Versions');
  await expect.poll(() => versions().count()).toBe(2);
  expect(await versions().first().textContent()).toContain('2 changes: tip weight');
  expect(await versions().last().textContent()).toContain('as it was opened');
  await versions()
    .last()
    .getByRole('button', { name: /^Look at it/ })
    .click();
  const banner = page.getByRole('alert', { name: 'Only to be looked at' });
  await banner.getByText('Nothing can be changed here.').waitFor();
  await settled(page);
  expect(await tipText()).toBe('21 g');
  await type('tip_weight', '5 g');
  await expect.poll(tipText).toBe('21 g');
  await press('Back to the design as it is now');
  await expect.poll(tipText).toBe('28 g');
  await press('Versions');
  await versions()
    .last()
    .getByRole('button', { name: /^Return to it/ })
    .click();
  await expect.poll(tipText).toBe('21 g');
  await press('Undo');
  await expect.poll(tipText).toBe('28 g');
  expect(sheet.troubles).toEqual([]);
});

test('a version is named, another deleted and brought back', async () => {
  await showAnew();
  await type('tip_weight', '27 g');
  await press('Versions');
  await versions()
    .first()
    .getByRole('button', { name: /^Name it/ })
    .click();
  await page.getByRole('textbox', { name: /^Name\. A version/ }).fill('as flown');
  await page.keyboard.press('Enter');
  await expect.poll(() => versions().first().textContent()).toContain('as flown');
  await versions()
    .last()
    .getByRole('button', { name: /^Remove/ })
    .click();
  await expect.poll(() => versions().count()).toBe(1);
  await press('Bring it back');
  await expect.poll(() => versions().count()).toBe(2);
});

test('a design is copied, and another deleted and brought back', async () => {
  await type('tip_weight', '27 g');
  await press('Open');
  await page.getByRole('button', { name: /^Copy / }).click();
  await expect.poll(heading).toMatch(/, copy$/);
  await press('Open');
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: /^Delete Quern/ }).click();
  await dialog.getByText('Deleted. It can be brought back for 30 days.').waitFor();
  await dialog.getByRole('button', { name: /^Bring back / }).click();
  await dialog.getByRole('button', { name: /^Open Quern/ }).click();
  await expect.poll(heading).not.toMatch(/, copy$/);
  expect(await tipText()).toBe('27 g');
});

test('an empty sheet says what can be done next', async () => {
  await press('Open');
  await press('An empty design');
  await page.getByRole('region', { name: 'Empty sheet' }).waitFor();
  await page.getByText('None is chosen yet').waitFor();
  await page.getByText('No check yet.').waitFor();
  await press('Begin with my model');
  await page.getByRole('dialog', { name: 'Begin with my model' }).waitFor();
});

/** What the store answers from now on. */
const failWith = (name: string) =>
  page.evaluate((error) => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('', error);
    };
  }, name);

test('a store that is full is said at once, the design can be saved, and leaving is warned of', async () => {
  await type('tip_weight', '27 g');
  await failWith('QuotaExceededError');
  await type('tip_weight', '28 g');
  await page
    .getByText(
      'The store of this browser is full: the last change is not kept. Save the design to a file before you leave; removing versions, and deleting designs for good, makes room.',
    )
    .waitFor();
  const state = page.locator('[data-keeping="refused"]');
  expect(await state.textContent()).toBe('not saved: save it to a file');
  const warned = new Promise<string>((resolve) => {
    page.once('dialog', (dialog) => {
      resolve(dialog.type());
      void dialog.accept();
    });
  });
  await page.reload();
  expect(await warned).toBe('beforeunload');
  await settled(page);
  await failWith('QuotaExceededError');
  await type('tip_weight', '29 g');
  await state.waitFor();
  const file = await save('rescued.tetherwright.json');
  expect(readFileSync(file, 'utf8')).toContain('29 g');
  await page.locator('[data-file="same"]').waitFor();
});

test('a browser that keeps nothing says so at once, and everything else works', async () => {
  await sheet.context.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('', 'SecurityError');
    };
  });
  await page.reload();
  await page
    .getByText('This browser keeps nothing between visits here. Save the design to a file before you leave.')
    .waitFor();
  await settled(page);
  await type('tip_weight', '27 g');
  expect(readFileSync(await save('kept.tetherwright.json'), 'utf8')).toContain('27 g');
});

test('a store that was emptied is said, and what is open is kept anew', async () => {
  await type('tip_weight', '27 g');
  await page.locator('[data-keeping="kept"]').waitFor();
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const gone = indexedDB.deleteDatabase('tetherwright');
        gone.onsuccess = () => resolve();
        gone.onerror = () => reject(gone.error);
      }),
  );
  await type('tip_weight', '28 g');
  await page.getByText('The browser has emptied its store').waitFor();
  await stored(page);
  await page.reload();
  await settled(page);
  expect(await tipText()).toBe('28 g');
});
