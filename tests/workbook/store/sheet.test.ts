import { expect, test } from 'vitest';
import { fromSI, openText, serialise, textAt } from '../../../engine/index';
import { createSheet } from '../../../workbook/store/sheet';
import { smallEngine } from './small-engine';
import { smallSheet } from './small-sheet';

async function open() {
  const { engine, calls, asked } = smallEngine();
  const kept: string[] = [];
  const sheet = createSheet(smallSheet, {
    engine,
    keep: { write: (text) => kept.push(text) },
    loadDemo: async () => '',
    frozen: true,
    now: () => 0,
  });
  await settled();
  return { sheet, calls, asked, kept };
}
const settled = () => new Promise((resolve) => setTimeout(resolve, 5));
const file = (text: string, name = 'other.tetherwright.json') => new File([text], name);

test('a sheet is working until the engine has answered, then settled', async () => {
  const { engine } = smallEngine();
  const sheet = createSheet(smallSheet, {
    engine,
    keep: { write() {} },
    loadDemo: async () => '',
    frozen: true,
    now: () => 0,
  });
  expect(sheet.state.value.words).toBe('working');
  expect(sheet.shown('tip_weight')).toBe('–');
  await settled();
  expect(sheet.state.value.words).toBe('up to date');
  expect(sheet.shown('tip_weight')).toBe('21\u00a0g');
});

test('a text is set, computed, kept and taken back', async () => {
  const { sheet, calls, kept } = await open();
  sheet.setText('tip_weight', '30 g');
  await settled();
  expect(sheet.shown('tip_weight')).toBe('30\u00a0g');
  expect(calls).toEqual(['open', 'set tip_weight=30 g']);
  expect(kept).toEqual([serialise(sheet.document.value)]);
  expect(sheet.undoSays.value).toBe('tip weight');
  sheet.undo();
  await settled();
  expect(sheet.shown('tip_weight')).toBe('21\u00a0g');
});

test('the same text again is no edit', async () => {
  const { sheet, calls } = await open();
  sheet.setText('tip_weight', '21 g');
  expect(sheet.undoSays.value).toBeUndefined();
  expect(calls).toEqual(['open']);
});

test('a fault is counted and stands at its place until it is mended', async () => {
  const { sheet } = await open();
  sheet.setText('tip_weight', 'much g');
  await settled();
  expect(sheet.state.value).toEqual({ kind: 'fault', words: '1 fault' });
  expect(sheet.faultAt('tip_weight')!.message).toBe('tip_weight is no number.');
  expect(sheet.faultBehind('tip_weight')?.message).toBe('tip_weight is no number.');
  expect(sheet.faultsOfCell('c2')).toHaveLength(1);
  sheet.setText('tip_weight', '4 g');
  await settled();
  expect(sheet.state.value.kind).toBe('settled');
});

test('the edit that a fault offers is made in its place in the text', async () => {
  const { sheet } = await open();
  sheet.setText('tip_weight', '2 gr + 3 g');
  const repair = { from: 2, to: 4, text: 'g' };
  sheet.mend({ cell: 'c2', path: 'tip_weight', state: 'fault', message: 'gr is not a unit.', repair });
  expect(textAt(sheet.document.value, 'tip_weight')).toBe('2 g + 3 g');
  sheet.undo();
  expect(textAt(sheet.document.value, 'tip_weight')).toBe('2 gr + 3 g');
});

test('a place is called by its cell and its own title, and is found by its path', async () => {
  const { sheet } = await open();
  expect(sheet.placeTitle({ cell: 'c2', path: 'tip_weight' })).toBe('Set these: tip weight');
  expect(sheet.placeTitle({ cell: 'c1', path: 'words' })).toBe('Words');
  expect(sheet.cellHolding('line_length')).toBe('c2');
  expect(sheet.cellHolding('words.anything')).toBe('c1');
  expect(sheet.cellHolding('nothing')).toBeUndefined();
  expect(sheet.cellName('c2')).toBe('set_these');
});

test('change from the baseline, and the way back to it', async () => {
  const { sheet } = await open();
  expect(sheet.change('tip_weight')).toBe('');
  sheet.takeBaseline();
  sheet.setText('tip_weight', '30 g');
  sheet.setText('line_length', '19.0 m');
  await settled();
  expect([sheet.change('tip_weight'), sheet.change('line_length')]).toEqual(['+9', '+1']);
  expect(sheet.baselineText('tip_weight')).toBe('21 g');
  sheet.returnToBaseline();
  await settled();
  expect([sheet.change('tip_weight'), sheet.change('line_length')]).toEqual(['0', '0']);
  sheet.undo();
  await settled();
  expect(fromSI(sheet.value('tip_weight'), 'g')).toBeCloseTo(30, 9);
});

test('while the finger is down only the coarse lattice runs; when it lifts, all of it', async () => {
  const { sheet, asked } = await open();
  sheet.sweeps.watch('pull_sweep');
  await settled();
  asked.length = 0;
  sheet.drag('tip_weight', '22 g');
  await settled();
  expect(asked).toEqual([{ sweep: 'pull_sweep', coarse: true }]);
  sheet.rest();
  expect(asked.at(-1)).toEqual({ sweep: 'pull_sweep', coarse: false });
});

test('opening a file puts it in place of the open sheet, and Undo brings that back', async () => {
  const { sheet } = await open();
  await sheet.openFile(file(serialise({ ...smallSheet, title: 'Other' })));
  expect(sheet.document.value.title).toBe('Other');
  expect(sheet.undoSays.value).toBe('opening other.tetherwright.json');
  sheet.undo();
  expect(sheet.document.value).toEqual(smallSheet);
});

test('a file that cannot be opened says why, place by place, and the open sheet stays', async () => {
  const { sheet, calls } = await open();
  await sheet.openFile(file('{ "format": "tetherwright", "version": 1, "title": 3 }'));
  expect(sheet.document.value).toBe(smallSheet);
  expect(calls).toEqual(['open']);
  const [notice] = sheet.notices.value;
  expect(notice!.title).toMatch(/^other\.tetherwright\.json: This file cannot be opened\. .* Nothing was opened\.$/);
  expect(notice!.sentences).toContain('title: expected a text, found 3.');
  sheet.dismiss(notice!);
  expect(sheet.notices.value).toEqual([]);
});

test('a file that is too large is refused before it is read', async () => {
  const { sheet } = await open();
  const large = file(' ');
  Object.defineProperty(large, 'size', { value: 60_000_000 });
  Object.defineProperty(large, 'text', { value: () => Promise.reject(new Error('read')) });
  await sheet.openFile(large);
  expect(sheet.document.value).toBe(smallSheet);
  expect(sheet.notices.value.map((notice) => notice.title)).toEqual([
    'other.tetherwright.json: This file is too large: 60 MB, and at most 50 MB are read. Nothing was opened. A design has far less; look whether it is the right file.',
  ]);
});

test('a formula under a slide is known from a number', async () => {
  const { sheet } = await open();
  expect(['21 g', '-1 3/32 in', '7'].map((text) => sheet.isComputed(text, 'g'))).toEqual([false, false, false]);
  expect(['2 * 3 g', 'line_length', 'pi'].map((text) => sheet.isComputed(text, 'g'))).toEqual([true, true, true]);
});

test('what is kept can be opened again', async () => {
  const { sheet, kept } = await open();
  sheet.setText('tip_weight', '30 g');
  expect(openText(kept.at(-1)!)).toEqual({ ok: true, document: sheet.document.value });
});
