// npm run picture: takes the picture of the README from the built page, as it opens at a desk.
import { join } from 'node:path';
import { preview } from 'vite';
import { buildIfStale } from './build.mjs';
import { findChromium, launch } from './chromium.mjs';
import { root } from './project.mjs';

if (buildIfStale() !== 0) process.exit(1);
const server = await preview({ configFile: join(root, 'vite.config.ts'), preview: { port: 0 }, logLevel: 'warn' });
const browser = await launch(await findChromium());
const page = await browser.newPage({ viewport: { width: 1280, height: 1800 } });
await page.goto(server.resolvedUrls?.local[0] ?? '');
await page.locator('[data-state="settled"]').waitFor();
await page.locator('[data-chart] [data-mark="now"]').first().waitFor();
await page.screenshot({ path: join(root, 'workbook/picture.png') });
await browser.close();
await server.close();
