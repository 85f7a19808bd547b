import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { cellsOf, type Document } from '../../../engine/index';
import { knownKinds } from '../../../engine/sheet/cells/index';
import { plainOffers } from '../../../workbook/cells/offers';
import { onOneSheet } from '../../engine/sheet/one-sheet';

const demo: Document = JSON.parse(
  readFileSync(new URL('../../designs/quern.tetherwright.json', import.meta.url), 'utf8'),
);

test('every kind of cell but the blocks can be added, each with a line that says what it is for', () => {
  const offers = plainOffers(undefined);
  const kinds = new Set(offers.map((offer) => offer.make(demo).kind));
  expect([...kinds].sort()).toEqual([...knownKinds].filter((kind) => kind !== 'model').sort());
  for (const { about } of offers) expect(about).toMatch(/^[A-Z].*\.$/);
});

test('rows of a sweep begin with those of the last sweep', () => {
  const table = plainOffers(undefined)
    .find(({ key }) => key === 'table')!
    .make(demo);
  expect(table).toMatchObject({ kind: 'table', series: 'pull_sweep', rows: 'all' });
});

test('a spread begins with three variables that are more than nothing, by an amount that is called a beginning', () => {
  const spread = plainOffers(undefined)
    .find(({ key }) => key === 'spread')!
    .make(demo);
  expect(spread).toMatchObject({
    ...{ kind: 'tolerances', parts: true, samples: 500, seed: 1 },
    rows: ['tip_weight', 'line_length', 'guide_x'].map((of) => ({ of, size: `2 % × ${of}` })),
  });
  const bare = plainOffers(undefined)
    .find(({ key }) => key === 'spread')!
    .make({ ...demo, sheets: onOneSheet([]), figures: [] });
  expect(bare).toMatchObject({ rows: [], parts: false, wanted: [] });
});

test('a chart begins with the last sweep, and as a histogram of the last spread where there is no sweep', () => {
  const make = (key: string, document: Document) =>
    plainOffers(undefined)
      .find((offer) => offer.key === key)!
      .make(document);
  const bare = {
    ...demo,
    sheets: onOneSheet(cellsOf(demo).filter((cell) => cell.kind !== 'trial_series' && cell.kind !== 'chart')),
  };
  const spread = make('spread', bare);
  const cells = [...cellsOf(bare), spread];
  expect(make('chart', { ...bare, sheets: onOneSheet(cells) })).toMatchObject({
    ...{ chart: 'histogram', series: 'tolerances', across: '', up: ['parts.mass'] },
  });
  expect(make('chart', { ...demo, sheets: onOneSheet([...cellsOf(demo), spread]) })).toMatchObject({
    chart: 'line',
    series: 'pull_sweep',
  });
});
