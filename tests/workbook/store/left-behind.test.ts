import { beforeEach, expect, test, vi } from 'vitest';
import { type Document, serialise } from '../../../engine/index';
import { settleAndRemember, takeUpWhatWasLeft } from '../../../workbook/store/left-behind';
import { createSheet } from '../../../workbook/store/sheet';
import { smallEngine } from './small-engine';
import { smallSheet } from './small-sheet';

const memory = new Map<string, string>();
beforeEach(() => {
  memory.clear();
  vi.stubGlobal('sessionStorage', {
    getItem: (key: string) => memory.get(key) ?? null,
    setItem: (key: string, text: string) => memory.set(key, text),
    removeItem: (key: string) => memory.delete(key),
  });
  return () => vi.unstubAllGlobals();
});

const open = (document: Document = smallSheet) =>
  createSheet(document, {
    engine: smallEngine().engine,
    keep: { write: () => {} },
    loadDemo: async () => '',
    frozen: true,
    now: () => 0,
  });
const typed = (sheet: ReturnType<typeof open>) => sheet.typing(() => sheet.setText('tip_weight', '33 g'));
const never = { stored: () => new Promise<void>(() => {}) };

test('what was being typed when the page went is an edit on the next, and can be taken back', () => {
  const first = open();
  typed(first);
  settleAndRemember(first, never);
  const next = open();
  takeUpWhatWasLeft(next);
  expect(serialise(next.document.value)).toBe(serialise(first.document.value));
  expect(next.undoSays.value).toBe('what was being typed');
  next.undo();
  expect(next.document.value).toEqual(smallSheet);
  const third = open();
  takeUpWhatWasLeft(third);
  expect(third.document.value).toEqual(smallSheet);
});

test('what was stored in time, or where nothing was typed, is not remembered', async () => {
  const sheet = open();
  settleAndRemember(sheet, never);
  expect(memory.size).toBe(0);
  typed(sheet);
  settleAndRemember(sheet, { stored: () => Promise.resolve() });
  await Promise.resolve();
  expect(memory.size).toBe(0);
});

test('another design than the one that was left stays as it is', () => {
  const first = open();
  typed(first);
  settleAndRemember(first, never);
  const other = { ...smallSheet, title: 'Other' };
  const next = open(other);
  takeUpWhatWasLeft(next);
  expect(next.document.value).toEqual(other);
});

test('a tab that remembers nothing still makes the edit, and a broken note is passed over', () => {
  memory.set('tetherwright left behind', '{');
  const next = open();
  takeUpWhatWasLeft(next);
  expect(next.document.value).toEqual(smallSheet);
  vi.stubGlobal('sessionStorage', undefined);
  typed(next);
  settleAndRemember(next, never);
  expect(next.undoSays.value).toBe('tip_weight');
});
