import { describe, expect, test, vi } from 'vitest';
import { type CheckCell, cellsOf, type Document, type Fault, serialise } from '../../../engine/index';
import { createCellCommands } from '../../../workbook/store/cell-commands';
import { createEditor } from '../../../workbook/store/editor';
import { createSheetSet } from '../../../workbook/store/sheet-set';
import { smallDesign } from '../../engine/sheet/small';

/** The small design on three sheets: c. words and variables, the model, what follows. */
function design(): Document {
  const cells = cellsOf(smallDesign());
  return {
    ...smallDesign(),
    sheets: [
      { id: 's1', title: 'Decide', pieces: cells.slice(0, 4) },
      { id: 's2', title: 'Model', pieces: cells.slice(4, 8) },
      { id: 's3', title: 'Weights', pieces: cells.slice(8) },
    ],
  };
}

function open({
  faults = [] as readonly Fault[],
  stops = [] as readonly CheckCell[],
  unlimited = [] as readonly CheckCell[],
  working = false,
  may = true,
} = {}) {
  const editor = createEditor(design(), {
    ...{ changed: () => {}, committed: () => {}, mayChange: () => may, now: () => 0, frozen: true },
  });
  const removed: string[] = [];
  const tell = (title: string): void => {
    removed.push(title);
  };
  const set = createSheetSet({
    ...{
      editor,
      blocks: () => [],
      faults: () => faults,
      stopped: () => ({ stops, breaches: [], unlimited }),
      working: () => working,
    },
    removed: tell,
  });
  const shown = (): string => set.shownSheet.value.id;
  const commands = createCellCommands({ editor, blocks: () => [], shown, removed: tell });
  const titles = (): string[] => set.sheetList.value.map(({ number, title }) => `${number} ${title}`);
  const on = (id: string): string[] =>
    editor.document.value.sheets.find((sheet) => sheet.id === id)?.pieces.map((piece) => piece.name) ?? [];
  return { editor, set, commands, removed, shown, titles, on };
}

describe('the sheet that is shown', () => {
  test('is the first, another when asked for, and that of a piece', () => {
    const { set, shown } = open();
    expect(shown()).toBe('s1');
    set.showSheet('s3');
    expect(shown()).toBe('s3');
    set.showSheetOf('id_cord');
    expect(shown()).toBe('s2');
    set.showSheet('gone');
    set.showSheetOf('gone');
    expect(shown()).toBe('s2');
  });
  test('is the one in its place when it is gone, and itself again when it is back', () => {
    const { editor, set, shown } = open();
    set.showSheet('s2');
    set.removeSheet('s2');
    expect(shown()).toBe('s3');
    editor.undo();
    expect(shown()).toBe('s2');
    set.showSheet('s3');
    set.removeSheet('s3');
    expect(shown()).toBe('s2');
  });
  test('is what this tab showed last when the page is loaded again, where that is there', () => {
    const memory = new Map<string, string>();
    vi.stubGlobal('sessionStorage', {
      getItem: (key: string) => memory.get(key) ?? null,
      setItem: (key: string, value: string) => memory.set(key, value),
    });
    open().set.showSheet('s3');
    expect(open().shown()).toBe('s3');
    for (const key of memory.keys()) memory.set(key, 'gone');
    expect(open().shown()).toBe('s1');
    vi.unstubAllGlobals();
  });
  test('stays while sheets move', () => {
    const { set, shown, titles } = open();
    set.moveSheet('s1', 2);
    expect(titles()).toEqual(['1 Model', '2 Weights', '3 Decide']);
    expect(shown()).toBe('s1');
  });
});

describe('one edit each', () => {
  test('a sheet is added behind the shown one, named, and taken back step by step', () => {
    const { editor, set, shown, titles } = open();
    const id = set.addSheet('Wind');
    expect([id, shown()]).toEqual(['s4', 's4']);
    set.titleSheet('s4', 'What will the wind do?');
    set.titleSheet('s4', 'What will the wind do?');
    expect(titles()).toEqual(['1 Decide', '2 What will the wind do?', '3 Model', '4 Weights']);
    editor.undo();
    expect(titles()[1]).toBe('2 Wind');
    editor.undo();
    expect(serialise(editor.document.value)).toBe(serialise(design()));
    expect(shown()).toBe('s2');
  });
  test('a sheet that is removed is said with a way back, which brings all of it, and the last one stays', () => {
    const { editor, set, removed } = open();
    set.removeSheet('s1');
    set.removeSheet('s2');
    set.removeSheet('s3');
    expect(removed).toEqual(['Removed: sheet Decide.', 'Removed: sheet Model.']);
    expect(editor.undoSays.value).toBe('removing the sheet Model');
    editor.undo();
    editor.undo();
    expect(serialise(editor.document.value)).toBe(serialise(design()));
  });
  test('a sheet is copied behind the last and shown', () => {
    const { editor, set, shown, titles, on } = open();
    set.copySheet('s1');
    set.copySheet('gone');
    expect(titles()[3]).toBe('4 Decide, copy');
    expect(shown()).toBe('s4');
    expect(on('s4')).toEqual(['words_2', 'set_these_2', 'tail_stock_2', 'cord_set_2']);
    editor.undo();
    expect(serialise(editor.document.value)).toBe(serialise(design()));
  });
  test('a piece goes to the end of another sheet, or to a place of it', () => {
    const { editor, commands, removed, set, on } = open();
    commands.moveToSheet('id_cord', 's3');
    expect(removed).toEqual([]);
    set.showSheet('s2');
    expect(on('s3').at(-1)).toBe('cord');
    commands.moveToSheet('id_motor', 's3', 0);
    expect(on('s3')[0]).toBe('motor');
    expect(editor.undoSays.value).toBe('moving Motor to Weights'.replace('Motor', cellsOf(design())[4]!.title));
    const { title } = cellsOf(design())[4]!;
    // What goes from the shown sheet is said, with a way back.
    expect(removed).toEqual([`Moved: ${title}, to Weights.`]);
    commands.moveToSheet('id_motor', 's3');
    commands.moveToSheet('id_motor', 'gone');
    editor.undo();
    editor.undo();
    expect(editor.document.value).toEqual(design());
  });
  test('nothing is done where nothing may be changed', () => {
    const { editor, set, removed } = open({ may: false });
    expect(set.addSheet('Wind')).toBeUndefined();
    set.removeSheet('s1');
    expect(removed).toEqual([]);
    expect(editor.document.value).toEqual(design());
  });
});

describe('the list of sheets', () => {
  const fault = (cell: string, state: Fault['state']): Fault => ({ cell, path: cell, state, message: '' });
  test('counts what is wrong on each, and the pieces', () => {
    const check = cellsOf(design()).find((cell): cell is CheckCell => cell.kind === 'check')!;
    const { set } = open({ faults: [fault('id_cord', 'fault'), fault('id_words', 'waits')], stops: [check] });
    expect(set.sheetList.value).toEqual([
      { id: 's1', number: 1, title: 'Decide', pieces: 4, state: { kind: 'waits', words: '1 waits' } },
      { id: 's2', number: 2, title: 'Model', pieces: 4, state: { kind: 'fault', words: '1 fault' } },
      { id: 's3', number: 3, title: 'Weights', pieces: 5, state: { kind: 'stop', words: '1 stop' } },
    ]);
  });
  test('is the same list as long as nothing in it is another', () => {
    const { editor, set } = open();
    const before = set.sheetList.value;
    editor.change([{ change: 'text', path: 'tip_weight', text: '12 g' }], 'tip weight');
    expect(set.sheetList.value).toBe(before);
    set.titleSheet('s2', 'Pieces');
    expect(set.sheetList.value[0]).toBe(before[0]);
    expect(set.sheetList.value[1]).not.toBe(before[1]);
  });
});
