import { describe, expect, test } from 'vitest';
import { calledIn, waits } from '../../../engine/sheet/called';
import type { Cell } from '../../../engine/sheet/document';
import { faultsOfLive, openLive } from '../../../engine/sheet/live';
import { allNamed, allOptions, named, quoted, withTitles } from '../../../engine/sheet/named';
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
    ['reach', 'the line length'],
    ['cord', 'Lines'],
    ['cord.length', 'the length of Lines'],
    ['half', 'half'],
    ['parts.x', 'the CG station of Weights'],
    ['cord.nothing', 'cord.nothing'],
    ['gone.x', 'gone.x'],
  ])('%s: %s', (path, words) => expect(called(path)).toBe(words));
});

test('what waits names the entry that is at fault by its title', () => {
  const waits = faultsOfLive(live).filter((fault) => fault.state === 'waits');
  expect(waits.map(({ waitsTitle, message }) => [waitsTitle, message])).toContainEqual([
    'the line length',
    'The length of Lines waits for the line length.',
  ]);
  for (const { message } of waits) expect(message).not.toMatch(/cord|reach|parts\./);
});

describe('a sentence has titles in the place of paths', () => {
  const called = calledIn(live.compiled);
  test.each([
    [`${named('cord.length')} is 0. Look at ${named('reach')}.`, 'The length of Lines is 0. Look at the line length.'],
    [
      `Nothing moves ${named('parts.x')}. ${named('reach')} may.`,
      'Nothing moves the CG station of Weights. The line length may.',
    ],
    [`It takes ${quoted('motor')} or ${quoted('mtor')}.`, 'It takes Diesel or “mtor”.'],
    [
      `One of ${allOptions('cord.make', ['two_ply', 'solid'])}, ${allNamed(['half', 'cord'])}`,
      'One of two ply, solid, half, Lines',
    ],
  ])('%s', (sentences, words) => expect(withTitles(sentences, called)).toBe(words));
});

test('one waits, several wait', () => {
  const words = ['Balance', 'Lines', 'the length of Lines', 'Mass', 'a formula in What the wind does'];
  expect(words.map(waits)).toEqual(['waits', 'wait', 'waits', 'waits', 'waits']);
});
