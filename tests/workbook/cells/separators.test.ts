import { describe, expect, test } from 'vitest';
import { columnsBy, seenIn, withPoint } from '../../../workbook/cells/shared/separators';
import { seenWords } from '../../../workbook/cells/shared/separators-pick';

describe('separators that a text shows', () => {
  test('commas and points', () => {
    const text = 'part,mass,x\nFin,12.5,480\n';
    expect(seenIn(text)).toEqual({ between: ',', decimal: '.' });
    expect(seenWords(seenIn(text))).toBe(
      'The text shows commas between fields and a point for decimals. Choose otherwise if that is wrong.',
    );
    expect([',', ';', '\t'].map((sign) => columnsBy(text, sign as ','))).toEqual([3, 1, 1]);
  });
  test('semicolons and decimal commas, also where a heading has commas', () => {
    expect(seenIn('part;mass, g;x, mm\nFin;12,5;480\n')).toEqual({ between: ';', decimal: ',' });
  });
  test('tabs and decimal commas, as cells are copied', () =>
    expect(seenIn('part\tmass\tx\nFin\t12,5\t480')).toEqual({ between: '\t', decimal: ',' }));
  test('whole numbers, which show none, have a point', () =>
    expect(seenIn('part;mass\nFin;12')).toEqual({ between: ';', decimal: '.' }));
  test('that could be meant in two ways are not chosen', () => {
    expect(seenIn('part;mass\nFin;1,250')).toEqual({ between: ';', decimal: undefined });
    expect(seenIn('part;mass;x\nFin;1,5;2.5')).toEqual({ between: ';', decimal: undefined });
    expect(seenWords({ between: ';', decimal: undefined })).toBe(
      'The text shows semicolons between fields, but not which sign its decimals have. Choose it.',
    );
    expect(seenIn('part,a;mass,b\nFin,c;12,d')).toEqual({ between: undefined, decimal: undefined });
    expect(seenIn('just words')).toEqual({ between: undefined, decimal: undefined });
    expect(seenWords(seenIn(''))).toBe('The text doesn’t show what stands between its fields. Choose it.');
  });
});

describe('decimals', () => {
  test('are written with a point', () => {
    expect(withPoint('12,5 g', ',')).toEqual({ text: '12.5 g' });
    expect(withPoint(',5', ',')).toEqual({ text: '0.5' });
    expect(withPoint('1 3/32 in', ',')).toEqual({ text: '1 3/32 in' });
    expect(withPoint('12.5', '.')).toEqual({ text: '12.5' });
  });
  test('of the other sign are no numbers', () => {
    expect(withPoint('12.5', ',')).toEqual({
      wrong: '“12.5” has a point between its digits, where decimals have a comma',
    });
    expect(withPoint('1,250', '.')).toEqual({
      wrong: '“1,250” has a comma between its digits, where decimals have a point',
    });
  });
});
