import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Document } from '../../../engine/index';
import { knownKinds } from '../../../engine/sheet/cells/index';
import { plainOffers } from '../../../workbook/cells/new/index';

const demo: Document = JSON.parse(
  readFileSync(new URL('../../../data/workbooks/quern-25.tetherwright.json', import.meta.url), 'utf8'),
);

test('every kind of cell but the blocks can be added, each with a line that says what it is for', () => {
  const offers = plainOffers(undefined);
  const kinds = new Set(offers.map((offer) => offer.make(demo).kind));
  expect([...kinds].sort()).toEqual([...knownKinds].filter((kind) => kind !== 'block').sort());
  for (const { about } of offers) expect(about).toMatch(/^[A-Z].*\.$/);
});

test('rows of a sweep begin with those of the last sweep', () => {
  const table = plainOffers(undefined)
    .find(({ key }) => key === 'table')!
    .make(demo);
  expect(table).toMatchObject({ kind: 'table', sweep: 'pull_sweep', rows: 'all' });
});

test('a spread begins with three variables that are more than nothing, by an amount that is called a beginning', () => {
  const spread = plainOffers(undefined)
    .find(({ key }) => key === 'spread')!
    .make(demo);
  expect(spread).toMatchObject({
    ...{ kind: 'spread', parts: true, samples: 500, seed: 1 },
    rows: ['tip_weight', 'line_length', 'guide_x'].map((of) => ({ of, size: `2 % × ${of}` })),
  });
  const bare = plainOffers(undefined)
    .find(({ key }) => key === 'spread')!
    .make({ ...demo, cells: [], figures: [] });
  expect(bare).toMatchObject({ rows: [], parts: false, wanted: [] });
});

test('a chart begins with the last sweep, and as a histogram of the last spread where there is no sweep', () => {
  const make = (key: string, document: Document) =>
    plainOffers(undefined)
      .find((offer) => offer.key === key)!
      .make(document);
  const bare = { ...demo, cells: demo.cells.filter((cell) => cell.kind !== 'sweep' && cell.kind !== 'chart') };
  const spread = make('spread', bare);
  const cells = [...bare.cells, spread];
  expect(make('chart', { ...bare, cells })).toMatchObject({
    ...{ chart: 'histogram', sweep: 'new_spread', across: '', up: ['parts.mass'] },
  });
  expect(make('chart', { ...demo, cells: [...demo.cells, spread] })).toMatchObject({
    chart: 'line',
    sweep: 'pull_sweep',
  });
});
