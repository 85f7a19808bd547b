import type { Page } from 'playwright-core';
import { inject } from 'vitest';
import { FLYING_DAY, openDesign, smallDesignWithChanges, twoDesigns } from './designs';
import { DEMO_WINDOWS, DIALOG_WINDOWS, PIECE_WINDOWS, WINDOWS } from './misfits';
import type { Window } from './rooms';
import { settled, showSheet } from './sheet';

/** One thing that can be on the screen, and the way there from the sheet as it opens. */
export interface View {
  readonly name: string;
  /** What no other view has in it: it's looked at there. The whole view where nothing is said. */
  readonly part?: readonly string[];
  /** Windows that lay it out each in another way. As for a sheet where nothing is said. */
  readonly windows?: readonly Window[];
  /** Words that are looked at on the other paper too. What tokens there are is computed on both; this is for what only the page shows. */
  readonly blueprint?: readonly string[];
  /** Long enough to be read at 400 %, where it has to flow into the window too. */
  readonly flows?: true;
  open(page: Page): Promise<void>;
}

const IN_DIALOG = { part: ['dialog'], windows: DIALOG_WINDOWS };

const type = async (page: Page, path: string, text: string): Promise<void> => {
  const field = page.locator(`[data-text="${path}"]`).first();
  await field.fill(text);
  await field.press('Enter');
};
const press = (page: Page, name: string | RegExp): Promise<void> => page.getByRole('button', { name }).first().click();
const dialog = (page: Page): Promise<void> => page.getByRole('dialog').waitFor();

/** Opens every piece and scrolls through the whole sheet, so that all that waits until it's on the screen has been there. */
export async function seeAll(page: Page): Promise<void> {
  const folded = page.locator('.fold[aria-expanded="false"]');
  while ((await folded.count()) > 0) await folded.first().click();
  // A window as high as the sheet is drawn once, where one of the usual height is drawn at every step.
  const usual = page.viewportSize()!;
  const height = await page.evaluate(() => document.documentElement.scrollHeight);
  await page.setViewportSize({ ...usual, height: height + usual.height });
  await page.waitForTimeout(100);
  await page.setViewportSize(usual);
  await settled(page);
}

/** Opens what is folded away in some places, or everywhere. */
const openFolds = (page: Page, places: readonly string[] = ['body']): Promise<void> =>
  page.evaluate((within) => {
    for (const place of within) {
      for (const fold of document.querySelectorAll<HTMLDetailsElement>(`${place} details`)) fold.open = true;
    }
  }, places);

async function unfoldParts(page: Page): Promise<void> {
  await showSheet(page, 'Weights');
  const folded = page.locator('#cell-parts').locator('.fold[aria-expanded="false"]');
  if ((await folded.count()) > 0) await folded.click();
}

/** A piece of each kind, opened: the others of its kind are no different. */
const ONE_OF_EACH = [
  ...[
    'brief',
    'set_these',
    'stabiliser_stock',
    'line_set',
    'balance_sweep',
    'balance_chart',
    'tip_share',
    'check_nose',
  ],
  ...['sheet_drawing', 'wing', 'parts', 'balance'],
].map((name) => `#cell-${name}`);

/** What of a sheet is written in colours of its own beside those that others have too. */
const OTHER_PAPER: Readonly<Record<string, readonly string[]>> = {
  Decide: ['#cell-stabiliser_stock', '#cell-balance_chart', '#cell-tip_share', '.standing'],
  Weights: ['#cell-balance'],
};

/**
 * Every view there is, each opened from the first sheet, on the page where the one before it was; what an earlier one has changed stays.
 * Whoever adds one to the page adds it here: it is held to the same as the others.
 */
export const views: readonly View[] = [
  { name: 'the sheet as it opens', open: async () => {} },
  {
    name: 'what can be opened',
    ...IN_DIALOG,
    blueprint: ['dialog'],
    async open(page) {
      await page.getByRole('button', { name: 'Open', exact: true }).click();
      await dialog(page);
    },
  },
  {
    name: 'two designs of this machine compared',
    part: ['.designs-kept', '.compared'],
    windows: DIALOG_WINDOWS,
    async open(page) {
      await openDesign(page, twoDesigns());
      await page.locator('.notices.done').getByRole('button', { name: 'Close' }).click();
      await page.getByRole('button', { name: 'Open', exact: true }).click();
      const ticks = page.locator('.designs-kept').getByRole('checkbox');
      await ticks.nth(1).waitFor();
      for (const k of [0, 1]) await ticks.nth(k).check();
      await press(page, 'Compare the two that are ticked');
      await page.locator('.compared .typed, .compared p').first().waitFor();
    },
  },
  {
    name: 'the form of a first design',
    ...IN_DIALOG,
    async open(page) {
      await page.getByRole('button', { name: 'Open', exact: true }).click();
      await press(page, 'Begin with my model');
      await page.getByLabel(/span/i).first().waitFor();
    },
  },
  {
    name: 'what can be added',
    ...IN_DIALOG,
    async open(page) {
      await page.getByRole('button', { name: 'Add a piece', exact: true }).click();
      await dialog(page);
    },
  },
  {
    name: 'what can be done with a cell',
    part: ['.menu-list'],
    windows: DIALOG_WINDOWS,
    async open(page) {
      await press(page, /^\d+, Set these: commands$/);
      await page.locator('.menu-list').waitFor();
    },
  },
  {
    name: 'where to go',
    ...IN_DIALOG,
    async open(page) {
      await page.keyboard.press('F8');
      await page.getByRole('dialog').getByRole('option').first().waitFor();
    },
  },
  {
    name: 'all keys',
    ...IN_DIALOG,
    async open(page) {
      await page.keyboard.press('F8');
      await press(page, 'All keys');
      await page.getByRole('dialog', { name: 'Keys' }).waitFor();
    },
  },
  {
    name: 'what a chart is made of',
    ...IN_DIALOG,
    async open(page) {
      await page.locator('.figures').getByRole('button', { name: 'Line pull: commands' }).click();
      await page.getByRole('menuitem', { name: 'Make a chart of this' }).click();
      await page.getByRole('dialog').getByRole('option').first().waitFor();
    },
  },
  {
    name: 'another kind of engine',
    ...IN_DIALOG,
    async open(page) {
      await showSheet(page, 'Model');
      const folded = page.locator('#cell-engine .fold[aria-expanded="false"]');
      if ((await folded.count()) > 0) await folded.click();
      await press(page, /^Put another kind in its place/);
      await page.getByRole('dialog').getByRole('button', { name: 'Put it in its place', disabled: false }).waitFor();
    },
  },
  {
    name: 'a figure to be saved',
    ...IN_DIALOG,
    async open(page) {
      await press(page, /^Save figure/);
      await dialog(page);
    },
  },
  {
    name: 'what to print',
    ...IN_DIALOG,
    async open(page) {
      await press(page, /^Print$/);
      await dialog(page);
    },
  },
  {
    name: 'large drawing',
    ...IN_DIALOG,
    async open(page) {
      await press(page, /^Open large/);
      await dialog(page);
      await page
        .getByRole('button', { name: /^Move its corners/ })
        .first()
        .click();
    },
  },
  {
    name: 'a design that is handed on',
    ...IN_DIALOG,
    async open(page) {
      await page.getByRole('button', { name: 'Open', exact: true }).click();
      await press(page, 'A design that was handed on');
      await page.locator('.handed-on').waitFor();
    },
  },
  {
    name: 'a newsletter page',
    ...IN_DIALOG,
    async open(page) {
      await press(page, 'Print');
      await press(page, 'Newsletter page');
      await page.locator('.figure-preview svg').waitFor();
    },
  },
  {
    name: 'a lesson in class view, with what is set up in it, covered and answered',
    part: ['.guess'],
    windows: PIECE_WINDOWS,
    blueprint: ['.guess'],
    async open(page) {
      await press(page, 'Add a study');
      await page.getByRole('dialog').getByRole('button', { name: 'Lessons', exact: true }).click();
      await page.locator('[data-study="test_lesson"]').click();
      await press(page, 'Put it on this design');
      const guess = page.locator('.guess');
      await guess.getByRole('checkbox').check();
      for (const kilograms of ['5', '12']) {
        await guess.locator('.guess-entry input').last().fill(kilograms);
        await guess.getByRole('button', { name: 'Take this guess' }).click();
        await guess.getByText(kilograms === '5' ? '1 guess is in.' : '2 guesses are in.').waitFor();
      }
      await openFolds(page, ['.guess']);
      await guess.getByRole('button', { name: 'Show the answer' }).click();
      await guess.locator('.guess-strip').waitFor();
    },
  },
  {
    name: 'templates at full size',
    ...IN_DIALOG,
    async open(page) {
      await press(page, /^Print$/);
      await press(page, 'Templates at full size');
      await page.locator('.template-preview').first().waitFor();
    },
  },
  ...['Decide', 'Model', 'Weights'].map(
    (title): View => ({
      name: `the whole sheet ${title}, every piece open`,
      part: ONE_OF_EACH,
      windows: WINDOWS.filter(({ width }) => !DEMO_WINDOWS.some((other) => other.width === width)),
      blueprint: OTHER_PAPER[title],
      flows: true,
      async open(page) {
        await showSheet(page, title);
        await seeAll(page);
        await openFolds(page, ONE_OF_EACH);
        await page.waitForTimeout(200);
      },
    }),
  ),
  {
    name: 'a part, opened, and what is often forgotten',
    part: ['.part-editor', '.forgotten'],
    windows: PIECE_WINDOWS,
    async open(page) {
      await unfoldParts(page);
      await page.locator('tr[data-part="fin"] .part-title').click();
      await page.locator('.part-editor').waitFor();
      await openFolds(page);
      await page.locator('[data-forgotten]').first().waitFor();
    },
  },
  {
    name: 'a table of parts being pasted, with a line that is wrong',
    part: ['.paste-parts'],
    windows: DIALOG_WINDOWS,
    async open(page) {
      await unfoldParts(page);
      await page.locator('.paste-parts > summary').click();
      await page.locator('.paste-parts textarea').fill('part;mass, g;x, mm;y\nFin;12,5;480;0\nSkid;four;480;0');
      await page.locator('.paste-faults').waitFor();
    },
  },
  {
    name: 'a place being picked on the drawing',
    part: ['.standing'],
    windows: DIALOG_WINDOWS,
    async open(page) {
      await unfoldParts(page);
      await page.locator('tr[data-part="fin"] .part-title').click();
      await press(page, 'Pick on the drawing');
      await page.locator('[data-mark="spot"]').first().waitFor();
    },
  },
  {
    name: 'the versions of a design',
    ...IN_DIALOG,
    async open(page) {
      await type(page, 'tip_weight', '22 g');
      await press(page, 'Versions');
      await dialog(page);
    },
  },
  {
    name: 'the control linkage with its picture',
    part: ['.cell-model'],
    windows: PIECE_WINDOWS,
    flows: true,
    async open(page) {
      await page.getByRole('button', { name: 'Add a piece', exact: true }).click();
      await page.getByRole('button', { name: 'Control linkage', exact: true }).click();
      await page.locator('.block-picture').first().scrollIntoViewIfNeeded();
      await page.locator('.linkage svg').waitFor();
      await settled(page);
    },
  },
  {
    name: 'a spread with its shares and its form',
    part: ['.cell-tolerances'],
    windows: PIECE_WINDOWS,
    flows: true,
    async open(page) {
      await page.getByRole('button', { name: 'Add a piece', exact: true }).click();
      await page.getByRole('button', { name: 'Tolerances', exact: true }).click();
      await press(page, /^Done with title/);
      await page.locator('.cell-tolerances .set-up > summary').click();
      // All parts at once take longer than anybody has to wait for a view.
      await page.getByLabel('With the uncertainty of the parts').uncheck();
      await page.locator('.cell-tolerances [data-bar]').first().waitFor();
      await page.locator('.cell-tolerances').scrollIntoViewIfNeeded();
      await settled(page);
    },
  },
  {
    name: 'the list of what is wrong',
    ...IN_DIALOG,
    async open(page) {
      await type(page, 'engine_station', 'flight.pul');
      await page.locator('[data-state="fault"]').waitFor();
      await page.locator('.sheet-state button').click();
      await dialog(page);
    },
  },
  {
    name: 'a sheet with faults at their places',
    part: ['[data-fault]', '.standing', '.sheet-state'],
    windows: DIALOG_WINDOWS,
    async open(page) {
      await type(page, 'engine_station', 'flight.pul');
      await page.locator('[data-fault="engine_station"]').waitFor();
    },
  },
  {
    name: 'what mends it, best compromises, variants side by side, the bench and a CG found, with their forms',
    part: ['.variants', '.best', '.bench', '.found-cg'],
    windows: PIECE_WINDOWS,
    flows: true,
    async open(page) {
      await openDesign(page, smallDesignWithChanges());
      await page.locator('[data-mend]').first().waitFor();
      await page.locator('.variants').last().scrollIntoViewIfNeeded();
      await page.locator('.variants-apart').last().waitFor();
      await page.locator('.best-table').waitFor();
      await page.locator('.bench').scrollIntoViewIfNeeded();
      await page.locator('.bench-rows').waitFor();
      await page.locator('.found-culprits').waitFor();
      await openFolds(page, ['.variants', '.best', '.bench']);
      await settled(page);
    },
  },
  {
    name: 'levers with their ranking, their chart and the form',
    part: ['.cell:has(.levers)'],
    windows: PIECE_WINDOWS,
    flows: true,
    async open(page) {
      await openDesign(page, FLYING_DAY);
      const levers = page.locator('.levers');
      await levers.scrollIntoViewIfNeeded();
      await levers.locator('[data-bar]').first().waitFor();
      await settled(page);
      await levers.locator('summary', { hasText: 'Set up these changes' }).click();
      await levers.getByText('Add a result').waitFor();
    },
  },
  {
    name: 'the day card',
    part: ['.at-field'],
    windows: PIECE_WINDOWS,
    async open(page) {
      await press(page, 'Day card');
      await page.locator('[data-field="settled"] .day-answer').first().waitFor({ state: 'attached' });
    },
  },
  {
    name: 'the reference',
    blueprint: ['.top-bar', '.contents', '.chapter'],
    flows: true,
    async open(page) {
      await page.goto(new URL('reference.html#block.air', inject('address')).href);
      await page.locator('.chapter').waitFor();
    },
  },
];
