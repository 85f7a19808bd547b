import { describe, expect, test } from 'vitest';
import { guessCell } from '../../../engine/sheet/cells/guess';
import type { Cell, GuessCell } from '../../../engine/sheet/document';
import { openText, serialise } from '../../../engine/sheet/file';
import { openLive, setLive } from '../../../engine/sheet/live';
import { rename } from '../../../engine/sheet/rename';
import { faultsOf } from '../../../engine/sheet/sentences';
import { cellsOf } from '../../../engine/sheet/sheets';
import { applyChanges } from '../../../engine/sheet/transaction';
import { documentOf, formula, library, variable, variables } from './small';

const guess = (change: Partial<GuessCell> = {}): GuessCell => ({
  ...{ kind: 'guess', id: 'g', name: 'pull_guess', title: 'Pull', question: 'At {a}, how much is twice that?' },
  ...{ way: 'number', of: 'b', unit: '', options: [], series: '', why: 'It is {b}.', try_this: '', instructor: '' },
  ...{ guesses: [{ by: '', text: '3 N' }], ...change },
});
const lines = formula('lines', { a: '20 N', b: '2 × a' });
const set = variables('set', variable('reach', 'm', '2 m', '1 m', '3 m'));
const series = (axes: readonly string[]): Cell => ({
  ...{ kind: 'trial_series', id: 's', name: 'along_reach', title: 'Along reach', wanted: ['area'] },
  axes: axes.map((of) => ({ of, low: '', high: '', count: 5 })),
});
const area = formula('more', { area: 'reach × reach', other: 'reach' });
const line = (change: Partial<GuessCell> = {}) =>
  guess({ way: 'line', of: 'area', question: '', why: '', series: 'along_reach', guesses: [], ...change });

const faultsIn = (...cells: Cell[]): string[] => {
  const { compiled, state } = openLive(documentOf(cells), library);
  return faultsOf(compiled, state).map((fault) => `${fault.path}: ${fault.message}`);
};

test('the answer follows the design, and words say its numbers', () => {
  const live = openLive(documentOf([lines, guess()]), library);
  const at = (from: typeof live, path: string) => from.state.m[from.compiled.program.slotOf.get(path)!];
  expect(faultsIn(lines, guess())).toEqual([]);
  expect(['pull_guess', 'pull_guess.question.said1', 'pull_guess.why.said1'].map((path) => at(live, path))).toEqual([
    40, 20, 40,
  ]);
  const moved = setLive(live, [['a', '25 N']], library).live;
  expect(at(moved, 'pull_guess')).toBe(50);
});

test('an answer is told in the unit that it asks for', () => {
  const unitOf = (unit: GuessCell['unit']) =>
    openLive(documentOf([lines, guess({ unit })]), library).compiled.names.find(({ path }) => path === 'pull_guess')
      ?.unit;
  expect([unitOf(''), unitOf('kgf')]).toEqual(['N', 'kgf']);
});

test('ends of an answer to be chosen are read as the answer is', () => {
  const options = [
    { words: 'less', low: '', high: '30' },
    { words: 'more', low: '30', high: '2 × a + 3 N' },
  ];
  const live = openLive(documentOf([lines, guess({ way: 'choice', options })]), library);
  const at = (path: string) => live.state.m[live.compiled.program.slotOf.get(path)!];
  expect(at('pull_guess.option1.high')).toBe(30);
  expect(at('pull_guess.option1.low')).toBeNaN();
  expect(at('pull_guess.option2.high')).toBe(43);
  const mm = [{ words: 'short', low: '', high: '3 mm' }, options[1]!];
  expect(faultsIn(lines, guess({ way: 'choice', options: mm })).join()).toContain('pull_guess.option1.high: ');
});

test('what is renamed stays what it was', () => {
  const options = [{ words: 'less', low: 'a', high: '' }];
  const before = documentOf([
    lines,
    set,
    area,
    series(['reach']),
    guess({ way: 'choice', options }),
    line({ id: 'h', name: 'drawn' }),
  ]);
  const renamed = ['a', 'reach', 'along_reach'].reduce((now, from) => {
    const renaming = rename(now, from, `${from}_2`);
    if (!renaming.ok) throw new Error(renaming.message);
    return applyChanges(now, renaming.changes).document;
  }, before);
  const [first, second] = cellsOf(renamed).filter((cell) => cell.kind === 'guess');
  expect(first).toMatchObject({ question: 'At {a_2}, how much is twice that?', options: [{ low: 'a_2' }] });
  expect(second).toMatchObject({ series: 'along_reach_2', of: 'area' });
  const other = guessCell.rewrite(guess(), {
    formula: (text) => text,
    path: (path) => path,
    option: (_, name) => name,
  });
  expect(other).toEqual(guess());
});

describe('a guess that cannot be asked says why', () => {
  test.each<[string, Cell[], string]>([
    [
      'nothing to compute',
      [guess({ of: '', question: '', why: '' })],
      'pull_guess: Pull has no answer to compute. Write the name of a result under “Set up this question”, such as “flight.pull”.',
    ],
    [
      'one answer to choose from',
      [lines, guess({ way: 'choice', options: [{ words: 'yes', low: '', high: '' }] })],
      'pull_guess: Pull has 1 answer to choose from. Add them under “Set up this question” until there are two or more.',
    ],
    [
      'no series',
      [set, area, series(['reach']), line({ series: '' })],
      'pull_guess: Pull has no trial series to draw over. Along one number there is Along reach.',
    ],
    [
      'another series',
      [set, area, line({ series: 'along_wind' })],
      'pull_guess: Pull is drawn over the trial series “along_wind”: there is none of that name. There is none along one number yet; add one.',
    ],
    [
      'a result that the series lacks',
      [set, area, series(['reach']), line({ of: 'other' })],
      'pull_guess: Pull asks for “other”, which Along reach does not have. It has area.',
    ],
    [
      'too many guesses',
      [lines, guess({ guesses: Array.from({ length: 61 }, (_, k) => ({ by: `${k}`, text: '1 N' })) })],
      'pull_guess: Pull has 61 guesses. At most 60 are allowed: remove some.',
    ],
  ])('%s', (_, cells, message) => {
    expect(faultsIn(...cells).map((each) => each.replaceAll('\u00a0', ' '))).toEqual([message]);
  });
});

test('a file keeps guesses, drawn lines too, and refuses a line of another length', () => {
  const drawn = line({ guesses: [{ by: 'Ann', text: '', line: [1, 2, 3, 4, 5, 6, 7, 8, 9] }], shown: true });
  const text = serialise(documentOf([set, area, series(['reach']), drawn]));
  const opened = openText(text);
  expect(opened.ok && serialise(opened.document)).toBe(text);
  const short = openText(text.replace('8,', ''));
  expect(short.ok).toBe(false);
});
