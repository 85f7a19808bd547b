import 'fake-indexeddb/auto';
import { expect, test, vi } from 'vitest';
import { randomFrom } from '../../../engine/sheet/random';
import { newBrowser, sheetText } from './pages';

const PAGES = 3;
const STEPS = 25;

type Page = Awaited<ReturnType<typeof openPage>>;

async function openPage(browser: ReturnType<typeof newBrowser>) {
  const page = browser.page();
  const kept = await page.keeper.start();
  const text = kept ?? sheetText('first');
  if (kept === undefined) page.keeper.startWith(text);
  const opened = { ...page, text };
  page.show.mockImplementation((shown) => {
    opened.text = shown;
  });
  return opened;
}

async function expectNoTwoAtWork(pages: readonly Page[]): Promise<void> {
  for (const each of pages) await each.keeper.stored();
  const working = pages.filter((each) => each.keeper.keeping.value.kind === 'kept');
  for (const each of working) {
    const id = each.keeper.open.value;
    const kept = await each.store.read(id);
    // A page that has changed nothing has written nothing.
    if (!kept) continue;
    expect(working.filter((other) => other.keeper.open.value === id)).toHaveLength(1);
    expect(kept.text).toBe(each.text);
  }
}

/**
 * Three pages of one browser edit, take over, copy, go back and forth between designs. At rest
 * no two pages work on one design, and what a page that works on it shows is what the store has.
 */
test.each([1, 2, 3, 4])(
  'no page ever overwrites what another has kept (seed %i)',
  async (seed) => {
    const random = randomFrom(seed);
    const browser = newBrowser();
    const pages: Page[] = [];
    for (let k = 0; k < PAGES; k++) pages.push(await openPage(browser));
    let edits = 0;

    for (let step = 0; step < STEPS; step++) {
      const page = random.pick(pages);
      const { keeper } = page;
      const way = random.below(6);
      if (way < 3 && keeper.mayChange()) {
        page.text = sheetText(`edit ${edits++}`);
        keeper.write(page.text, 'edit');
      } else if (way === 3) await keeper.takeOver();
      else if (way === 4) {
        keeper.begin();
        keeper.write(page.text, 'opening a copy');
      } else if (way === 5) {
        const [design] = (await page.store.designs()).filter(({ id }) => id !== keeper.open.value);
        if (design) {
          page.text = design.text;
          keeper.begin(design);
        }
      }
      if (random.below(2) === 0) continue;
      // A machine that is busy takes its time to come to rest.
      await vi.waitFor(() => expectNoTwoAtWork(pages), { timeout: 5000 });
      expect(pages.flatMap((each) => each.tell.mock.calls)).toEqual([]);
    }
    expect(edits).toBeGreaterThan(3);
  },
  60_000,
);
