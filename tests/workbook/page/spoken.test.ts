import { expect, test } from 'vitest';
import { changesSpoken, type Spoken } from '../../../workbook/page/state/spoken';

const figure = (title: string, words: string): Spoken => ({ path: title.toLowerCase(), title, words });
const cg = figure('CG', '46.0 mm');
const pull = figure('Line pull', '25.7 N');

test('what changed is said once, checks first', () => {
  const before = { figures: [cg, pull], checks: [figure('CG between 38 and 55 mm', 'within its limits')] };
  const now = {
    figures: [figure('CG', '58.0 mm'), pull],
    checks: [figure('CG between 38 and 55 mm', 'stop: 58.0 mm is over 55 mm: too far aft')],
  };
  expect(changesSpoken(before, now)).toBe(
    'CG between 38 and 55 mm: stop: 58.0 mm is over 55 mm: too far aft. CG: 58.0 mm.',
  );
});

test('nothing is said where nothing is shown otherwise, nor of a figure that was added', () => {
  expect(changesSpoken({ figures: [cg], checks: [] }, { figures: [cg, pull], checks: [] })).toBe('');
});

test('of many figures the first are read and the others counted', () => {
  const titles = ['A', 'B', 'C', 'D', 'E', 'F'];
  const at = (words: string, count: number) => ({
    figures: titles.slice(0, count).map((t) => figure(t, words)),
    checks: [],
  });
  expect(changesSpoken(at('1', 6), at('2', 6))).toBe('A: 2. B: 2. C: 2. D: 2. 2 more figures changed.');
  expect(changesSpoken(at('1', 5), at('2', 5))).toBe('A: 2. B: 2. C: 2. D: 2. 1 more figure changed.');
});
