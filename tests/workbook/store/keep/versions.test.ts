import { expect, test } from 'vitest';
import type { Version } from '../../../../workbook/store/keep/database';
import { gathered, joined, thinned } from '../../../../workbook/store/keep/versions';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;
const NOW = Date.UTC(2026, 10, 25, 12);
const version = (id: number, at: number, name?: string): Version => ({
  id,
  design: 'd',
  began: at,
  at,
  says: ['span'],
  edits: 1,
  text: 'before',
  name,
});

test('what is changed within ten minutes of the first change is one version', () => {
  const last = version(1, NOW);
  const grown = joined(last, { at: NOW + 10 * MINUTE, says: ['chord', 'span'], text: 'after' });
  expect(grown).toEqual({ ...last, at: NOW + 10 * MINUTE, says: ['chord', 'span'], edits: 3, text: 'after' });
  expect(joined(last, { at: NOW + 10 * MINUTE + 1, says: ['chord'], text: 'after' })).toBeUndefined();
});

test.each([
  ['there is none before it', undefined, {}],
  ['the last has a name', version(1, NOW, 'first flight'), {}],
  ['it is to stand apart', version(1, NOW), { apart: true }],
  ['the clock was set back', version(1, NOW + HOUR), {}],
])('a version of its own begins where %s', (_, last, also) => {
  expect(joined(last, { at: NOW, says: ['chord'], text: 'after', ...also })).toBeUndefined();
});

test('the last eight things changed are told, each once', () => {
  expect(gathered(['a', 'b'], ['a', 'c'])).toEqual(['b', 'a', 'c']);
  expect(gathered([], [...'abcdefghij'])).toEqual([...'cdefghij']);
});

test('all of a day stay, then one an hour for a week, one a day for three months, none after', () => {
  const ages = [
    ...[0, 5 * MINUTE, 23 * HOUR, 23 * HOUR + MINUTE],
    // Two in the same hour: the later stays.
    ...[2 * DAY, 2 * DAY + 10 * MINUTE, 2 * DAY + HOUR],
    // Two on the same day.
    ...[20 * DAY, 20 * DAY + 2 * HOUR, 21 * DAY],
    91 * DAY,
  ];
  const versions = ages.map((age, id) => version(id, NOW + 30 * MINUTE - age));
  expect(thinned(versions, NOW + 30 * MINUTE)).toEqual([5, 8, 10]);
});

test('a named version stays, however old, and so does the newest', () => {
  expect(thinned([version(1, NOW - 400 * DAY, 'as flown'), version(2, NOW - 300 * DAY)], NOW)).toEqual([]);
});

test('at most 120 without a name stay', () => {
  const versions = Array.from({ length: 130 }, (_, id) => version(id, NOW - HOUR + id));
  expect(thinned(versions, NOW)).toEqual([9, 8, 7, 6, 5, 4, 3, 2, 1, 0]);
});
