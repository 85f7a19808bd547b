// How long after a move of the slide the charts have been redrawn, while the pointer stays down.
import { join } from 'node:path';
import { preview } from 'vite';
import { findChromium, launch } from '../../.ci/chromium.mjs';
import { root } from '../../.ci/project.mjs';

const MOVES = 200;
/** Nothing has been drawn for so long: what this move brought is there. */
const QUIET_MS = 120;

/**
 * Milliseconds from each move to the frame that shows its last change in any chart. All charts are on the screen, so all
 * of them are swept anew and redrawn.
 * @param {string} variable
 * @param {string} title of the sheet of the demo on which it stands
 * @returns {Promise<number[]>}
 */
export async function measureSlide(variable, title) {
  const server = await preview({ configFile: join(root, 'vite.config.ts'), preview: { port: 0 }, logLevel: 'warn' });
  const browser = await launch(await findChromium());
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 2400 } });
    await page.goto(server.resolvedUrls?.local[0] ?? '');
    await page.locator('[data-state="settled"]').waitFor();
    const opener = page.locator('[data-opens="sheets"][aria-expanded="false"]');
    if ((await opener.count()) > 0) await opener.click();
    await page.locator('[data-sheet]').getByText(title, { exact: true }).click();
    await page.locator('[data-state="settled"]').waitFor();
    await page.locator('[data-chart] svg').first().waitFor();
    const slide = page.locator(`input[type="range"][data-path="${variable}"]`);
    await slide.evaluate(watch);
    const { x, y, width, height } = /** @type {{ x: number, y: number, width: number, height: number }} */ (
      await slide.boundingBox()
    );
    await page.mouse.move(x + width / 2, y + height / 2);
    await page.mouse.down();
    const times = [];
    for (let k = 0; k < MOVES; k++) {
      // To and fro over the middle half of the slide, never twice the same place in a row.
      await page.mouse.move(x + width * (0.5 + 0.25 * Math.sin(k / 7 + 0.1)), y + height / 2);
      times.push(await page.evaluate(lastRedraw, QUIET_MS));
    }
    await page.mouse.up();
    return times.filter((time) => time > 0);
  } finally {
    await browser.close();
    await server.close();
  }
}

/**
 * In the page: notes when the slide was moved and when a chart's change was on the screen.
 * @param {Element} slide
 */
function watch(slide) {
  const seen = { moved: 0, redrawn: 0 };
  Object.assign(globalThis, { seen });
  slide.addEventListener('input', (event) => {
    seen.moved = event.timeStamp;
  });
  const observer = new MutationObserver(() => {
    requestAnimationFrame(() => {
      // The first task after a frame's callbacks runs when the frame has been painted.
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => {
        seen.redrawn = performance.now();
      };
      port2.postMessage(null);
    });
  });
  for (const chart of document.querySelectorAll('[data-chart]')) {
    observer.observe(chart, { subtree: true, childList: true, attributes: true, characterData: true });
  }
}

/**
 * In the page: waits until the charts have been quiet, and gives the time from the move to the last redraw; 0 if the move
 * changed nothing.
 * @param {number} quiet
 */
async function lastRedraw(quiet) {
  const { seen } = /** @type {{ seen: { moved: number, redrawn: number } }} */ (/** @type {unknown} */ (globalThis));
  const since = () => performance.now() - Math.max(seen.moved, seen.redrawn);
  do await new Promise((resolve) => setTimeout(resolve, 20));
  while (since() < quiet);
  return Math.max(0, seen.redrawn - seen.moved);
}
