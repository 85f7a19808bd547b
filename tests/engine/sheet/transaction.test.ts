import { describe, expect, test } from 'vitest';
import type { Cell, Document } from '../../../engine/sheet/document';
import { freeze } from '../../../engine/sheet/freeze';
import { cellsOf } from '../../../engine/sheet/sheets';
import { applyChange, applyChanges, type Change } from '../../../engine/sheet/transaction';
import { randomEdit } from './edits';
import { randomFrom } from './random';
import { blockOf, smallDesign } from './small';

const design = (more: Partial<Document> = {}): Document => freeze({ ...smallDesign(), ...more });
const spare: Cell = blockOf('cord', {}, 'spare');

/** Applies a change and takes it back. */
function thereAndBack(document: Document, change: Change): { there: Document; back: Document; inverse: Change } {
  const { document: there, inverse } = applyChange(document, change, { frozen: true });
  return { there, back: applyChange(there, inverse).document, inverse };
}

describe('each change has an inverse', () => {
  const changes: Readonly<Record<string, Change>> = {
    'a cell is put in': { change: 'insert', sheet: 's1', at: 3, cell: spare },
    'a cell is put in at the end': { change: 'insert', sheet: 's1', at: cellsOf(smallDesign()).length, cell: spare },
    'a cell is removed': { change: 'remove', id: 'id_cord' },
    'a cell moves down': { change: 'move', id: 'id_words', sheet: 's1', to: 5 },
    'a cell moves up': { change: 'move', id: 'id_lap', sheet: 's1', to: 0 },
    'a cell is another': { change: 'cell', cell: { ...blockOf('cord', { length: '12 m' }), title: 'Other' } },
    'the title is another': { change: 'head', head: { title: 'Other', units: 'inch_pound', figures: ['parts.x'] } },
    'a part of the head appears': { change: 'head', head: { baseline: { tip_weight: '12 g' } } },
    'a part of the head goes': { change: 'head', head: { invented: null } },
    'a text is another': { change: 'text', path: 'tip_weight', text: '12 g' },
    'a field is typed for the first time': { change: 'text', path: 'lap.height', text: '2 m' },
    'a field goes back to its default': { change: 'text', path: 'cord.length', text: '' },
  };
  for (const [name, change] of Object.entries(changes)) {
    test(name, () => {
      const before = design();
      const { there, back } = thereAndBack(before, change);
      expect(there).not.toEqual(before);
      expect(back).toEqual(before);
    });
  }
  test('as plain data', () => {
    for (const change of Object.values(changes)) {
      const { inverse } = applyChange(design(), change);
      expect(JSON.parse(JSON.stringify(inverse))).toEqual(inverse);
    }
  });
});

test('changes one after another are taken back in the other order', () => {
  const before = design();
  const changes: Change[] = [
    { change: 'insert', sheet: 's1', at: 0, cell: spare },
    { change: 'text', path: 'spare.length', text: '12 m' },
    { change: 'move', id: 'id_spare', sheet: 's1', to: 4 },
    { change: 'remove', id: 'id_words' },
  ];
  const { document, inverse } = applyChanges(before, changes);
  expect(applyChanges(document, inverse).document).toEqual(before);
});

for (const seed of [11, 12, 13, 14, 15, 16, 17, 18]) {
  test(`forty random edits and all of them back again (seed ${seed})`, () => {
    const random = randomFrom(seed);
    const before = design({ baseline: { tip_weight: '15 g', tail_stock: 'faced' } });
    let document = before;
    const inverses: (readonly Change[])[] = [];
    for (let k = 0; k < 40; k++) {
      const applied = applyChanges(document, randomEdit(document, random).changes, { frozen: true });
      document = applied.document;
      inverses.unshift(applied.inverse);
    }
    expect(applyChanges(document, inverses.flat()).document).toEqual(before);
  });
}

describe('the baseline', () => {
  test('keeps the text that it had', () => {
    const before = design({ baseline: {} });
    const { there, back } = thereAndBack(before, { change: 'text', path: 'tip_weight', text: '12 g' });
    expect(there.baseline).toEqual({ tip_weight: '21 g' });
    expect(back).toEqual(before);
  });
  test('lets go of a text that is the same again', () => {
    const before = design({ baseline: { tip_weight: '12 g' } });
    const { there, back } = thereAndBack(before, { change: 'text', path: 'tip_weight', text: '12 g' });
    expect(there.baseline).toEqual({});
    expect(back).toEqual(before);
  });
  test('is not moved by further edits', () => {
    const { document } = applyChanges(design({ baseline: {} }), [
      { change: 'text', path: 'tip_weight', text: '12 g' },
      { change: 'text', path: 'tip_weight', text: '13 g' },
      { change: 'text', path: 'lap.height', text: '2 m' },
    ]);
    expect(document.baseline).toEqual({ tip_weight: '21 g', 'lap.height': '' });
  });
});

describe('a place that is not there is a mistake of the program', () => {
  const refuses = (change: Change, sentence: string) =>
    expect(() => applyChange(design(), change)).toThrow(new RangeError(sentence));
  test('and named', () => {
    refuses({ change: 'remove', id: 'gone' }, 'There is no piece with id gone');
    refuses(
      { change: 'insert', sheet: 's1', at: 99, cell: spare },
      'A piece cannot be put in at 99; 0 to 13 are allowed',
    );
    refuses(
      { change: 'insert', sheet: 's1', at: 0, cell: blockOf('cord') },
      'There is a piece with id id_cord already',
    );
    refuses({ change: 'move', id: 'id_cord', sheet: 's1', to: 13 }, 'A piece cannot move to 13; 0 to 12 are allowed');
    refuses({ change: 'text', path: 'gone.here', text: '' }, 'No text can stand at gone.here');
  });
});

describe('in development', () => {
  test('what an edit gives is frozen through and through', () => {
    const { document } = applyChange(
      smallDesign(),
      { change: 'text', path: 'tip_weight', text: '12' },
      { frozen: true },
    );
    const everything = (value: unknown): boolean =>
      typeof value !== 'object' || value === null || (Object.isFrozen(value) && Object.values(value).every(everything));
    expect(everything(document)).toBe(true);
  });
  test('an edit leaves the document from before alone', () => {
    const before = design();
    const copy = structuredClone(before);
    applyChange(before, { change: 'text', path: 'parts.fin.weighed', text: '12' });
    expect(before).toEqual(copy);
  });
});
