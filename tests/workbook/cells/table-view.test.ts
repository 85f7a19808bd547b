import { describe, expect, test } from 'vitest';
import type { NameInfo, TableCell } from '../../../engine/index';
import { orderOf, pressed, viewOf } from '../../../workbook/cells/table/shown';
import { countWords, entryOf, headingOf } from '../../../workbook/cells/table/words';

const cell: TableCell = {
  kind: 'table',
  id: '1',
  name: 'rows',
  title: 'Rows',
  series: 'grid',
  columns: [],
  keep: [{ of: 'flight.pull', low: '20 N', high: '' }],
  rows: 'all',
  reason: '',
  groups: [],
  measures: [],
  sort: '',
  descending: false,
};
const pull = { path: 'flight.pull', title: 'Pull', unit: 'N', suffix: '' } as NameInfo;
const stock = {
  path: 'stock',
  title: 'Stock',
  unit: '',
  suffix: '',
  options: ['balsa', 'light_ply'],
} as unknown as NameInfo;
const column = { key: 'flight.pull', path: 'flight.pull' };

test('a view has the limits of its cell as numbers', () => {
  const view = viewOf(cell, (path) => (path === 'rows.keep1.low' ? 20 : Number.NaN));
  expect(view.keep).toEqual([{ of: 'flight.pull', low: 20, high: Number.NaN }]);
  expect(view).not.toHaveProperty('id');
});

test('a head sorts upwards, then downwards, then leaves the order of the sweep', () => {
  const up = pressed({ ...cell, sort: 'stock', descending: true }, column);
  expect([up.sort, orderOf(up, column)]).toEqual(['flight.pull', 'ascending']);
  const down = pressed(up, column);
  expect(orderOf(down, column)).toBe('descending');
  expect(orderOf(down, { key: 'stock', path: 'stock' })).toBe('none');
  expect(pressed(down, column)).toEqual(cell);
});

describe('words of a table', () => {
  test('a head says title, unit and what is said of a group', () => {
    expect(headingOf(column, pull)).toEqual({ title: 'Pull', below: 'N' });
    expect(headingOf({ ...column, key: 'flight.pull mean', measure: 'mean' }, pull)).toEqual({
      title: 'Pull',
      below: 'N, mean',
    });
    expect(headingOf({ key: 'count', path: '', measure: 'count' }, undefined)).toEqual({ title: 'designs', below: '' });
  });

  test.each([
    [column, pull, 25.512345, '25.512'],
    [column, pull, Number.NaN, '–'],
    [{ key: 'stock', path: 'stock' }, stock, 1, 'light ply'],
    [{ key: 'count', path: '', measure: 'count' as const }, undefined, 12_345, '12\u202f345'],
  ])('an entry of %j: %s', (of, info, si, text) => expect(entryOf(of, info, si)).toBe(text));

  test('an option reads by its title', () => {
    const title = (path: string, option: string): string => `${path} of ${option}`;
    expect(entryOf({ key: 'stock', path: 'stock' }, stock, 1, title)).toBe('stock of light_ply');
  });

  test.each([
    [{ rows: 630, total: 630 }, false, '630 designs'],
    [{ rows: 4, total: 12_000 }, false, '4 of 12\u202f000 designs'],
    [{ rows: 1, total: 12 }, true, '1 group of 12 designs'],
  ])('a count of %j', (answer, grouped, words) => expect(countWords(answer, grouped)).toBe(words));
});
