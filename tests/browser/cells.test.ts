import type { Browser, Locator, Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { DESK, openSheet, PHONE, placeOf, type Sheet, settled, showSheet, startBrowser } from './sheet';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});

const cell = (page: Page, name: string): Locator => page.locator(`#cell-${name}`);
const balloon = (page: Page, name: string): Locator => cell(page, name).locator('.balloon');
const order = (page: Page): Promise<string[]> =>
  page.locator('main article').evaluateAll((pieces) => pieces.map((piece) => piece.id.replace('cell-', '')));
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const { activeElement: at } = document;
    return at?.getAttribute('data-text') ?? at?.getAttribute('aria-label') ?? at?.textContent ?? '';
  });
const title = (page: Page, name: string): Promise<string | null> => cell(page, name).locator('h2').textContent();
const undo = (page: Page): Promise<void> => page.getByRole('button', { name: 'Undo', exact: true }).click();

async function type(page: Page, text: string): Promise<void> {
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

/** Opens the list of a balloon and takes a command, by keys or by touch. */
async function command(page: Page, name: string, words: string, by: 'keys' | 'touch'): Promise<void> {
  const item = cell(page, name).getByRole('menuitem', { name: words, exact: true });
  if (by === 'touch') {
    await balloon(page, name).tap();
    await item.tap();
    return;
  }
  await balloon(page, name).focus();
  await page.keyboard.press('Enter');
  for (let k = 0; k < 10 && (await focused(page)) !== words; k++) await page.keyboard.press('ArrowDown');
  expect(await focused(page)).toBe(words);
  await page.keyboard.press('Enter');
}

describe.each([
  ['by keys alone at a desk', DESK, 'keys'],
  ['by touch on a phone', PHONE, 'touch'],
] as const)('whole cells %s', (_how, viewport, by) => {
  test('are added, titled, named, moved, copied, folded and removed, and taken back step by step', async () => {
    // Until nothing is left to take back, the opening of the design not either.
    const sheet: Sheet = await openSheet(browser, viewport, { anew: true });
    const { page } = sheet;
    const before = await order(page);
    const press = async (control: Locator): Promise<void> => {
      if (by === 'touch') return control.tap();
      await control.focus();
      await page.keyboard.press('Enter');
    };

    await press(page.getByRole('button', { name: 'Add a piece', exact: true }));
    const list = page.getByRole('dialog', { name: 'Add' });
    await list.getByLabel('Where').selectOption({ label: 'after 2, Set these' });
    await press(list.getByRole('button', { name: 'Formula', exact: true }));
    // The title of what was added waits to be typed.
    await expect.poll(() => focused(page)).toMatch(/#title$/);
    expect((await order(page))[2]).toBe('new_formula');
    await type(page, 'Sums of the tail');
    await cell(page, 'sums_of_the_tail').waitFor();
    // And leads on into the cell.
    await expect.poll(() => focused(page)).toBe('new_line');
    await settled(page);

    await command(page, 'sums_of_the_tail', 'Move up', by);
    await expect.poll(async () => (await order(page)).indexOf('sums_of_the_tail')).toBe(1);
    await expect.poll(() => focused(page)).toBe('2, Sums of the tail: commands');

    await command(page, 'set_these', 'Copy', by);
    await cell(page, 'set_these_2').waitFor();
    await settled(page);
    await expect.poll(() => focused(page)).toMatch(/Set these, copy: commands$/);

    await command(page, 'set_these_2', 'Title and name', by);
    await expect.poll(() => focused(page)).toMatch(/#title$/);
    const name = cell(page, 'set_these_2').getByLabel('Name of Set these, copy in formulas');
    await name.focus();
    await type(page, 'flight');
    const refusal = cell(page, 'set_these_2').getByRole('alert');
    await expect
      .poll(() => refusal.textContent())
      .toBe('Something is called “flight” already. Choose another name. It is still called set_these_2.');
    await name.focus();
    await type(page, 'sqrt');
    await expect
      .poll(() => refusal.textContent())
      .toBe(
        '“sqrt” cannot be a name: it means something else in formulas. Choose another. It is still called set_these_2.',
      );
    await name.focus();
    await type(page, 'more_to_set');
    await cell(page, 'more_to_set').waitFor();
    await expect.poll(() => focused(page)).toMatch(/^engine_station_2/);

    await command(page, 'more_to_set', 'Close', by);
    await expect.poll(() => cell(page, 'more_to_set').locator('.schedule').count()).toBe(0);
    await command(page, 'more_to_set', 'Remove', by);
    await expect.poll(() => cell(page, 'more_to_set').count()).toBe(0);
    const said = page.locator('.notices.done');
    expect(await said.textContent()).toContain('Removed: Set these, copy.');
    await press(said.getByRole('button', { name: 'Take it back' }));
    await cell(page, 'more_to_set').waitFor();
    expect(await said.textContent()).toBe('');

    // Fold, name, copy, move, title, add.
    for (let k = 0; k < 6; k++) await undo(page);
    await settled(page);
    expect(await order(page)).toEqual(before);
    expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(viewport.width);
    expect(sheet.troubles).toEqual([]);
    await sheet.close();
  });

  test('are named by what formulas say, which follow', async () => {
    const sheet = await openSheet(browser, viewport);
    const { page } = sheet;
    await showSheet(page, 'Model');
    await command(page, 'flight', 'Title and name', by);
    await cell(page, 'flight').getByLabel('Name of Level flight in formulas').focus();
    await type(page, 'lap');
    await cell(page, 'lap').waitFor();
    await settled(page);
    expect(await title(page, 'lap')).toBe('Level flight');
    // Cautions stand beside the pull whatever its block is called.
    expect(await page.locator('.figures .caution').count()).toBeGreaterThan(0);
    expect(await page.locator('.figures .caution').first().textContent()).toMatch(
      /The greatest pull that this design knows of is estimated at [\d.]+\u00a0N/,
    );
    await sheet.close();
  });
});

describe('at a desk', () => {
  test('a cell is carried by its balloon, Escape leaves it, and a press is no carrying', async () => {
    const sheet = await openSheet(browser);
    const { page } = sheet;
    const before = await order(page);
    const from = await placeOf(balloon(page, 'bearers'));
    const to = await placeOf(cell(page, 'set_these').locator('h2'));
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x, to.y + 20);
    await page.mouse.move(from.x, to.y - 5, { steps: 3 });
    expect(await page.locator('.put-down').count()).toBe(1);
    await page.keyboard.press('Escape');
    await page.mouse.up();
    expect(await order(page)).toEqual(before);

    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x, to.y - 5, { steps: 4 });
    await page.mouse.up();
    expect((await order(page)).slice(0, 3)).toEqual(['brief', 'bearers', 'set_these']);
    expect(await page.getByRole('menu').count()).toBe(0);
    await undo(page);
    expect(await order(page)).toEqual(before);
    await sheet.close();
  });

  test('what is added between two cells stands there, and a second block of a kind leaves the rest settled', async () => {
    const sheet = await openSheet(browser);
    const { page } = sheet;
    await page.getByRole('button', { name: 'add after 1, What has to be decided before the first cut' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Lines', exact: true }).click();
    await cell(page, 'lines_2').waitFor();
    expect((await order(page))[1]).toBe('lines_2');
    await settled(page);
    await expect.poll(() => focused(page)).toBe('Kind of line');
    await sheet.close();
  });

  test('the drawing beside the cells is removed and added again', async () => {
    const sheet = await openSheet(browser);
    const { page } = sheet;
    await page.getByRole('button', { name: 'Plan and side view: commands' }).click();
    await page.getByRole('menuitem', { name: 'Remove' }).click();
    await expect.poll(() => page.locator('.standing svg:not(.mark)').count()).toBe(0);
    await page.getByRole('button', { name: 'Add a piece', exact: true }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Drawing', exact: true }).click();
    await page.getByRole('button', { name: 'Scale drawing: commands' }).waitFor();
    await sheet.close();
  });

  test('a check is given what it watches, its limit and the reason', async () => {
    const sheet = await openSheet(browser);
    const { page } = sheet;
    await page.getByRole('button', { name: 'Add a piece', exact: true }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Check', exact: true }).click();
    await expect.poll(() => focused(page)).toMatch(/#title$/);
    await type(page, 'Too slow');
    await cell(page, 'too_slow').waitFor();
    for (const [label, text] of [
      ['Too slow, watched', 'flight.speed'],
      ['Too slow, least', '30 m/s'],
      ['Too slow, reason of the least', 'lines go slack'],
    ] as const) {
      const entry = page.getByLabel(label, { exact: true });
      await entry.focus();
      await type(page, text);
      await expect.poll(() => entry.inputValue()).toBe(text);
    }
    await settled(page);
    await expect
      .poll(() => cell(page, 'too_slow').locator('.check-now').textContent())
      .toMatch(/^stop: [\d.]+\u00a0m\/s is under 30\u00a0m\/s: lines go slack$/);
    await sheet.close();
  });
});
