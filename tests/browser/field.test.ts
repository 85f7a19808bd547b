import { beforeAll, expect, test } from 'vitest';
import { axeOn } from './axe';
import { openSheet, type Sheet, settled, showSheet, startBrowser, stored } from './sheet';

/** A phone at the field, with the demo as it comes: the times below are invented. */
const FIELD = { width: 360, height: 640 };
let sheet: Sheet;
beforeAll(async () => {
  sheet = await openSheet(await startBrowser(), FIELD, { shipped: true });
  return () => sheet.close();
});

test('three flights are logged by thumb, with number keys and the lap timer', async () => {
  const { page } = sheet;
  await showSheet(page, 'What do the flown laps tell\\?');
  const log = page.locator('#cell-flown');
  const type = async (label: string, text: string): Promise<void> => {
    const field = log.getByRole('textbox', { name: new RegExp(`^${label}, Flight`) });
    await field.tap();
    expect(await page.locator(':focus').getAttribute('inputmode')).toBe('decimal');
    await page.keyboard.press('ControlOrMeta+A');
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  };
  for (const [time, pull] of [
    ['50.2', '25.1'],
    ['50.4', '24.7'],
  ] as const) {
    await log.getByRole('button', { name: 'Add a flight' }).tap();
    await type('Time of these laps', time);
    await type('Pull at the handle', pull);
  }
  await log.getByText('Lap timer').tap();
  await log.locator('.timer-tap').tap();
  await page.waitForTimeout(120);
  await log.locator('.timer-tap').tap();
  await stored(page);
  // The page is loaded again while the timer runs, as a phone does that was locked.
  await page.reload();
  await settled(page);
  await log.locator('.timer-tap').tap();
  expect(await log.locator('.lap-timer [role="status"]').textContent()).toMatch(/^2 laps, the last \d/);
  await log.getByRole('button', { name: 'Put into a new flight' }).tap();
  await settled(page);
  expect(await log.locator('.flight-line').count()).toBe(9);
  expect(await log.locator('.flight-line').nth(6).textContent()).toMatch(
    /^Flight 7.*10 laps in 0:50\.2, a lap 5\.02\u00a0s, 25\.1\u00a0N$/,
  );
  expect(await log.locator('.flight-line').nth(8).textContent()).toMatch(/^Flight 9.*2 laps in 0:0\d/);
  await page.getByRole('button', { name: 'Undo' }).first().tap();
  await settled(page);
  expect(await log.locator('.flight-line').count()).toBe(8);
});

test('one press fits the design to them, and the log says what was taken', async () => {
  const { page } = sheet;
  const log = page.locator('#cell-flown');
  await log.getByRole('button', { name: 'Fit the design to these flights' }).tap();
  await log.locator('.taken li').waitFor();
  expect(await log.locator('.taken li').textContent()).toMatch(
    /^\d{4}-\d\d-\d\d: Drag factor 1 → 1\.\d+\. 1\.\d+ ± 0\.\d+\. Fitted in \d+ steps? to 15 measured numbers of 8 flights\.$/,
  );
  await log.locator('.measured-picture circle').first().waitFor();
  expect(await log.locator('.measured-picture').count()).toBe(2);
  const { violations } = await axeOn(page).include('.cell-log').analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target).join(' ')}`)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
  expect(sheet.troubles).toEqual([]);
});

/** What the card says, by the titles of its lines. */
const pulls = (): Promise<readonly string[]> =>
  sheet.page.locator('.day-answer').first().locator('tr').allTextContents();

test('the card of the day stands on one screen, black on white and large, and prints on one page', async () => {
  const { page } = sheet;
  await page.getByRole('button', { name: 'Day card' }).tap();
  const ready = page.locator('[data-field="settled"]');
  await ready.waitFor();
  const calm = await pulls();
  for (let k = 0; k < 3; k++) await page.getByRole('button', { name: 'Wind, more' }).tap();
  await page.getByRole('radio', { name: 'Wind from 0° N' }).locator('..').tap();
  await page.getByRole('button', { name: 'Card', exact: true }).tap();
  await expect.poll(pulls).not.toEqual(calm);
  await ready.waitFor();
  await page.locator('.day-places li').filter({ hasText: 'upwind 0° N' }).waitFor();
  const seen = await page.evaluate(() => {
    const texts = [...document.querySelectorAll('.day-answer:not(.away *) :is(th, td, li, p, text, strong)')];
    const shown = texts.filter((each) => each.getClientRects().length > 0);
    const styles = shown.map((each) => getComputedStyle(each));
    return {
      bottom: document.querySelector('.day-stops')!.getBoundingClientRect().bottom + window.scrollY,
      wide: document.documentElement.scrollWidth,
      small: Math.min(...styles.map(({ fontSize }) => Number.parseFloat(fontSize))),
      colours: [
        ...new Set(
          shown.map((each) => (each.tagName === 'text' ? getComputedStyle(each).fill : getComputedStyle(each).color)),
        ),
      ],
      paper: getComputedStyle(document.querySelector('.at-field')!).backgroundColor,
    };
  });
  expect(seen.bottom).toBeLessThanOrEqual(FIELD.height);
  expect(seen.wide).toBeLessThanOrEqual(FIELD.width);
  expect(seen.small).toBeGreaterThanOrEqual(18);
  // Black on white is a contrast of 21.
  expect(seen.paper).toBe('rgb(255, 255, 255)');
  expect(seen.colours.toSorted()).toEqual(['rgb(0, 0, 0)']);
  expect(await page.locator('.day-answer').first().textContent()).not.toMatch(/\bgo\b|NaN/i);
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  expect(pdf.match(/\/Type \/Page\b/g)).toHaveLength(1);
  expect(pdf).toMatch(/\/MediaBox \[0 0 4(19|20)/);
});

test('without a connection a browser that starts anew opens on the card, with the day as it was said', async () => {
  const before = await pulls();
  const { context } = sheet;
  await sheet.page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await context.setOffline(true);
  const cold = await context.newPage();
  const troubles: string[] = [];
  cold.on('pageerror', (error) => troubles.push(error.message));
  const address = sheet.page.url();
  await sheet.page.close();
  await cold.goto(address);
  await cold.locator('[data-field="settled"]').waitFor();
  expect(await cold.locator('.day-answer').first().locator('tr').allTextContents()).toEqual(before);
  expect(await cold.getByRole('button', { name: 'Card', exact: true }).getAttribute('aria-pressed')).toBe('true');
  const { violations } = await axeOn(cold).include('.at-field').analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target).join(' ')}`)).toEqual([]);
  expect(troubles).toEqual([]);
});
