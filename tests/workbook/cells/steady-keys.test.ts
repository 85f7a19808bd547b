import { expect, test } from 'vitest';
import { keysAfter } from '../../../workbook/cells/rows/steady-keys';

test('a row that gets another name goes on under its key, however often', () => {
  const once = keysAfter(new Map(), ['fin', 'new_part'], ['fin', 'clip']);
  expect([...once]).toEqual([['clip', 'new_part']]);
  expect([...keysAfter(once, ['fin', 'clip'], ['fin', 'line_clip'])]).toEqual([['line_clip', 'new_part']]);
});

test('rows that come, go or change places have keys of their own', () => {
  expect(keysAfter(new Map(), ['fin'], ['fin', 'clip']).size).toBe(0);
  expect(keysAfter(new Map(), ['fin', 'clip'], ['clip', 'fin']).size).toBe(0);
  expect([...keysAfter(new Map([['clip', 'new_part']]), ['fin', 'clip'], ['clip'])]).toEqual([['clip', 'new_part']]);
});

test('no two rows have one key', () => {
  const keys = new Map([['clip', 'new_part']]);
  expect([...keysAfter(keys, ['clip', 'fin'], ['clip', 'new_part'])]).toEqual([
    ['clip', 'new_part'],
    ['new_part', 'fin'],
  ]);
});
