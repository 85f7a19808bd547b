import fc from 'fast-check';
import { expect, test } from 'vitest';
import { textWidth, wrapText } from '../../../workbook/drawing/text-width';

test('widths are those of the typeface', () => {
  // Measured in a browser from B612 at 1000 px: figures 650, M 900, i 300, space 350, minus 550.
  expect(textWidth('0123456789', 10)).toBeCloseTo(65, 9);
  expect(textWidth('Mi −', 1000)).toBeCloseTo(2100, 9);
});

test('wrapping keeps every word and passes the width only for a single long word (seed 11)', () => {
  const word = fc.string({ minLength: 1, maxLength: 12 }).filter((w) => !w.includes(' '));
  fc.assert(
    fc.property(fc.array(word, { minLength: 1, maxLength: 12 }), fc.integer({ min: 10, max: 200 }), (words, width) => {
      const lines = wrapText(words.join(' '), 11, width);
      expect(lines.join(' ')).toBe(words.join(' '));
      for (const line of lines) if (/[^\d] /.test(line)) expect(textWidth(line, 11)).toBeLessThanOrEqual(width);
    }),
    { seed: 11 },
  );
});

test('a figure keeps its unit', () => {
  expect(wrapText('light ply, 3 mm', 11, 60)).toEqual(['light ply,', '3 mm']);
});
