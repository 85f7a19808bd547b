import { readFileSync } from 'node:fs';
import { inflateSync } from 'node:zlib';
import { beforeAll, expect, test } from 'vitest';
import { DESK, figure, openSheet, type Sheet, settled, showSheet, startBrowser } from './sheet';

/** As the demo comes, kept by the page for the flying field; from then on there is no connection. */
let sheet: Sheet;
beforeAll(async () => {
  sheet = await openSheet(await startBrowser(), DESK, { shipped: true });
  await sheet.page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await sheet.context.setOffline(true);
  return () => sheet.close();
});

test('after the first visit the sheet opens, computes and charts without a connection', async () => {
  const { page, troubles } = sheet;
  const reached = await page.evaluate(() =>
    fetch(`./?${Math.random()}`, { cache: 'no-store' }).then(
      () => true,
      () => false,
    ),
  );
  await page.reload();
  await settled(page);
  const before = await figure(page, 'flight.lap_time');
  const field = page.locator('[data-text="line_length"]');
  await field.fill('16 m');
  await field.press('Enter');
  await settled(page);
  expect(await figure(page, 'flight.lap_time')).not.toBe(before);
  await page.locator('[data-mark="now"]').first().waitFor();
  expect(reached).toBe(false);
  expect(troubles.filter((trouble) => !trouble.includes('ERR_INTERNET_DISCONNECTED'))).toEqual([]);
});

test('the page can be installed: its icons are there in the sizes that the manifest says, without a connection too', async () => {
  const sizes = await sheet.page.evaluate(async () => {
    const address = document.querySelector<HTMLLinkElement>('link[rel="manifest"]')!.href;
    const { icons } = await (await fetch(address)).json();
    const pictures = icons.filter(({ type }: { type: string }) => type === 'image/png');
    return Promise.all(
      pictures.map(async ({ src, sizes: said }: { src: string; sizes: string }) => {
        const { width, height } = await createImageBitmap(await (await fetch(new URL(src, address))).blob());
        return [said, `${width}x${height}`];
      }),
    );
  });
  expect(sizes).toHaveLength(3);
  for (const [said, is] of sizes) expect(is).toBe(said);
});

test('a field of a block leads to its place in the reference, beside the sheet, and back, without a connection too', async () => {
  const { page, context } = sheet;
  await showSheet(page, 'Model');
  const title = page.locator('#cell-flight').getByRole('button', { name: 'Flying height: commands' });
  const unfold = page.locator('.fold[aria-expanded="false"]');
  while (!(await title.isVisible()) && (await unfold.count()) > 0) await unfold.first().click();
  await title.click();
  const link = page.getByRole('menuitem', { name: 'What it means' });
  const [reference] = await Promise.all([context.waitForEvent('page'), link.click()]);
  const field = reference.locator('[id="field.flight.height"]');
  await field.waitFor();
  expect(await field.textContent()).toContain('Flying height');
  expect(await page.locator('[data-state="settled"]').count()).toBe(1);
  const left = await page.evaluate(() => window.scrollY);
  expect(left).toBeGreaterThan(200);
  await page.evaluate(() => window.scrollTo(0, 0));
  await reference.getByRole('link', { name: /^Back to Quern 25.*, Level flight$/ }).click();
  await expect.poll(() => page.evaluate(() => [window.scrollY, location.hash])).toEqual([left, '']);
  expect(await page.locator('.one-sheet.shown').getAttribute('aria-label')).toBe('Model');
  // In the page of the design that stands already.
  expect(context.pages().filter((each) => !each.url().includes('reference')).length).toBe(1);
});

/** Width and height of the one page of a PDF, mm. */
const pageOf = (pdf: Buffer): readonly number[] =>
  /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/
    .exec(pdf.toString('latin1'))!
    .slice(1)
    .map((points) => (Number(points) * 25.4) / 72);
/** Everything that is packed in a PDF. */
const unpacked = (pdf: Buffer): string =>
  [...pdf.toString('latin1').matchAll(/stream\r?\n([\s\S]*?)\r?\nendstream/g)]
    .map(([, packed]) => {
      try {
        return inflateSync(Buffer.from(packed!, 'latin1')).toString('latin1');
      } catch {
        return '';
      }
    })
    .join('\n');

test('a chart is saved as a figure of its size on paper, text as text, the same bytes each time, without a connection', async () => {
  const { page } = sheet;
  await showSheet(page, 'Decide');
  await page
    .getByRole('button', { name: /^Save figure/ })
    .first()
    .click();
  const dialog = page.getByRole('dialog');
  const save = async (): Promise<Buffer> => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      dialog.getByRole('button', { name: 'Save', exact: true }).click(),
    ]);
    return readFileSync(await download.path());
  };
  await dialog.locator('.figure-preview svg').waitFor();
  const pdf = await save();
  expect((await save()).equals(pdf)).toBe(true);
  expect(pageOf(pdf)[0]).toBeCloseTo(85, 2);
  const inside = unpacked(pdf);
  expect(inside).toMatch(/\bBT\b[\s\S]*\bTf\b[\s\S]*<[0-9a-f]+> Tj/i);
  expect(inside).toContain('begincmap');
  expect(pdf.toString('latin1')).toContain('/FontFile2');
  await dialog.getByLabel('175\u00a0mm').check();
  await dialog.getByLabel('SVG', { exact: true }).check();
  const svg = (await save()).toString();
  expect(svg).toContain('width="175mm"');
  expect(svg).toContain('@font-face{font-family:B612');
  expect(svg).toMatch(/<text[^>]*>now 46\.0<\/text>/);
  expect(svg).not.toContain('var(--');
  await dialog.getByLabel('PNG', { exact: true }).check();
  await dialog.getByLabel(/^Dots an inch/).fill('150');
  await dialog.getByLabel(/^Dots an inch/).press('Enter');
  const png = await save();
  // 175 mm at 150 dots an inch.
  expect(png.readUInt32BE(16)).toBe(1033);
  expect(png.subarray(37, 41).toString()).toBe('pHYs');
  expect((await save()).equals(png)).toBe(true);
  await dialog.getByRole('button', { name: 'Close' }).click();
});
