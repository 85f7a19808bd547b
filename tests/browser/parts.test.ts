import type { Browser, Locator, Page } from 'playwright-core';
import { beforeAll, beforeEach, expect, test } from 'vitest';
import { figure, openSheet, PHONE, pickFrom, type Sheet, settled, showSheet, startBrowser } from './sheet';

let browser: Browser;
let sheet: Sheet;
let page: Page;
beforeAll(async () => {
  browser = await startBrowser();
});
beforeEach(async () => {
  sheet = await openSheet(browser);
  page = sheet.page;
  await unfold();
  return () => sheet.close();
});

const table = (): Locator => page.locator('#cell-parts');
const unfold = async (): Promise<void> => {
  await showSheet(page, 'Weights');
  await table().locator('.fold[aria-expanded="false"]').click();
};
const row = (name: string): Locator => page.locator(`tr[data-part="${name}"]`);
const said = async (path: string): Promise<string> =>
  ((await table().locator(`[data-value="${path}"]`).first().textContent()) ?? '').trim();

/** Types into the control that has the focus and leaves it by Enter. */
async function type(text: string): Promise<void> {
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

async function fill(label: string, text: string): Promise<void> {
  const entry = page.getByLabel(label, { exact: true });
  await entry.focus();
  await type(text);
}

test('by keys alone a part is added, named, weighed, copied, moved and removed, and taken back step by step', async () => {
  const before = await figure(page, 'parts.mass');
  const parts = await page.locator('tr[data-part]').count();
  await page.getByRole('button', { name: 'Add a part' }).focus();
  await page.keyboard.press('Enter');
  // The title of a new part waits to be typed.
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.getAttribute('data-text')))
    .toBe('parts.new_part#title');
  await type('Rudder horn');
  await row('rudder_horn').waitFor();
  await fill('Rudder horn, mass', '8 g');
  await fill('Rudder horn, station', '540 mm');
  await settled(page);
  await expect.poll(() => figure(page, 'parts.mass')).toBe('858\u00a0g');
  expect(await said('parts.rudder_horn.x')).toBe('540\u00a0mm');

  await page.getByRole('button', { name: 'Copy Rudder horn' }).focus();
  await page.keyboard.press('Enter');
  await row('rudder_horn_2').waitFor();
  await expect.poll(() => figure(page, 'parts.mass')).toBe('866\u00a0g');

  await page.getByRole('button', { name: 'Move up Rudder horn, copy' }).focus();
  await page.keyboard.press('Enter');
  const order = (): Promise<(string | null)[]> =>
    page.locator('tr[data-part]').evaluateAll((rows) => rows.slice(-2).map((each) => each.getAttribute('data-part')));
  await expect.poll(order).toEqual(['rudder_horn_2', 'rudder_horn']);

  await page.getByRole('button', { name: 'Remove Rudder horn, copy' }).focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => page.locator('tr[data-part]').count()).toBe(parts + 1);
  await expect.poll(() => figure(page, 'parts.mass')).toBe('858\u00a0g');

  // Remove, move, copy, station, mass, title, add.
  for (let k = 0; k < 7; k++) await page.getByRole('button', { name: 'Undo' }).click();
  await settled(page);
  expect(await page.locator('tr[data-part]').count()).toBe(parts);
  expect(await figure(page, 'parts.mass')).toBe(before);
  expect(sheet.troubles).toEqual([]);
});

test('the estimate gives way to the scale, and the table says by how much', async () => {
  const estimate = await said('parts.fin.mass');
  const weighed = row('fin').getByLabel('Fin and rudder, weighed');
  await weighed.fill('11 g');
  await weighed.press('Enter');
  await expect.poll(() => said('parts.fin.mass')).toBe('11\u00a0g');
  await expect.poll(() => row('fin').locator('.difference').textContent()).toBe(`estimate ${estimate}, +1.46\u00a0g`);
  expect(await said('parts.weighed_share')).not.toBe('0\u00a0% weighed');
});

test('a place is picked by a press on either view, and Escape leaves it', async () => {
  await row('fin').getByRole('button', { name: 'Fin and rudder' }).click();
  await page.getByRole('button', { name: 'Pick on the drawing' }).click();
  await page.keyboard.press('Escape');
  await expect.poll(() => page.locator('svg.picking').count()).toBe(0);

  await page.getByRole('button', { name: 'Pick on the drawing' }).click();
  const guide = page.locator('svg.picking [data-mark="guide"][data-view="plan"]');
  await guide.click({ force: true });
  await settled(page);
  // The leadout guide of the demo stands at 62 mm on the inboard tip.
  const [x, y] = (await Promise.all(['x', 'y'].map((axis) => said(`parts.fin.${axis}`)))).map((text) =>
    Number(text.replace('−', '-').replace('\u00a0mm', '')),
  );
  expect(Math.abs(x! - 62)).toBeLessThanOrEqual(5);
  expect(Math.abs(y! + 515)).toBeLessThanOrEqual(5);
  expect(await said('parts.fin.z')).toBe('82\u00a0mm');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => said('parts.fin.x')).toBe('540\u00a0mm');
  expect(await said('parts.fin.y')).toBe('0\u00a0mm');
});

test('a place is picked by keys: arrows move the cross, Enter takes it', async () => {
  await row('fin').getByRole('button', { name: 'Fin and rudder' }).press('Enter');
  await page.getByRole('button', { name: 'Pick on the drawing' }).press('Enter');
  const focus = (): Promise<string | null> =>
    page.evaluate(
      () => document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.textContent ?? '',
    );
  // The fin of the demo stands at 540 mm on the centreline, 82 mm up.
  await expect.poll(focus).toContain('Cross in the plan, station 540\u00a0mm, 0\u00a0mm from the centreline.');
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Shift+ArrowRight');
  await expect.poll(focus).toContain('Cross in the plan, station 539\u00a0mm, 10\u00a0mm from the centreline.');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Shift+ArrowUp');
  await expect.poll(focus).toContain('Cross in the side view, station 539\u00a0mm, height 92\u00a0mm.');
  await page.keyboard.press('Enter');
  await expect.poll(() => said('parts.fin.z')).toBe('92\u00a0mm');
  expect(await said('parts.fin.x')).toBe('539\u00a0mm');
  // The side view says nothing of the distance from the centreline.
  expect(await said('parts.fin.y')).toBe('0\u00a0mm');
  await expect.poll(focus).toBe('Pick on the drawing');
});

test('another shape keeps the sheet settled, and a material says what it is', async () => {
  await row('horn').getByRole('button', { name: 'Elevator horn' }).click();
  const told = page.locator('.row-told');
  expect(await told.textContent()).toMatch(/2,?700\u00a0kg\/m³, Young’s modulus 68.9\u00a0GPa\. Source: /);
  await pickFrom(page.getByLabel('Elevator horn, material'), 'Music wire');
  await expect.poll(() => told.textContent()).toMatch(/UNS K08500/);
  await page.getByLabel('rod or wire').check();
  await settled(page);
  await expect.poll(() => said('parts.horn.mass')).toBe('0\u00a0g');
  await page.getByLabel('sheet', { exact: true }).check();
  await expect.poll(() => said('parts.horn.mass')).not.toBe('0\u00a0g');
});

test('coats are counted', async () => {
  await row('horn').getByRole('button', { name: 'Elevator horn' }).click();
  const before = await said('parts.horn.mass');
  await page.getByText('Finish', { exact: true }).first().click();
  await fill('Elevator horn, finished area', '1000 cm²');
  await page.getByLabel('Elevator horn, coat to add').fill('sanding sealer');
  await page.getByRole('option', { name: /^Sanding sealer/ }).click();
  await page.getByRole('button', { name: 'Add a coat' }).click();
  await page.getByRole('button', { name: 'Add a coat' }).click();
  const grams = (text: string): number => Number(text.replace('\u00a0g', ''));
  await expect.poll(async () => grams(await said('parts.horn.mass')) - grams(before)).toBeCloseTo(2, 1);
  await page.getByRole('button', { name: /^Remove .*sealer/i }).click();
  await expect.poll(() => said('parts.horn.mass')).toBe(before);
});

test('what is often forgotten is added by one press, with the shift that was told', async () => {
  const forgotten = table().locator('.forgotten');
  await forgotten.locator('summary').focus();
  await page.keyboard.press('Enter');
  const tubing = forgotten.locator('[data-forgotten="fuel_tubing"]');
  await tubing.waitFor();
  // 5 g at −105 mm, CG at 46 mm, 850 g: −0.005 × 0.151/0.855 m.
  expect(await tubing.textContent()).toContain('5\u00a0gat −105\u00a0mm: CG −0.9\u00a0mm');
  const before = await said('parts.x');
  await tubing.getByRole('button', { name: 'Add Fuel tubing and filter' }).press('Enter');
  await row('fuel_tubing').waitFor();
  await expect.poll(() => said('parts.x')).not.toBe(before);
  await expect.poll(() => tubing.count()).toBe(0);
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('What is often forgotten');
  await page.getByRole('button', { name: 'Undo' }).click();
  await tubing.waitFor();
});

test('on a phone each part is a card that fits the window', async () => {
  await sheet.close();
  sheet = await openSheet(browser, PHONE);
  page = sheet.page;
  await unfold();
  const width = await row('engine').evaluate((element) => element.getBoundingClientRect().right);
  expect(width).toBeLessThanOrEqual(PHONE.width);
  await row('engine')
    .getByRole('button', { name: /^Engine/ })
    .tap();
  await page.locator('.part-editor').waitFor();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(PHONE.width);
  await row('engine').scrollIntoViewIfNeeded();
  expect(sheet.troubles).toEqual([]);
});
