import { expect, test } from 'vitest';
import type { Document, MakingAnswer } from '../../../engine/index';
import { createEditor } from '../../../workbook/store/editor';
import { createMakings } from '../../../workbook/store/makings';
import { smallSheet } from './small-sheet';

const wish = { of: 'flight.pull', other: 'tip_weight', lines: '' };
const made = (title: string): MakingAnswer => ({
  ...{ ok: true, document: { ...smallSheet, title }, cell: 'c9', path: 'pull_chart' },
  ...{ says: ['Adds a chart.'], done: 'Added: Pull.' },
});

function start(answer: (asked: number) => MakingAnswer) {
  const told: (readonly [string, Document | undefined])[] = [];
  const editor = createEditor(smallSheet, { changed() {}, committed() {}, now: () => 0, frozen: true });
  let asked = 0;
  const ask = async (): Promise<MakingAnswer> => answer(++asked);
  const makings = createMakings({
    engine: { chartOffer: async () => ({ ok: false, message: '' }), makeChart: ask, makeVariable: ask, swapKind: ask },
    editor,
    place: () => ({ sheet: 's1' }),
    tell: (sentence, after) => told.push([sentence, after]),
  });
  return { editor, makings, told, asked: () => asked };
}

test('a chart is one step of undo, and is said with a way back', async () => {
  const { editor, makings, told } = start(() => made('With a chart'));
  expect(await makings.putChart(wish)).toMatchObject({ cell: 'c9', path: 'pull_chart' });
  expect(editor.document.value.title).toBe('With a chart');
  expect(told).toEqual([['Added: Pull.', editor.document.value]]);
  editor.undo();
  expect(editor.document.value).toBe(smallSheet);
});

test('an edit that comes between asks again', async () => {
  const begun = start((asked) => {
    if (asked === 1) begun.editor.change([{ change: 'head', head: { drawn: 'somebody' } }], 'a name');
    return made(`Asked ${asked}`);
  });
  await begun.makings.putChart(wish);
  expect(begun.asked()).toBe(2);
  expect(begun.editor.document.value.title).toBe('Asked 2');
});

test('what cannot be made changes nothing and says why', async () => {
  const { editor, makings, told } = start(() => ({ ok: false, message: 'No value yet.' }));
  expect(await makings.putChart(wish)).toBe('No value yet.');
  expect(await makings.makeVariable('wing.span', 'Span')).toBeUndefined();
  expect(await makings.putSwap({ id: 'c3', title: 'Engine' }, 'electric')).toBe('No value yet.');
  expect(told).toEqual([['No value yet.', undefined]]);
  expect(editor.document.value).toBe(smallSheet);
});
