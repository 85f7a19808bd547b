import { describe, expect, it } from 'vitest';
import { csvLine, readCsv } from '../../../engine/library/csv';

const values = (text: string) => readCsv(text).map((row) => row.values);

describe('comma-separated values', () => {
  it('are records named by the heading', () => {
    expect(values('a,b\n1,2\n3,4\n')).toEqual([
      { a: '1', b: '2' },
      { a: '3', b: '4' },
    ]);
  });
  it('may have commas, quotes and line breaks in quotes', () => {
    expect(values('a,b\n"1, one","say ""two"""\n"over\ntwo lines",\n')).toEqual([
      { a: '1, one', b: 'say "two"' },
      { a: 'over\ntwo lines', b: '' },
    ]);
  });
  it('may end lines in either way, the last one in none', () => {
    expect(values('a,b\r\n1,2\r\n3,4')).toEqual([
      { a: '1', b: '2' },
      { a: '3', b: '4' },
    ]);
  });
  it('skip empty lines and know their line', () => {
    expect(readCsv('a,b\n\n1,2\n"x\ny",3\n5,6\n').map((row) => row.line)).toEqual([3, 4, 6]);
  });
  it('of nothing are no records', () => {
    expect(readCsv('')).toEqual([]);
    expect(readCsv('a,b\n')).toEqual([]);
  });
  it('refuse a record of another length, and a quote left open', () => {
    expect(() => readCsv('a,b\n1,2,3\n')).toThrow(new RangeError('line 2 has 3 fields; the heading has 2'));
    expect(() => readCsv('a,b\n1,"2\n')).toThrow(new RangeError('line 2 opens a quote that is never closed'));
  });
});

it('what is written is read back the same', () => {
  const rows = [
    ['a', ''],
    ['comma, inside', 'quote " inside'],
    ['two\r\nlines', '"'],
  ];
  const read = readCsv([['one', 'two'], ...rows].map(csvLine).join('')).map(({ values: { one, two } }) => [one, two]);
  expect(read).toEqual(rows.map((fields) => fields.map((field) => field.replace('\r\n', '\r\n'))));
});
