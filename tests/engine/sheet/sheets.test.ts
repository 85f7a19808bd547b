import { describe, expect, test } from 'vitest';
import type { Document } from '../../../engine/sheet/document';
import { openText, serialise } from '../../../engine/sheet/file';
import { freeze } from '../../../engine/sheet/freeze';
import { openLive } from '../../../engine/sheet/live';
import { cellsOf, placeOf, sheetOfPiece } from '../../../engine/sheet/sheets';
import { applyChange, applyChanges, type Change } from '../../../engine/sheet/transaction';
import { randomFrom } from './random';
import { randomSheetEdit } from './sheet-edits';
import { library, smallDesign } from './small';

/** The small design on three sheets. */
function onThree(): Document {
  const cells = cellsOf(smallDesign());
  return freeze({
    ...smallDesign(),
    sheets: [
      { id: 's1', title: 'Decide', pieces: cells.slice(0, 4) },
      { id: 's2', title: 'Model', pieces: cells.slice(4, 8) },
      { id: 's3', title: 'Weights', pieces: cells.slice(8) },
    ],
  });
}
const titles = ({ sheets }: Document): string[] => sheets.map((sheet) => sheet.title);

describe('a design on sheets', () => {
  test('has its pieces in one order, the same list for the same sheets', () => {
    const design = onThree();
    expect(cellsOf(design)).toEqual(cellsOf(smallDesign()));
    expect(cellsOf({ sheets: design.sheets })).toBe(cellsOf(design));
  });
  test('knows where a piece stands', () => {
    expect(placeOf(onThree(), 'id_cord')).toEqual({ sheet: 1, at: 1 });
    expect(sheetOfPiece(onThree(), 'id_cord')?.title).toBe('Model');
    expect(placeOf(onThree(), 'gone')).toBeUndefined();
    expect(sheetOfPiece(onThree(), 'gone')).toBeUndefined();
  });
  test('computes the same wherever its pieces stand', () => {
    const one = openLive(smallDesign(), library);
    const three = openLive(onThree(), library);
    expect(three.compiled.program.shape).toBe(one.compiled.program.shape);
    expect(three.state.m).toEqual(one.state.m);
  });
});

describe('each edit of sheets has an inverse', () => {
  const edits: Readonly<Record<string, Change>> = {
    'a sheet is put in': { change: 'insert_sheet', at: 1, sheet: { id: 's4', title: 'New', pieces: [] } },
    'a sheet goes with all that stands on it': { change: 'remove_sheet', id: 's2' },
    'a sheet moves': { change: 'move_sheet', id: 's1', to: 2 },
    'a sheet has another title': { change: 'title_sheet', id: 's3', title: 'Balance' },
    'a piece moves to another sheet': { change: 'move', id: 'id_cord', sheet: 's3', to: 2 },
    'a piece moves to the end of a sheet': { change: 'move', id: 'id_words', sheet: 's2', to: 4 },
    'another design is put in its place': { change: 'design', document: smallDesign() },
  };
  for (const [name, change] of Object.entries(edits)) {
    test(name, () => {
      const before = onThree();
      const { document, inverse } = applyChange(before, change, { frozen: true });
      expect(document).not.toEqual(before);
      expect(JSON.parse(JSON.stringify(inverse))).toEqual(inverse);
      const back = applyChange(document, inverse).document;
      expect(serialise(back)).toBe(serialise(before));
      expect(applyChange(back, change).document).toEqual(document);
    });
  }
  for (const seed of [41, 42, 43, 44, 45, 46]) {
    test(`forty at random and all of them back again, to the byte (seed ${seed})`, () => {
      const random = randomFrom(seed);
      const before = onThree();
      const changes: Change[] = [];
      let document = before;
      const inverses: (readonly Change[])[] = [];
      for (let k = 0; k < 40; k++) {
        const change = randomSheetEdit(document, random);
        const applied = applyChanges(document, [change], { frozen: true });
        changes.push(change);
        document = applied.document;
        inverses.unshift(applied.inverse);
      }
      // All at once is the same as one after another, there and back.
      const whole = applyChanges(before, changes);
      expect(whole.document).toEqual(document);
      expect(whole.inverse).toEqual(inverses.flat());
      expect(serialise(applyChanges(document, inverses.flat()).document)).toBe(serialise(before));
      expect(openText(serialise(document))).toEqual({ ok: true, document });
    });
  }
});

describe('a place that is not there is a mistake of the program', () => {
  const refuses = (change: Change, sentence: string) =>
    expect(() => applyChange(onThree(), change)).toThrow(new RangeError(sentence));
  test('and named', () => {
    refuses({ change: 'remove_sheet', id: 's9' }, 'There is no sheet with id s9');
    refuses({ change: 'move', id: 'id_cord', sheet: 's9', to: 0 }, 'There is no sheet with id s9');
    refuses({ change: 'move', id: 'id_cord', sheet: 's1', to: 5 }, 'A piece cannot move to 5; 0 to 4 are allowed');
    refuses({ change: 'move_sheet', id: 's1', to: 3 }, 'A sheet cannot move to 3; 0 to 2 are allowed');
    const [first, second] = onThree().sheets;
    refuses({ change: 'insert_sheet', at: 0, sheet: first! }, 'There is a sheet with id s1 already');
    refuses(
      { change: 'insert_sheet', at: 0, sheet: { ...second!, id: 's4' } },
      'There is a piece with id id_motor already',
    );
    refuses(
      { change: 'insert_sheet', at: 4, sheet: { ...first!, id: 's4', pieces: [] } },
      'A sheet cannot be put in at 4; 0 to 3 are allowed',
    );
  });
  test('the last sheet stays', () => {
    expect(() => applyChange(smallDesign(), { change: 'remove_sheet', id: 's1' })).toThrow(
      new RangeError('The last sheet of a design stays'),
    );
    expect(titles(onThree())).toEqual(['Decide', 'Model', 'Weights']);
  });
});
