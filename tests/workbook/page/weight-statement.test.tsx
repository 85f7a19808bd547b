import { expect, test, vi } from 'vitest';
import { startEngine } from '../../../engine/study/index';
import { statementPages, statementSize, WeightStatement } from '../../../workbook/page/print/weight-statement';
import { SheetContext } from '../../../workbook/store/context';
import { leftOut, printed, sheetsOnPaper } from '../../../workbook/store/printing';
import { createSheet } from '../../../workbook/store/sheet';
import { library, smallDesign } from '../../engine/sheet/small';
import { onStoppedClock } from '../cells/stopped-clock';
import type { Page } from '../drawing/page';

let page: Page;
onStoppedClock((opened) => {
  page = opened;
});

test('the weight statement has every part with its weight and place, and what they come to', async () => {
  const sheet = createSheet(smallDesign(), {
    engine: startEngine(library, { pause: () => Promise.resolve(), now: () => 0 }),
    keep: { write() {} },
    loadDemo: async () => '',
    frozen: true,
    now: () => 0,
  });
  await vi.advanceTimersByTimeAsync(60);
  page.show(
    <SheetContext.Provider value={sheet}>
      <WeightStatement />
    </SheetContext.Provider>,
  );
  const rows = [...page.body.querySelectorAll('tr')].map((row) =>
    [...row.querySelectorAll('th, td')].map((cell) => cell.textContent).join(' | '),
  );
  expect(rows).toMatchInlineSnapshot(`
    [
      "Part | Weight, g | Station, mm | Outboard, mm | Height, mm | About the CG, g·mm | From",
      "Engine | 210 | −150 | 0 | 0 | −34 178 | estimate",
      "Wing | 240 | 95 | 0 | 0 | 19 739 | estimate",
      "Stab | 15 | 480 | 0 | 0 | 7009 | estimate",
      "Fin | 16.2 | 500 | 0 | 40 | 7893 | estimate",
      "Tip | 21 | 60 | 480 | 0 | 992 | estimate",
      "Tank | 40 | −60 | 0 | 0 | −1455 | estimate",
      "Tank empty | 502 | 15.7 | 20.1 | 1.29 |  | ",
      "Tank half full | 522 | 12.8 | 19.3 | 1.24 |  | ",
      "Tank full | 542 | 10.1 | 18.6 | 1.20 |  | ",
    ]
  `);
  expect(page.body.querySelector('h2')!.textContent).toBe('Weight statement: Small, parts');
});

test('many parts are written smaller, so that they stand on one page, and never too small to be read', () => {
  expect(statementSize(20)).toBe(9);
  expect(statementSize(60)).toBe(7);
  expect(statementSize(50)).toBeLessThan(9);
  expect(statementSize(300)).toBe(7);
});

test('more parts than one column holds stand in two on the same page, and still more on further pages', () => {
  expect(statementPages(40, 3).pages).toEqual([[[0, 40]]]);
  const { size, pages } = statementPages(80, 3);
  expect(pages).toEqual([
    [
      [0, 40],
      [40, 80],
    ],
  ]);
  expect(size).toBeGreaterThanOrEqual(7);
  for (const parts of [51, 99, 100, 101, 250, 999]) {
    const laid = statementPages(parts, 3);
    // Every part once, in order, and no column longer than the page in type that can be read.
    const places = laid.pages.flat();
    expect(places[0]![0]).toBe(0);
    expect(places.at(-1)![1]).toBe(parts);
    for (const [k, [from, to]] of places.entries()) {
      if (k > 0) expect(from).toBe(places[k - 1]![1]);
      expect(((to - from + 3 + 8) * laid.size * 1.35 * 25.4) / 72).toBeLessThanOrEqual(207);
    }
    expect(laid.size).toBeGreaterThanOrEqual(7);
  }
  expect(statementPages(100, 3).pages).toHaveLength(1);
  expect(statementPages(101, 3).pages).toHaveLength(2);
});

test('on paper go the open sheet, the whole set, or those that are not left out', () => {
  const set = ['a', 'b', 'c'].map((id) => ({ id }));
  const ids = (): string =>
    sheetsOnPaper(set, set[1]!)
      .map(({ id }) => id)
      .join('');
  leftOut.value = new Set(['b']);
  const found = (['sheet', 'set', 'some'] as const).map((part) => {
    printed.value = part;
    return ids();
  });
  printed.value = 'sheet';
  leftOut.value = new Set();
  expect(found).toEqual(['b', 'abc', 'ac']);
});
