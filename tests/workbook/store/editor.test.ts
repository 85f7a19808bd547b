import { expect, test } from 'vitest';
import { cellsOf, type Document, textAt } from '../../../engine/index';
import { createEditor, type EditorPorts } from '../../../workbook/store/editor';
import { onOneSheet } from '../../engine/sheet/one-sheet';
import { smallSheet } from './small-sheet';

function open(document: Document = smallSheet, also: Partial<EditorPorts> = {}) {
  const told: { title: string; texts: [string, string][] | undefined }[] = [];
  const kept: Document[] = [];
  let clock = 0;
  const editor = createEditor(document, {
    changed: (now, texts) => told.push({ title: now.title, texts: texts && [...texts] }),
    committed: (now) => kept.push(now),
    now: () => {
      clock += 10;
      return clock;
    },
    frozen: true,
    ...also,
  });
  const text = (path: string) => textAt(editor.document.value, path);
  return { editor, told, kept, text };
}
const tip = (text: string) => [{ change: 'text', path: 'tip_weight', text }] as const;

test('one drag is one step back, however many places the finger took', () => {
  const { editor, text } = open();
  for (const place of ['22 g', '25 g', '31 g']) editor.drag('tip_weight', place, 'tip weight');
  expect(editor.dragging.value).toBe(true);
  expect(text('tip_weight')).toBe('31 g');
  expect(editor.undoSays.value).toBeUndefined();
  editor.rest();
  expect(editor.dragging.value).toBe(false);
  expect(editor.undoSays.value).toBe('tip weight');
  editor.undo();
  expect(editor.document.value).toEqual(smallSheet);
  expect(editor.undoSays.value).toBeUndefined();
  editor.redo();
  expect(text('tip_weight')).toBe('31 g');
});

test('texts that move together are one step back, and what ends where it began is no part of it', () => {
  const { editor, text, told } = open();
  const move = (tip: string, line: string) =>
    editor.dragTexts(
      new Map([
        ['tip_weight', tip],
        ['line_length', line],
      ]),
      'place of a part',
    );
  const before = text('line_length')!;
  move('22 g', '19 m');
  move('25 g', before);
  expect(told.at(-1)!.texts).toEqual([
    ['tip_weight', '25 g'],
    ['line_length', before],
  ]);
  editor.rest();
  expect(editor.undoSays.value).toBe('place of a part');
  expect([text('tip_weight'), text('line_length')]).toEqual(['25 g', before]);
  editor.undo();
  expect(editor.document.value).toEqual(smallSheet);
  expect(editor.undoSays.value).toBeUndefined();
});

test('a drag that ends where it began is no edit', () => {
  const { editor, kept } = open();
  editor.drag('tip_weight', '30 g', 'tip weight');
  editor.drag('tip_weight', '21 g', 'tip weight');
  editor.rest();
  expect(editor.undoSays.value).toBeUndefined();
  expect(kept).toEqual([]);
});

test('the engine hears of every place of a drag, the store only of its end', () => {
  const { editor, told, kept } = open();
  editor.drag('tip_weight', '22 g', 'tip weight');
  editor.drag('tip_weight', '23 g', 'tip weight');
  expect(told.map((each) => each.texts)).toEqual([[['tip_weight', '22 g']], [['tip_weight', '23 g']]]);
  expect(kept).toEqual([]);
  editor.rest();
  expect(kept).toEqual([editor.document.value]);
  expect(told).toHaveLength(2);
});

test('strokes of an arrow key held down are one step, two drags of the hand are two', () => {
  const { editor } = open();
  for (const place of ['22 g', '23 g', '24 g']) {
    editor.drag('tip_weight', place, 'tip weight');
    editor.rest(true);
  }
  editor.undo();
  expect(editor.document.value).toEqual(smallSheet);
  for (const place of ['30 g', '40 g']) {
    editor.drag('tip_weight', place, 'tip weight');
    editor.rest(false);
  }
  editor.undo();
  expect(textAt(editor.document.value, 'tip_weight')).toBe('30 g');
});

test('any other edit ends a drag first, so that nothing of it is lost', () => {
  const { editor, text } = open();
  editor.drag('tip_weight', '30 g', 'tip weight');
  editor.change([{ change: 'text', path: 'line_length', text: '19 m' }], 'line length');
  editor.undo();
  expect([text('tip_weight'), text('line_length')]).toEqual(['30 g', '18.3 m']);
  editor.undo();
  expect(text('tip_weight')).toBe('21 g');
});

test('a text being typed becomes an edit before any other, and comes before it', () => {
  const { editor, text } = open();
  const end = editor.typing(() => editor.change(tip('30 g'), 'tip weight'));
  editor.change([{ change: 'text', path: 'line_length', text: '19 m' }], 'line length');
  end();
  expect([text('tip_weight'), text('line_length')]).toEqual(['30 g', '19 m']);
  editor.undo();
  expect([text('tip_weight'), text('line_length')]).toEqual(['30 g', '18.3 m']);
  editor.undo();
  expect(text('tip_weight')).toBe('21 g');
});

test('undo takes back what is being typed, and a drag begins behind it', () => {
  const { editor, text } = open();
  const end = editor.typing(() => {
    if (text('tip_weight') === '21 g') editor.change(tip('30 g'), 'tip weight');
  });
  editor.undo();
  expect(text('tip_weight')).toBe('21 g');
  editor.drag('line_length', '19 m', 'line length');
  editor.rest();
  expect(text('tip_weight')).toBe('30 g');
  end();
  editor.undo();
  expect([text('tip_weight'), text('line_length')]).toEqual(['30 g', '18.3 m']);
});

test('one text is typed at a time, and typing that has ended is not asked any more', () => {
  const { editor, text } = open();
  const first = editor.typing(() => editor.change(tip('30 g'), 'tip weight'));
  const second = editor.typing(() => editor.change(tip('40 g'), 'tip weight'));
  expect(text('tip_weight')).toBe('30 g');
  first();
  editor.settle();
  expect(text('tip_weight')).toBe('40 g');
  editor.undo();
  second();
  editor.settle();
  expect(editor.undoSays.value).toBe('tip weight');
  expect(text('tip_weight')).toBe('40 g');
});

test('undo while the finger is down takes the drag back', () => {
  const { editor, text } = open();
  editor.drag('tip_weight', '30 g', 'tip weight');
  editor.undo();
  expect(text('tip_weight')).toBe('21 g');
});

test('the baseline stays the design that it was through edits, undo and redo', () => {
  const { editor } = open();
  editor.change([{ change: 'head', head: { baseline: {} } }], 'the baseline');
  editor.change(tip('30 g'), 'tip weight');
  expect(editor.document.value.baseline).toEqual({ tip_weight: '21 g' });
  editor.drag('line_length', '19 m', 'line length');
  editor.drag('line_length', '20 m', 'line length');
  editor.rest();
  expect(editor.document.value.baseline).toEqual({ tip_weight: '21 g', line_length: '18.3 m' });
  editor.undo();
  editor.undo();
  expect(editor.document.value.baseline).toEqual({});
  editor.redo();
  expect(editor.document.value.baseline).toEqual({ tip_weight: '21 g' });
});

test('an edit of texts alone is told as texts, any other as a new document', () => {
  const { editor, told } = open();
  editor.change(tip('30 g'), 'tip weight');
  editor.change([{ change: 'head', head: { title: 'Other' } }], 'title');
  editor.undo();
  editor.undo();
  expect(told).toEqual([
    { title: 'Small sheet', texts: [['tip_weight', '30 g']] },
    { title: 'Other', texts: undefined },
    { title: 'Small sheet', texts: undefined },
    { title: 'Small sheet', texts: [['tip_weight', '21 g']] },
  ]);
});

test('how the sheet is arranged is kept, but is nothing to take back and nothing to compute', () => {
  const { editor, told, kept } = open();
  editor.arrange({ change: 'fold', id: 'c1', folded: true });
  expect(cellsOf(editor.document.value)[0]!.folded).toBe(true);
  expect(editor.undoSays.value).toBeUndefined();
  expect(told).toEqual([]);
  expect(kept).toHaveLength(1);
});

test('folding is one step back, and nothing to compute', () => {
  const { editor, told, kept } = open();
  editor.change([{ change: 'fold', id: 'c1', folded: true }], 'folding Words');
  expect(cellsOf(editor.document.value)[0]!.folded).toBe(true);
  editor.undo();
  expect(editor.document.value).toEqual(smallSheet);
  editor.redo();
  expect(cellsOf(editor.document.value)[0]!.folded).toBe(true);
  expect(told).toEqual([]);
  expect(kept).toHaveLength(3);
});

test('what is arranged while the finger is down stays when it lets go', () => {
  const { editor, text } = open();
  editor.drag('tip_weight', '30 g', 'tip weight');
  editor.arrange({ change: 'fold', id: 'c1', folded: true });
  editor.rest();
  expect([text('tip_weight'), cellsOf(editor.document.value)[0]!.folded]).toEqual(['30 g', true]);
});

test('opening another sheet is taken back like any edit', () => {
  const { editor } = open();
  const other: Document = {
    ...smallSheet,
    title: 'Other',
    invented: true,
    baseline: { tip_weight: '3 g' },
    sheets: onOneSheet(cellsOf(smallSheet).toReversed()),
  };
  editor.change([{ change: 'design', document: other }], 'opening other');
  expect(editor.document.value).toEqual(other);
  editor.undo();
  expect(editor.document.value).toEqual(smallSheet);
  editor.redo();
  expect(editor.document.value).toEqual(other);
});

test('opening another design tells which one is open, and so does taking that back and doing it again', () => {
  const turned: string[] = [];
  const { editor } = open(smallSheet, { turned: (design) => turned.push(design) });
  const other = { ...smallSheet, title: 'Other' };
  editor.change([{ change: 'design', document: other }], 'opening other', { from: 'a', to: 'b' });
  editor.change(tip('30 g'), 'tip weight');
  editor.undo();
  expect(turned).toEqual([]);
  editor.undo();
  editor.redo();
  expect(turned).toEqual(['a', 'b']);
});

test('what is looked at is shown and computed, cannot be changed, and leaves the design as it was', () => {
  let refused = 0;
  const { editor, told, kept, text } = open(smallSheet, { refused: () => refused++ });
  editor.change(tip('30 g'), 'tip weight');
  editor.look({ ...smallSheet, title: 'Old' });
  editor.change(tip('31 g'), 'tip weight');
  editor.drag('tip_weight', '32 g', 'tip weight');
  editor.rest();
  editor.undo();
  expect(refused).toBe(3);
  expect([editor.document.value.title, text('tip_weight')]).toEqual(['Old', '21 g']);
  // Unfolding is looking.
  editor.arrange({ change: 'cell', cell: { ...cellsOf(smallSheet)[0]!, folded: true } });
  expect(cellsOf(editor.document.value)[0]!.folded).toBe(true);
  editor.look(undefined);
  expect([editor.document.value.title, text('tip_weight')]).toEqual(['Small sheet', '30 g']);
  expect(told.map(({ title }) => title)).toEqual(['Small sheet', 'Old', 'Small sheet']);
  expect(kept).toHaveLength(1);
  editor.undo();
  expect(editor.document.value).toEqual(smallSheet);
});

test('while the design may not be changed nothing of it is, but opening another is taken back', () => {
  let may = true;
  const { editor, text } = open(smallSheet, { mayChange: () => may });
  editor.change([{ change: 'design', document: smallSheet }], 'opening other', { from: 'a', to: 'b' });
  may = false;
  editor.change(tip('31 g'), 'tip weight');
  expect(text('tip_weight')).toBe('21 g');
  expect(editor.undoSays.value).toBe('opening other');
  editor.undo();
  expect(editor.undoSays.value).toBeUndefined();
});

test('a design that another page has changed is shown as it is, with nothing to take back', () => {
  const { editor } = open();
  editor.change(tip('30 g'), 'tip weight');
  editor.drag('tip_weight', '33 g', 'tip weight');
  const other = { ...smallSheet, title: 'Other' };
  editor.follow(other);
  expect(editor.document.value).toBe(other);
  expect([editor.undoSays.value, editor.dragging.value]).toEqual([undefined, false]);
});
