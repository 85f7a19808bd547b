import { expect, test } from 'vitest';
import { momentWords } from '../../../workbook/store/moment-words';

const now = new Date(2026, 10, 25, 12).getTime();

test.each([
  [new Date(2026, 10, 25, 9, 5), '09:05 today'],
  [new Date(2026, 10, 25, 0, 0), '00:00 today'],
  [new Date(2026, 10, 24, 23, 59), '23:59 yesterday'],
  [new Date(2026, 10, 23, 23, 59), '2026-11-23, 23:59'],
  [new Date(2025, 10, 25, 12), '2025-11-25, 12:00'],
])('%s: %s', (then, words) => {
  expect(momentWords(then.getTime(), now)).toBe(words);
});
