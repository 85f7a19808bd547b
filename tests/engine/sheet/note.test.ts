import { describe, expect, test } from 'vitest';
import { withText } from '../../../engine/sheet/baseline';
import { noteFormulas, notePieces, withFormulas } from '../../../engine/sheet/cells/note-pieces';
import type { Cell, Document } from '../../../engine/sheet/document';
import { openText, serialise } from '../../../engine/sheet/file';
import { openLive, setLive } from '../../../engine/sheet/live';
import { textAt } from '../../../engine/sheet/paths';
import { rename } from '../../../engine/sheet/rename';
import { faultsOf } from '../../../engine/sheet/sentences';
import { cellsOf } from '../../../engine/sheet/sheets';
import { applyChanges } from '../../../engine/sheet/transaction';
import { usesOf } from '../../../engine/sheet/uses';
import { onOneSheet } from './one-sheet';
import { documentOf, formula, library, smallDesign } from './small';

const note = (text: string): Cell => ({ kind: 'note', id: 'n', name: 'reading', title: 'Reading', text });
const design = (text: string): Document => ({
  ...smallDesign(),
  sheets: onOneSheet([...cellsOf(smallDesign()), note(text)]),
});

const faultsIn = (document: Document): string[] => {
  const { compiled, state } = openLive(document, library);
  return faultsOf(compiled, state).map((fault) => `${fault.path} ${fault.state}: ${fault.message}`);
};
const textOf = (document: Document): string => {
  const cell = cellsOf(document).find((each) => each.name === 'reading');
  return cell?.kind === 'note' ? cell.text : '';
};

describe('the pieces of a note', () => {
  test.each<[string, ReturnType<typeof notePieces>]>([
    ['only words', [{ words: 'only words' }]],
    ['', []],
    ['{a}', [{ formula: 'a' }]],
    [
      'pull {a} of {b + 2 g}.',
      [{ words: 'pull ' }, { formula: 'a' }, { words: ' of ' }, { formula: 'b + 2 g' }, { words: '.' }],
    ],
    ['\\{a} and \\\\{b}', [{ words: '\\{a} and \\\\' }, { formula: 'b' }]],
    ['{a\\} is words', [{ words: '{a\\} is words' }]],
    ['open {a\nb} {}', [{ words: 'open {a\nb} {}' }]],
    ['{{a}}', [{ words: '{' }, { formula: 'a' }, { words: '}' }]],
  ])('%j', (text, pieces) => {
    expect(notePieces(text)).toEqual(pieces);
    expect(withFormulas(text, (each) => each)).toBe(text);
  });
});

describe('a formula in a note', () => {
  const lines = formula('lines', { a: '20 N', b: 'a / 4' });

  test('has a value that follows the design', () => {
    const live = openLive(
      documentOf([lines, note('The pull is {a}, a quarter of it {b}, the rest {a - b}.')]),
      library,
    );
    const at = (from: typeof live, path: string) => from.state.m[from.compiled.program.slotOf.get(path)!];
    expect(['said1', 'said2', 'said3'].map((each) => at(live, `reading.${each}`))).toEqual([20, 5, 15]);
    const moved = setLive(live, [['a', '24 N']], library).live;
    expect(['said1', 'said2', 'said3'].map((each) => at(moved, `reading.${each}`))).toEqual([24, 6, 18]);
  });

  test.each([
    ['metric', ['mN', 'N']],
    ['inch_pound', ['ozf', 'lbf']],
  ] as const)('is written in the unit of the one name that it consists of: %s', (set, expected) => {
    const cells = [formula('lines', { a: '20 N' }, 'mN'), note('{a} {2 × a}')];
    const { compiled } = openLive({ ...documentOf(cells), units: set }, library);
    const units = compiled.names.filter(({ path }) => path.startsWith('reading.')).map(({ unit }) => unit);
    expect(units).toEqual(expected);
  });

  test.each([
    ['{tip_wieght} of lead', ['reading.said1 fault: Nothing is called tip_wieght. Did you mean tip_weight?']],
    [
      '{tip_weight} and {3 +}',
      ['reading.said2 fault: A value is missing at the end, behind +. Write a value behind +, or leave it out.'],
    ],
    [
      '{tip_weight + 2 m}',
      [
        'reading.said1 fault: 2\u00a0m is a length, tip_weight is a mass: they cannot be added. Make both a mass, or both a length.',
      ],
    ],
    ['{ }', ['reading.said1 fault: A formula in Reading is blank. Write a formula or a value.']],
    [
      '{motor.thrust}',
      [
        'reading.said1 fault: The thrust of motor is a curve over airspeed, which a formula cannot read. Name a single number.',
      ],
    ],
    ['\\{tip_wieght} is no name', []],
    ['It weighs {parts.mass}, made of {tail_stock}.', []],
  ])('is faulted at its place: %s', (text, faults) => {
    expect(faultsIn(design(text))).toEqual(faults);
  });

  test('can be mended where it stands, and the words stay', () => {
    const broken = design('Lead: **{tip_wieght}**, and {parts.mass}.');
    expect(textAt(broken, 'reading.said1')).toBe('tip_wieght');
    const mended = withText(broken, 'reading.said1', 'tip_weight')!;
    expect(textOf(mended)).toBe('Lead: **{tip_weight}**, and {parts.mass}.');
    expect(faultsIn(mended)).toEqual([]);
    for (const text of ['', 'a}', '{a', 'a\nb', 'a\\']) expect(withText(broken, 'reading.said1', text)).toBeUndefined();
    expect(withText(broken, 'reading.said3', 'a')).toBeUndefined();
  });

  test('follows what it names when that is renamed, and is found as a use of it', () => {
    const before = design('{tip_weight} at {parts.stab.mass}; tip_weight in words and \\{tip_weight} stay.');
    const renaming = rename(before, 'tip_weight', 'lead');
    if (!renaming.ok) throw new Error(renaming.message);
    const { document, inverse } = applyChanges(before, renaming.changes);
    expect(textOf(document)).toBe('{lead} at {parts.stab.mass}; tip_weight in words and \\{tip_weight} stay.');
    expect(applyChanges(document, inverse).document).toEqual(before);
    expect(usesOf(before, 'tip_weight')).toContainEqual({ cell: 'n', path: 'reading.said1' });
  });

  test('is no part of the design that a baseline keeps', () => {
    const before = { ...design('{tip_weight}'), baseline: {} };
    expect(withText(before, 'reading.said1', 'parts.mass')!.baseline).toEqual({});
  });

  test('is kept by a file as it was typed', () => {
    const document = design('Pull {lap.pull}, \\{braces}.');
    const opened = openText(serialise(document));
    expect(opened.ok && textOf(opened.document)).toBe('Pull {lap.pull}, \\{braces}.');
    expect(noteFormulas(textOf(document))).toEqual(['lap.pull']);
  });
});
