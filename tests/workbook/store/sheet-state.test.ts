import { describe, expect, test } from 'vitest';
import type { Fault } from '../../../engine/index';
import { sheetState, sideOf } from '../../../workbook/store/sheet-state';

const fault = (cell: string, path: string, state: Fault['state']): Fault => ({ cell, path, state, message: '' });

test.each([
  [[], 0, false, 'settled', 'up to date'],
  [[], 2, true, 'working', 'working'],
  [[fault('c1', 'a', 'fault')], 0, true, 'working', 'working'],
  [[fault('c1', 'a', 'fault')], 0, false, 'fault', '1 fault'],
  [[fault('c1', 'a', 'fault'), fault('c1', 'b', 'fault'), fault('c2', 'c', 'waits')], 0, false, 'fault', '2 faults'],
  [[fault('c1', 'a', 'waits'), fault('c1', 'b', 'waits')], 0, false, 'waits', '1 waits'],
  [[fault('c1', 'a', 'waits'), fault('c2', 'b', 'waits')], 0, false, 'waits', '2 wait'],
  [[], 1, false, 'stop', '1 stop'],
  [[fault('c1', 'a', 'fault')], 2, false, 'stop', '2 stops'],
] as const)('%j, %s stops, working %s: %s', (faults, stops, working, kind, words) => {
  expect(sheetState(faults, stops, working, 0)).toEqual({ kind, words });
});

test('a check without a limit stops nothing, and no sheet is up to date with it', () => {
  expect(sheetState([], 0, false, 1)).toEqual({ kind: 'unlimited', words: '1 has no limit' });
  expect(sheetState([], 0, false, 2).words).toBe('2 have no limit');
  expect(sheetState([fault('c1', 'a', 'waits')], 0, false, 1).words).toBe('1 waits');
  expect(sheetState([], 1, false, 1).words).toBe('1 stop');
});

describe('a check finds its value', () => {
  const side = (now: number, low: string, high: string, limits: Readonly<Record<string, number>> = {}) =>
    sideOf({ name: 'c', low, high }, (path) => ({ c: now, 'c.low': 1, 'c.high': 2, ...limits })[path]!);
  test.each([
    [1.5, '1', '2', 'within'],
    [1, '1', '2', 'within'],
    [0.9, '1', '2', 'under'],
    [2.1, '1', '2', 'over'],
    [0.9, '', '2', 'within'],
    [2.1, '1', '', 'within'],
    [2.1, '', '', 'unlimited'],
    [Number.NaN, '', '', undefined],
    [Number.NaN, '1', '2', undefined],
  ] as const)('%s of %s to %s: %s', (now, low, high, wanted) => expect(side(now, low, high)).toBe(wanted));
  test('nowhere while a limit has no answer', () => {
    expect(side(1.5, '1', '2', { 'c.high': Number.NaN })).toBeUndefined();
    expect(side(1.5, '1', '', { 'c.high': Number.NaN })).toBe('within');
  });
});
