import { expect, test } from 'vitest';
import { differencesOf } from '../../../engine/sheet/differences';
import type { Document } from '../../../engine/sheet/document';
import { applyChanges } from '../../../engine/sheet/transaction';
import { documentOf } from './small';

const [path, other] = ['span', 'chord'] as const;
const sheet = (): Document => ({
  ...documentOf([
    {
      kind: 'variables',
      id: 'v',
      name: 'set',
      title: 'Set',
      rows: [path, other].map((name) => ({
        name,
        title: name,
        symbol: '',
        unit: 'mm',
        text: '10 mm',
        low: '',
        high: '',
        step: '',
      })),
    },
  ]),
});

test('without a baseline nothing differs', () => {
  expect(differencesOf(sheet())).toEqual([]);
});

test('each text that moved away is told with what it was, and no longer once it is back', () => {
  const { document } = applyChanges({ ...sheet(), baseline: {} }, [
    { change: 'text', path: other, text: '12 mm' },
    { change: 'text', path, text: '20 mm' },
  ]);
  expect(differencesOf(document)).toEqual([
    { path: other, before: '10 mm', now: '12 mm' },
    { path, before: '10 mm', now: '20 mm' },
  ]);
  const { document: back } = applyChanges(document, [{ change: 'text', path: other, text: '10 mm' }]);
  expect(differencesOf(back).map((each) => each.path)).toEqual([path]);
});

test('what is gone since is passed over', () => {
  expect(differencesOf({ ...sheet(), baseline: { gone: '1 mm', span: '9 mm' } })).toEqual([
    { path: 'span', before: '9 mm', now: '10 mm' },
  ]);
});
