import { expect, test } from 'vitest';
import { type Edit, noHistory, record, stepBack, stepForward } from '../../../workbook/store/history';

const edit = (says: string, at = 0, key?: string): Edit => ({ says, changes: [], inverse: [], at, key });

test('steps back and forward visit the same edits in turn', () => {
  let history = noHistory;
  for (const says of ['a', 'b', 'c']) history = record(history, edit(says));
  const first = stepBack(history)!;
  const second = stepBack(first.history)!;
  expect([first.edit.says, second.edit.says]).toEqual(['c', 'b']);
  const again = stepForward(second.history)!;
  expect(again.edit.says).toBe('b');
  expect(again.history.past.map((e) => e.says)).toEqual(['a', 'b']);
  expect(again.history.future.map((e) => e.says)).toEqual(['c']);
});

test('a new edit after a step back drops what was taken back', () => {
  const history = record(stepBack(record(record(noHistory, edit('a')), edit('b')))!.history, edit('c'));
  expect(history.past.map((e) => e.says)).toEqual(['a', 'c']);
  expect(stepForward(history)).toBeUndefined();
});

test('edits of one key that follow closely are one step, which goes back to the first', () => {
  const back = { kind: 'first' } as never;
  const later = { kind: 'later' } as never;
  let history = record(noHistory, { ...edit('slide', 0, 'slide tip'), inverse: [back] });
  history = record(history, { ...edit('slide', 500, 'slide tip'), inverse: [later], changes: [later] });
  expect(history.past).toHaveLength(1);
  expect(history.past[0]!.inverse).toEqual([back]);
  expect(history.past[0]!.changes).toEqual([later]);
});

test('a pause, another key or no key begins a new step', () => {
  let history = record(noHistory, edit('a', 0, 'slide tip'));
  history = record(history, edit('b', 801, 'slide tip'));
  history = record(history, edit('c', 900, 'slide nose'));
  history = record(history, edit('d', 901));
  history = record(history, edit('e', 902));
  expect(history.past.map((e) => e.says)).toEqual(['a', 'b', 'c', 'd', 'e']);
});

test('nothing to take back or to do again', () => {
  expect(stepBack(noHistory)).toBeUndefined();
  expect(stepForward(noHistory)).toBeUndefined();
});
