import { expect, test } from 'vitest';
import type { CheckCell, NameInfo } from '../../../engine/index';
import { briefly, holdsOf, underWords, verdict } from '../../../workbook/cells/check/verdict';

const check: CheckCell = {
  kind: 'check',
  id: 'c',
  name: 'cg_range',
  title: 'CG between 38 and 55 mm',
  of: 'balance.cg_x',
  low: '38 mm',
  high: '55 mm',
  below: 'nose-heavy, the elevator runs out',
  above: 'too far aft',
};
const read = (value: number, low = 38, high = 55) => ({
  value: (path: string) => ({ cg_range: value, 'cg_range.low': low, 'cg_range.high': high })[path] ?? Number.NaN,
  shown(path: string) {
    return path === 'strength.weakest' ? 'pivot bolt' : `${this.value(path)} mm`;
  },
  name: (path: string) => (path === 'strength.weakest' ? {} : undefined),
});

test.each([
  [46, 'holds', '46 mm, within its limits'],
  [38, 'holds', '38 mm, within its limits'],
  [37, 'broken', 'stop: 37 mm is under 38 mm: nose-heavy, the elevator runs out'],
  [60, 'broken', 'stop: 60 mm is over 55 mm: too far aft'],
  [Number.NaN, 'waits', 'no answer yet'],
])('at %d', (value, kind, words) => expect(verdict(check, read(value))).toMatchObject({ kind, words }));

test('a side without a limit never stops anything', () => {
  expect(verdict({ ...check, high: '' }, read(900, 38, Number.NaN)).kind).toBe('holds');
  expect(verdict({ ...check, low: '' }, read(-900, Number.NaN, 55)).kind).toBe('holds');
});

test('without any limit it decides nothing, and says so in place of a tick', () => {
  const open = verdict({ ...check, low: '', high: '' }, read(46, Number.NaN, Number.NaN));
  expect(open).toEqual({ kind: 'unlimited', words: '46 mm, no limit yet: it stops nothing', now: '46 mm' });
  expect([open, verdict(check, read(46)), verdict(check, read(60))].map(holdsOf)).toEqual([undefined, true, false]);
});

test('a reason says the values of what stands in braces in it', () => {
  const below = 'the {strength.weakest} breaks at {2 × cg_range}: replace it';
  const sheet = { ...read(37), value: (path: string) => (path === 'cg_range.below2' ? 74 : read(37).value(path)) };
  expect(verdict({ ...check, below }, sheet).words).toBe(
    'stop: 37 mm is under 38 mm: the pivot bolt breaks at 74\u00a0mm: replace it',
  );
});

test('a limit without an answer is no limit that holds', () => {
  expect(verdict(check, read(46, Number.NaN)).kind).toBe('waits');
});

test('without a reason the numbers stand alone', () => {
  expect(verdict({ ...check, above: '' }, read(60)).words).toBe('stop: 60 mm is over 55 mm');
});

test('a reason that says itself when to stop is cut to what is wrong', () => {
  const below = 'Stop if the CG is ahead of 38 mm: nose-heavy, the elevator runs out on grass.';
  expect(briefly(below)).toBe('nose-heavy, the elevator runs out on grass');
  expect(briefly('too far aft')).toBe('too far aft');
  expect(verdict({ ...check, below }, read(37, 40)).words).toBe(
    'stop: 37 mm is under 40 mm: nose-heavy, the elevator runs out on grass',
  );
});

test('the value stands by itself too', () => {
  expect(verdict(check, read(46)).now).toBe('46 mm');
  expect(verdict(check, read(Number.NaN)).now).toBe('–');
});

test('a result that may not come under its least says so as a check would', () => {
  const weakest = { path: 'strength.least', unit: '', suffix: '', least: { at: 1, because: 'a part breaks' } };
  expect(underWords(weakest as unknown as NameInfo, { shown: () => '0.77' })).toBe(
    'stop: 0.77 is under 1: a part breaks',
  );
});
