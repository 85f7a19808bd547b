import { describe, expect, test } from 'vitest';
import { type Cell, cellsOf, type Document, rename, retitleCell } from '../../../engine/index';
import { openLive } from '../../../engine/sheet/live';
import { faultsOf } from '../../../engine/sheet/sentences';
import { plainOffers } from '../../../workbook/cells/offers';
import { createCellCommands } from '../../../workbook/store/cell-commands';
import { createEditor } from '../../../workbook/store/editor';
import { someOf } from '../../cases';
import { type Random, randomFrom } from '../../engine/sheet/random';
import { library, smallDesign } from '../../engine/sheet/small';

const blocks = library.blocks.map(({ kind, role = kind, fields }) => ({
  kind,
  role,
  fields: Object.entries(fields).map(([name, field]) =>
    'link' in field ? { name, kind: 'link', role: field.link } : { name, kind: 'quantity' },
  ),
}));

const design = (): Document => ({ ...smallDesign(), figures: ['lap.pull'] });

function open(document = design()) {
  const editor = createEditor(document, { changed: () => {}, committed: () => {}, now: () => 0, frozen: true });
  const removed: string[] = [];
  const commands = createCellCommands({
    ...{ editor, blocks: () => blocks, shown: () => 's1' },
    removed: (title) => removed.push(title),
  });
  return { editor, commands, removed };
}
type Opened = ReturnType<typeof open>;

const faults = (document: Document): string[] => {
  const { compiled, state } = openLive(document, library);
  return faultsOf(compiled, state).map((fault) => fault.message);
};
const names = (document: Document): string[] => cellsOf(document).map((cell) => cell.name);

/** All that begins without a fault on this design: a table without parts weighs nothing, a log names results of real blocks, a fit asks for a log. */
const offers = plainOffers(undefined).filter(({ key }) => !['parts', 'log', 'fit'].includes(key));

const COMMANDS: Readonly<Record<string, (opened: Opened, random: Random) => void>> = {
  add({ editor, commands }, random) {
    commands.addCell(random.below(cellsOf(editor.document.value).length + 1), random.pick(offers).make);
  },
  copy({ editor, commands }, random) {
    commands.copyCell(random.pick(cellsOf(editor.document.value)).id);
  },
  move({ editor, commands }, random) {
    const cells = cellsOf(editor.document.value);
    commands.moveCell(random.pick(cells).id, random.below(cells.length + 1));
  },
  fold({ editor, commands }, random) {
    commands.fold(random.pick(cellsOf(editor.document.value)), random.below(2) === 0);
  },
  name({ editor }, random) {
    const { document } = editor;
    const cell = random.pick(cellsOf(document.value));
    const renamed = rename(document.value, cell.name, `name_${random.below(30)}`);
    if (renamed.ok && renamed.changes.length > 0) editor.change(renamed.changes, 'name');
  },
  title({ editor }, random) {
    const { id } = random.pick(cellsOf(editor.document.value));
    editor.change(retitleCell(editor.document.value, id, `Title ${random.below(30)}`), 'title');
  },
};

describe.each(someOf([1, 2, 3, 4, 5, 6, 7, 8]))('whole cells at random, seed %i', (seed) => {
  test('added, copied, moved, folded and named, a sheet without faults stays without, and all is taken back', () => {
    const random = randomFrom(seed);
    const opened = open();
    const { editor } = opened;
    const states = [editor.document.value];
    for (let k = 0; k < 25; k++) {
      const command = random.pick(Object.keys(COMMANDS));
      COMMANDS[command]!(opened, random);
      expect(faults(editor.document.value), `${k}: ${command}`).toEqual([]);
      if (editor.document.value !== states.at(-1)) states.push(editor.document.value);
    }
    for (const state of states.toReversed().slice(1)) {
      editor.undo();
      expect(editor.document.value).toStrictEqual(state);
    }
    expect(editor.undoSays.value).toBeUndefined();
    for (const state of states.slice(1)) {
      editor.redo();
      expect(editor.document.value).toStrictEqual(state);
    }
  });

  test('removed too, all is taken back', () => {
    const random = randomFrom(seed + 100);
    const opened = open();
    const { editor, commands } = opened;
    const start = editor.document.value;
    for (let k = 0; k < 40; k++) {
      const cells = cellsOf(editor.document.value);
      if (random.below(3) === 0 && cells.length > 1) commands.removeCell(random.pick(cells).id);
      else COMMANDS[random.pick(Object.keys(COMMANDS))]!(opened, random);
    }
    while (editor.undoSays.value !== undefined) editor.undo();
    expect(editor.document.value).toStrictEqual(start);
  });
});

describe('one edit each', () => {
  test('a copy stands behind its original', () => {
    const { editor, commands } = open();
    commands.copyCell('id_tail_stock');
    expect(names(editor.document.value).slice(2, 4)).toEqual(['tail_stock', 'tail_stock_2']);
    expect(editor.undoSays.value).toBe('copying Tail stock');
    editor.undo();
    expect(editor.document.value).toEqual(design());
  });

  test('a cell is put before the one that stands where it goes, and stays where it is already', () => {
    const { editor, commands } = open();
    const before = names(editor.document.value);
    commands.moveCell('id_words', 0);
    commands.moveCell('id_words', 1);
    expect(editor.undoSays.value).toBeUndefined();
    commands.moveCell('id_words', 3);
    expect(names(editor.document.value).slice(0, 3)).toEqual([before[1], before[2], 'words']);
    commands.moveCell('id_words', before.length);
    expect(names(editor.document.value).at(-1)).toBe('words');
    commands.moveCell('id_words', 0);
    expect(names(editor.document.value)).toEqual(before);
    expect(editor.undoSays.value).toBe('moving Words');
  });

  test('what is removed is said', () => {
    const { editor, commands, removed } = open();
    commands.removeCell('id_lap');
    expect(removed).toEqual(['Removed: lap.']);
    expect(commands.told.value).toBe('Removed: lap.');
    expect(editor.undoSays.value).toBe('removing lap');
  });

  test('unfolding what hides a fault is no edit', () => {
    const { editor, commands } = open();
    const cell = (): Cell => cellsOf(editor.document.value)[0]!;
    commands.fold(cell(), true);
    expect(editor.undoSays.value).toBe('folding Words');
    editor.undo();
    commands.fold(cell(), true);
    commands.unfold(cell());
    expect(cell().folded).toBeUndefined();
    expect(editor.undoSays.value).toBe('folding Words');
  });
});
