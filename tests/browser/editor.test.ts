import type { Browser, Locator, Page } from 'playwright-core';
import { beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { axeOn } from './axe';
import { DESK, openSheet, PHONE, type Sheet, settled, startBrowser } from './sheet';

let browser: Browser;
let sheet: Sheet;
let page: Page;
beforeAll(async () => {
  browser = await startBrowser();
});

const place = (path: string): Locator => page.locator(`[data-text="${path}"]`);
const editor = (): Locator => page.locator('[role="textbox"][contenteditable="true"]');
const list = (): Locator => page.getByRole('listbox', { name: 'What could stand here' });
const beneath = (): Locator => page.locator('.editor-beneath');
const texts = async (): Promise<string | null> => editor().textContent();
const press = (key: string): Promise<void> => page.keyboard.press(key);
const focused = (): Promise<string> =>
  page.evaluate(() => {
    const here = document.activeElement as HTMLElement | null;
    return here?.dataset.text ?? here?.textContent ?? '';
  });

/** Takes down what is said to those who hear the page; each sentence stands there for a moment only. */
async function listen(): Promise<() => Promise<readonly string[]>> {
  const heard = await page.locator('.cm-announced').evaluateHandle((spoken) => {
    const sentences: string[] = [];
    new MutationObserver(() => sentences.push(spoken.textContent ?? '')).observe(spoken, {
      childList: true,
      characterData: true,
      subtree: true,
    });
    return sentences;
  });
  return () => heard.jsonValue();
}

/** Opens the editor of a text, with all of it selected. */
async function edit(path: string): Promise<void> {
  await place(path).focus();
  await editor().waitFor();
  await expect.poll(focused).toBe(path);
}

describe('at a desk', () => {
  beforeEach(async () => {
    sheet = await openSheet(browser, DESK);
    page = sheet.page;
    return async () => {
      expect(sheet.troubles).toEqual([]);
      await sheet.close();
    };
  });

  test('the editor is fetched when somebody types, and every other text stays a plain field', async () => {
    await sheet.close();
    sheet = await openSheet(browser, DESK, { anew: true });
    page = sheet.page;
    const fetched = (): Promise<number> =>
      page.evaluate(
        () => performance.getEntriesByType('resource').filter(({ name }) => /\/mount-[^/]*\.js$/.test(name)).length,
      );
    expect(await fetched()).toBe(0);
    await edit('tip_weight');
    expect(await fetched()).toBe(1);
    expect(await editor().count()).toBe(1);
    expect(await editor().getAttribute('aria-label')).toBe('tip weight, value');
    expect(await editor().getAttribute('aria-multiline')).toBe('false');
  });

  test('Enter keeps a text, Escape forgets it, leaving it keeps it, and the focus stays', async () => {
    await edit('tip_weight');
    await page.keyboard.type('33 g');
    await press('Enter');
    expect(await place('tip_weight').inputValue()).toBe('33 g');
    await expect.poll(focused).toBe('tip_weight');
    await page.keyboard.type('44 g');
    await press('Escape');
    await expect.poll(() => place('tip_weight').inputValue()).toBe('33 g');
    // What was typed is not lost.
    await page.getByText('Not kept: “44 g”').waitFor();
    await page.getByRole('button', { name: 'Bring it back' }).click();
    await expect.poll(() => place('tip_weight').inputValue()).toBe('44 g');
    await edit('tip_weight');
    await page.keyboard.type('12 g');
    await expect.poll(texts).toBe('12 g');
    await press('Tab');
    await expect.poll(focused).not.toBe('tip_weight');
    expect(await place('tip_weight').inputValue()).toBe('12 g');
    await settled(page);
  });

  test('undo takes back in the text first, then in the sheet', async () => {
    await edit('tip_weight');
    await page.keyboard.type('33 g');
    await press('Enter');
    await edit('line_length');
    // At once, since strokes far apart are taken back one by one.
    await page.keyboard.insertText('16 m');
    await expect.poll(texts).toBe('16 m');
    await press('Control+z');
    await expect.poll(texts).toBe('18.3 m');
    expect(await place('tip_weight').inputValue()).toBe('33 g');
    await press('Control+z');
    await expect.poll(() => place('tip_weight').inputValue()).toBe('21 g');
    await expect.poll(focused).toBe('line_length');
    await press('Control+Shift+z');
    await expect.poll(() => place('tip_weight').inputValue()).toBe('33 g');
    expect(await place('line_length').inputValue()).toBe('18.3 m');
    await settled(page);
  });

  test('what is typed is an edit before the next one, and Save keeps it', async () => {
    await edit('tip_weight');
    await page.keyboard.type('33 g');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save', exact: true }).click(),
    ]);
    const saved = await (await download.createReadStream()).reduce((all: string, piece) => all + String(piece), '');
    expect(saved).toContain('"33 g"');
    expect(await page.getByRole('button', { name: 'Undo' }).getAttribute('title')).toBe('Take back: tip weight');
  });

  test('leaving the page while typing loses nothing', async () => {
    await edit('tip_weight');
    await page.keyboard.type('33 g');
    await page.reload();
    await settled(page);
    expect(await place('tip_weight').inputValue()).toBe('33 g');
  });

  test('a name is proposed with its value, taken by keys, and told by a key', async () => {
    await edit('tip_for_lines');
    await press('End');
    await page.keyboard.type(' + lines.mas');
    const option = list().getByRole('option').first();
    await expect.poll(() => option.textContent()).toMatch(/^lines\.massWeight of the lines[\d.]+\u00a0g$/);
    expect(await option.getAttribute('aria-selected')).not.toBe('true');
    await press('ArrowDown');
    await expect.poll(() => option.getAttribute('aria-selected')).toBe('true');
    expect(await editor().getAttribute('aria-activedescendant')).toBe(await option.getAttribute('id'));
    await press('Enter');
    await expect.poll(texts).toMatch(/ \+ lines\.mass$/);
    const heard = await listen();
    await press('F1');
    await expect
      .poll(() => page.locator('.cm-tooltip.editor-about').textContent())
      .toMatch(/^lines\.mass Weight of the lines, now [\d.]+\u00a0g\./);
    await expect.poll(async () => (await heard()).join(' ')).toContain('lines.mass: Weight of the lines, now');
    await press('Escape');
    expect(await page.locator('.cm-tooltip.editor-about').count()).toBe(0);
    await press('Enter');
    await settled(page);
  });

  test('the down arrow opens the list, and Enter without a pick keeps the text', async () => {
    await edit('line_length');
    await page.keyboard.type('16 ');
    await press('ArrowDown');
    await expect.poll(() => list().getByRole('option').first().textContent()).toMatch(/^µm|^mm/);
    await press('Escape');
    await expect.poll(() => list().count()).toBe(0);
    await page.keyboard.type('m');
    await press('Enter');
    expect(await place('line_length').inputValue()).toBe('16 m');
    await settled(page);
  });

  test('the pointer resting on a word tells what it is', async () => {
    await edit('tip_for_lines');
    await page.locator('.formula-name').first().hover({ force: true });
    await expect.poll(() => page.locator('.editor-about').textContent()).toMatch(/, now .+\./);
  });

  test('a fault is underlined while typing with nothing taken, and one press mends it', async () => {
    const before = await place('line_length').inputValue();
    await edit('tip_weight');
    await page.keyboard.type('2 * balast.tail_weight');
    const underlined = page.locator('.cm-lintRange-error');
    await expect.poll(() => underlined.allTextContents()).toEqual(['balast.tail_weight']);
    expect(await beneath().locator('p').textContent()).toBe(
      'Nothing is called balast.tail_weight. Did you mean ballast.tail_weight? Write ballast.tail_weight',
    );
    expect(await editor().getAttribute('aria-invalid')).toBe('true');
    expect(await page.locator('[data-state="settled"]').count()).toBe(1);
    await press('Tab');
    await expect.poll(focused).toBe('Write ballast.tail_weight');
    await press('Enter');
    await expect.poll(texts).toBe('2 * ballast.tail_weight');
    await expect.poll(focused).toBe('tip_weight');
    expect(await place('line_length').inputValue()).toBe(before);
    await press('Control+z');
    await expect.poll(texts).toBe('2 * balast.tail_weight');
    await press('Escape');
    await expect.poll(() => place('tip_weight').inputValue()).toBe('21 g');
  });

  test('a dimension that does not fit is told before anything is taken', async () => {
    await edit('tip_weight');
    await page.keyboard.type('3 mm');
    await expect
      .poll(() => beneath().locator('p').textContent())
      .toBe('3\u00a0mm is a length; here a mass is wanted. Write a mass, such as 10\u00a0g.');
    await page.keyboard.type(' * 2 g / 1 mm');
    await expect.poll(() => beneath().locator('p').count()).toBe(0);
    await press('Escape');
    await settled(page);
  });

  test('the list of faults leads to the very characters', async () => {
    await edit('tip_weight');
    await page.keyboard.type('2 g + 3 mm');
    await press('Enter');
    await page.locator('[data-state="fault"]').waitFor();
    await page.locator('.sheet-state button').click();
    await page.locator('[data-listed="tip_weight"]').getByRole('link').first().click();
    await editor().waitFor();
    await expect.poll(() => page.evaluate(() => String(getSelection()))).toBe('3 mm');
    await press('Escape');
    await page.getByRole('button', { name: 'Undo' }).click();
    await settled(page);
  });

  test('nothing stands in the way of people who cannot see or use a pointer', async () => {
    await edit('tip_for_lines');
    await page.keyboard.type('2 * lin');
    await list().waitFor();
    await press('ArrowDown');
    const serious = async (): Promise<string[]> => {
      const { violations } = await axeOn(page).include('.editor-place').analyze();
      return violations
        .filter(({ impact }) => impact === 'serious' || impact === 'critical')
        .map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(', ')}`);
    };
    expect(await serious()).toEqual([]);
    await press('Escape');
    await beneath().locator('p').waitFor();
    expect(await serious()).toEqual([]);
    await press('Escape');
  });

  test('words over many lines are kept by Ctrl+Enter, and undo goes on in the sheet', async () => {
    await page.getByRole('button', { name: 'Edit these words' }).first().click();
    await editor().waitFor();
    await press('Control+End');
    await press('Enter');
    await page.keyboard.type('One line more.');
    await press('Control+Enter');
    await expect.poll(() => page.locator('.prose').first().textContent()).toContain('One line more.');
    await expect.poll(focused).toBe('Edit these words');
    await press('Enter');
    await editor().waitFor();
    await press('Control+z');
    await expect.poll(() => page.locator('.prose').first().textContent()).not.toContain('One line more.');
  });
});

describe('on a phone', () => {
  beforeEach(async () => {
    sheet = await openSheet(browser, PHONE);
    page = sheet.page;
    return async () => {
      expect(sheet.troubles).toEqual([]);
      await sheet.close();
    };
  });

  test('typing, the list and the mend fit the window and the finger', async () => {
    await place('tip_weight').tap();
    await editor().waitFor();
    expect(await editor().getAttribute('autocapitalize')).toBe('off');
    expect(await editor().getAttribute('autocorrect')).toBe('off');
    expect(await editor().getAttribute('enterkeyhint')).toBe('done');
    await page.keyboard.type('2 * ballast.tip');
    const option = list().getByRole('option').first();
    await option.waitFor();
    const box = async (of: Locator) => (await of.boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
    expect((await box(option)).height).toBeGreaterThanOrEqual(44);
    expect((await box(list())).x).toBeGreaterThanOrEqual(0);
    expect((await box(list())).x + (await box(list())).width).toBeLessThanOrEqual(PHONE.width);
    await option.tap();
    await expect.poll(texts).toMatch(/^2 \* ballast\.tip_weight/);
    await page.keyboard.type('z');
    const mend = beneath().getByRole('button', { name: 'Write ballast.tip_weight' });
    await mend.waitFor();
    expect((await box(mend)).height).toBeGreaterThanOrEqual(44);
    await mend.tap();
    await expect.poll(texts).toBe('2 * ballast.tip_weight');
    const what = beneath().getByRole('button', { name: 'What is ballast.tip_weight? (F1)' });
    await what.tap();
    await expect.poll(() => page.locator('.cm-tooltip.editor-about').textContent()).toContain('ballast.tip_weight');
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(PHONE.width);
    await press('Escape');
    await press('Escape');
    await expect.poll(() => place('tip_weight').inputValue()).toBe('21 g');
  });
});
