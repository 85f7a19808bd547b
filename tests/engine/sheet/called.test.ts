import { describe, expect, test } from 'vitest';
import { calledIn } from '../../../engine/sheet/called';
import type { Cell } from '../../../engine/sheet/document';
import { faultsOfLive, openLive } from '../../../engine/sheet/live';
import { documentOf, library } from './small';

const cells: readonly Cell[] = [
  {
    ...{ kind: 'variables', id: 'v', name: 'set_these', title: 'Set these' },
    rows: [
      ...[{ name: 'reach', title: 'Line length', symbol: '', unit: 'm', text: '3 kg', low: '', high: '', step: '' }],
    ],
  },
  { kind: 'model', id: 'm', name: 'motor', title: 'Diesel', of: 'motor', fields: {} },
  { kind: 'model', id: 'c', name: 'cord', title: 'Lines', of: 'cord', fields: { length: 'reach' } },
  { kind: 'parts', id: 'p', name: 'parts', title: 'Weights', fuel: '', rows: [] },
  {
    kind: 'formula',
    id: 'f',
    name: 'sums',
    title: 'Sums',
    lines: [{ name: 'half', text: 'cord.length / 2', unit: '' }],
  },
];
const live = openLive(documentOf(cells), library);

describe('a place is called by its title', () => {
  const called = calledIn(live.compiled);
  test.each([
    ['v', 'reach', 'the line length'],
    ['c', 'cord', 'Lines'],
    ['c', 'cord.length', 'the length of Lines'],
    ['f', 'half', 'half'],
    ['p', 'parts.x', 'the CG station of Weights'],
    ['c', 'cord.nothing', 'cord.nothing'],
    ['gone', 'gone.x', 'gone.x'],
  ])('%s %s: %s', (cell, path, words) => expect(called(cell, path)).toBe(words));
});

test('what waits names the entry that is at fault by its title', () => {
  const waits = faultsOfLive(live).filter((fault) => fault.state === 'waits');
  expect(waits.map(({ waitsTitle, message }) => [waitsTitle, message])).toContainEqual([
    'the line length',
    'The length of Lines waits for the line length.',
  ]);
  for (const { message } of waits) expect(message).not.toMatch(/cord|reach|parts\./);
});
