import 'fake-indexeddb/auto';
import { expect, test, vi } from 'vitest';
import { keepIn, openKeep } from '../../../workbook/store/keep';

test('what was kept is there on the next visit', async () => {
  const keep = openKeep(() => {});
  expect(await keep.read()).toBeUndefined();
  keep.write('one');
  keep.write('two');
  keep.write('three');
  await keep.stored();
  expect(await openKeep(() => {}).read()).toBe('three');
});

test('a browser that keeps nothing is said once', async () => {
  const tell = vi.fn();
  const keep = keepIn(Promise.reject(new Error('refused')), tell);
  expect(await keep.read()).toBeUndefined();
  keep.write('one');
  await keep.stored();
  expect(tell).toHaveBeenCalledOnce();
});
