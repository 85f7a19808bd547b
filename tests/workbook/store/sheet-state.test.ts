import { expect, test } from 'vitest';
import type { Fault } from '../../../engine/index';
import { sheetState } from '../../../workbook/store/sheet-state';

const fault = (cell: string, path: string, state: Fault['state']): Fault => ({ cell, path, state, message: '' });

test.each([
  [[], false, 'settled', 'all settled'],
  [[], true, 'working', 'working'],
  [[fault('c1', 'a', 'fault')], true, 'working', 'working'],
  [[fault('c1', 'a', 'fault')], false, 'fault', '1 fault'],
  [[fault('c1', 'a', 'fault'), fault('c1', 'b', 'fault'), fault('c2', 'c', 'waits')], false, 'fault', '2 faults'],
  [[fault('c1', 'a', 'waits'), fault('c1', 'b', 'waits')], false, 'waits', '1 cell waits'],
  [[fault('c1', 'a', 'waits'), fault('c2', 'b', 'waits')], false, 'waits', '2 cells wait'],
] as const)('%j, working %s: %s', (faults, working, kind, words) => {
  expect(sheetState(faults, working)).toEqual({ kind, words });
});
