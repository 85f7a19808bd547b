import { expect, test, vi } from 'vitest';
import type { BestAnswer, BestCell } from '../../../engine/index';
import { BestView } from '../../../workbook/cells/best/view';
import { foundWords, searchWords } from '../../../workbook/cells/best/words';
import { fetchBestPicture } from '../../../workbook/charts/index';
import type { Sheet } from '../../../workbook/store/sheet';
import type { Page } from '../drawing/page';
import { showOf, withPiece } from './show-piece';
import { onStoppedClock } from './stopped-clock';

const cell = (change: Partial<BestCell> = {}): BestCell => ({
  ...{ kind: 'best_compromises', id: '99', name: 'best', title: 'Best', keeps: [], wanted: ['parts.x'] },
  axes: [
    { of: 'tip_weight', low: '', high: '', count: 5 },
    { of: 'cord_length', low: '', high: '', count: 5 },
  ],
  goals: [
    { of: 'parts.mass', way: 'least' },
    { of: 'lap.pull', way: 'most' },
  ],
  ...change,
});
let page: Page;
onStoppedClock((opened) => {
  page = opened;
});

async function open(of: BestCell): Promise<Sheet> {
  await fetchBestPicture();
  return showOf(page, withPiece(of), () => <BestView cell={of} />);
}
const plain = (element: Element | null | undefined): string => (element?.textContent ?? '').replaceAll('\u00a0', ' ');
const button = (words: string): HTMLButtonElement =>
  [...page.body.querySelectorAll('button')].find((each) => each.textContent!.startsWith(words))!;

test('the best designs stand in a chart and in a table, and a press makes a variant of a row', async () => {
  const sheet = await open(cell());
  expect(plain(page.body.querySelector('p[role="status"]'))).toMatchInlineSnapshot(
    `"209 designs were tried. Of those that keep every limit none beats these 65 for least all-up weight and most pull. 24 that lie far apart are listed. 27 of these beat the design as set."`,
  );
  const rows = [...page.body.querySelectorAll('.best-table tbody tr')];
  expect(rows).toHaveLength(24);
  expect([...rows[0]!.querySelectorAll('td')].map(plain).slice(0, 5)).toMatchInlineSnapshot(`
    [
      "0 g",
      "15 m",
      "501 g",
      "7.2 N",
      "10.8 mm",
    ]
  `);
  expect([...page.body.querySelectorAll('.best-table thead th')].map(plain)).toMatchInlineSnapshot(`
    [
      "Tip_weight",
      "Cord_length",
      "All-up weight, least",
      "Pull, most",
      "CG station",
      "Take it",
    ]
  `);
  expect(page.body.querySelector('[data-cloud="1"]')).not.toBeNull();
  button('Take').click();
  await vi.advanceTimersByTimeAsync(20);
  button('Take this design as a variant').click();
  await vi.advanceTimersByTimeAsync(60);
  expect(sheet.document.value.variants).toMatchInlineSnapshot(`
    [
      {
        "changes": {
          "cord_length": "15 m",
          "tip_weight": "0 g",
        },
        "name": "Tip_weight 0 g, cord_length 15 m",
      },
    ]
  `);
});

test('where no design is left it says what keeps them out', async () => {
  const { keeps: _, ...all } = cell();
  await open(all);
  expect(plain(page.body.querySelector('p[role="status"]'))).toMatchInlineSnapshot(
    `"None of the 25 designs that were tried keeps every limit. All of them break “CG”."`,
  );
  expect(page.body.querySelector('.best-table')).toBeNull();
});

test('how far it has come is said in words', () => {
  const at = { best: 'best', tried: 1200, grid: 12_000, rounds: 4 };
  expect(searchWords(undefined)).toBe('Working.');
  expect(searchWords({ ...at, round: 0 })).toBe('1200 of 12\u202f000\u00a0designs tried');
  expect(searchWords({ ...at, round: 2 })).toBe(
    '1200\u00a0designs tried; looking closer about the best ones, step 2 of 4',
  );
});

test('what was found until it was ended says so, and how the design as set compares', () => {
  const answer: Omit<BestAnswer, 'present'> = {
    ...{ revision: 1, best: 'best', axes: ['a'], wanted: [], tried: 40, unanswered: 0 },
    ...{ reason: '', broken: [], front: 1, shown: [{ at: [1], goals: [1, 2], others: [] }], beaten: [] },
    state: 'halted',
    goals: [
      { of: 'mass', way: 'least' },
      { of: 'pull', way: 'most' },
    ],
  };
  const said = (present: BestAnswer['present']): string =>
    foundWords({ ...answer, present }, () => undefined)
      .join(' ')
      .replaceAll('\u00a0', ' ');
  expect(said({ goals: [1, 2], keeps: true, beatenBy: 1 })).toBe(
    'Ended before all was tried. 40 designs were tried. Of those that keep every limit none beats this one for least mass and most pull. One of these beats the design as set.',
  );
  expect(said({ goals: [1, 2], keeps: false, beatenBy: 1 })).toMatch(/The design as set breaks a limit\.$/);
  expect(said({ goals: [1, Number.NaN], keeps: false, beatenBy: 0 })).toMatch(/The design as set has no answer\.$/);
  expect(said({ goals: [1, 2], keeps: true, beatenBy: 0 })).toMatch(/None of these beats the design as set\.$/);
});
