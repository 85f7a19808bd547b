import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { wavOf } from '../../workbook/listening/wav';
import { type Flight, synthesise } from '../engine/physics/listening/flights';
import { barriers } from './looks';
import { AT_THE_MICROPHONE } from './rooms';
import { openSheet, PHONE, type Sheet, startBrowser } from './sheet';

/** An invented racer on short laps, so that two of them are soon heard. The sound goes round: it lasts five laps and a whole number of turns. */
const RACER: Flight = {
  ...{ radius: 15.9, distance: 34, height: 1, lap: 1.6, start: 0.8, drift: 0, swing: 0 },
  ...{ rpm: 21_000, rpmDrift: 0, rpmSwing: 0 },
  timbre: { motor: false, blades: 2, falls: 0.8, propeller: 0.4, halves: 0 },
};
const RECORDING = { seconds: 8, rate: 16_000, wind: 0.8, sound: 340, clip: 2, seed: 3 };
const wav = (flights: readonly Flight[], noise: number): Buffer =>
  Buffer.from(
    wavOf({
      samples: synthesise(
        flights.map((flight) => ({ flight, quieter: 0 })),
        { ...RECORDING, noise },
      ),
      rate: RECORDING.rate,
    }),
  );

let browser: Browser;
let sheet: Sheet;
let page: Page;
beforeAll(async () => {
  mkdirSync(dirname(AT_THE_MICROPHONE), { recursive: true });
  writeFileSync(AT_THE_MICROPHONE, wav([RACER], 15));
  browser = await startBrowser();
  sheet = await openSheet(browser, PHONE);
  page = sheet.page;
});
afterAll(() => sheet.close());

const dialog = () => page.getByRole('dialog', { name: 'Listen to a flight' });
const told = async (): Promise<string> => (await dialog().locator('.heard-words').textContent()) ?? '';

test('a flight at the microphone tells rpm and laps, and goes into the log', async () => {
  await page.keyboard.press('F8');
  await page.keyboard.type('listen to a flight');
  await page.keyboard.press('Enter');
  await dialog().getByRole('textbox', { name: 'rpm expected, roughly' }).fill('20000');
  await dialog().getByRole('button', { name: 'Listen by microphone' }).click();
  await expect.poll(() => dialog().getByRole('meter').getAttribute('value')).not.toBe('0');
  await page.waitForTimeout(4600);
  await dialog().getByRole('button', { name: 'Stop and work it out' }).click();
  await dialog().locator('.heard-words').waitFor();
  expect(await told()).toMatch(/^Engine speed 2[01]\u202f\d{3}\u00a0rpm ± \d+\u00a0rpm\. Lap 1\.(59|60|61)\u00a0s ± /);
  expect(await barriers(page, ['.listening-dialog'])).toEqual([]);
  await dialog().getByRole('button', { name: 'Put into the log' }).click();
  await expect.poll(() => dialog().textContent()).toContain('It stands in the log as a flight of today.');
});

test('a file of wind alone tells nothing, and says so', async () => {
  await dialog()
    .locator('input[type=file]')
    .setInputFiles({ name: 'wind.wav', mimeType: 'audio/wav', buffer: wav([], 0) });
  await expect.poll(told).toMatch(/^Can’t tell\. No engine stands out of the noise/);
  await dialog()
    .locator('input[type=file]')
    .setInputFiles({ name: 'words.wav', mimeType: 'audio/wav', buffer: Buffer.from('no sound') });
  await expect.poll(() => dialog().textContent()).toContain('“words.wav” can’t be read as sound.');
  await dialog().getByRole('button', { name: 'Close' }).click();
  expect(sheet.troubles).toEqual([]);
});
